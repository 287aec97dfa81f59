// SPDX-License-Identifier: GPL-3.0-or-later
// From the false-alarm budget to the limit of a chart.
#pragma once
#include <array>
#include <span>

namespace arc::drift {

/// What is known of the scores that a chart adds up, in their own standard deviations. The mean is known with
/// an error only: the law is described at `errors` places of it.
struct ScoreLaw {
    static constexpr std::size_t errors = 7;
    double meanError = 0;  ///< standard error of the learned mean
    /// Variance of the normal law whose large sums are as rare, by place of the mean; 1 = normal scores.
    std::array<double, errors> tail{1, 1, 1, 1, 1, 1, 1};
    double wander = 0;  ///< share of the variance that the arcs of one set-up have in common, 0-0.9
};

/// Limit h of a one-sided CUSUM with reference value k whose in-control average run length is `arl`, the
/// false alarms being averaged over what the mean may be. D. Siegmund's corrected diffusion approximation
/// (Sequential Analysis, 1985), within 2 % for independent normal scores; set-up wandering enlarges the
/// variance by as much as an excursion of the sum can collect of it (checked by simulation, set-ups of 24).
double cusumLimit(double arl, double k, const ScoreLaw& law);

/// One score by its values and their probabilities; `count` independent ones are averaged.
struct ScoreCells {
    std::span<const double> probabilities, scores;
    double mean = 0, sd = 1;  ///< that the chart takes off and divides by, of one score
    int count = 1;
};

/// The tails of an average of scores when the true mean lies off by each of the places of `meanError` (in
/// standard deviations of that average): the law is tilted there (exponential family: rarer high scores
/// become more frequent, so that the spread grows with the mean), and Lundberg's exponent r of it, E exp(r (x
/// - k)) = 1, gives 2 (k - shift) / r.
std::array<double, ScoreLaw::errors> tailsOf(const ScoreCells& cells, double k, double meanError);

}  // namespace arc::drift
