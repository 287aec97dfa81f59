// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: R 4.2.2 (qgamma, binom.test, prop.test) and scipy 1.10.1; the call stands in each file.
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

#include "core/stats/binomial.hpp"
#include "core/stats/gamma.hpp"
#include "tests/support/reference_csv.hpp"

namespace arc::stats {
namespace {

using support::referenceRows;

TEST(GammaReference, Quantiles) {
    for (const auto& row : referenceRows("gamma_quantiles.csv")) {
        const double x = gammaQuantile(row.number("p"), row.number("shape"), row.number("scale"));
        EXPECT_NEAR(x / row.number("quantile"), 1, 1e-9) << row.describe();
    }
    int seen = 0;
    for (const auto& row : referenceRows("continuous_quantiles.csv")) {
        if (row.text("distribution") != "gamma") continue;
        ++seen;
        const double shape = row.number("parameter1"), scale = row.number("parameter2");
        const double x = gammaQuantile(row.number("p"), shape, scale);
        EXPECT_NEAR(x / row.number("quantile"), 1, 1e-11) << row.describe();
        EXPECT_NEAR(gammaCdf(x, shape, scale) / row.number("p"), 1, 1e-12) << row.describe();
    }
    EXPECT_GT(seen, 20);
}

TEST(GammaReference, BothTails) {
    int seen = 0;
    for (const auto& row : referenceRows("continuous_cdf.csv")) {
        if (row.text("distribution") != "gamma_scale1") continue;
        ++seen;
        const double shape = row.number("parameter1"), x = row.number("x");
        EXPECT_NEAR(gammaCdf(x, shape, 1) / row.number("cdf"), 1, 1e-12) << row.describe();
        const double tail = row.number("upper_tail");
        EXPECT_NEAR(gammaUpperTail(x, shape, 1), tail, 1e-11 * tail) << row.describe();
        EXPECT_NEAR(gammaCdf(0.01 * x, shape, 0.01) / row.number("cdf"), 1, 1e-12) << row.describe();
    }
    EXPECT_GT(seen, 5);
}

TEST(Gamma, PlainEnds) {
    EXPECT_EQ(gammaQuantile(0, 2, 0.01), 0);
    EXPECT_EQ(gammaQuantile(1, 2, 0.01), std::numeric_limits<double>::infinity());
    EXPECT_EQ(gammaCdf(-1, 2, 0.01), 0);
    EXPECT_EQ(gammaUpperTail(-1, 2, 0.01), 1);
    EXPECT_TRUE(std::isnan(gammaQuantile(0.5, 0, 1)));
    EXPECT_TRUE(std::isnan(gammaQuantile(1.5, 1, 1)));
    EXPECT_TRUE(std::isnan(gammaCdf(1, 1, -1)));
}

TEST(BinomialReference, IntervalsOfAShare) {
    for (const auto& row : referenceRows("binomial_intervals.csv")) {
        const auto score = wilson(row.whole("x"), row.whole("n"));
        const auto exact = clopperPearson(row.whole("x"), row.whole("n"));
        ASSERT_TRUE(score && exact);
        EXPECT_NEAR(score->low, row.number("wilson_low"), 1e-10) << row.describe();
        EXPECT_NEAR(score->high, row.number("wilson_high"), 1e-10) << row.describe();
        EXPECT_NEAR(exact->low, row.number("clopper_low"), 1e-10) << row.describe();
        EXPECT_NEAR(exact->high, row.number("clopper_high"), 1e-10) << row.describe();
    }
    for (const auto& row : referenceRows("binomial_intervals_grid.csv")) {
        const double confidence = row.number("confidence");
        const auto score = wilson(row.whole("x"), row.whole("n"), confidence);
        const auto exact = clopperPearson(row.whole("x"), row.whole("n"), confidence);
        ASSERT_TRUE(score && exact);
        EXPECT_NEAR(score->low, row.number("wilson_low"), 1e-11) << row.describe();
        EXPECT_NEAR(score->high, row.number("wilson_high"), 1e-11) << row.describe();
        EXPECT_NEAR(exact->low, row.number("clopper_pearson_low"), 1e-11) << row.describe();
        EXPECT_NEAR(exact->high, row.number("clopper_pearson_high"), 1e-11) << row.describe();
    }
}

TEST(Binomial, RefusesWhatIsNoShare) {
    EXPECT_FALSE(wilson(-1, 5));
    EXPECT_FALSE(wilson(6, 5));
    EXPECT_FALSE(clopperPearson(0, 0));
    EXPECT_FALSE(clopperPearson(1, 5, 1));
}

}  // namespace
}  // namespace arc::stats
