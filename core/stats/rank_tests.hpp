// SPDX-License-Identifier: GPL-3.0-or-later
// Two samples by ranks: Mann-Whitney and the Hodges-Lehmann shift with its interval, for readings full of
// ties.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/result.hpp"
#include "core/stats/order.hpp"

namespace arc::stats {

/// How p and the interval were found.
enum class RankMethod {
    Exact,   ///< from the null distribution: no ties and fewer than 50 values on either side
    Normal,  ///< normal approximation with tie and continuity correction
};

struct MannWhitney {
    double u = 0;  ///< pairs in which a is above b, ties counting half
    double p = 1;  ///< two-sided
    RankMethod method = RankMethod::Normal;
};

/// Does `a` tend to be above or below `b`? BadInput when a side is empty or holds a NaN. O(n log n).
[[nodiscard]] Result<MannWhitney> mannWhitney(std::span<const double> a, std::span<const double> b);

struct Shift {
    double estimate = 0;               ///< median of all a - b (Hodges-Lehmann)
    std::optional<Interval> interval;  ///< empty when there are too few values for the confidence
    RankMethod method = RankMethod::Normal;
};

/// By how much `a` is above `b`. The interval holds the shifts that the test above would not reject. BadInput
/// as above, when confidence is not in (0, 1), or when there are more than 25 million pairs.
[[nodiscard]] Result<Shift> hodgesLehmann(std::span<const double> a, std::span<const double> b,
                                          double confidence = 0.95);

/// P(U <= u) for u = 0 … m n when both samples come from one law without ties; m, n <= 50.
[[nodiscard]] std::vector<double> mannWhitneyNull(int m, int n);

}  // namespace arc::stats
