// SPDX-License-Identifier: GPL-3.0-or-later
// Did a care action help: the arcs after it against the arcs before, and against the baseline.
#pragma once
#include <span>

#include "core/analytics/drift.hpp"
#include "core/analytics/model.hpp"

namespace arc::drift {

inline constexpr int arcsAfterCare = 20;
inline constexpr int arcsBeforeCare = 40;

/// The effect with its shift and interval, and a verdict once 20 arcs were made after the care.
CareEffect judged(CareEffect effect, std::span<const Row> window, const Model& model);

}  // namespace arc::drift
