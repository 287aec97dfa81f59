// SPDX-License-Identifier: GPL-3.0-or-later
// Student's t distribution. `freedom` is the degrees of freedom, > 0; arguments out of range give NaN,
// nothing here throws.
#pragma once

namespace arc::stats {

/// P(T <= t).
[[nodiscard]] double studentCdf(double t, double freedom) noexcept;

/// The t with P(T <= t) = p; p = 0 gives -infinity, p = 1 +infinity.
[[nodiscard]] double studentQuantile(double p, double freedom) noexcept;

}  // namespace arc::stats
