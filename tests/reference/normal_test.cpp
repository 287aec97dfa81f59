// SPDX-License-Identifier: GPL-3.0-or-later
// Source: scipy 1.10.1 (scipy.stats.norm), checked with R; the call stands in each file's first line.
#include "core/stats/normal.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

#include "tests/support/reference_csv.hpp"

namespace arc::stats {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

void expectRelative(double got, double want, double tolerance, const std::string& where) {
    EXPECT_LE(std::abs(got - want), tolerance * std::abs(want) + 1e-300) << where << "got " << got;
}

TEST(NormalReference, AgreesInBothTails) {
    for (const auto& row : support::referenceRows("normal_cdf.csv")) {
        const double z = row.number("z");
        // The grid prints 15 digits; rounding z itself costs z^2 units in the last place of a tail.
        const double tolerance = 1e-14 + 5e-16 * z * z;
        if (z > -38) {
            expectRelative(normalDensity(z), row.number("pdf"), tolerance, row.describe());
            expectRelative(normalCdf(z), row.number("cdf"), tolerance, row.describe());
        }
        expectRelative(normalUpperTail(z), row.number("upper_tail"), tolerance, row.describe());
    }
}

TEST(NormalReference, QuantileAgreesDownTo1e30) {
    for (const auto& row : support::referenceRows("normal_quantile.csv")) {
        expectRelative(normalQuantile(row.number("p")), row.number("quantile"), 2e-13, row.describe());
        expectRelative(normalUpperQuantile(row.number("p")), -row.number("quantile"), 2e-13, row.describe());
    }
}

TEST(Normal, QuantileHasPlainEnds) {
    EXPECT_EQ(normalQuantile(0), -infinity);
    EXPECT_EQ(normalQuantile(1), infinity);
    EXPECT_TRUE(std::isnan(normalQuantile(-0.1)));
    EXPECT_TRUE(std::isnan(normalQuantile(std::nan(""))));
}

TEST(Normal, BetweenKeepsItsDigitsFarOut) {
    // Both equal by symmetry; naive differences of the lower tail would give 0 on the right.
    expectRelative(normalBetween(9, 10), normalBetween(-10, -9), 1e-14, "");
    EXPECT_GT(normalBetween(9, 10), 0);
    EXPECT_EQ(normalBetween(1, 1), 0);
}

TEST(Normal, MeanBetweenIsTheTruncatedMean) {
    // E[Z | Z > 0] = sqrt(2 / pi).
    EXPECT_NEAR(normalMeanBetween(0, infinity), std::sqrt(2 / M_PI), 1e-15);
    EXPECT_NEAR(normalMeanBetween(-infinity, infinity), 0, 1e-16);
    // Mass-weighted means of a partition add up to the whole mean 0.
    const double cuts[] = {-infinity, -1.3, 0.2, 0.9, infinity};
    double sum = 0;
    for (int i = 0; i < 4; ++i)
        sum += normalBetween(cuts[i], cuts[i + 1]) * normalMeanBetween(cuts[i], cuts[i + 1]);
    EXPECT_NEAR(sum, 0, 1e-15);
    EXPECT_NEAR(normalMeanBetween(38.2, 38.3), 38.2, 0.1);
}

}  // namespace
}  // namespace arc::stats
