// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <set>

#include "core/scenario/entries.hpp"
#include "core/scenario/physics.hpp"
#include "core/scenario/randomness.hpp"

namespace arc::scenario {
namespace {

/// One mass splicer, one job of `closures` closures with 288 fibres each, nothing wrong.
Scenario small(int closures = 4) {
    Scenario s;
    s.name = "test";
    s.start = *parseInstant("2031-03-03T00:00:00+01:00");
    Machine m;
    m.label = "S-01";
    m.traits = {SplicerKind::MassFusion, 12, ArcControl::Manual};
    m.offsetUm = 0.25;
    m.outlier = 0;
    s.splicers.push_back(m);
    s.cleavers.push_back({"C-01", "", {}, 0.45, {}});
    JobSetting job;
    job.label = "J-1";
    job.rule.perSplice = Loss{150};
    job.cables.push_back({"cable", 288, FibreUnit::Ribbon, 12, "TIA-598", "G.652.D", std::nullopt, std::nullopt});
    Assignment work;
    work.splicer = "S-01";
    work.cleaver = "C-01";
    work.job = "J-1";
    for (int i = 1; i <= closures; ++i) {
        ClosureSetting closure;
        closure.label = "J-1-" + std::to_string(i);
        closure.cableA = closure.cableB = "cable";
        closure.plan = *planFromText("1-288 straight");
        work.closures.push_back(closure.label);
        job.closures.push_back(std::move(closure));
    }
    work.toDay = 60;
    work.arcsPerDay = 20;
    s.jobs.push_back(std::move(job));
    s.work.push_back(std::move(work));
    return s;
}

SimulatedLog run(const Scenario& s, std::uint64_t seed = 1) {
    auto log = simulate(s, seed);
    EXPECT_TRUE(log) << (log ? "" : log.error().sentence());
    return log.value_or(SimulatedLog{});
}

double meanLoss(const SimulatedLog& log, std::uint64_t from, std::uint64_t to, int channel = 0) {
    double sum = 0;
    int n = 0;
    for (const auto& arc : log.arcs)
        for (const auto& r : arc.readings)
            if (arc.number >= from && arc.number < to && (channel == 0 || r.channel == channel)) {
                sum += r.trueDb;
                ++n;
            }
    return sum / std::max(n, 1);
}

// First outputs of the reference implementation of xoshiro256++ 1.0 for the state 1, 2, 3, 4 and of
// splitmix64 for the state 0 (S. Vigna, prng.di.unimi.it; values from memory, worked out by hand for the
// first).
TEST(Randomness, engineAgreesWithItsDefinition) {
    Randomness random(std::array<std::uint64_t, 4>{1, 2, 3, 4});
    EXPECT_EQ(random.next(), 41943041ULL);  // rotl(1 + 4, 23) + 1
    std::uint64_t state = 0;
    EXPECT_EQ(splitmix(state), 0xe220a8397b1dcdafULL);
}

TEST(Randomness, normalNumbersHaveMeanZeroAndVarianceOne) {
    Randomness random(7, "check");
    double sum = 0, squares = 0, cubes = 0;
    constexpr int n = 200'000;
    for (int i = 0; i < n; ++i) {
        const double x = random.normal();
        sum += x;
        squares += x * x;
        cubes += x * x * x;
    }
    EXPECT_NEAR(sum / n, 0, 0.01);
    EXPECT_NEAR(squares / n, 1, 0.02);
    EXPECT_NEAR(cubes / n, 0, 0.04);
}

TEST(Randomness, streamsOfOneSeedDiffer) {
    EXPECT_NE(Randomness(1, "a").next(), Randomness(1, "b").next());
    EXPECT_NE(Randomness(1, "a").next(), Randomness(2, "a").next());
    EXPECT_EQ(Randomness(1, "a").next(), Randomness(1, "a").next());
}

// D. Marcuse, Bell Syst. Tech. J. 56(5), 1977: an offset of 1 um costs 0.2052 dB at a mode-field diameter
// of 9.2 um and 0.1606 dB at 10.4 um; diameters of 9.2 and 8.6 um cost 0.0197 dB.
TEST(Physics, lossesAreThoseOfGaussianModes) {
    EXPECT_NEAR(modeLossDb(1.0, 4.6, 4.6), 0.2052, 5e-5);
    EXPECT_NEAR(modeLossDb(1.0, 5.2, 5.2), 0.1606, 5e-5);
    EXPECT_NEAR(modeLossDb(0.0, 4.6, 4.3), 0.0197, 5e-5);
    EXPECT_NEAR(modeLossDb(pushFor(0.05, 4.6), 4.6, 4.6), 0.05, 1e-9);
}

// A Gaussian offset of both axes makes an exponential loss: standard deviation = mean, a share exp(-1) above
// the mean.
TEST(Physics, gaussianOffsetsMakeExponentialLosses) {
    Machine machine;
    machine.baseDb = machine.noiseDb = machine.outlier = 0;
    Conditions conditions;
    conditions.angleSd = 0;
    conditions.offsetSd = 0.33;
    Randomness random(11, "check");
    const double mean = 2 * modeLossDb(0.33, 4.6, 4.6);
    constexpr int n = 50'000;
    double sum = 0;
    int above = 0;
    for (int i = 0; i < n; ++i) {
        const double loss = makeSplice(machine, conditions, random).trueDb;
        sum += loss;
        above += loss > mean ? 1 : 0;
    }
    EXPECT_NEAR(sum / n, mean, 0.02 * mean);
    EXPECT_NEAR(above / double(n), std::exp(-1.0), 0.01);
}

TEST(Simulate, theSameSeedMakesTheSameLogAndAnotherSeedAnother) {
    const auto a = run(small()), b = run(small()), c = run(small(), 2);
    ASSERT_EQ(a.arcs.size(), b.arcs.size());
    for (std::size_t i = 0; i < a.arcs.size(); ++i) {
        EXPECT_EQ(a.arcs[i].at, b.arcs[i].at);
        EXPECT_EQ(a.arcs[i].readings[3].shown, b.arcs[i].readings[3].shown);
    }
    EXPECT_NE(a.arcs[0].readings[0].trueDb, c.arcs[0].readings[0].trueDb);
}

TEST(Simulate, anotherSplicerLeavesTheNumbersOfTheFirstAsTheyWere) {
    auto two = small();
    two.splicers.push_back(two.splicers[0]);
    two.splicers[1].label = "S-02";
    const auto alone = run(small()), pair = run(two);
    EXPECT_EQ(alone.arcs[5].readings[5].trueDb, pair.arcs[5].readings[5].trueDb);
}

TEST(Simulate, everyPlannedFibreIsSplicedOnceAtFirstAttempt) {
    auto s = small(2);
    s.jobs[0].closures[1].leftOut = {5, 6};
    const auto log = run(s);
    std::map<std::string, std::set<int>> seen;
    for (const auto& arc : log.arcs)
        for (const auto& r : arc.readings)
            if (arc.attempt == 1) {
                EXPECT_TRUE(seen[arc.closure].insert(r.fibreA).second);
            }
    EXPECT_EQ(seen["J-1-1"].size(), 288u);
    EXPECT_EQ(seen["J-1-2"].size(), 286u);
    EXPECT_FALSE(seen["J-1-2"].contains(5));
}

TEST(Simulate, aSpliceAboveTheLimitIsDoneAgainUntilTheAttemptsAreUsedUp) {
    auto s = small();
    s.splicers[0].offsetUm = 0.4;
    const auto log = run(s);
    int again = 0;
    for (std::size_t i = 0; i + 1 < log.arcs.size(); ++i) {
        const auto& arc = log.arcs[i];
        const bool high = std::any_of(arc.readings.begin(), arc.readings.end(),
                                      [](const auto& r) { return r.shown > Loss{150}; });
        const auto& next = log.arcs[i + 1];
        if (high && arc.attempt < 3) {
            EXPECT_EQ(next.attempt, arc.attempt + 1);
            EXPECT_EQ(next.readings[0].fibreA, arc.readings[0].fibreA);
            ++again;
        } else {
            EXPECT_EQ(next.attempt, 1);
        }
    }
    EXPECT_GT(again, 5);
}

TEST(Simulate, workersKeepTheirDaysAndCountersGoUp) {
    const auto log = run(small());
    for (std::size_t i = 0; i < log.arcs.size(); ++i) {
        const auto local = log.arcs[i].at;
        const auto days = (local.ms + 60 * msPerMinute) / msPerDay;
        EXPECT_LT((days + 3) % 7, 5) << "no work on weekends";
        EXPECT_EQ(log.arcs[i].number, i + 1);
        if (i > 0) {
            EXPECT_GT(log.arcs[i].at, log.arcs[i - 1].at);
            EXPECT_EQ(log.arcs[i].counter, log.arcs[i - 1].counter + 1);
        }
    }
}

TEST(Simulate, aDirtyGrooveRaisesItsChannelUntilItIsCleaned) {
    auto s = small(10);
    FaultSetting fault;
    fault.tool = "S-01";
    fault.begin.arc = 61;
    fault.channels = {5};
    fault.stepDb = 0.08;
    s.faults.push_back(fault);
    CareSetting care;
    care.tool = "S-01";
    care.action = std::string(action::arcCalibration);
    care.at.arc = 100;
    s.care.push_back(care);
    care.action = std::string(action::grooveClean);
    care.at.arc = 140;
    s.care.push_back(care);
    const auto log = run(s);
    EXPECT_NEAR(meanLoss(log, 61, 141, 5) - meanLoss(log, 1, 61, 5), 0.08, 0.03);
    EXPECT_NEAR(meanLoss(log, 141, 241, 5) - meanLoss(log, 1, 61, 5), 0.0, 0.02);
    EXPECT_NEAR(meanLoss(log, 61, 141, 8) - meanLoss(log, 1, 61, 8), 0.0, 0.02);
    ASSERT_EQ(log.truth.size(), 1u);
    EXPECT_EQ(log.truth[0].cause, drift::Cause::Groove);
    ASSERT_EQ(log.truth[0].touched.size(), 1u);
    EXPECT_EQ(log.truth[0].touched[0].beginArc, 61u);
    EXPECT_EQ(log.truth[0].touched[0].endArc, 140u);
    EXPECT_EQ(log.truth[0].endedBy, "groove_clean");
}

TEST(Simulate, careThatMakesItWorseBeginsAFaultOfItsOwn) {
    auto s = small(8);
    CareSetting care;
    care.tool = "S-01";
    care.action = std::string(action::lensClean);
    care.at.arc = 80;
    care.effect = Effect::Worse;
    FaultSetting brings;
    brings.cause = drift::Cause::Calibration;
    brings.tool = "S-01";
    brings.stepDb = 0.03;
    care.brings = brings;
    s.care.push_back(care);
    const auto log = run(s);
    EXPECT_NEAR(meanLoss(log, 81, 180) - meanLoss(log, 1, 81), 0.03, 0.006);
    ASSERT_EQ(log.truth.size(), 1u);
    EXPECT_EQ(log.truth[0].touched[0].beginArc, 81u);
    EXPECT_FALSE(log.truth[0].touched[0].endArc);
}

TEST(Simulate, aDullBladeIsSeenOnEverySplicerThatUsesIt) {
    auto s = small(4);
    s.splicers.push_back(s.splicers[0]);
    s.splicers[1].label = "S-02";
    auto job = s.jobs[0];
    job.label = "J-2";
    auto work = s.work[0];
    work.splicer = "S-02";
    work.job = "J-2";
    work.closures.clear();
    for (auto& closure : job.closures) {
        closure.label = "J-2" + closure.label.substr(3);
        work.closures.push_back(closure.label);
    }
    s.jobs.push_back(job);
    s.work.push_back(work);
    FaultSetting fault;
    fault.cause = drift::Cause::Cleaver;
    fault.tool = "C-01";
    fault.begin.arc = 61;
    s.faults.push_back(fault);
    const auto log = run(s);
    ASSERT_EQ(log.truth.size(), 1u);
    EXPECT_EQ(log.truth[0].touched.size(), 2u);
    double before = 0, after = 0;
    int n = 0, m = 0;
    for (std::size_t i = 0; i < log.arcs.size(); ++i)
        for (const auto& r : log.arcs[i].readings) {
            (i < 60 ? before : after) += degrees(r.cleaveLeft);
            ++(i < 60 ? n : m);
        }
    EXPECT_NEAR((after / m) / (before / n), 2.1, 0.15);
}

TEST(Simulate, electrodesWearByThemselvesAndNewOnesEndIt) {
    auto s = small(10);
    s.splicers[0].electrodeArcs = 3'190;
    s.splicers[0].wearScale = 200;
    CareSetting care;
    care.tool = "S-01";
    care.action = std::string(action::electrodeReplace);
    care.at.arc = 120;
    s.care.push_back(care);
    const auto log = run(s);
    ASSERT_EQ(log.truth.size(), 1u);
    EXPECT_EQ(log.truth[0].cause, drift::Cause::Electrode);
    EXPECT_EQ(log.truth[0].touched[0].beginArc, 11u);
    EXPECT_EQ(log.truth[0].touched[0].endArc, 120u);
    EXPECT_GT(meanLoss(log, 100, 120), meanLoss(log, 1, 20) + 0.02);
    EXPECT_NEAR(meanLoss(log, 121, 200), meanLoss(log, 1, 20), 0.01);
}

TEST(Simulate, aBadLotBelongsToItsJobOnEverySplicer) {
    auto s = small(3);
    s.jobs[0].modeFieldB = 8.6;
    s.jobs[0].badLot = true;
    const auto log = run(s);
    ASSERT_EQ(log.truth.size(), 1u);
    EXPECT_EQ(log.truth[0].cause, drift::Cause::Fibre);
    EXPECT_EQ(log.truth[0].tool, "J-1");
    EXPECT_NEAR(*log.truth[0].sizeDb, 0.0197, 5e-5);
    EXPECT_EQ(log.truth[0].touched[0].beginArc, 1u);
}

TEST(Simulate, measuredOneWayLossesTiltAndTheirMeanIsTheLoss) {
    auto s = small(1);
    s.jobs[0].modeFieldB = 8.6;
    s.jobs[0].modeFieldSd = 0;
    MeasuringSetting order;
    order.closure = "J-1-1";
    for (int i = 1; i <= 288; ++i) order.fibres.push_back(i);
    order.noiseDb = 0;
    s.measuring.push_back(order);
    const auto log = run(s);
    ASSERT_EQ(log.measured.size(), 288u);
    std::map<int, double> truth;
    for (const auto& arc : log.arcs)
        for (const auto& r : arc.readings) truth[r.fibreA] = r.trueDb;
    for (const auto& m : log.measured) {
        EXPECT_NEAR((decibels(*m.aToB) + decibels(*m.bToA)) / 2, truth[m.fibre], 0.0011);
        // 10 log10(8.6 / 9.2) = -0.293 dB.
        EXPECT_NEAR((decibels(*m.aToB) - decibels(*m.bToA)) / 2, -0.2929, 0.0011);
    }
}

TEST(Scenario, mistakesAreNamed) {
    const auto where = [](const Scenario& s) {
        const auto answer = check(s);
        return answer ? std::string() : answer.error().sentence();
    };
    EXPECT_EQ(where(small()), "");
    auto s = small();
    s.work[0].splicer = "S-99";
    EXPECT_NE(where(s).find("S-99"), std::string::npos);
    s = small();
    s.work.push_back(s.work[0]);
    EXPECT_NE(where(s).find("two places"), std::string::npos);
    s = small();
    s.faults.push_back({});
    EXPECT_NE(where(s).find("faults, row 1"), std::string::npos);
    s = small();
    s.cleavers.push_back({"S-01", "", {}, 0.45, {}});
    EXPECT_NE(where(s).find("two tools"), std::string::npos);
    s = small();
    s.care.push_back({});
    EXPECT_NE(where(s).find("care, row 1"), std::string::npos);
    s = small();
    s.splicers[0].traits.grooves = 3;
    EXPECT_NE(where(s).find("1, 2, 4, 8, 12 or 16"), std::string::npos);
    s = small();
    s.work[0].arcsPerDay = 1'000;
    EXPECT_NE(where(s).find("do not fit"), std::string::npos);
    s = small();
    s.work[0].toDay = 1'000'000;
    EXPECT_NE(where(s).find("40,000 days"), std::string::npos);
}

TEST(Entries, allAreValidAndTheLastLiesJustBeforeThePresent) {
    auto s = small(2);
    s.splicers[0].lastElectrodes = "2031-01-13T15:00:00+01:00";
    s.splicers[0].counterStart = 900;
    s.splicers[0].electrodeArcs = 600;
    MeasuringSetting order;
    order.closure = "J-1-1";
    order.fibres = {1, 2};
    s.measuring.push_back(order);
    const auto log = run(s);
    const Instant now = *parseInstant("2029-07-01T12:00:00Z");
    const auto shift = shiftToPresent(log, now);
    EXPECT_EQ(shift % msPerDay, 0);
    const auto entries = entriesOf(s, log, shift);
    std::int64_t last = 0;
    for (const auto& entry : entries) {
        const auto valid = validate(entry);
        EXPECT_TRUE(valid) << kindName(entry) << ": " << (valid ? "" : valid.error().sentence());
        if (const auto* arc = std::get_if<SpliceArc>(&entry)) last = std::max(last, arc->at.ms);
    }
    EXPECT_LE(last, now.ms);
    EXPECT_GT(last, now.ms - msPerDay);
}

}  // namespace
}  // namespace arc::scenario
