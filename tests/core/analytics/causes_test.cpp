// SPDX-License-Identifier: GPL-3.0-or-later
// How explanations compete, on facts written by hand.
#include "core/analytics/causes.hpp"

#include <gtest/gtest.h>

namespace arc::drift {
namespace {

Explanation since(double evidence, double riseDb) {
    Explanation e;
    e.evidence = e.best = evidence;
    e.beganAt = 600;
    e.riseDb = riseDb;
    e.arcsSince = 40;
    return e;
}

double weightOf(Cause cause, const Verdict& verdict) {
    for (const auto& weighed : verdict.causes)
        if (weighed.cause == cause) return weighed.weight;
    return -1;
}

Case levelSignal() {
    Case about;
    about.chart = ChartKind::CommonLevel;
    return about;
}

// Good lots differ by a thousandth or two of a dB (Marcuse's mismatch formula), so a step of that size is
// weak evidence of an odd lot, however clear it is.
TEST(Causes, AStepAsSmallAsGoodLotsDifferIsNotBlamedOnTheFibre) {
    CaseFacts facts;
    facts.step = since(8, 0.004);
    facts.ramp = since(7, 0.006);
    facts.job = since(9, 0.003);
    facts.electrodeArcs = 3400;
    EXPECT_EQ(decide(levelSignal(), facts, {}, 12).cause, Cause::Electrode);
    facts.job = since(13, 0.015);
    EXPECT_EQ(decide(levelSignal(), facts, {}, 12).cause, Cause::Fibre);
}

TEST(Causes, WhatDidNotLastAfterTheSignalIsDoubted) {
    Case about;
    about.chart = ChartKind::SingleGroove;
    about.channel = 5;
    CaseFacts facts;
    facts.step = facts.ramp = facts.dirt = facts.angles = since(0, 0.001);
    facts.grooveAlone = since(2, 0);
    const double lasting = weightOf(Cause::Groove, decide(about, facts, {}, 12));
    facts.lasting = -8;
    EXPECT_LT(weightOf(Cause::Groove, decide(about, facts, {}, 12)), lasting);
    about.chart = ChartKind::CleaveAngle;
    about.channel.reset();
    facts.angleSeen = true;
    facts.angles.evidence = 4;
    const auto gone = decide(about, facts, {}, 12);
    facts.lasting = 0;
    EXPECT_EQ(decide(about, facts, {}, 12).cause, Cause::Cleaver);
    EXPECT_NE(gone.cause, Cause::Cleaver);
}

}  // namespace
}  // namespace arc::drift
