// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: R package spc 0.6.7 (xshewhartrunsrules.arl, .ad, .crit) and, for combinations it lacks, an
// independent exact Markov chain in Python; the call stands in the first line of each file. All four rules
// together: 91.75 (C. W. Champ & W. H. Woodall, Technometrics 29, 1987; NIST/SEMATECH e-Handbook 6.3.2).
#include "core/analytics/run_rules.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <optional>

#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

using support::ReferenceRow;
using support::referenceRows;

void expectRelative(const Result<double>& got, double want, double tolerance, const ReferenceRow& row) {
    ASSERT_TRUE(got) << row.describe() << got.error().sentence();
    EXPECT_LE(std::abs(*got - want), tolerance * std::abs(want)) << row.describe() << "got " << *got;
}

std::vector<RunRule> rulesOf(const std::string& digits) {
    std::vector<RunRule> rules;
    for (const char digit : digits) rules.push_back(static_cast<RunRule>(digit - '0'));
    return rules;
}

/// The library's names; two of its types are other rules than ours.
std::optional<ShewhartChart> chartOfType(const std::string& type) {
    ShewhartChart chart;
    if (type == "15" || type == "19") return std::nullopt;
    if (type.starts_with("SameSide")) {
        chart.rules = rulesOf("14");
        chart.sameSide = std::stoi(type.substr(8));
    } else {
        chart.rules = rulesOf(type);
    }
    return chart;
}

TEST(RunRulesReference, AllFourRulesSignalEvery91Point75Points) {
    EXPECT_NEAR(*averageRunLength(ShewhartChart{.rules = rulesOf("1234")}, 0), 91.75, 0.005);
    EXPECT_NEAR(*averageRunLength(ShewhartChart{}, 0), 370.4, 0.05);
}

TEST(RunRulesReference, EachRuleBesideTheFirst) {
    for (const auto& row : referenceRows("shewhart_run_rules_arl.csv"))
        expectRelative(
            averageRunLength(ShewhartChart{.rules = rulesOf(row.text("rules"))}, row.number("shift")),
            row.number("arl"), 1e-8, row);
    for (const auto& row : referenceRows("shewhart_runrules_arl_spc.csv")) {
        const auto chart = chartOfType(row.text("type"));
        if (!chart) continue;
        expectRelative(averageRunLength(*chart, row.number("shift")), row.number("arl_zero_state"), 1e-8,
                       row);
        if (row.has("arl_steady_state"))
            expectRelative(steadyStateRunLength(*chart, row.number("shift")), row.number("arl_steady_state"),
                           1e-7, row);
    }
}

TEST(RunRulesReference, AnyCombination) {
    for (const auto& row : referenceRows("shewhart_runrules_arl_combined.csv")) {
        ShewhartChart chart{.rules = rulesOf(row.text("rules"))};
        if (row.has("same_side_run")) chart.sameSide = row.whole("same_side_run");
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_zero_state"), 1e-8, row);
    }
}

TEST(RunRulesReference, LimitsForAWantedRunLength) {
    // The library stopped its search near the wanted run length and printed the one it reached.
    for (const auto& row : referenceRows("shewhart_runrules_crit.csv")) {
        const auto chart = chartOfType(row.text("type"));
        if (!chart) continue;
        const auto limit = limitFor(*chart, row.number("arl_at_c"));
        ASSERT_TRUE(limit) << row.describe();
        EXPECT_NEAR(*limit / 3 / row.number("c_scale"), 1, 1e-8) << row.describe();
    }
}

TEST(RunRules, OneSideOfAPlainChartIsItsTail) {
    // 1 / P(Z > 3) = 740.797 (from memory; 1 / 0.00134990).
    EXPECT_NEAR(*averageRunLength(ShewhartChart{.sides = Sides::Upper}, 0), 740.797, 0.001);
    EXPECT_NEAR(*averageRunLength(ShewhartChart{.sides = Sides::Upper}, 3), 2, 1e-12);
}

TEST(RunRules, ARunOnOneSideAloneIsAFairCoin) {
    // Waiting for n heads or n tails in a row with a fair coin takes 2^n - 1 tosses.
    for (const int run : {2, 7, 8, 12}) {
        const ShewhartChart chart{.rules = {RunRule::SameSide}, .sameSide = run};
        EXPECT_NEAR(*averageRunLength(chart, 0) / (std::pow(2.0, run) - 1), 1, 1e-12);
    }
}

TEST(RunRules, RefusesWhatMakesNoSense) {
    EXPECT_FALSE(averageRunLength(ShewhartChart{.limit = 0}, 0));
    EXPECT_FALSE(averageRunLength(ShewhartChart{.limit = std::nan("")}, 0));
    EXPECT_FALSE(averageRunLength(ShewhartChart{.limit = 15}, 0));
    EXPECT_FALSE(averageRunLength(ShewhartChart{.rules = {}}, 0));
    EXPECT_FALSE(averageRunLength(ShewhartChart{.sameSide = 1}, 0));
    EXPECT_FALSE(averageRunLength(ShewhartChart{}, std::nan("")));
    // A run of eight alone signals every 255 readings, whatever the limit.
    EXPECT_FALSE(limitFor(ShewhartChart{.rules = rulesOf("14")}, 500));
}

}  // namespace
}  // namespace arc::drift
