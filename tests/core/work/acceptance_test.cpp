// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/acceptance.hpp"

#include <gtest/gtest.h>

namespace arc {
namespace {

// Common practice: average 0.05, single 0.10, ribbon 0.15, ceiling 0.30 dB, three attempts. No agreed limit
// exists.
TEST(Acceptance, samplesSayThatTheyAreSamples) {
    const auto rules = sampleRules();
    ASSERT_GE(rules.size(), 2u);
    for (const auto& rule : rules) {
        EXPECT_EQ(rule.origin, RuleOrigin::Sample);
        EXPECT_EQ(rule.name.rfind("Sample:", 0), 0u);
        EXPECT_EQ(rule.average.value, 50);
        EXPECT_EQ(rule.ceiling.value, 300);
        EXPECT_EQ(rule.attempts, 3);
    }
    EXPECT_EQ(rules[0].perSplice.value, 100);
    EXPECT_EQ(rules[1].perSplice.value, 150);
}

TEST(Acceptance, limitsThemselvesAreStillWithin) {
    const AcceptanceRule rule;
    EXPECT_EQ(judge(rule, Loss{50}, 1), Verdict::Accept);
    EXPECT_EQ(judge(rule, Loss{51}, 1), Verdict::AcceptHigh);
    EXPECT_EQ(judge(rule, Loss{100}, 1), Verdict::AcceptHigh);
    EXPECT_EQ(judge(rule, Loss{101}, 1), Verdict::Resplice);
    EXPECT_EQ(judge(rule, Loss{101}, 2), Verdict::Resplice);
    EXPECT_EQ(judge(rule, Loss{101}, 3), Verdict::KeepBestWithNote);
    EXPECT_EQ(judge(rule, Loss{300}, 3), Verdict::KeepBestWithNote);
    EXPECT_EQ(judge(rule, Loss{301}, 3), Verdict::OverCeiling);
}

}  // namespace
}  // namespace arc
