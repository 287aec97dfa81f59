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

double limitAt(double arl, double k, const ScoreLaw& law, const std::array<double, nodes.size()>& variance) {
    const auto rate = [&](double h) {
        double sum = 0;
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            const double spread = std::sqrt(variance[i]);
            sum += weights[i] / runLength(h / spread, (k - nodes[i] * law.meanError) / spread);
        }
        return sum;
    };
    double low = 0, high = 400;
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
    auto variance = law.tail;
    double limit = 0;
    for (int round = 0; round < 8; ++round) {
        limit = limitAt(arl, k, law, variance);
        const double arcs = limit / k;  // an excursion lasts about this long
        const double collected = setUpGain * arcs / (arcs + setUpHalf);
        for (std::size_t i = 0; i < variance.size(); ++i) variance[i] = law.tail[i] + collected * law.wander;
    }
    return limit;
}

namespace {

/// An average of discrete scores and its exponential tilts.
class Tilted {
  public:
    explicit Tilted(const ScoreCells& cells) : cells_(cells), root_(std::sqrt(cells.count)) {}

    /// log E exp(t z) of one standardised score.
    double cumulant(double t) const {
        double sum = 0;
        for (std::size_t q = 0; q < cells_.scores.size(); ++q)
            sum += cells_.probabilities[q] * std::exp(t * z(q));
        return std::log(sum);
    }
    struct Moments {
        double mean = 0, variance = 0;  ///< of the average, in its own standard deviations
    };
    Moments at(double t) const {
        double sum = 0, mean = 0, square = 0;
        for (std::size_t q = 0; q < cells_.scores.size(); ++q) {
            const double p = cells_.probabilities[q] * std::exp(t * z(q));
            sum += p;
            mean += p * z(q);
            square += p * z(q) * z(q);
        }
        mean /= sum;
        return {mean * root_, square / sum - mean * mean};
    }
    /// The tilt whose mean is nearest to this.
    double tiltTo(double mean) const {
        double low = -steepest, high = steepest;
        for (int i = 0; i < 30; ++i) {
            const double middle = (low + high) / 2;
            (at(middle).mean < mean ? low : high) = middle;
        }
        return (low + high) / 2;
    }
    double tail(double tilt, double k) const {
        const auto moments = at(tilt);
        const double drift = k - moments.mean;
        if (drift < leastDrift) return moments.variance;
        const double start = cumulant(tilt);
        const auto excess = [&](double r) {
            return cells_.count * (cumulant(tilt + r / root_) - start) - r * k;
        };
        double high = 1e-2;
        while (high < 64 && excess(high) < 0) high *= 2;
        double low = high > 1e-2 ? high / 2 : 1e-3;
        for (int i = 0; i < 30; ++i) {
            const double middle = (low + high) / 2;
            (excess(middle) < 0 ? low : high) = middle;
        }
        return 2 * drift / high;
    }

  private:
    static constexpr double steepest = 3, leastDrift = 0.02;
    double z(std::size_t q) const { return (cells_.scores[q] - cells_.mean) / cells_.sd; }

    const ScoreCells& cells_;
    double root_;
};

}  // namespace

std::array<double, ScoreLaw::errors> tailsOf(const ScoreCells& cells, double k, double meanError) {
    const Tilted law(cells);
    const double middle = law.at(0).mean;
    std::array<double, ScoreLaw::errors> tails{};
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const double tilt = meanError > 0 ? law.tiltTo(middle + nodes[i] * meanError) : 0;
        tails[i] = std::clamp(law.tail(tilt, k), 0.2, 9.0);
    }
    return tails;
}

}  // namespace arc::drift
