// SPDX-License-Identifier: GPL-3.0-or-later
// Intervals for a share: x of n.
#pragma once
#include "core/result.hpp"
#include "core/stats/order.hpp"

namespace arc::stats {

/// Wilson's score interval: close to its confidence on average. 0 <= x <= n, n >= 1, confidence in (0, 1),
/// else BadInput.
[[nodiscard]] Result<Interval> wilson(int x, int n, double confidence = 0.95);

/// Clopper-Pearson's exact interval: never below its confidence.
[[nodiscard]] Result<Interval> clopperPearson(int x, int n, double confidence = 0.95);

}  // namespace arc::stats
