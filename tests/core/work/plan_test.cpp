// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/plan.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace arc {
namespace {

SplicePlan plan(std::string_view text) {
    const auto result = planFromText(text);
    EXPECT_TRUE(result) << (result ? "" : result.error().sentence());
    return result.value_or(SplicePlan{});
}
Problem problem(std::string_view text) {
    const auto result = planFromText(text);
    EXPECT_FALSE(result) << text;
    return result ? Problem{} : result.error();
}

TEST(Plan, straightJoinsEqualNumbers) {
    const auto rows = plan("1-144 straight");
    ASSERT_EQ(rows.size(), 144u);
    EXPECT_EQ(rows.front(), (PlannedSplice{1, 1}));
    EXPECT_EQ(rows.back(), (PlannedSplice{144, 144}));
    EXPECT_EQ(plan("1-144"), rows);
}

TEST(Plan, rangesJoinFirstToFirst) {
    const auto rows = plan("1-12 to 25-36");
    ASSERT_EQ(rows.size(), 12u);
    EXPECT_EQ(rows[0], (PlannedSplice{1, 25}));
    EXPECT_EQ(rows[11], (PlannedSplice{12, 36}));
    EXPECT_EQ(plan("1-3 to 12-10"), (SplicePlan{{1, 12}, {2, 11}, {3, 10}}));
    EXPECT_EQ(plan("1,3,5 to 2,4,6"), (SplicePlan{{1, 2}, {3, 4}, {5, 6}}));
    EXPECT_EQ(plan("1to 2;\n 3 straight ;"), (SplicePlan{{1, 2}, {3, 3}}));
    EXPECT_TRUE(plan("").empty());
}

TEST(Plan, mistakesAreNamedWithTheirPart) {
    EXPECT_EQ(problem("1-12 straight; 5 to 40").what, "fibre 5 of side A is planned twice");
    EXPECT_EQ(problem("1-12 straight; 5 to 40").where, "part 2, \"5 to 40\"");
    EXPECT_EQ(problem("1-12 to 25-37").what, "side A has 12 fibres and side B 13");
    EXPECT_EQ(problem("1-12 to x").where, "part 1, \"1-12 to x\", side B");
    EXPECT_EQ(problem("1-12 straight, 13-24 to 1-12").what,
              "two instructions in one part; parts are separated by a semicolon");
    EXPECT_EQ(problem("1-12 to 1-12, 13 to 14").what,
              "two instructions in one part; parts are separated by a semicolon");
    EXPECT_EQ(problem("0-5").what, "fibre numbers run from 1 to 6912, not 0");
    EXPECT_EQ(problem("1-99999999999999999999").code, ProblemCode::BadInput);
    EXPECT_EQ(problem("1,,2").what, "a fibre number is missing");
    EXPECT_EQ(problem("1-2-3").what, "\"2-3\" is not a fibre number");
    EXPECT_EQ(problem("tomorrow").code, ProblemCode::BadInput);
    EXPECT_FALSE(problem("1-12 to 25-37").next.empty());
}

TEST(Plan, csvReadsByColumnName) {
    const SplicePlan expected{{1, 25}, {2, 26}};
    EXPECT_EQ(*planFromCsv("fibre_a,fibre_b\n1,25\n2,26\n"), expected);
    EXPECT_EQ(*planFromCsv("\xEF\xBB\xBF"
                           "tray;fibre_b;fibre_a\r\n1;25;1\r\n\r\n1;26;2"),
              expected);
    const auto bad = planFromCsv("fibre_a,fibre_b\n1,25\n2,x\n");
    ASSERT_FALSE(bad);
    EXPECT_EQ(bad.error().where, "line 3, fibre_b");
    EXPECT_FALSE(planFromCsv(""));
    EXPECT_FALSE(planFromCsv("a,b\n1,2\n"));
    EXPECT_EQ(planFromCsv("fibre_a,fibre_b\n1,2\n1,3\n").error().where, "line 3");
    EXPECT_EQ(planFromCsv("fibre_a,fibre_b\n1\n").error().what, "a column is missing");
    EXPECT_EQ(*planFromCsv("\"fibre_a\";\"fibre_b\"\r\n\"1\";\"25\"\r\n\"2\";\"26\"\r\n"), expected)
        << "as a spreadsheet quotes";
}

TEST(Plan, cablesAndTraysMustHoldIt) {
    const auto rows = plan("1-24 straight");
    EXPECT_TRUE(planFits(rows, 24, 24, 24));
    EXPECT_TRUE(planFits(rows, 0, 0, 0));
    EXPECT_FALSE(planFits(rows, 12, 24, 24));
    EXPECT_FALSE(planFits(rows, 24, 12, 24));
    EXPECT_FALSE(planFits(rows, 24, 24, 12));
}

/// Any valid plan: distinct fibres on each side, in any order, with runs in both directions in it.
rc::Gen<SplicePlan> anyPlan() {
    return rc::gen::map(rc::gen::pair(rc::gen::inRange(0, 60),
                                      rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 1000))),
                        [](const std::pair<int, std::vector<int>>& seed) {
                            const auto count = static_cast<std::size_t>(seed.first);
                            std::vector<int> a(count), b(count);
                            std::iota(a.begin(), a.end(), 1);
                            std::iota(b.begin(), b.end(), 5);
                            // Reversing random stretches makes runs both ways, which is what the text form
                            // folds.
                            for (std::size_t i = 0; i + 1 < seed.second.size() && count > 0; i += 2) {
                                auto& side = i % 4 == 0 ? a : b;
                                auto from = static_cast<std::size_t>(seed.second[i]) % count;
                                auto to = static_cast<std::size_t>(seed.second[i + 1]) % count;
                                if (from > to) std::swap(from, to);
                                std::reverse(side.begin() + static_cast<std::ptrdiff_t>(from),
                                             side.begin() + static_cast<std::ptrdiff_t>(to) + 1);
                            }
                            SplicePlan rows;
                            for (std::size_t i = 0; i < count; ++i) rows.push_back({a[i], b[i]});
                            return rows;
                        });
}

RC_GTEST_PROP(PlanProperty, textReadsBackAsTheSamePlan, ()) {
    const auto rows = *anyPlan();
    const auto again = planFromText(planToText(rows));
    RC_ASSERT(again.has_value());
    RC_ASSERT(*again == rows);
}

RC_GTEST_PROP(PlanProperty, csvReadsBackAsTheSamePlan, ()) {
    const auto rows = *anyPlan();
    const auto again = planFromCsv(planToCsv(rows));
    RC_ASSERT(again.has_value());
    RC_ASSERT(*again == rows);
}

RC_GTEST_PROP(PlanProperty, noTextCrashesAndAPlanNeverRepeatsAFibre, ()) {
    const auto text =
        *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789-,; tostraigh\n")));
    const auto result = planFromText(text);
    if (!result) {
        RC_ASSERT(!result.error().what.empty());
        return;
    }
    std::vector<int> a;
    for (const auto& row : *result) a.push_back(row.fibreA);
    std::sort(a.begin(), a.end());
    RC_ASSERT(std::adjacent_find(a.begin(), a.end()) == a.end());
}

}  // namespace
}  // namespace arc
