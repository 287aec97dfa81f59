// SPDX-License-Identifier: GPL-3.0-or-later
// When did it begin: every begin point and shape competes by its likelihood, for a step, for ramps of several
// lengths, and for stretches that are given (a job, a cold morning). Scores have unit variance in control.
#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace arc::drift {

/// What was fitted to a stretch of scores; positions are indices into it.
struct ChangeFit {
    double evidence = 0;            ///< log of the mean likelihood ratio to "no change" over all candidates
    double best = 0;                ///< log-likelihood ratio of the best candidate
    std::size_t begin = 0;          ///< middle of the begins by their likelihood
    std::size_t low = 0, high = 0;  ///< begins within 2 log-likelihood units of the best
    int ramp = 1;                   ///< arcs over which the best candidate grows; 1 = a step
    double size = 0;                ///< full size of the best candidate, standard deviations
};

/// How the scores were before and how they hang together.
struct Noise {
    double variance = 1;  ///< above 1 for scores that share set-ups
    double known = 0;     ///< arcs' worth of knowledge that the level before is 0 (the baseline)
};

/// Upward changes only, begins from `earliest` to `latest`, growing evenly over one of `ramps` arcs to their
/// full size. The level before is fitted too. Cost O(scores + begins x ramps).
ChangeFit fitChange(std::span<const double> scores, std::size_t earliest, std::size_t latest,
                    std::span<const int> ramps, Noise noise);

/// Growing without end, faster and faster, as (arcs since the begin) ^ 1.6. Cost O(scores x begins).
ChangeFit fitWear(std::span<const double> scores, std::size_t earliest, std::size_t latest, Noise noise);

/// A stretch [from, to) in which the scores may be higher than outside it.
struct Stretch {
    std::size_t from = 0, to = 0;
    bool operator==(const Stretch&) const = default;
};
ChangeFit fitStretches(std::span<const double> scores, std::span<const Stretch> stretches, Noise noise);

}  // namespace arc::drift
