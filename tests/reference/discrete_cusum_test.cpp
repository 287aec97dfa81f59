// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: R package spc 0.6.7 (pois.cusum.arl, xcusum.arl); the calls stand in each file's first line.
#include "core/analytics/discrete_cusum.hpp"

#include <cmath>
#include <gtest/gtest.h>

#include "core/stats/normal.hpp"
#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

struct Law {
    std::vector<double> values, probabilities;
};

Law poisson(double mean) {
    Law law;
    double p = std::exp(-mean), sum = 0;
    for (int n = 0; n < 200 && (n < mean || p > 1e-18); ++n) {
        law.values.push_back(n);
        law.probabilities.push_back(p);
        sum += p;
        p *= mean / (n + 1);
    }
    law.probabilities.back() += std::max(0.0, 1 - sum);
    return law;
}

/// Normal of the given mean in `count` equal cells over 18 standard deviations, each with its mean.
Law normal(double mean, int count) {
    Law law;
    const double width = 18.0 / count;
    for (int i = 0; i < count; ++i) {
        const double a = -9 + i * width;
        law.values.push_back(mean + stats::normalMeanBetween(a, a + width));
        law.probabilities.push_back(stats::normalBetween(a, a + width));
    }
    return law;
}

TEST(DiscreteCusumReference, PoissonCountsOnTheirLatticeAreExact) {
    for (const auto& row : support::referenceRows("poisson_cusum_arl.csv")) {
        const Law law = poisson(row.number("mu"));
        const auto arl =
            discreteCusumArl(law.values, law.probabilities, row.number("k"), row.number("h"), {0.5});
        ASSERT_TRUE(arl) << row.describe() << arl.error().sentence();
        EXPECT_NEAR(*arl / row.number("arl_zero_state"), 1, 1e-8) << row.describe();
    }
}

TEST(DiscreteCusumReference, ManyCellsOfANormalComeToTheContinuousChart) {
    for (const auto& row : support::referenceRows("cusum_arl.csv")) {
        if (row.number("arl_upper") > 1e6) continue;
        const Law law = normal(row.number("shift"), 2000);
        const auto arl = discreteCusumArl(law.values, law.probabilities, row.number("k"), row.number("h"));
        ASSERT_TRUE(arl) << row.describe() << arl.error().sentence();
        EXPECT_NEAR(*arl / row.number("arl_upper"), 1, 3e-3) << row.describe();
    }
}

TEST(DiscreteCusum, LimitIsTheInverseOfTheRunLength) {
    const Law law = normal(0, 60);
    for (const double wanted : {50.0, 370.0, 1000.0, 20000.0}) {
        const auto h = discreteCusumLimit(law.values, law.probabilities, 0.25, wanted);
        ASSERT_TRUE(h);
        EXPECT_NEAR(*discreteCusumArl(law.values, law.probabilities, 0.25, *h) / wanted, 1, 1e-9);
    }
}

TEST(DiscreteCusum, LatticeLimitIsTheFirstThatKeepsTheBudget) {
    const Law law = poisson(1);
    const auto h = discreteCusumLimit(law.values, law.probabilities, 1.5, 400, {0.5});
    ASSERT_TRUE(h);
    EXPECT_GE(*discreteCusumArl(law.values, law.probabilities, 1.5, *h, {0.5}), 400);
    EXPECT_LT(*discreteCusumArl(law.values, law.probabilities, 1.5, *h - 0.5, {0.5}), 400);
}

TEST(DiscreteCusum, SeveralLimitsAtOnceAreTheSameAsOneByOne) {
    const Law law = normal(0, 40);
    const std::vector<double> limits = {5, 2, 7.25};
    const auto all = discreteCusumArls(law.values, law.probabilities, 0.5, limits);
    ASSERT_TRUE(all);
    for (std::size_t i = 0; i < limits.size(); ++i)
        EXPECT_DOUBLE_EQ((*all)[i], *discreteCusumArl(law.values, law.probabilities, 0.5, limits[i]));
}

TEST(DiscreteCusum, AFinerStepChangesLittle) {
    const Law law = normal(0, 12);
    const double coarse = *discreteCusumArl(law.values, law.probabilities, 0.25, 7.8, {1.0 / 30});
    const double fine = *discreteCusumArl(law.values, law.probabilities, 0.25, 7.8, {1.0 / 80});
    EXPECT_NEAR(coarse / fine, 1, 5e-3);
}

TEST(DiscreteCusum, RefusesWhatMakesNoSense) {
    const Law law = normal(0, 10);
    EXPECT_FALSE(discreteCusumArl({}, {}, 0.5, 4));
    EXPECT_FALSE(discreteCusumArl(law.values, std::vector<double>(10, 0.2), 0.5, 4));
    EXPECT_FALSE(discreteCusumArl(law.values, law.probabilities, 0.5, -1));
    EXPECT_FALSE(discreteCusumArl(law.values, law.probabilities, std::nan(""), 4));
    EXPECT_FALSE(discreteCusumArl(law.values, law.probabilities, 0.5, std::nan("")));
    EXPECT_FALSE(discreteCusumArl(law.values, law.probabilities, 0.5, 4, {0.0}));
    // No score ever lifts the sum.
    EXPECT_FALSE(discreteCusumArl(law.values, law.probabilities, 3, 4));
    // The scores drift upward: no limit keeps such a budget.
    EXPECT_FALSE(discreteCusumLimit(law.values, law.probabilities, -2, 1e6));
    EXPECT_FALSE(discreteCusumLimit(law.values, law.probabilities, 0.25, 0.5));
}

}  // namespace
}  // namespace arc::drift
