// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/limits.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace arc::drift {

namespace {

double runLength(double h, double k) {
    const double b = h + 1.166;
    if (std::abs(k) < 1e-4) return b * b;
    return (std::exp(std::min(600.0, 2 * k * b)) - 2 * k * b - 1) / (2 * k * k);
}

/// Seven-point Gauss-Hermite rule for the standard normal distribution (Abramowitz & Stegun 25.4.46, scaled).
constexpr std::array nodes{-3.750439717725742, -2.366759410734541, -1.154405394739968, 0.0,
                           1.154405394739968,  2.366759410734541,  3.750439717725742};
constexpr std::array weights{0.000548268855972, 0.030757123967586, 0.240123178605013, 0.457142857142857,
                             0.240123178605013, 0.030757123967586, 0.000548268855972};

double normalLimit(double arl, double k, double meanError) {
    const auto rate = [&](double h) {
        double sum = 0;
        for (std::size_t i = 0; i < nodes.size(); ++i)
            sum += weights[i] / runLength(h, k - nodes[i] * meanError);
        return sum;
    };
    double low = 0, high = 200;
    for (int i = 0; i < 50; ++i) {
        const double middle = (low + high) / 2;
        (rate(middle) > 1 / arl ? low : high) = middle;
    }
    return high;
}

constexpr double setUpGain = 18.5;  ///< of the wandering's share that a long excursion collects
constexpr double setUpHalf = 13;    ///< arcs after which half of it is collected

}  // namespace

double cusumLimit(double arl, double k, const ScoreLaw& law) {
    double spread = std::sqrt(law.tail), limit = 0;
    for (int round = 0; round < 8; ++round) {
        limit = spread * normalLimit(arl, k / spread, law.meanError / spread);
        const double arcs = limit / k;  // an excursion lasts about this long
        const double collected = setUpGain * arcs / (arcs + setUpHalf);
        spread = std::sqrt(law.tail + collected * law.wander);
    }
    return limit;
}

double tailFactor(std::span<const double> probabilities, std::span<const double> scores, double mean,
                  double sd, int count, double k) {
    const double root = std::sqrt(static_cast<double>(count));
    // log E exp(r (average - k)) for one standardised average of `count` scores.
    const auto cumulant = [&](double r) {
        double sum = 0;
        for (std::size_t q = 0; q < scores.size(); ++q)
            sum += probabilities[q] * std::exp(r / root * (scores[q] - mean) / sd);
        return count * std::log(sum) - r * k;
    };
    double low = 1e-3, high = 1e-2;
    while (high < 64 && cumulant(high) < 0) high *= 2;
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (cumulant(middle) < 0 ? low : high) = middle;
    }
    return std::clamp(2 * k / high, 0.2, 4.0);
}

}  // namespace arc::drift
