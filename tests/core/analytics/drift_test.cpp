// SPDX-License-Identifier: GPL-3.0-or-later
// The charts on small simulated logs whose faults are known (tests/support/splice_world). Fixed seeds.
#include "core/analytics/drift.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <numeric>

#include "tests/support/splice_world.hpp"

namespace arc::drift {
namespace {

using testing::Fault;
using testing::firstSignal;
using testing::makeLog;
using testing::World;

SplicerReport reportOn(const SplicerHistory& log, Settings settings = {},
                       Detail detail = Detail::VerdictsOnly) {
    return analyse(std::span(&log, 1), settings, detail).front();
}

struct Score {
    int seen = 0, right = 0, held = 0;
    double delay = 0, beginError = 0;
};

Score score(World world, Cause cause, int logs, int arcsAfter) {
    Score total;
    for (std::uint64_t seed = 1; seed <= static_cast<std::uint64_t>(logs); ++seed) {
        const auto report = reportOn(makeLog(world, seed));
        const auto change = static_cast<std::uint64_t>(world.change);
        const auto* signal = firstSignal(report, change);
        if (!signal || signal->raisedAtArc > change + static_cast<std::uint64_t>(arcsAfter)) continue;
        ++total.seen;
        total.right += signal->cause == cause;
        total.held += signal->beganLow <= change && signal->beganHigh >= change;
        total.delay += static_cast<double>(signal->raisedAtArc - change + 1);
        total.beginError += std::abs(static_cast<double>(signal->beganAtArc) - static_cast<double>(change));
    }
    return total;
}

TEST(Drift, LearnsBeforeItSpeaks) {
    World world;
    world.arcs = 59;
    EXPECT_EQ(reportOn(makeLog(world, 1)).standing, Standing::Learning);
    world.arcs = 61;
    EXPECT_NE(reportOn(makeLog(world, 1)).standing, Standing::Learning);
}

TEST(Drift, ADirtyGrooveIsSeenNamedAndDated) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.06;
    const auto total = score(world, Cause::Groove, 12, 120);
    EXPECT_EQ(total.seen, 12);
    EXPECT_GE(total.right, 11);
    EXPECT_LT(total.delay / total.seen, 70);
    EXPECT_LT(total.beginError / total.seen, 30);
}

TEST(Drift, TheDirtyGrooveIsTheOneThatIsDirty) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.06;
    world.groove = 9;
    int named = 0;
    for (std::uint64_t seed = 1; seed <= 8; ++seed) {
        const auto report = reportOn(makeLog(world, seed));
        const auto* signal = firstSignal(report, 601);
        ASSERT_TRUE(signal);
        named += !signal->channels.empty() && signal->channels.front() == 9;
    }
    EXPECT_GE(named, 7);
}

TEST(Drift, AStaleCalibrationIsSeenNamedAndDated) {
    World world;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.02;
    world.change = 640;
    const auto total = score(world, Cause::Calibration, 12, 60);
    EXPECT_EQ(total.seen, 12);
    EXPECT_GE(total.right, 10);
    EXPECT_GE(total.held, 10);
    EXPECT_LT(total.delay / total.seen, 12);
}

TEST(Drift, AnotherFibreBeginsWithItsJob) {
    World world;
    world.fault = Fault::Fibre;
    world.sizeDb = 0.02;
    world.change = 601;
    world.cured = 751;  // the next job has the usual fibre again
    const auto total = score(world, Cause::Fibre, 12, 60);
    EXPECT_GE(total.seen, 11);
    EXPECT_GE(total.right, 10);
    EXPECT_LT(total.beginError / total.seen, 3);
}

TEST(Drift, ABadCleaverShowsInItsAngles) {
    World world;
    world.fault = Fault::Cleaver;
    const auto total = score(world, Cause::Cleaver, 10, 160);
    EXPECT_GE(total.seen, 9);
    EXPECT_GE(total.right, total.seen - 1);
    const auto report = reportOn(makeLog(world, 3));
    const auto* signal = firstSignal(report, 601);
    ASSERT_TRUE(signal);
    EXPECT_EQ(signal->actionTool.uuid.bytes[0], 7);  // the cleaver, not the splicer
}

TEST(Drift, WornElectrodesAreARampOfAll) {
    World world;
    world.arcs = 1300;
    world.fault = Fault::Electrode;
    const auto total = score(world, Cause::Electrode, 10, 700);
    EXPECT_EQ(total.seen, 10);
    EXPECT_GE(total.right, 6);
}

// One false signal per 1,000 arcs: 20 logs of 1,200 arcs may hold about 24, here at most 32 and more than 4.
TEST(Drift, FalseSignalsKeepTheBudgetAndScaleWithIt) {
    World world;
    world.arcs = 1200;
    const auto falseSignals = [&](double budget) {
        Settings settings;
        settings.budgetArcs = budget;
        int count = 0;
        for (std::uint64_t seed = 100; seed < 120; ++seed)
            count += firstSignal(reportOn(makeLog(world, seed), settings), 1) != nullptr;
        return count;
    };
    const int at1000 = falseSignals(1000);
    EXPECT_LE(at1000, 19);
    EXPECT_GE(at1000, 4);
    EXPECT_LE(falseSignals(10000), 5);
    EXPECT_LT(falseSignals(10000), at1000);
}

TEST(Drift, AFaultThatStaysIsOneSignal) {
    World world;
    world.arcs = 1200;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    int signals = 0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const auto report = reportOn(makeLog(world, seed));
        for (const auto& signal : report.strata.front().signals)
            signals += signal.chart == ChartKind::SingleGroove && signal.channel && *signal.channel >= 4 &&
                       *signal.channel <= 6 && signal.raisedAtArc > 600;
    }
    EXPECT_EQ(signals, 6);
}

CareRecord careAt(const SplicerHistory& log, std::size_t arc, std::string_view action) {
    CareRecord record;
    record.id.uuid.bytes[0] = 99;
    record.tool = log.splicer;
    record.at = Instant{log.arcs[arc - 1].at.ms - 60'000, 0};
    record.action = ActionKey(action);
    return record;
}

TEST(Drift, CareThatHelpedClosesTheSignalAndRearms) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    world.cured = 700;
    auto log = makeLog(world, 5);
    log.events.push_back(careAt(log, 700, action::grooveClean));
    const auto report = reportOn(log);
    const auto& stratum = report.strata.front();
    ASSERT_FALSE(stratum.effects.empty());
    EXPECT_EQ(stratum.effects.front().verdict, CareVerdict::Recovered);
    const auto* signal = firstSignal(report, 601);
    ASSERT_TRUE(signal);
    EXPECT_EQ(signal->state, SignalState::Recovered);
    EXPECT_NE(stratum.standing, Standing::Drifting);
}

TEST(Drift, CareThatDidNotHelpLeavesItOpen) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    auto log = makeLog(world, 5);
    log.events.push_back(careAt(log, 700, action::grooveClean));
    const auto report = reportOn(log);
    EXPECT_EQ(report.strata.front().effects.front().verdict, CareVerdict::NoChange);
    EXPECT_EQ(report.standing, Standing::Drifting);
}

// A job's fibre goes with the job: care in the night between must get neither the praise nor a second signal.
TEST(Drift, CareIsNotJudgedByAnotherFibre) {
    World world;
    world.fault = Fault::Fibre;
    world.sizeDb = 0.02;
    world.change = 601;
    world.cured = 751;
    world.arcs = 800;
    int named = 0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        auto log = makeLog(world, seed);
        log.events.push_back(careAt(log, 751, action::bladeRotate));
        const auto report = reportOn(log);
        const auto& stratum = report.strata.front();
        const auto* signal = firstSignal(report, 601);
        if (!signal || signal->cause != Cause::Fibre) continue;
        ++named;
        EXPECT_TRUE(stratum.effects.empty()) << seed;
        EXPECT_EQ(std::ranges::count_if(stratum.signals, [](const Signal& s) { return s.beganAtArc == 601; }),
                  1)
            << seed;
    }
    EXPECT_GE(named, 4);
}

// A signal that an earlier care has cured is no complaint of the next one.
TEST(Drift, TheNextCareIsNotJudgedByACuredFault) {
    World world;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.02;
    world.cured = 640;
    auto log = makeLog(world, 5);
    log.events.push_back(careAt(log, 640, action::arcCalibration));
    auto next = careAt(log, 655, action::cleaverClean);
    next.id.uuid.bytes[0] = 98;
    log.events.push_back(next);
    const auto report = reportOn(log);
    const auto& effects = report.strata.front().effects;
    ASSERT_EQ(effects.size(), 2u);
    EXPECT_EQ(effects[0].verdict, CareVerdict::Recovered);
    EXPECT_FALSE(effects[0].signalKey.empty());
    EXPECT_EQ(effects[1].signalKey, "");
}

// A groove that is a little dirty cannot be told from a clean one by 20 readings: the verdict waits, and is
// then more often right than not.
TEST(Drift, TheVerdictOnAWeakFaultWaitsUntilItIsClear) {
    int waited = 0, right = 0, judged = 0;
    for (std::uint64_t seed = 1; seed <= 16; ++seed) {
        World world;
        world.fault = Fault::Groove;
        world.sizeDb = 0.02;
        world.cured = seed % 2 == 0 ? 1000 : 2000;
        const auto verdictAfter = [&](int arcs) -> std::optional<CareVerdict> {
            world.arcs = 1000 + arcs;
            auto log = makeLog(world, seed);
            log.events.push_back(careAt(log, 1000, action::grooveClean));
            const auto report = reportOn(log);
            const auto* signal = firstSignal(report, 601);
            if (!signal || signal->raisedAtArc >= 1000 || signal->chart != ChartKind::SingleGroove)
                return std::nullopt;
            const auto& effects = report.strata.front().effects;
            return effects.empty() ? CareVerdict::TooEarly : effects.front().verdict;
        };
        const auto soon = verdictAfter(20), later = verdictAfter(70);
        if (!soon || !later) continue;
        ++judged;
        waited += *soon == CareVerdict::TooEarly;
        EXPECT_NE(*later, CareVerdict::TooEarly) << seed;
        right += *later == (world.cured == 1000 ? CareVerdict::Recovered : CareVerdict::NoChange);
    }
    ASSERT_GE(judged, 8);
    EXPECT_GE(waited, 1);
    EXPECT_GE(right * 4, judged * 3);
}

TEST(Drift, ADismissedSignalStaysQuiet) {
    World world;
    world.arcs = 1100;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.015;
    world.change = 640;
    const auto log = makeLog(world, 2);
    const auto before = reportOn(log);
    const auto* signal = firstSignal(before, 640);
    ASSERT_TRUE(signal);
    Settings settings;
    SignalAnswer answer;
    answer.splicer = log.splicer;
    answer.signalKey = signal->key;
    answer.reason = "other fibre type, known";
    answer.at = Instant{signal->raisedAt.ms + 600'000, 0};
    settings.answers.push_back(answer);
    const auto after = reportOn(log, settings);
    const auto* dismissed = firstSignal(after, 640);
    ASSERT_TRUE(dismissed);
    EXPECT_EQ(dismissed->state, SignalState::Dismissed);
    EXPECT_EQ(dismissed->answerReason, answer.reason);
}

TEST(Drift, TheBaselineASupervisorChoseIsUsed) {
    World world;
    const auto log = makeLog(world, 4);
    Settings settings;
    BaselineChoice choice;
    choice.splicer = log.splicer;
    choice.stratum = stratumKey("G.652-G.652", 12);
    choice.from = log.arcs[100].at;
    choice.to = log.arcs[299].at;
    settings.baselines.push_back(choice);
    const auto report = reportOn(log, settings);
    EXPECT_EQ(report.strata.front().baselineFrom, 101U);
    EXPECT_EQ(report.strata.front().baselineTo, 300U);
}

TEST(Drift, WeightsAddUpAndEvidenceIsGiven) {
    World world;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.02;
    world.change = 640;
    const auto report = reportOn(makeLog(world, 7));
    const auto* signal = firstSignal(report, 640);
    ASSERT_TRUE(signal);
    double sum = 0;
    for (const auto& cause : signal->causes) sum += cause.weight;
    EXPECT_NEAR(sum, 1, 1e-9);
    EXPECT_FALSE(signal->causes.front().evidence.empty());
    EXPECT_FALSE(signal->headline.empty());
    EXPECT_FALSE(signal->advice.empty());
    EXPECT_LE(signal->beganLow, signal->beganAtArc);
    EXPECT_GE(signal->beganHigh, signal->beganAtArc);
}

// Peers: the same fault on both splicers of a job speaks for the fibre; on one alone for the machine.
TEST(Drift, TheOtherSplicerOnTheJobTellsFibreFromMachine) {
    World world;
    world.fault = Fault::Fibre;
    world.sizeDb = 0.02;
    world.arcs = 740;
    World fine = world;
    fine.fault = Fault::None;
    const auto weightOfFibre = [](const std::vector<SplicerHistory>& crew) {
        const auto reports = analyse(crew, {}, Detail::VerdictsOnly);
        const auto* signal = firstSignal(reports.front(), 601);
        if (!signal) return -1.0;
        for (const auto& cause : signal->causes)
            if (cause.cause == Cause::Fibre) return cause.weight;
        return -1.0;
    };
    std::vector<SplicerHistory> both{makeLog(world, 1), makeLog(world, 51)},
        one{makeLog(world, 1), makeLog(fine, 51)};
    both[1].splicer.uuid.bytes[0] = one[1].splicer.uuid.bytes[0] = 2;
    both[1].label = one[1].label = "S-02";
    EXPECT_GT(weightOfFibre(both), 0.9);
    EXPECT_LT(weightOfFibre(one), weightOfFibre(both));
}

TEST(Drift, TracesRunToTheLastArcAndTheCombIsFilled) {
    World world;
    const auto report = reportOn(makeLog(world, 1), {}, Detail::WithTraces);
    const auto& stratum = report.strata.front();
    ASSERT_FALSE(stratum.traces.empty());
    for (const auto& trace : stratum.traces) {
        ASSERT_EQ(trace.arc.size(), trace.value.size());
        EXPECT_EQ(trace.arc.back(), 900U);
    }
    ASSERT_EQ(stratum.grooves.size(), 12U);
    EXPECT_GT(stratum.grooves[4].recent, 0);
}

// Longer than the arcs a signal is judged by it stood; then its level went away.
TEST(Drift, ASignalThatPassedLateIsOverAndDoesNotHideALaterFault) {
    World world;
    world.arcs = 1100;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.012;
    world.change = 401;
    world.cured = 621;
    int over = 0, hidden = 0;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        auto log = makeLog(world, seed);
        for (std::size_t i = 900; i < log.arcs.size(); ++i)
            for (std::size_t r = 0; r < log.arcs[i].readingCount; ++r)
                log.readings[log.arcs[i].firstReading + r].loss.value += 10;
        const auto report = reportOn(log);
        const auto* signal = firstSignal(report, 401);
        ASSERT_TRUE(signal) << seed;
        over += signal->state == SignalState::Recovered;
        const auto* later = firstSignal(report, 901);
        hidden += !later || later->raisedAtArc > 940;
    }
    EXPECT_GE(over, 5);
    EXPECT_EQ(hidden, 0);
}

// What must not matter.

TEST(DriftProperties, LossesInAnotherUnitGiveTheSameVerdicts) {
    // Everything shown in steps twice as wide and twice as large: the same cells, the same scores.
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    const auto fine = makeLog(world, 3);
    auto coarse = fine;
    for (auto& reading : coarse.readings)
        reading.loss.value *= 2, reading.cleaveLeft->value *= 2, reading.cleaveRight->value *= 2;
    // Lots are expected to differ by a fixed number of dB, so limits differ a little; what is said may not.
    const auto a = reportOn(fine), b = reportOn(coarse);
    const auto *one = firstSignal(a, 601), *other = firstSignal(b, 601);
    ASSERT_TRUE(one && other);
    EXPECT_EQ(one->cause, other->cause);
    EXPECT_EQ(one->channels, other->channels);
    EXPECT_NEAR(static_cast<double>(one->raisedAtArc), static_cast<double>(other->raisedAtArc), 10);
    EXPECT_NEAR(other->sizeDb, 2 * one->sizeDb, 0.02);
}

TEST(DriftProperties, GroovesMayBeNumberedInAnotherOrder) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    const auto log = makeLog(world, 3);
    auto shuffled = log;
    for (auto& arc : shuffled.arcs)
        std::reverse(
            shuffled.readings.begin() + static_cast<std::ptrdiff_t>(arc.firstReading),
            shuffled.readings.begin() + static_cast<std::ptrdiff_t>(arc.firstReading + arc.readingCount));
    const auto a = reportOn(log), b = reportOn(shuffled);
    ASSERT_EQ(a.strata.front().signals.size(), b.strata.front().signals.size());
    for (std::size_t i = 0; i < a.strata.front().signals.size(); ++i) {
        EXPECT_EQ(a.strata.front().signals[i].key, b.strata.front().signals[i].key);
        EXPECT_EQ(a.strata.front().signals[i].beganAtArc, b.strata.front().signals[i].beganAtArc);
    }
}

TEST(DriftProperties, TheTimeZoneOfTheRecordsDoesNotMatter) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.08;
    auto elsewhere = world;
    elsewhere.offsetMinutes = 330;
    const auto a = reportOn(makeLog(world, 3)), b = reportOn(makeLog(elsewhere, 3));
    ASSERT_EQ(a.strata.front().signals.size(), b.strata.front().signals.size());
    for (std::size_t i = 0; i < a.strata.front().signals.size(); ++i)
        EXPECT_EQ(a.strata.front().signals[i].key, b.strata.front().signals[i].key);
}

TEST(DriftProperties, WhatCameLaterDoesNotChangeWhenASignalWasRaised) {
    World world;
    world.fault = Fault::Calibration;
    world.sizeDb = 0.015;
    world.change = 640;
    world.arcs = 900;
    const auto log = makeLog(world, 9);
    const auto whole = reportOn(log);
    const auto* signal = firstSignal(whole, 640);
    ASSERT_TRUE(signal);
    auto cut = log;
    cut.arcs.resize(signal->raisedAtArc);
    const auto early = reportOn(cut);
    const auto* same = firstSignal(early, 640);
    ASSERT_TRUE(same);
    EXPECT_EQ(same->key, signal->key);
}

TEST(DriftProperties, ReadingsThatNeverVaryAreFollowed) {
    for (const int grooves : {1, 12}) {
        World world;
        world.grooves = grooves;
        world.arcs = 300;
        auto log = makeLog(world, 1);
        for (auto& reading : log.readings) reading.loss = Loss{20};
        const auto report = reportOn(log);
        EXPECT_EQ(report.strata.front().arcs, 300U);
        EXPECT_TRUE(report.strata.front().signals.empty() ||
                    report.strata.front().signals.front().chart == ChartKind::CleaveAngle);
    }
}

TEST(DriftProperties, OtherGrooveCountsStepsAndMissingAnglesWork) {
    for (const int grooves : {1, 2, 4, 8, 16})
        for (const int step : {1, 10, 20}) {
            World world;
            world.grooves = grooves;
            world.stepMdb = step;
            world.arcs = 700;
            auto log = makeLog(world, 11);
            for (auto& reading : log.readings) reading.cleaveLeft.reset(), reading.cleaveRight.reset();
            for (auto& arc : log.arcs) arc.counter.reset(), arc.job.reset(), arc.cleaver.reset();
            const auto report = reportOn(log);
            EXPECT_EQ(report.strata.front().arcs, 700U);
            EXPECT_LE(report.strata.front().signals.size(), 6U) << grooves << ' ' << step;
        }
}

}  // namespace
}  // namespace arc::drift
