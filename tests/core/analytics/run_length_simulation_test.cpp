// SPDX-License-Identifier: GPL-3.0-or-later
// The arithmetic against plain repetition: charts run on random readings (fixed seed) must take as long as
// computed, within four standard errors of the simulation.
#include <algorithm>
#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <random>
#include <vector>

#include "core/analytics/agreement.hpp"
#include "core/analytics/discrete_cusum.hpp"
#include "core/analytics/run_length.hpp"
#include "core/analytics/several_streams.hpp"
#include "core/stats/change_point.hpp"
#include "core/stats/rank_tests.hpp"

namespace arc::drift {
namespace {

constexpr int runs = 20000;

/// Normal readings from a generator whose numbers the standard fixes.
class Readings {
  public:
    explicit Readings(unsigned seed) : generator(seed) {}
    double uniform() { return (static_cast<double>(generator()) + 0.5) / 4294967296.0; }
    double normal() { return std::sqrt(-2 * std::log(uniform())) * std::cos(6.283185307179586 * uniform()); }
    /// A loss from a gamma law of shape 2 and mean `mean`, shown in steps of 0.01 dB.
    double loss(double mean) { return std::round(-50 * mean * std::log(uniform() * uniform())) / 100; }

  private:
    std::mt19937 generator;
};

void expectMean(double computed, const std::function<int()>& run) {
    double sum = 0, squares = 0;
    for (int i = 0; i < runs; ++i) {
        const double length = run();
        sum += length;
        squares += length * length;
    }
    const double mean = sum / runs;
    const double error = std::sqrt((squares / runs - mean * mean) / runs);
    EXPECT_NEAR(mean, computed, 4 * error);
}

TEST(RunLengthSimulation, CusumWithHeadStartBothSides) {
    Readings readings(1);
    const CusumChart chart{.k = 0.5, .h = 3, .headStart = 1.5};
    expectMean(*averageRunLength(chart, 0.25), [&] {
        double up = 1.5, down = 1.5;
        for (int n = 1;; ++n) {
            const double x = 0.25 + readings.normal();
            up = std::max(0.0, up + x - chart.k);
            down = std::max(0.0, down - x - chart.k);
            if (up > chart.h || down > chart.h) return n;
        }
    });
}

TEST(RunLengthSimulation, CusumBothSidesLongAfterTheStart) {
    Readings readings(9);
    const CusumChart chart{.k = 0.25, .h = 3};
    expectMean(*steadyStateRunLength(chart, 0.75), [&] {
        double up = 0, down = 0;
        // In control until 40 readings went by without a signal.
        for (int quiet = 0; quiet < 40;) {
            const double x = readings.normal();
            up = std::max(0.0, up + x - chart.k);
            down = std::max(0.0, down - x - chart.k);
            ++quiet;
            if (up > chart.h || down > chart.h) up = down = 0, quiet = 0;
        }
        for (int n = 1;; ++n) {
            const double x = 0.75 + readings.normal();
            up = std::max(0.0, up + x - chart.k);
            down = std::max(0.0, down - x - chart.k);
            if (up > chart.h || down > chart.h) return n;
        }
    });
}

TEST(RunLengthSimulation, EwmaWithExactVarianceLimits) {
    Readings readings(2);
    EwmaChart chart{.lambda = 0.1, .limit = 2};
    chart.limits = EwmaLimits::ExactVariance;
    expectMean(*averageRunLength(chart, 0.5), [&] {
        double z = 0;
        for (int n = 1;; ++n) {
            z = 0.9 * z + 0.1 * (0.5 + readings.normal());
            const double limit = 2 * std::sqrt(0.1 / 1.9 * (1 - std::pow(0.9, 2 * n)));
            if (std::abs(z) > limit) return n;
        }
    });
}

TEST(RunLengthSimulation, UpperEwmaUnderDrift) {
    Readings readings(3);
    const EwmaChart chart{.lambda = 0.2, .limit = 2.5, .sides = Sides::Upper};
    expectMean(*driftRunLength(chart, 0.02), [&] {
        double z = 0;
        for (int n = 1;; ++n) {
            z = std::max(0.0, 0.8 * z + 0.2 * (0.02 * n + readings.normal()));
            if (z > 2.5 * std::sqrt(0.2 / 1.8)) return n;
        }
    });
}

TEST(RunLengthSimulation, DiscreteScoresOffAnyLattice) {
    Readings readings(4);
    const std::vector<double> scores = {-1.217, -0.563, 0.118, 0.731, 1.377, 2.5};
    const std::vector<double> chances = {0.22, 0.28, 0.2, 0.15, 0.1, 0.05};
    // Seven scores make the run length a staircase in h; the chain smooths it, hence 3 % beside the error.
    const double computed = *discreteCusumArl(scores, chances, 0.25, 5.3);
    double sum = 0;
    for (int i = 0; i < runs; ++i) {
        double c = 0;
        for (int n = 1;; ++n) {
            double u = readings.uniform();
            std::size_t at = 0;
            while (at + 1 < scores.size() && u > chances[at]) u -= chances[at++];
            c = std::max(0.0, c + scores[at] - 0.25);
            if (c > 5.3) {
                sum += n;
                break;
            }
        }
    }
    EXPECT_NEAR(sum / runs / computed, 1, 0.03);
}

TEST(RunLengthSimulation, MultivariateEwma) {
    Readings readings(5);
    const MewmaChart chart{.streams = 3, .r = 0.2, .limit = 8};
    expectMean(*averageRunLength(chart), [&] {
        double z[3] = {};
        for (int n = 1;; ++n) {
            double square = 0;
            for (double& one : z) {
                one = 0.8 * one + 0.2 * readings.normal();
                square += one * one;
            }
            if (1.8 / 0.2 * square > 8) return n;
        }
    });
}

TEST(RunLengthSimulation, SelfStartingDifferencesKeepTheirBudget) {
    Readings readings(6);
    int signals = 0;
    constexpr int series = 800, length = 100;
    for (int i = 0; i < series; ++i) {
        std::vector<double> differences;
        for (int n = 0; n < length; ++n) differences.push_back(0.03 * readings.normal());
        if (differenceChart(differences, 500)->signal) ++signals;
    }
    // Survival of the two-sided CUSUM with run length 500, about geometric after its first readings: at most
    // 100 / 500 of the series signal.
    EXPECT_LT(signals, series * 0.20);
    EXPECT_GT(signals, series * 0.12);
}

TEST(IntervalSimulation, ShiftOfRoundedLossesIsCovered) {
    Readings readings(7);
    int covered = 0;
    constexpr int repeats = 2000;
    for (int i = 0; i < repeats; ++i) {
        std::vector<double> before, after;
        for (int n = 0; n < 40; ++n) before.push_back(readings.loss(0.05) + 0.02);
        for (int n = 0; n < 20; ++n) after.push_back(readings.loss(0.05));
        const auto interval = stats::hodgesLehmann(after, before)->interval;
        // Differences come in steps of 0.01: allow for the last bit.
        if (interval->low <= -0.02 + 1e-12 && interval->high >= -0.02 - 1e-12) ++covered;
    }
    EXPECT_GE(covered, repeats * 0.94);
    EXPECT_LE(covered, repeats * 0.995);
}

TEST(IntervalSimulation, BeginOfAStepIsCovered) {
    constexpr int repeats = 2000;
    for (const double size : {1.0, 1.5, 2.5}) {
        Readings readings(8);
        int covered = 0;
        for (int i = 0; i < repeats; ++i) {
            std::vector<double> series;
            for (int n = 0; n < 80; ++n) series.push_back(readings.normal() + (n >= 50 ? size : 0));
            const auto change = *stats::changePoint(series);
            if (change.low <= 50 && change.high >= 50) ++covered;
        }
        EXPECT_GE(covered, repeats * 0.93) << size;
        EXPECT_LE(covered, repeats * 0.99) << size;
    }
}

}  // namespace
}  // namespace arc::drift
