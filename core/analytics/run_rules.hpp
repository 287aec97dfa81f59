// SPDX-License-Identifier: GPL-3.0-or-later
// Individuals chart with run rules: exact run lengths by Markov chain over the recent points (C. W. Champ &
// W. H. Woodall, Technometrics 29, 1987). Readings are standardised as in run_length.hpp.
#pragma once
#include <vector>

#include "core/analytics/run_length.hpp"
#include "core/result.hpp"

namespace arc::drift {

/// The numbers are the usual ones of the trade's run rules.
enum class RunRule {
    BeyondLimit = 1,  ///< one point beyond the limit
    TwoOfThree = 2,   ///< two of three points beyond two thirds of the limit, on one side
    FourOfFive = 3,   ///< four of five points beyond one third of the limit, on one side
    SameSide = 4,     ///< a run of points on one side of the centre
};

struct ShewhartChart {
    double limit = 3;                                     ///< in standard deviations, > 0, at most 20
    std::vector<RunRule> rules = {RunRule::BeyondLimit};  ///< at least one
    int sameSide = 8;                                     ///< length of the run for SameSide, 2-20
    Sides sides = Sides::Both;                            ///< Upper: only rises count, for every rule
};

/// Average run length when the mean is `shift` from the first reading on.
[[nodiscard]] Result<double> averageRunLength(const ShewhartChart& chart, double shift);

/// Average delay of a shift that comes long after the start, given no false signal before it.
[[nodiscard]] Result<double> steadyStateRunLength(const ShewhartChart& chart, double shift);

/// The limit (warning limits move with it) whose in-control average run length is `arl`; `chart.limit` is not
/// read. BadInput when the rules cannot reach it (a run of 8 on one side alone signals every 255 readings).
[[nodiscard]] Result<double> limitFor(const ShewhartChart& chart, double arl);

}  // namespace arc::drift
