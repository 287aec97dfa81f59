// SPDX-License-Identifier: GPL-3.0-or-later
// A simulated log as the histories that the charts read, without a logbook in between.
#pragma once
#include <vector>

#include "core/analytics/stream.hpp"
#include "core/scenario/simulate.hpp"

namespace arc::scenario {

/// One history per splicer, in the order of the scenario; the care of its cleavers and every change of the
/// surroundings are among its events. Identities are those of entriesOf.
std::vector<SplicerHistory> historiesOf(const Scenario& scenario, const SimulatedLog& log);

}  // namespace arc::scenario
