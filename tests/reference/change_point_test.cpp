// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: annual flow of the Nile at Aswan, change published for 1898 (G. W. Cobb, Biometrika 65, 1978);
// R 4.2.2 (median, mad) and R package strucchange 1.5.3 (breakpoints); Pettitt values from an independent few
// lines in R. The call stands in dataset_expected.csv.
#include "core/stats/change_point.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <vector>

#include "core/stats/order.hpp"
#include "tests/support/reference_csv.hpp"

namespace arc::stats {
namespace {

using support::referenceRows;

std::vector<double> nile() {
    std::vector<double> flow;
    for (const auto& row : referenceRows("nile.csv")) flow.push_back(row.number("flow"));
    return flow;
}

std::vector<double> lake() {
    std::vector<double> level;
    for (const auto& row : referenceRows("sample_LakeHuron.csv")) level.push_back(row.number("value"));
    return level;
}

double expected(const std::string& set, const std::string& statistic, const std::string& parameters = "") {
    for (const auto& row : referenceRows("dataset_expected.csv"))
        if (row.text("data_set") == set && row.text("statistic") == statistic &&
            row.text("parameters") == parameters)
            return row.number("value");
    ADD_FAILURE() << set << ' ' << statistic;
    return std::nan("");
}

TEST(ChangePointReference, TheNileFellIn1898) {
    const auto change = changePoint(nile());
    ASSERT_TRUE(change);
    EXPECT_EQ(1870 + change->lastBefore, 1898);
    EXPECT_NEAR(change->squaresWithout, expected("Nile", "breakpoints_rss", "breaks=0"), 1e-3);
    EXPECT_NEAR(change->squaresWith, expected("Nile", "breakpoints_rss", "breaks=1"), 1e-3);
    EXPECT_NEAR(change->bicWithout, expected("Nile", "breakpoints_bic", "breaks=0"), 1e-6);
    EXPECT_NEAR(change->bicWith, expected("Nile", "breakpoints_bic", "breaks=1"), 1e-6);
    EXPECT_LE(change->low, 28);
    EXPECT_GE(change->high, 28);
    // The interval by the asymptotic law, 1895 to 1902, is another construction: it must enclose ours.
    EXPECT_GE(change->low, expected("Nile", "breakpoint_ci_lower", "first break; 95%"));
    EXPECT_LE(change->high, expected("Nile", "breakpoint_ci_upper", "first break; 95%"));
}

TEST(ChangePointReference, LakeHuronLeastSquares) {
    // The library keeps 15 % of the series on either side.
    const auto change = changePoint(lake(), 14);
    ASSERT_TRUE(change);
    EXPECT_NEAR(change->squaresWith, expected("LakeHuron", "breakpoints_rss", "breaks=1"), 1e-6);
    EXPECT_NEAR(change->bicWith, expected("LakeHuron", "breakpoints_bic", "breaks=1"), 1e-6);
}

TEST(ChangePointReference, Pettitt) {
    for (const auto& [name, series] :
         std::map<std::string, std::vector<double>>{{"Nile", nile()}, {"LakeHuron", lake()}}) {
        const auto test = pettitt(series);
        ASSERT_TRUE(test);
        EXPECT_DOUBLE_EQ(test->k, expected(name, "pettitt_K"));
        EXPECT_EQ(test->lastBefore, expected(name, "pettitt_position"));
        EXPECT_NEAR(test->p / expected(name, "pettitt_p_approx"), 1, 1e-9);
    }
}

TEST(ChangePoint, NoChangeIsNotPreferred) {
    std::vector<double> flat;
    for (int i = 0; i < 60; ++i) flat.push_back(i % 3);
    const auto change = changePoint(flat);
    EXPECT_GT(change->bicWith, change->bicWithout);
    EXPECT_FALSE(changePoint(std::vector<double>{1, 2, 3}));
    EXPECT_FALSE(changePoint(std::vector<double>{1, 2, std::nan(""), 3}));
    EXPECT_FALSE(pettitt(std::vector<double>{1}));
}

TEST(OrderReference, MedianAndItsDeviation) {
    EXPECT_DOUBLE_EQ(*median(nile()), expected("Nile", "median"));
    EXPECT_NEAR(*medianDeviation(nile()), expected("Nile", "mad_scaled"), 1e-3);
    EXPECT_DOUBLE_EQ(*median(lake()), expected("LakeHuron", "median"));
    EXPECT_NEAR(*medianDeviation(lake()), expected("LakeHuron", "mad_scaled"), 1e-5);
}

TEST(Order, PlainCases) {
    EXPECT_FALSE(median({}));
    EXPECT_EQ(*median(std::vector<double>{3, 1, 2}), 2);
    EXPECT_EQ(*quantile(std::vector<double>{0, 10}, 0.25), 2.5);
    // Six fair coins: the ends of the sample cover the median with 1 - 2/64.
    EXPECT_EQ(medianInterval(std::vector<double>{1, 2, 3, 4, 5, 6}), (Interval{1, 6}));
    EXPECT_FALSE(medianInterval(std::vector<double>{1, 2, 3, 4, 5}));
    // One of eight above: 2 (1 + 8) / 256.
    EXPECT_NEAR(signTest(std::vector<double>{-1, -1, -1, -1, -1, -1, -1, 1, 0}), 18.0 / 256, 1e-14);
    EXPECT_EQ(signTest(std::vector<double>{0, 0}), 1);
}

}  // namespace
}  // namespace arc::stats
