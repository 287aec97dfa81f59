// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any sample, rounded and tied as losses are.
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <vector>

#include "core/stats/binomial.hpp"
#include "core/stats/change_point.hpp"
#include "core/stats/gamma.hpp"
#include "core/stats/normal.hpp"
#include "core/stats/rank_tests.hpp"

namespace arc::stats {
namespace {

/// Losses in steps of 0.01 dB, with many ties.
std::vector<double> anyLosses(int fewest, int most) {
    const int count = *rc::gen::inRange(fewest, most);
    std::vector<double> losses;
    for (int i = 0; i < count; ++i) losses.push_back(*rc::gen::inRange(0, 12) / 100.0);
    return losses;
}

RC_GTEST_PROP(RankTestProperty, SidesAddUpAndTurnAround, ()) {
    const auto a = anyLosses(1, 70), b = anyLosses(1, 70);
    const auto there = *mannWhitney(a, b), back = *mannWhitney(b, a);
    RC_ASSERT(std::abs(there.u + back.u - static_cast<double>(a.size() * b.size())) < 1e-9);
    RC_ASSERT(std::abs(there.p - back.p) < 1e-12);
    RC_ASSERT(there.p >= 0 && there.p <= 1);
}

RC_GTEST_PROP(RankTestProperty, AShiftedSampleShiftsTheEstimate, ()) {
    auto a = anyLosses(5, 50);
    const auto b = anyLosses(5, 50);
    const auto before = *hodgesLehmann(a, b);
    for (double& x : a) x += 0.25;
    const auto after = *hodgesLehmann(a, b);
    RC_ASSERT(std::abs(after.estimate - before.estimate - 0.25) < 1e-12);
    if (before.interval) {
        RC_ASSERT(before.interval->low <= before.estimate);
        RC_ASSERT(before.interval->high >= before.estimate);
    }
}

RC_GTEST_PROP(RankTestProperty, MoreConfidenceIsWider, ()) {
    const auto a = anyLosses(10, 50), b = anyLosses(10, 50);
    const auto narrow = hodgesLehmann(a, b, 0.8)->interval, wide = hodgesLehmann(a, b, 0.99)->interval;
    RC_ASSERT(narrow && wide);
    RC_ASSERT(wide->low <= narrow->low);
    RC_ASSERT(wide->high >= narrow->high);
}

RC_GTEST_PROP(BinomialProperty, IntervalsHoldTheShareAndTurnAround, ()) {
    const int n = *rc::gen::inRange(1, 500), x = *rc::gen::inRange(0, n + 1);
    const double share = static_cast<double>(x) / n;
    for (const auto interval : {&wilson, &clopperPearson}) {
        const auto hits = *interval(x, n, 0.95), misses = *interval(n - x, n, 0.95);
        RC_ASSERT(hits.low >= 0 && hits.low <= share && hits.high >= share && hits.high <= 1);
        RC_ASSERT(std::abs(hits.low + misses.high - 1) < 1e-12);
    }
}

RC_GTEST_PROP(GammaProperty, QuantileTurnsTheTailsAround, ()) {
    const double shape = 0.2 + *rc::gen::inRange(0, 1000) / 100.0,
                 scale = (1 + *rc::gen::inRange(0, 100)) / 1000.0;
    const double p = (1 + *rc::gen::inRange(0, 998)) / 1000.0;
    const double x = gammaQuantile(p, shape, scale);
    RC_ASSERT(std::abs(gammaCdf(x, shape, scale) - p) < 1e-12);
    RC_ASSERT(std::abs(gammaUpperTail(x, shape, scale) + gammaCdf(x, shape, scale) - 1) < 1e-14);
}

RC_GTEST_PROP(NormalProperty, QuantileTurnsTheCdfAround, ()) {
    const double p = (1 + *rc::gen::inRange(0, 99998)) / 1e5;
    RC_ASSERT(std::abs(normalCdf(normalQuantile(p)) - p) < 1e-14);
    RC_ASSERT(std::abs(normalQuantile(p) + normalUpperQuantile(p)) < 1e-14);
}

RC_GTEST_PROP(ChangePointProperty, AClearStepIsFoundWhereItIs, ()) {
    const auto before = anyLosses(5, 40), after = anyLosses(5, 40);
    std::vector<double> series = before;
    for (const double x : after) series.push_back(x + 2);
    const auto change = *changePoint(series);
    RC_ASSERT(change.lastBefore == static_cast<int>(before.size()));
    RC_ASSERT(change.low <= change.lastBefore && change.lastBefore <= change.high);
    RC_ASSERT(change.bicWith < change.bicWithout);
    // At the true place every later value outranks every earlier one.
    RC_ASSERT(pettitt(series)->k >= static_cast<double>(before.size() * after.size()));
}

RC_GTEST_PROP(ChangePointProperty, WhereTheScaleLiesDoesNotMatter, ()) {
    std::vector<double> series = anyLosses(10, 60);
    RC_PRE(std::any_of(series.begin(), series.end(), [&](double x) { return x != series.front(); }));
    const auto plain = *changePoint(series);
    for (double& x : series) x = 8 * x + 16;
    const auto moved = *changePoint(series);
    RC_ASSERT(std::abs(moved.squaresWith - 64 * plain.squaresWith) < 1e-9);
    RC_ASSERT(std::abs((moved.bicWithout - moved.bicWith) - (plain.bicWithout - plain.bicWith)) < 1e-6 ||
              plain.squaresWith < 1e-12);
}

}  // namespace
}  // namespace arc::stats
