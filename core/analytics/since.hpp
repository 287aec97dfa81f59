// SPDX-License-Identifier: GPL-3.0-or-later
// When did it begin: maximum likelihood over begin points for a step and for ramps of several lengths.
#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace arc::drift {

/// What was fitted to a stretch of scores; positions are indices into it.
struct ChangeFit {
    std::size_t begin = 0;          ///< first changed score
    std::size_t low = 0, high = 0;  ///< begins within 2 log-likelihood units of the best
    int ramp = 1;                  ///< arcs over which the change grew; 1 = a step; open-ended ramps are long
    double before = 0, after = 0;  ///< mean before, and full size of the change after
    double gain = 0;               ///< log-likelihood over "no change"
};

/// Best fit of "level before, growing over `ramp` arcs to a new level" with unit noise variance, over all
/// begins in [1, latest] and the given ramp lengths. `variance` > 1 makes up for scores that hang together.
/// Only upward changes are looked for. Cost O(scores x ramps) by running sums for steps, and
/// O(begins x scores) for ramps: keep the stretch bounded.
ChangeFit fitChange(std::span<const double> scores, std::size_t latest, std::span<const int> ramps,
                    double variance);

}  // namespace arc::drift
