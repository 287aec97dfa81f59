// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: R 4.2.2 on data sets shipped with R (mean, sd, qt; J. M. Bland & D. G. Altman, Lancet 327, 1986);
// self-starting scores by an independent few lines in Python after D. M. Hawkins, The Statistician 36 (1987);
// Student quantiles from scipy 1.10.1. The call stands in each file.
#include "core/analytics/agreement.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <string>
#include <vector>

#include "core/stats/student.hpp"
#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

using support::referenceRows;

TEST(StudentReference, Quantiles) {
    int seen = 0;
    for (const auto& row : referenceRows("continuous_quantiles.csv")) {
        if (row.text("distribution") != "student_t") continue;
        ++seen;
        const double t = stats::studentQuantile(row.number("p"), row.number("parameter1"));
        EXPECT_NEAR(t, row.number("quantile"), 1e-10 * std::abs(row.number("quantile")) + 1e-12)
            << row.describe();
        EXPECT_NEAR(stats::studentCdf(t, row.number("parameter1")) / row.number("p"), 1, 1e-11)
            << row.describe();
    }
    EXPECT_GT(seen, 20);
    EXPECT_TRUE(std::isnan(stats::studentCdf(1, 0)));
    EXPECT_TRUE(std::isnan(stats::studentQuantile(2, 5)));
}

class AgreementOnPairs : public testing::TestWithParam<const char*> {};

TEST_P(AgreementOnPairs, AgreesWithR) {
    std::vector<double> differences;
    for (const auto& row : referenceRows("sample_" + std::string(GetParam()) + ".csv"))
        differences.push_back(row.number("a") - row.number("b"));
    std::map<std::string, double> expected;
    for (const auto& row : referenceRows("dataset_expected.csv"))
        if (row.text("data_set") == GetParam()) expected[row.text("statistic")] = row.number("value");
    const auto found = agreement(differences);
    ASSERT_TRUE(found);
    const double tolerance = 1e-10;
    EXPECT_EQ(found->n, expected.at("n"));
    EXPECT_NEAR(found->meanDb, expected.at("bland_altman_bias"), tolerance);
    EXPECT_NEAR(found->deviationDb, expected.at("bland_altman_sd"), tolerance);
    EXPECT_NEAR(found->lowerDb, expected.at("loa_low_1.96"), tolerance);
    EXPECT_NEAR(found->upperDb, expected.at("loa_high_1.96"), tolerance);
    EXPECT_NEAR(found->meanInterval.low, expected.at("bias_ci_low"), tolerance);
    EXPECT_NEAR(found->meanInterval.high, expected.at("bias_ci_high"), tolerance);
    EXPECT_NEAR(found->lowerInterval.low, expected.at("loa_low_ci_low"), tolerance);
    EXPECT_NEAR(found->lowerInterval.high, expected.at("loa_low_ci_high"), tolerance);
    EXPECT_NEAR(found->upperInterval.low, expected.at("loa_high_ci_low"), tolerance);
    EXPECT_NEAR(found->upperInterval.high, expected.at("loa_high_ci_high"), tolerance);
}

INSTANTIATE_TEST_SUITE_P(Pairs, AgreementOnPairs, testing::Values("sleep", "shoes", "anorexia_FT"));

TEST(AgreementReference, LossDifferences) {
    // R: m <- mean(x); s <- sd(x); m -+ 1.96 s; m -+ qt(.975, 11) s / sqrt(12); the same times sqrt(3).
    const std::vector<double> x = {0.031, 0.012, -0.004, 0.022, 0.040, 0.008,
                                   0.015, 0.027, -0.011, 0.019, 0.006, 0.024};
    const auto found = agreement(x);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->meanDb, 0.01575, 1e-12);
    EXPECT_NEAR(found->deviationDb, 0.0145859521458, 1e-12);
    EXPECT_NEAR(found->lowerDb, -0.0128384662058, 1e-12);
    EXPECT_NEAR(found->upperDb, 0.0443384662058, 1e-12);
    EXPECT_NEAR(found->meanInterval.low, 0.00648252814569, 1e-12);
    EXPECT_NEAR(found->meanInterval.high, 0.0250174718543, 1e-12);
    EXPECT_NEAR(found->lowerInterval.low, -0.0288901983152, 1e-12);
    EXPECT_NEAR(found->lowerInterval.high, 0.00321326590358, 1e-12);
}

TEST(DifferenceChartReference, SelfStartingScores) {
    const auto rows = referenceRows("self_starting_textbook_cusum_ewma.csv");
    std::vector<double> values;
    for (const auto& row : rows) values.push_back(row.number("x"));
    const auto chart = differenceChart(values, 500);
    ASSERT_TRUE(chart);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!rows[i].has("q")) {
            EXPECT_EQ(chart->score[i], 0);
            continue;
        }
        EXPECT_NEAR(chart->score[i], rows[i].number("q"), 1e-8) << i;
        EXPECT_NEAR(chart->up[i], rows[i].number("cusum_upper_k0.5"), 1e-7) << i;
        EXPECT_NEAR(chart->down[i], rows[i].number("cusum_lower_k0.5"), 1e-7) << i;
    }
}

TEST(DifferenceChart, SeesAnEstimatorGoBlind) {
    // Twenty splices estimated well, then the measured loss runs 0.05 dB above the estimate.
    std::vector<double> differences;
    for (int i = 0; i < 20; ++i) differences.push_back(0.005 * ((i * 7) % 5 - 2));
    for (int i = 0; i < 12; ++i) differences.push_back(0.05 + 0.005 * ((i * 7) % 5 - 2));
    const auto chart = differenceChart(differences, 500);
    ASSERT_TRUE(chart);
    ASSERT_TRUE(chart->signal);
    EXPECT_GE(*chart->signal, 20u);
    EXPECT_LE(*chart->signal, 23u);
    EXPECT_GE(*chart->began, 18u);
    EXPECT_LE(*chart->began, 20u);
}

TEST(DifferenceChart, EqualDifferencesAndOneStepOfTheDisplayAreNoSignal) {
    std::vector<double> differences(10, 0.01);
    differences.push_back(0.02);
    differences.push_back(0.01);
    EXPECT_FALSE(differenceChart(differences, 200)->signal);
}

TEST(Agreement, RefusesWhatCannotBeJudged) {
    EXPECT_FALSE(agreement({}));
    EXPECT_FALSE(agreement(std::vector<double>{0.01, 0.02}));
    EXPECT_FALSE(agreement(std::vector<double>{0.01, 0.02, std::nan("")}));
    EXPECT_FALSE(differenceChart(std::vector<double>{0.01}, 1));
    EXPECT_TRUE(differenceChart({}, 500));
}

Uuid numbered(unsigned char n) {
    Uuid id{};
    id.bytes[15] = n;
    return id;
}

TEST(PairMeasured, TakesTheLastGoodAttemptAndOnlyTwoWayValues) {
    const ClosureId closure{numbered(1)};
    const auto arcOf = [&](unsigned char id, std::int64_t at, int attempt, const char* fibre, int mdb) {
        SpliceArc arc;
        arc.id = ArcId{numbered(id)};
        arc.at.ms = at;
        arc.splicer = ToolId{numbered(9)};
        arc.closure = closure;
        Reading reading;
        reading.fibreA = fibre;
        reading.attempt = attempt;
        reading.loss = Loss{mdb};
        arc.readings = {reading};
        return arc;
    };
    std::vector<SpliceArc> arcs = {arcOf(10, 1000, 1, "7", 120), arcOf(11, 2000, 2, "7", 30),
                                   arcOf(12, 3000, 3, "7", 500), arcOf(13, 500, 1, "8", 20)};
    arcs[2].readings[0].state = ReadingState::Voided;
    const auto lossOf = [&](const char* fibre, std::optional<Loss> there, std::optional<Loss> back) {
        MeasuredLoss loss;
        loss.closure = closure;
        loss.fibre = fibre;
        loss.aToB = there;
        loss.bToA = back;
        return loss;
    };
    const std::vector<MeasuredLoss> measured = {
        lossOf("7", Loss{-20}, Loss{100}), lossOf("8", Loss{25}, Loss{35}),
        lossOf("8", Loss{25}, std::nullopt), lossOf("9", Loss{25}, Loss{35})};
    const auto pairs = pairMeasured(arcs, measured);
    ASSERT_EQ(pairs.size(), 2u);
    EXPECT_EQ(pairs[0].arc, arcs[3].id);
    EXPECT_NEAR(pairs[0].differenceDb(), 0.010, 1e-12);
    EXPECT_EQ(pairs[1].arc, arcs[1].id);
    EXPECT_NEAR(pairs[1].estimatedDb, 0.030, 1e-12);
    EXPECT_NEAR(pairs[1].measuredDb, 0.040, 1e-12);
}

}  // namespace
}  // namespace arc::drift
