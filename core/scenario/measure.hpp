// SPDX-License-Identifier: GPL-3.0-or-later
// Losses of the simulated splices as measured from the ends of the span.
#pragma once
#include <cstdint>
#include <vector>

#include "core/scenario/simulate.hpp"

namespace arc::scenario {

/// Of the splices that lie in the closures when the log ends. One direction of unequal mode fields reads
/// 10 log10(wb / wa) dB more, the other as much less, so that only the mean of both is the loss.
std::vector<SimulatedMeasurement> measure(const Scenario& scenario, const SimulatedLog& log,
                                          std::uint64_t seed);

}  // namespace arc::scenario
