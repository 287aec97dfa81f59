// SPDX-License-Identifier: GPL-3.0-or-later
// Medians and their kin.
#pragma once
#include <optional>
#include <span>

namespace arc::stats {

struct Interval {
    double low = 0;
    double high = 0;
    bool operator==(const Interval&) const = default;
};

/// Middle value, or the mean of the two middle ones; empty for no values. Values must not be NaN.
[[nodiscard]] std::optional<double> median(std::span<const double> values);

/// Quantile by linear interpolation between order statistics, position p (n - 1); p in [0, 1]. Empty for no
/// values.
[[nodiscard]] std::optional<double> quantile(std::span<const double> values, double p);

/// 1.4826 x median |x - median|: the standard deviation of a normal law, blind to outliers.
[[nodiscard]] std::optional<double> medianDeviation(std::span<const double> values);

/// Interval of the median by order statistics, exact coverage at least `confidence`; empty when there are too
/// few values for that.
[[nodiscard]] std::optional<Interval> medianInterval(std::span<const double> values,
                                                     double confidence = 0.95);

/// Two-sided p of the sign test: as many values above `centre` as below? Ties with it are left out; 1 when
/// nothing is left.
[[nodiscard]] double signTest(std::span<const double> values, double centre = 0);

}  // namespace arc::stats
