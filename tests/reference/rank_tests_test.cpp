// SPDX-License-Identifier: GPL-3.0-or-later
// Source: R 4.2.2 (wilcox.test, pwilcox) on data sets shipped with R; the call stands in each file. R finds
// Hodges-Lehmann intervals by root search, so its ends carry errors of about 1e-4.
#include "core/stats/rank_tests.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

#include "tests/support/reference_csv.hpp"

namespace arc::stats {
namespace {

using support::referenceRows;

struct Sample {
    std::vector<double> a, b;
};

Sample sampleOf(const std::string& name) {
    Sample sample;
    for (const auto& row : referenceRows("sample_" + name + ".csv"))
        (row.text("group") == "a" ? sample.a : sample.b).push_back(row.number("value"));
    return sample;
}

std::map<std::string, double> expectedOf(const std::string& name) {
    std::map<std::string, double> expected;
    for (const auto& row : referenceRows("dataset_expected.csv"))
        if (row.text("data_set") == name) expected[row.text("statistic")] = row.number("value");
    return expected;
}

TEST(RankTestsReference, OzoneMayAgainstAugust) {
    Sample months;
    for (const auto& row : referenceRows("airquality_ozone.csv")) {
        if (row.whole("Month") == 5) months.a.push_back(row.number("Ozone"));
        if (row.whole("Month") == 8) months.b.push_back(row.number("Ozone"));
    }
    const auto row = referenceRows("mann_whitney.csv").front();
    const auto test = mannWhitney(months.a, months.b);
    ASSERT_TRUE(test);
    EXPECT_EQ(test->method, RankMethod::Normal);
    EXPECT_DOUBLE_EQ(test->u, row.number("W"));
    EXPECT_NEAR(test->p / row.number("p"), 1, 1e-9);
    const auto shift = hodgesLehmann(months.a, months.b);
    ASSERT_TRUE(shift);
    ASSERT_TRUE(shift->interval);
    EXPECT_NEAR(shift->estimate, row.number("hodges_lehmann"), 1e-3);
    EXPECT_NEAR(shift->interval->low, row.number("low"), 1e-3);
    EXPECT_NEAR(shift->interval->high, row.number("high"), 1e-3);
}

class RankTestsOnSample : public testing::TestWithParam<const char*> {};

TEST_P(RankTestsOnSample, AgreesWithR) {
    const Sample sample = sampleOf(GetParam());
    const auto expected = expectedOf(GetParam());
    const auto test = mannWhitney(sample.a, sample.b);
    ASSERT_TRUE(test);
    EXPECT_DOUBLE_EQ(test->u, expected.at("mann_whitney_U_a"));
    EXPECT_NEAR(test->p / expected.at("p_default"), 1, 1e-9);
    const auto shift = hodgesLehmann(sample.a, sample.b);
    ASSERT_TRUE(shift);
    ASSERT_TRUE(shift->interval);
    EXPECT_NEAR(shift->estimate, expected.at("hodges_lehmann_median_of_differences"), 1e-9);
    const double tolerance = 1e-4 * (1 + std::abs(shift->estimate));
    EXPECT_NEAR(shift->interval->low, expected.at("hl_ci95_low"), tolerance);
    EXPECT_NEAR(shift->interval->high, expected.at("hl_ci95_high"), tolerance);
}

INSTANTIATE_TEST_SUITE_P(Samples, RankTestsOnSample,
                         testing::Values("Nile_split", "morley_1_2", "plantgrowth_trt1_trt2",
                                         "insectsprays_C_D", "toothgrowth_dose05"));

TEST(RankTestsReference, NullDistribution) {
    for (const auto& row : referenceRows("mann_whitney_null.csv")) {
        const auto below = mannWhitneyNull(row.whole("m"), row.whole("n"));
        EXPECT_NEAR(below.at(static_cast<std::size_t>(row.whole("u"))) / row.number("lower_tail_exact"), 1,
                    1e-10)
            << row.describe();
        int quantile = 0;
        while (below[static_cast<std::size_t>(quantile)] < 0.025) ++quantile;
        EXPECT_EQ(quantile, row.whole("qwilcox_0.025")) << row.describe();
    }
}

TEST(RankTests, TurnsAroundWithItsSamples) {
    const Sample sample = sampleOf("toothgrowth_dose05");
    const auto one = *hodgesLehmann(sample.a, sample.b), other = *hodgesLehmann(sample.b, sample.a);
    EXPECT_DOUBLE_EQ(one.estimate, -other.estimate);
    EXPECT_DOUBLE_EQ(one.interval->low, -other.interval->high);
    EXPECT_DOUBLE_EQ(one.interval->high, -other.interval->low);
}

TEST(RankTests, AllTheSameSaysNothing) {
    const std::vector<double> same(40, 0.02);
    EXPECT_EQ(mannWhitney(same, same)->p, 1);
    EXPECT_EQ(hodgesLehmann(same, same)->estimate, 0);
    EXPECT_EQ(hodgesLehmann(same, same)->interval, (Interval{0, 0}));
}

TEST(RankTests, TooFewReadingsHaveNoInterval) {
    const std::vector<double> a = {1, 2}, b = {3, 4};
    EXPECT_FALSE(hodgesLehmann(a, b)->interval);
    EXPECT_FALSE(mannWhitney({}, b));
    EXPECT_FALSE(mannWhitney(a, std::vector<double>{std::nan("")}));
    EXPECT_FALSE(hodgesLehmann(a, b, 1.0));
}

}  // namespace
}  // namespace arc::stats
