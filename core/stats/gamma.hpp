// SPDX-License-Identifier: GPL-3.0-or-later
// The gamma distribution with shape and scale (mean shape x scale): the smooth part of a loss baseline.
// shape and scale must be above 0; arguments out of range give NaN, nothing here throws.
#pragma once

namespace arc::stats {

/// P(X <= x); 0 for x <= 0.
[[nodiscard]] double gammaCdf(double x, double shape, double scale) noexcept;

/// P(X > x), with its digits kept in the far tail.
[[nodiscard]] double gammaUpperTail(double x, double shape, double scale) noexcept;

/// The x with P(X <= x) = p, p in [0, 1].
[[nodiscard]] double gammaQuantile(double p, double shape, double scale) noexcept;

}  // namespace arc::stats
