// SPDX-License-Identifier: GPL-3.0-or-later
// A simulated log as entries of a logbook: tools, jobs, cables, closures with plans, pairings, splices, care
// and measured losses. Identities are computed from the names, so the same scenario on two laptops is one.
#pragma once
#include <cstdint>
#include <vector>

#include "core/entry.hpp"
#include "core/scenario/simulate.hpp"

namespace arc::scenario {

/// In an order that may be appended as it is: what is referred to comes first. `shiftMs` moves all times.
std::vector<Entry> entriesOf(const Scenario& scenario, const SimulatedLog& log, std::int64_t shiftMs);

/// Whole days by which the log must be moved for its last arc or care to lie less than a day before `now`.
std::int64_t shiftToPresent(const SimulatedLog& log, Instant now);

}  // namespace arc::scenario
