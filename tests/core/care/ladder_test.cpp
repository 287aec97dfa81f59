// SPDX-License-Identifier: GPL-3.0-or-later
// Check values, common practice: gentle before drastic. Loss: grooves, clamps, lenses, calibration,
// electrodes, diagnostics. Cleave: pads and anvil, blade, next position, next height.
#include "core/care/ladder.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/care_bench.hpp"

namespace arc::care {
namespace {

using namespace arc::test;
using drift::CareVerdict;
using drift::Cause;

drift::Signal signalOf(std::vector<std::pair<Cause, double>> causes) {
    drift::Signal signal;
    for (const auto& [cause, weight] : causes) signal.causes.push_back({cause, weight, {}});
    signal.cause = causes.front().second >= 0.6 ? causes.front().first : Cause::Unknown;
    signal.headline = "something is up";
    return signal;
}

Tried tried(const std::string& action, CareVerdict verdict, int cardVersion = 1) {
    return {action, at(1), verdict, cardVersion};
}

/// What is proposed when every proposal is done by its card and changes nothing.
std::vector<std::string> allTheWay(const drift::Signal& signal, const Wear& wear) {
    std::vector<std::string> way;
    std::vector<Tried> past;
    for (int i = 0; i < 20; ++i) {
        const Advice advice = nextCare(signal, past, wear);
        if (advice.action.empty()) break;
        way.push_back(advice.action);
        past.push_back(tried(advice.action, CareVerdict::NoChange));
    }
    return way;
}

TEST(Ladder, OfLossTroubleWithoutACauseGoesFromGrooveToDiagnostics) {
    EXPECT_EQ(allTheWay(signalOf({{Cause::Unknown, 1.0}}), {}),
              (std::vector<std::string>{"groove_clean", "clamp_clean", "lens_clean", "arc_calibration",
                                        "electrode_replace", "diagnostic"}));
}

TEST(Ladder, OfCleaveTroubleGoesFromPadsToRaising) {
    EXPECT_EQ(allTheWay(signalOf({{Cause::Cleaver, 0.9}, {Cause::Groove, 0.1}}), {}),
              (std::vector<std::string>{"cleaver_clean", "blade_clean", "blade_rotate", "blade_raise"}));
}

TEST(Ladder, BeginsWithTheLikelyPart) {
    const auto first = [](Cause cause, Wear wear) {
        return nextCare(signalOf({{cause, 0.9}, {Cause::Unknown, 0.1}}), {}, wear).action;
    };
    EXPECT_EQ(first(Cause::Groove, {}), "groove_clean");
    EXPECT_EQ(first(Cause::Calibration, {}), "arc_calibration");
    EXPECT_EQ(first(Cause::Electrode, {4400, 5000}), "electrode_replace");
    EXPECT_EQ(first(Cause::Cleaver, {}), "cleaver_clean");
    EXPECT_EQ(first(Cause::Fibre, {}), "");
}

TEST(Ladder, TriesTheCalibrationBeforeYoungElectrodesAreReplaced) {
    const auto signal = signalOf({{Cause::Electrode, 0.9}});
    EXPECT_EQ(nextCare(signal, {}, {800, 5000}).action, "arc_calibration");
    EXPECT_EQ(nextCare(signal, {}, {4800, 5000}).action, "electrode_replace");
    EXPECT_EQ(nextCare(signal, {}, {std::nullopt, 5000}).action, "electrode_replace");
}

TEST(Ladder, PutsTheGentlerOfTwoCloseCausesFirst) {
    EXPECT_EQ(nextCare(signalOf({{Cause::Electrode, 0.5}, {Cause::Groove, 0.4}}), {}, {}).action,
              "groove_clean");
    EXPECT_EQ(nextCare(signalOf({{Cause::Electrode, 0.9}, {Cause::Groove, 0.1}}), {}, {}).action,
              "electrode_replace");
}

TEST(Ladder, WaitsForTheVerdictOfWhatWasDone) {
    const auto signal = signalOf({{Cause::Groove, 0.9}});
    const std::vector<Tried> past{tried("groove_clean", CareVerdict::TooEarly)};
    EXPECT_EQ(nextCare(signal, past, {}).wait, Wait::ForVerdict);
    EXPECT_EQ(nextCare(signal, {}, {}).wait, Wait::No);
}

TEST(Ladder, GoesOnWhenItDidNotHelpAndSaysSo) {
    const auto signal = signalOf({{Cause::Groove, 0.9}});
    for (const CareVerdict verdict : {CareVerdict::NoChange, CareVerdict::Worse}) {
        const std::vector<Tried> past{tried("groove_clean", verdict)};
        const Advice advice = nextCare(signal, past, {});
        EXPECT_EQ(advice.action, "clamp_clean");
        EXPECT_NE(advice.why.find("cleaning the grooves"), std::string::npos) << advice.why;
    }
}

TEST(Ladder, OffersOnceMoreWhatWasNotDoneByItsCardOrHelpedInPart) {
    const auto signal = signalOf({{Cause::Groove, 0.9}});
    std::vector<Tried> typed{tried("groove_clean", CareVerdict::NoChange, 0)};
    EXPECT_EQ(nextCare(signal, typed, {}).action, "groove_clean");
    typed.push_back(tried("groove_clean", CareVerdict::NoChange, 0));
    EXPECT_EQ(nextCare(signal, typed, {}).action, "clamp_clean");
    std::vector<Tried> part{tried("groove_clean", CareVerdict::Better)};
    EXPECT_EQ(nextCare(signal, part, {}).action, "groove_clean");
    part.push_back(tried("groove_clean", CareVerdict::Better));
    EXPECT_EQ(nextCare(signal, part, {}).action, "clamp_clean");
}

TEST(Ladder, SendsAFibreFaultToNoTool) {
    const Advice advice = nextCare(signalOf({{Cause::Fibre, 0.8}}), {}, {});
    EXPECT_TRUE(advice.action.empty());
    EXPECT_NE(advice.why.find("another splicer"), std::string::npos);
}

// Whatever the weights say, the diagnostic run is last, blades are cleaned before they are turned and turned
// before they are raised, and no rung comes twice.
RC_GTEST_PROP(Ladder, NeverGoesFromDrasticToDiagnosticsFirst, ()) {
    const auto weight = [] { return *rc::gen::inRange(0, 100) / 100.0; };
    const auto signal = signalOf({{Cause::Groove, weight()},
                                  {Cause::Electrode, weight()},
                                  {Cause::Calibration, weight()},
                                  {Cause::Unknown, weight()}});
    const auto arcs = *rc::gen::inRange<std::uint32_t>(0, 6000);
    const auto way = allTheWay(signal, {arcs, 5000});
    RC_ASSERT(way.size() == 6U);
    RC_ASSERT(way.back() == "diagnostic");
    auto sorted = way;
    std::ranges::sort(sorted);
    RC_ASSERT(std::ranges::adjacent_find(sorted) == sorted.end());
    const auto place = [&](const char* rung) { return std::ranges::find(way, rung) - way.begin(); };
    RC_ASSERT(place("groove_clean") < place("clamp_clean"));
    RC_ASSERT(place("clamp_clean") < place("lens_clean"));
}

}  // namespace
}  // namespace arc::care
