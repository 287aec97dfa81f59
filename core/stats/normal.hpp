// SPDX-License-Identifier: GPL-3.0-or-later
// The standard normal distribution. Relative error below 1e-14 + 5e-16 z^2 in both tails (checked against a
// grid in tests/reference); NaN in gives NaN out, nothing here throws.
#pragma once

namespace arc::stats {

/// Density.
[[nodiscard]] double normalDensity(double z) noexcept;

/// P(Z <= z). Use normalUpperTail for z > 0 when the tail itself matters: no digits are lost there.
[[nodiscard]] double normalCdf(double z) noexcept;

/// P(Z > z).
[[nodiscard]] double normalUpperTail(double z) noexcept;

/// P(a < Z <= b), taken on the side where it keeps its digits; 0 when b <= a.
[[nodiscard]] double normalBetween(double a, double b) noexcept;

/// The z with P(Z <= z) = p. p = 0 gives -infinity, p = 1 +infinity, outside [0, 1] NaN.
[[nodiscard]] double normalQuantile(double p) noexcept;

/// The z with P(Z > z) = q: for tiny upper tails, where 1 - q would lose digits.
[[nodiscard]] double normalUpperQuantile(double q) noexcept;

/// Mean of Z given a < Z <= b: the expected normal score of a cell. Infinite ends are fine; for an empty or
/// vanishing cell the end nearer to zero.
[[nodiscard]] double normalMeanBetween(double a, double b) noexcept;

}  // namespace arc::stats
