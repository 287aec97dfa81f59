// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any chart, whatever its numbers.
#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <vector>

#include "core/analytics/discrete_cusum.hpp"
#include "core/analytics/run_length.hpp"
#include "core/analytics/run_rules.hpp"
#include "core/analytics/several_streams.hpp"

namespace arc::drift {
namespace {

/// A number between two ends, in thousandths of the way.
double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

Sides anySides() {
    return *rc::gen::element(Sides::Upper, Sides::Both);
}

EwmaChart anyEwma() {
    return {.lambda = between(0.02, 1), .limit = between(1, 3.5), .sides = anySides()};
}

CusumChart anyCusum() {
    return {.k = between(0.1, 1.2), .h = between(0.5, 6), .sides = anySides()};
}

RC_GTEST_PROP(RunLengthProperty, AWiderEwmaLimitRunsLonger, ()) {
    EwmaChart chart = anyEwma();
    const double shift = between(0, 3);
    const double arl = *averageRunLength(chart, shift);
    chart.limit += 0.1;
    RC_ASSERT(*averageRunLength(chart, shift) > arl);
}

RC_GTEST_PROP(RunLengthProperty, ALargerShiftIsSeenSooner, ()) {
    const double shift = between(0, 3);
    const EwmaChart ewma = anyEwma();
    RC_ASSERT(*averageRunLength(ewma, shift + 0.1) < *averageRunLength(ewma, shift));
    const CusumChart cusum = anyCusum();
    RC_ASSERT(*averageRunLength(cusum, shift + 0.1) < *averageRunLength(cusum, shift));
    RC_ASSERT(*steadyStateRunLength(ewma, shift + 0.1) < *steadyStateRunLength(ewma, shift));
}

RC_GTEST_PROP(RunLengthProperty, DirectionDoesNotMatterToATwoSidedChart, ()) {
    const double shift = between(0, 3);
    EwmaChart ewma = anyEwma();
    ewma.sides = Sides::Both;
    RC_ASSERT(std::abs(*averageRunLength(ewma, shift) / *averageRunLength(ewma, -shift) - 1) < 1e-9);
    CusumChart cusum = anyCusum();
    cusum.sides = Sides::Both;
    RC_ASSERT(std::abs(*averageRunLength(cusum, shift) / *averageRunLength(cusum, -shift) - 1) < 1e-9);
}

RC_GTEST_PROP(RunLengthProperty, AWiderCusumLimitOrReferenceRunsLonger, ()) {
    const CusumChart chart = anyCusum();
    const double shift = between(-0.5, 3);
    const double arl = *averageRunLength(chart, shift);
    CusumChart wider = chart, slower = chart;
    wider.h += 0.1;
    slower.k += 0.05;
    RC_ASSERT(*averageRunLength(wider, shift) > arl);
    RC_ASSERT(*averageRunLength(slower, shift) > arl);
}

RC_GTEST_PROP(RunLengthProperty, AHeadStartSignalsSooner, ()) {
    const double shift = between(0, 2);
    CusumChart cusum = anyCusum();
    const double cold = *averageRunLength(cusum, shift);
    cusum.headStart = between(0.05, 0.5) * cusum.h;
    RC_ASSERT(*averageRunLength(cusum, shift) < cold);
    EwmaChart ewma = anyEwma();
    ewma.lambda = std::min(ewma.lambda, 0.9);
    const double even = *averageRunLength(ewma, shift);
    ewma.headStart = between(0.05, 0.9) * ewma.limit;
    RC_ASSERT(*averageRunLength(ewma, shift) < even);
}

RC_GTEST_PROP(RunLengthProperty, ASecondSideOnlyAddsSignals, ()) {
    CusumChart chart = anyCusum();
    const double shift = between(-1, 1);
    chart.sides = Sides::Upper;
    const double one = *averageRunLength(chart, shift);
    chart.sides = Sides::Both;
    RC_ASSERT(*averageRunLength(chart, shift) < one);
}

RC_GTEST_PROP(RunLengthProperty, LimitsKeepTheirBudgetAndRiseWithIt, ()) {
    const double budget = std::exp(between(std::log(20.0), std::log(1e5)));
    EwmaChart ewma = anyEwma();
    CusumChart cusum = anyCusum();
    ewma.limit = *limitFor(ewma, budget);
    cusum.h = *limitFor(cusum, budget);
    RC_ASSERT(std::abs(*averageRunLength(ewma, 0) / budget - 1) < 1e-7);
    RC_ASSERT(std::abs(*averageRunLength(cusum, 0) / budget - 1) < 1e-7);
    RC_ASSERT(*limitFor(ewma, budget * 1.05) > ewma.limit);
    RC_ASSERT(*limitFor(cusum, budget * 1.05) > cusum.h);
}

RC_GTEST_PROP(RunLengthProperty, ASteeperDriftIsSeenSooner, ()) {
    const EwmaChart ewma{.lambda = between(0.05, 0.5), .limit = between(2, 3), .sides = anySides()};
    const double slope = between(0.01, 0.3);
    const double arl = *driftRunLength(ewma, slope);
    RC_ASSERT(*driftRunLength(ewma, slope * 1.2) < arl);
    RC_ASSERT(arl < *averageRunLength(ewma, 0));
    const CusumChart cusum{.k = between(0.2, 1), .h = between(1, 5), .sides = Sides::Upper};
    RC_ASSERT(*driftRunLength(cusum, slope * 1.2) < *driftRunLength(cusum, slope));
}

RC_GTEST_PROP(RunLengthProperty, SurvivalAddsUpToTheRunLength, ()) {
    const EwmaChart chart{.lambda = between(0.05, 1), .limit = between(1, 2), .sides = anySides()};
    const double shift = between(0, 2);
    const auto survival = *runLengthSurvival(chart, shift, 4000);
    double sum = 0;
    for (const double left : survival) sum += left;
    RC_ASSERT(std::abs(sum / *averageRunLength(chart, shift) - 1) < 1e-6);
}

RC_GTEST_PROP(RunLengthProperty, MoreRulesSignalSooner, ()) {
    ShewhartChart chart{.limit = between(1.5, 3.5), .sides = anySides()};
    const double shift = between(0, 2);
    double arl = *averageRunLength(chart, shift);
    for (const RunRule rule : {RunRule::TwoOfThree, RunRule::FourOfFive, RunRule::SameSide}) {
        chart.rules.push_back(rule);
        const double now = *averageRunLength(chart, shift);
        RC_ASSERT(now < arl);
        arl = now;
    }
}

RC_GTEST_PROP(RunLengthProperty, MoreStreamsSignalSooner, ()) {
    const EwmaChart chart{.lambda = between(0.05, 0.5), .limit = between(2, 3), .sides = anySides()};
    const auto streams = static_cast<std::size_t>(*rc::gen::inRange(1, 12));
    const std::vector<double> fewer(streams, 0.0), more(streams + 1, 0.0);
    RC_ASSERT(*groupRunLength(chart, more) < *groupRunLength(chart, fewer));
}

struct Law {
    std::vector<double> scores, probabilities;
};

/// A few scores with uneven chances, mean about 0.
Law anyLaw() {
    Law law;
    const int count = *rc::gen::inRange(2, 12);
    double sum = 0, mean = 0;
    for (int i = 0; i < count; ++i) {
        law.scores.push_back(between(-2, 3));
        law.probabilities.push_back(between(0.05, 1));
        sum += law.probabilities.back();
    }
    for (double& p : law.probabilities) p /= sum;
    for (int i = 0; i < count; ++i)
        mean += law.scores[static_cast<std::size_t>(i)] * law.probabilities[static_cast<std::size_t>(i)];
    for (double& s : law.scores) s -= mean;
    law.scores.push_back(2.5);
    for (double& p : law.probabilities) p *= 0.95;
    law.probabilities.push_back(0.05);
    return law;
}

RC_GTEST_PROP(DiscreteCusumProperty, TheUnitOfTheScoresDoesNotMatter, ()) {
    const Law law = anyLaw();
    const double k = between(0.3, 0.8), h = between(1, 6), unit = between(0.01, 50);
    std::vector<double> scaled;
    for (const double s : law.scores) scaled.push_back(unit * s);
    const double arl = *discreteCusumArl(law.scores, law.probabilities, k, h);
    const double other = *discreteCusumArl(scaled, law.probabilities, unit * k, unit * h);
    RC_ASSERT(std::abs(other / arl - 1) < 1e-6);
}

RC_GTEST_PROP(DiscreteCusumProperty, LimitsRiseWithTheBudgetAndKeepIt, ()) {
    const Law law = anyLaw();
    const double k = between(0.3, 0.8), budget = between(20, 2000);
    const auto h = discreteCusumLimit(law.scores, law.probabilities, k, budget);
    RC_PRE(h.has_value());
    RC_ASSERT(*discreteCusumArl(law.scores, law.probabilities, k, *h) >= budget * (1 - 1e-9));
    RC_ASSERT(*discreteCusumLimit(law.scores, law.probabilities, k, budget * 1.5) >= *h);
}

RC_GTEST_PROP(DiscreteCusumProperty, HigherScoresNeverSignalLater, ()) {
    // On a lattice, where the chain is exact.
    Law law = anyLaw();
    for (double& s : law.scores) s = 0.1 * std::round(10 * s);
    const double k = 0.1 * *rc::gen::inRange(3, 9), h = between(1, 5);
    std::vector<double> higher;
    for (const double s : law.scores) higher.push_back(s + 0.2);
    const double arl = *discreteCusumArl(law.scores, law.probabilities, k, h, {0.1});
    RC_ASSERT(*discreteCusumArl(higher, law.probabilities, k, h, {0.1}) <= arl * (1 + 1e-9));
}

}  // namespace
}  // namespace arc::drift
