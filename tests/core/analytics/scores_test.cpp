// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/scores.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

#include "core/analytics/cells.hpp"

namespace arc::drift {
namespace {

// Computed with Python 3.11's statistics.NormalDist: b = inv_cdf(cumsum(p)), z = (pdf(a) - pdf(b)) / p, then
// standardised by sum(p z^2).
TEST(RankScores, AreTheExpectedNormalScoresOfTheCells) {
    const std::vector<double> p{0.2, 0.3, 0.4, 0.1};
    const auto z = rankScores(p);
    const std::vector<double> raw{-1.39980960, -0.39660120, 0.55860987, 1.75498332};
    double square = 0;
    for (std::size_t q = 0; q < p.size(); ++q) square += p[q] * raw[q] * raw[q];
    for (std::size_t q = 0; q < p.size(); ++q) EXPECT_NEAR(z[q], raw[q] / std::sqrt(square), 1e-6) << q;
    EXPECT_NEAR(momentsUnder(p, z).mean, 0, 1e-12);
    EXPECT_NEAR(momentsUnder(p, z).sd, 1, 1e-12);
}

// By hand: floor 2 % over 4 cells = 0.005; cell 1 after a move by one: log((0.98 * 0.2 + 0.005) / (0.98 * 0.3
// + 0.005)).
TEST(ShiftScores, AreLogLikelihoodRatiosOfAMoveByOneCell) {
    const std::vector<double> p{0.2, 0.3, 0.4, 0.1};
    const auto l = shiftScores(p, 1);
    EXPECT_NEAR(l[0], -2.5, 1e-12);  // nothing is left in the lowest cell: cut
    EXPECT_NEAR(l[1], std::log(0.201 / 0.299), 1e-12);
    EXPECT_NEAR(l[2], std::log(0.299 / 0.397), 1e-12);
    EXPECT_NEAR(l[3], std::log(0.495 / 0.103), 1e-12);  // 0.4 moved in, 0.1 stays
}

TEST(StretchScores, MoveProbabilityOutwardsAndKeepItOne) {
    const std::vector<double> p{0.4, 0.3, 0.2, 0.1};
    const auto wider = stretched(p, 2.0);
    double sum = 0;
    for (const double q : wider) sum += q;
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_NEAR(wider[0], 0.2, 1e-12);  // half of the lowest cell, which is even from 0 to its end
    EXPECT_LT(stretchScores(p, 2.0)[0], 0);
    EXPECT_GT(stretchScores(p, 2.0)[3], 0);
}

TEST(Cells, DisplayStepIsFoundThroughAFewOddReadings) {
    RawCounts counts(400, 0);
    for (std::size_t v = 0; v < 200; v += 10) counts[v] = 20;
    EXPECT_EQ(displayStep(counts), 10);
    counts[13] = 3;  // typed by hand: less than 2 %
    EXPECT_EQ(displayStep(counts), 10);
    for (std::size_t v = 1; v < 200; v += 2) counts[v] += 5;
    EXPECT_EQ(displayStep(counts), 1);
}

// Shape 2 is an Erlang law, whose distribution function is 1 - exp(-x / 2) (1 + x / 2) for mean 4: cells by
// hand; the fit must return to its own law.
TEST(Cells, IntervalCensoredGammaFitFindsItsOwnLaw) {
    const auto p = gammaCells({2.0, 4.0}, 16);
    EXPECT_NEAR(p[0], 0.026499, 1e-5);
    EXPECT_NEAR(p[1], 0.146859, 1e-5);
    std::vector<double> counts;
    for (const double q : p) counts.push_back(1000 * q);
    const auto fit = fitGamma(counts, {1.0, 2.0});
    EXPECT_NEAR(fit.shape, 2.0, 0.05);
    EXPECT_NEAR(fit.mean, 4.0, 0.05);
}

}  // namespace
}  // namespace arc::drift
