// SPDX-License-Identifier: GPL-3.0-or-later
// The plain statistics of textbook charts, value by value. Run lengths and limits: run_length.hpp.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/result.hpp"

namespace arc::drift {

/// z_i = (1 - lambda) z_(i-1) + lambda x_i from `start`; one value per reading. lambda in (0, 1].
[[nodiscard]] std::vector<double> ewmaSeries(std::span<const double> readings, double start, double lambda);

/// Upward and downward sums, C = max(0, C +- (x - target) - k), one pair per reading.
struct CusumSeries {
    std::vector<double> up, down;
};
[[nodiscard]] CusumSeries cusumSeries(std::span<const double> readings, double target, double k,
                                      double headStart = 0);

/// Index of the first value beyond `limit`, if any.
[[nodiscard]] std::optional<std::size_t> firstBeyond(std::span<const double> values, double limit);

/// Mean of the range of two normal readings in standard deviations: 2 / sqrt(pi).
inline constexpr double rangeOfTwo = 1.1283791670955126;

/// Individuals chart with limits from the mean moving range of neighbours.
struct IndividualsLimits {
    double mean = 0;
    double meanMovingRange = 0;
    double lower = 0, upper = 0;  ///< mean -+ 3 x meanMovingRange / d2
};
/// At least two readings, else BadInput. Older tables round `d2` to 1.128.
[[nodiscard]] Result<IndividualsLimits> individualsLimits(std::span<const double> readings,
                                                          double d2 = rangeOfTwo);

}  // namespace arc::drift
