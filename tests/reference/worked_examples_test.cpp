// SPDX-License-Identifier: GPL-3.0-or-later
// Worked examples with printed figures:
// - NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2 (individuals), 6.3.2.3 (CUSUM), 6.3.2.4 (EWMA);
//   public domain.
// - D. C. Montgomery, Introduction to Statistical Quality Control, table 9.1 (CUSUM k 0.5, h 5).
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <vector>

#include "core/analytics/classical_charts.hpp"
#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

using support::ReferenceRow;
using support::referenceRows;

std::vector<double> column(const std::vector<ReferenceRow>& rows, const std::string& name) {
    std::vector<double> values;
    for (const auto& row : rows) values.push_back(row.number(name));
    return values;
}

TEST(WorkedExamples, HandbookEwma) {
    const auto rows = referenceRows("nist_ewma.csv");
    const auto series = ewmaSeries(column(rows, "x"), 50, 0.3);
    for (std::size_t i = 0; i < rows.size(); ++i)
        EXPECT_NEAR(series[i], rows[i].number("ewma_printed"), 0.00501) << i;
    // The page multiplies by the rounded factor 0.4201: 52.5884 and 47.4115.
    EXPECT_NEAR(50 + 3 * 2.0539 * std::sqrt(0.3 / 1.7), 52.5884, 1e-4);
    EXPECT_NEAR(50 - 3 * 2.0539 * std::sqrt(0.3 / 1.7), 47.4115, 1e-4);
    EXPECT_FALSE(firstBeyond(series, 52.5884));
}

TEST(WorkedExamples, HandbookIndividuals) {
    const auto readings = column(referenceRows("nist_individuals.csv"), "x");
    const auto limits = individualsLimits(readings, 1.128);
    ASSERT_TRUE(limits);
    EXPECT_NEAR(limits->mean, 50.81, 1e-9);
    EXPECT_NEAR(limits->meanMovingRange, 1.8778, 5e-5);
    EXPECT_NEAR(limits->upper, 55.8041, 5e-5);
    EXPECT_NEAR(limits->lower, 45.8159, 5e-5);
    EXPECT_FALSE(firstBeyond(readings, limits->upper));
    // With d2 in full: 55.8024 and 45.8176.
    EXPECT_NEAR(individualsLimits(readings)->upper, 55.80241168, 1e-8);
}

TEST(WorkedExamples, HandbookCusum) {
    // Data and printed sums from memory; the recurrence confirms them.
    const std::vector<double> means = {324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125,
                                       324.525, 325.225, 324.600, 324.625, 325.150, 328.325, 327.250,
                                       327.825, 328.500, 326.675, 327.775, 326.875, 328.350};
    const std::vector<double> printedUp = {0, 0, 0,    0,    0.03, 0,     0,     0,     0,     0,
                                           0, 0, 3.01, 4.94, 7.45, 10.63, 11.99, 14.44, 16.00, 19.04};
    const std::vector<double> printedDown = {0,    0.01, 0, 0.33, 0, 0, 0.56, 0.72, 0.17, 0.25,
                                             0.31, 0,    0, 0,    0, 0, 0,    0,    0,    0};
    const CusumSeries sums = cusumSeries(means, 325, 0.3175);
    for (std::size_t i = 0; i < means.size(); ++i) {
        EXPECT_NEAR(sums.up[i], printedUp[i], 0.0051) << i;
        EXPECT_NEAR(sums.down[i], printedDown[i], 0.0051) << i;
    }
    // h = 4.1959; first signal at group 14.
    EXPECT_EQ(firstBeyond(sums.up, 4.1959), 13u);
    EXPECT_FALSE(firstBeyond(sums.down, 4.1959));
}

TEST(WorkedExamples, TextbookCusumSignalsAtObservation29) {
    const auto rows = referenceRows("textbook_cusum_ewma.csv");
    const auto readings = column(rows, "x");
    const CusumSeries sums = cusumSeries(readings, 10, 0.5);
    const auto ewma = ewmaSeries(readings, 10, 0.1);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_NEAR(sums.up[i], rows[i].number("c_plus_printed"), 0.0051) << i;
        EXPECT_NEAR(sums.down[i], rows[i].number("c_minus"), 1e-9) << i;
        EXPECT_NEAR(ewma[i], rows[i].number("ewma"), 5e-8) << i;
    }
    EXPECT_EQ(firstBeyond(sums.up, 5), 28u);
}

TEST(WorkedExamples, RangeFactorIsTheTabledOne) {
    // d2 of the constants tables for n = 2.
    EXPECT_NEAR(rangeOfTwo, referenceRows("spc_constants.csv").front().number("d2"), 5e-10);
    EXPECT_DOUBLE_EQ(rangeOfTwo, 2 / std::sqrt(std::numbers::pi));
}

TEST(ClassicalCharts, TooFewReadingsAreRefused) {
    EXPECT_FALSE(individualsLimits({}));
    EXPECT_FALSE(individualsLimits(std::vector<double>{1.0}));
}

}  // namespace
}  // namespace arc::drift
