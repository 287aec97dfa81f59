// SPDX-License-Identifier: GPL-3.0-or-later
// Where the two sums of a two-sided CUSUM stand long after its start. For run_length.cpp.
#pragma once
#include <vector>

#include "core/result.hpp"

namespace arc::drift::detail {

/// Law of the upper sum (the lower has the same) in control, given no signal yet: masses at places, sum 1.
struct SumLaw {
    std::vector<double> at;
    std::vector<double> mass;
};

/// `refined` multiplies the node counts. BadInput when h is above 15 or holds more than 60 steps of 2 k.
[[nodiscard]] Result<SumLaw> longRunOfTwoSums(double k, double h, int refined);

}  // namespace arc::drift::detail
