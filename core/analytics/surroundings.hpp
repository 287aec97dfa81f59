// SPDX-License-Identifier: GPL-3.0-or-later
// What was logged around a signal: where jobs begin and end, temperature jumps, long pauses, care.
#pragma once
#include <span>
#include <vector>

#include "core/analytics/case_file.hpp"
#include "core/analytics/since.hpp"

namespace arc::drift {

/// Stretches of the window that belong to one job and begin inside it.
std::vector<Stretch> jobStretches(std::span<const Row> window);

/// A trigger and the first row after it.
struct PlacedTrigger {
    Trigger trigger;
    std::size_t row = 0;
};
std::vector<PlacedTrigger> triggersIn(std::span<const Row> window, std::span<const CareRecord> events);

/// Arcs since the last electrode exchange before the instant, when both counters are known.
std::optional<std::uint32_t> electrodeArcs(std::span<const CareRecord> events, const RawArc& arc);

}  // namespace arc::drift
