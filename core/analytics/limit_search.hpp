// SPDX-License-Identifier: GPL-3.0-or-later
// From a wanted run length back to the limit of a chart.
#pragma once
#include <functional>

#include "core/result.hpp"

namespace arc::drift::detail {

/// Beyond this an average run length is reported as "never".
inline constexpr double longestArl = 1e12;

/// `arl` itself, or BadInput when it is not a run length the arithmetic can vouch for.
[[nodiscard]] Result<double> reportedArl(double arl);

/// The limit in (0, highest] at which `runLength` (rising with the limit; a Problem counts as "never") is
/// `arl`, to 1e-12 relative. BadInput when arl is not in (1, 1e9] or no limit within reach has it.
[[nodiscard]] Result<double> limitWithArl(double arl, double highest,
                                          const std::function<Result<double>(double limit)>& runLength);

}  // namespace arc::drift::detail
