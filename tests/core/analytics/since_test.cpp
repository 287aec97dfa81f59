// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/since.hpp"

#include <array>
#include <cmath>
#include <gtest/gtest.h>

#include "tests/support/splice_world.hpp"

namespace arc::drift {
namespace {

constexpr std::array step{1};

// By hand: 4 zeros and 4 ones, begin 4: gain = (n1 n2 / n) d^2 / 2 = (16 / 8) / 2 = 1.
TEST(FitChange, GainOfACleanStepIsTheOneOfTwoMeans) {
    const std::vector<double> scores{0, 0, 0, 0, 1, 1, 1, 1};
    const auto fit = fitChange(scores, 1, 7, step, {});
    EXPECT_NEAR(fit.best, 1.0, 1e-12);
    EXPECT_NEAR(fit.size, 1.0, 1e-12);
    EXPECT_EQ(fit.begin, 4U);
}

TEST(FitChange, FallsAreNotLookedFor) {
    const std::vector<double> scores{2, 2, 2, 2, 0, 0, 0, 0};
    EXPECT_EQ(fitChange(scores, 1, 7, step, {}).best, 0);
}

TEST(FitChange, SetUpNoiseWeakensTheEvidence) {
    const std::vector<double> scores{0, 0, 0, 0, 3, 3, 3, 3};
    EXPECT_NEAR(fitChange(scores, 1, 7, step, {3.0, 0}).best, fitChange(scores, 1, 7, step, {}).best / 3,
                1e-12);
}

TEST(FitChange, ARampIsFoundWithItsLength) {
    std::vector<double> scores(100, 0.0);
    for (int i = 60; i < 100; ++i) scores[static_cast<std::size_t>(i)] = 2 * std::min(1.0, (i - 59) / 20.0);
    constexpr std::array ramps{1, 20, 80};
    const auto fit = fitChange(scores, 1, 99, ramps, {});
    EXPECT_EQ(fit.ramp, 20);
    EXPECT_NEAR(static_cast<double>(fit.begin), 60, 2);
}

TEST(FitWear, AnAcceleratingRiseBeginsWhereItDoes) {
    std::vector<double> scores(400, 0.0);
    for (int i = 150; i < 400; ++i)
        scores[static_cast<std::size_t>(i)] = 3 * std::pow((i - 149) / 250.0, 1.6);
    EXPECT_NEAR(static_cast<double>(fitWear(scores, 1, 399, {}).begin), 150, 12);
}

TEST(FitStretches, PicksTheJobThatIsHigh) {
    std::vector<double> scores(90, 0.0);
    for (std::size_t i = 30; i < 60; ++i) scores[i] = 1.5;
    const std::array jobs{Stretch{30, 60}, Stretch{60, 90}};
    const auto fit = fitStretches(scores, jobs, {});
    EXPECT_EQ(fit.begin, 30U);
    EXPECT_NEAR(fit.size, 1.5, 1e-12);
}

// Entries are rarely to the minute: of begins next to each other the best is often not the true one, so the
// interval takes in all that fit nearly as well.
TEST(FitStretches, IntervalHoldsTheBeginOfAWeakStep) {
    int held = 0, exact = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        testing::Dice dice(seed);
        std::vector<double> scores;
        for (int i = 0; i < 140; ++i) scores.push_back(dice.normal() + (i >= 100 ? 0.8 : 0.0));
        const std::array begins{Stretch{100, 140}, Stretch{101, 140}, Stretch{102, 140}};
        const auto fit = fitStretches(scores, begins, {});
        held += fit.low <= 100 && fit.high >= 100;
        exact += fit.begin == 100;
    }
    EXPECT_GE(held, 160);
    EXPECT_LT(exact, 160) << "the interval would not be needed";
}

// The interval of a step of one standard deviation holds the truth in at least 80 % of cases (fixed seeds).
TEST(FitChange, IntervalHoldsTheBegin) {
    int held = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        testing::Dice dice(seed);
        std::vector<double> scores;
        for (int i = 0; i < 140; ++i) scores.push_back(dice.normal() + (i >= 100 ? 1.0 : 0.0));
        const auto fit = fitChange(scores, 1, 139, step, {});
        held += fit.low <= 100 && fit.high >= 100;
    }
    EXPECT_GE(held, 160);
}

}  // namespace
}  // namespace arc::drift
