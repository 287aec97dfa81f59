// SPDX-License-Identifier: GPL-3.0-or-later
// From the false-alarm budget to the limit of a chart.
#pragma once
#include <span>

namespace arc::drift {

/// What is known of the scores that a chart adds up, in their own standard deviations.
struct ScoreLaw {
    double meanError = 0;  ///< standard error of the learned mean
    double tail = 1;       ///< variance of the normal law whose large sums are as rare; 1 = normal scores
    double wander = 0;     ///< share of the variance that the arcs of one set-up have in common, 0-0.9
};

/// Limit h of a one-sided CUSUM with reference value k whose in-control average run length is `arl`, the
/// false alarms being averaged over what the mean may be. D. Siegmund's corrected diffusion approximation
/// (Sequential Analysis, 1985), within 2 % for independent normal scores; set-up wandering enlarges the
/// variance by as much as an excursion of the sum can collect of it (checked by simulation, set-ups of 24).
double cusumLimit(double arl, double k, const ScoreLaw& law);

/// The `tail` of scores with these values and probabilities when `count` independent ones are averaged and
/// `k` (in standard deviations of that average) is taken off: from Lundberg's exponent r, E exp(r (x - k)) =
/// 1, as 2 k / r. `mean` and `sd` are of one score.
double tailFactor(std::span<const double> probabilities, std::span<const double> scores, double mean,
                  double sd, int count, double k);

}  // namespace arc::drift
