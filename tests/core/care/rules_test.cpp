// SPDX-License-Identifier: GPL-3.0-or-later
// Check values: common practice of the trade (arc power and position both adequate; single-fibre splicers
// ITU-T G.652 only; mass splicers fibre type and count of the work; up to four runs, then diagnostics;
// calibration owed after lens or electrode work, an environment jump or long disuse).
#include "core/care/rules.hpp"

#include <algorithm>
#include <gtest/gtest.h>

#include "core/care/record_check.hpp"
#include "core/care/run.hpp"
#include "tests/support/care_bench.hpp"

namespace arc::care {
namespace {

using namespace arc::test;

std::vector<OwedStretch> owedWith(const Tool& tool, std::vector<CareRecord> records,
                                  const SplicerHistory& history) {
    return calibrationOwed(tool, records, history, smallDeck(), Settings{});
}

bool owes(const std::vector<Obligation>& open, const std::string& action) {
    return std::ranges::find(open, action, &Obligation::action) != open.end();
}

TEST(Calibration, CountsOnlyWithBothResultsAdequate) {
    const Splicer s{SplicerKind::MassFusion, 12, ArcControl::Manual};
    const auto faults = [&](Adequacy power, Adequacy position) {
        return faultsOf({power, position, "G.652.D", 12, 1}, s, {"G.652-G.652", 12, {}});
    };
    using enum Adequacy;
    EXPECT_TRUE(faults(Adequate, Adequate).empty());
    EXPECT_EQ(faults(NotAdequate, Adequate), (std::vector{CalibrationFault::PowerNotAdequate}));
    EXPECT_EQ(faults(Adequate, NotAdequate), (std::vector{CalibrationFault::PositionNotAdequate}));
    EXPECT_EQ(faults(NotAdequate, NotAdequate).size(), 2U);
}

TEST(Calibration, OfASingleFibreSplicerTakesG652AndOneFibre) {
    const Splicer s{SplicerKind::SingleFibre, 1, ArcControl::Manual};
    const auto faults = [&](const char* type, int count) {
        return faultsOf({Adequacy::Adequate, Adequacy::Adequate, type, count, 1}, s, {"G.657-G.657", 1, {}});
    };
    EXPECT_TRUE(faults("G.652.D", 1).empty());
    EXPECT_TRUE(faults("G.652.B", 1).empty());
    EXPECT_EQ(faults("G.657.A1", 1), (std::vector{CalibrationFault::WrongFibreType}));
    EXPECT_EQ(faults("", 1), (std::vector{CalibrationFault::WrongFibreType}));
    EXPECT_EQ(faults("G.652.D", 12), (std::vector{CalibrationFault::WrongFibreCount}));
}

TEST(Calibration, OfAMassSplicerTakesTheTypeAndCountOfTheWork) {
    const Splicer s{SplicerKind::MassFusion, 12, ArcControl::Manual};
    const auto faults = [&](const char* type, int count, const char* mode, int channels) {
        return faultsOf({Adequacy::Adequate, Adequacy::Adequate, type, count, 1}, s, {mode, channels, {}});
    };
    EXPECT_TRUE(faults("G.652.D", 12, "G.652-G.652", 12).empty());
    EXPECT_TRUE(faults("G.657.A1", 8, "G.657-G.657", 8).empty());
    EXPECT_TRUE(faults("G.657.A1", 12, "G.652-G.657", 12).empty());
    EXPECT_EQ(faults("G.657.A1", 12, "G.652-G.652", 12), (std::vector{CalibrationFault::WrongFibreType}));
    EXPECT_EQ(faults("G.652.D", 8, "G.652-G.652", 12), (std::vector{CalibrationFault::WrongFibreCount}));
    EXPECT_EQ(faults("G.652.D", 1, "G.652-G.652", 12), (std::vector{CalibrationFault::WrongFibreCount}));
    EXPECT_TRUE(faults("G.652.D", 12, "standard ribbon", 12).empty())
        << "a label without a type says nothing";
}

TEST(Calibration, IsOwedFromElectrodeWorkUntilOneCounts) {
    SplicerHistory history = historyOf(mass());
    addArcs(history, 0, 10, 100, 12);
    const std::vector<CareRecord> records{careOf(mass(), "electrode_replace", 2),
                                          careOf(mass(), "stabilise", 2.01), calibrationOf(mass(), 3)};
    const auto owed = owedWith(mass(), records, history);
    ASSERT_EQ(owed.size(), 1U);
    EXPECT_EQ(owed[0].from, at(2));
    EXPECT_EQ(owed[0].to, at(3));
    EXPECT_EQ(owed[0].after, "electrode_replace");
    EXPECT_EQ(owedAt(owed, mass().id, at(1.99)), nullptr);
    EXPECT_NE(owedAt(owed, mass().id, at(2)), nullptr);
    EXPECT_NE(owedAt(owed, mass().id, at(2.99)), nullptr);
    EXPECT_EQ(owedAt(owed, mass().id, at(3)), nullptr);
    EXPECT_EQ(owedAt(owed, single().id, at(2.5)), nullptr);
}

TEST(Calibration, BeforeStabilisationDoesNotCount) {
    const SplicerHistory history = historyOf(mass());
    const auto early = owedWith(
        mass(),
        {careOf(mass(), "electrode_replace", 2), calibrationOf(mass(), 3), careOf(mass(), "stabilise", 4)},
        history);
    ASSERT_EQ(early.size(), 1U);
    EXPECT_FALSE(early[0].to);
    CareRecord whole = careOf(mass(), "electrode_replace", 2);
    whole.fields[std::string(field::covers)] = "stabilise";
    const auto byCard = owedWith(mass(), {whole, calibrationOf(mass(), 3)}, history);
    ASSERT_EQ(byCard.size(), 1U);
    EXPECT_EQ(byCard[0].to, at(3));
}

TEST(Calibration, IsOwedAfterLensWorkButNotAfterGrooveOrClampWork) {
    const SplicerHistory history = historyOf(single());
    EXPECT_EQ(owedWith(single(), {careOf(single(), "lens_clean", 2)}, history).size(), 1U);
    EXPECT_TRUE(owedWith(single(), {careOf(single(), "groove_clean", 2)}, history).empty());
    EXPECT_TRUE(owedWith(single(), {careOf(single(), "clamp_clean", 2)}, history).empty());
    EXPECT_TRUE(owedWith(single(), {careOf(mass(), "lens_clean", 2)}, history).empty()) << "another tool";
}

TEST(Calibration, ThatFailsMakesOneOwedThatWasNot) {
    const SplicerHistory history = historyOf(single());
    using enum Adequacy;
    const auto owed = owedWith(
        single(), {calibrationOf(single(), 1), calibrationOf(single(), 5, Adequate, NotAdequate)}, history);
    ASSERT_EQ(owed.size(), 1U);
    EXPECT_EQ(owed[0].from, at(5));
    EXPECT_EQ(owed[0].after, "arc_calibration");
}

TEST(Calibration, ImportedWithoutResultsIsTakenAsDoneUnlessItsWordsSayOtherwise) {
    const SplicerHistory history = historyOf(single());
    CareRecord plain = careOf(single(), "arc_calibration", 3);
    EXPECT_EQ(effectOf(plain), Effect::Unproved);
    EXPECT_TRUE(owedWith(single(), {careOf(single(), "lens_clean", 2), plain}, history).front().to);
    plain.detail = "power ok, position NOT adequate";
    EXPECT_EQ(effectOf(plain), Effect::NotReached);
    EXPECT_FALSE(owedWith(single(), {careOf(single(), "lens_clean", 2), plain}, history).front().to);
}

TEST(Calibration, ReadsItsResultsFromTheWordsOfAnImportedEvent) {
    CareRecord record = careOf(mass(), "arc_calibration", 3);
    record.detail = "power and position adequate after 2 runs, G.652.D, 12 fibres; losses still high";
    const auto result = resultOf(record);
    ASSERT_TRUE(result);
    EXPECT_EQ(*result, (CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652", 12, 2}));
    EXPECT_EQ(effectOf(record), Effect::Reached);
    SplicerHistory history = historyOf(mass());
    addArcs(history, 0, 10, 50, 12);
    EXPECT_TRUE(owedWith(mass(), {careOf(mass(), "lens_clean", 2), record}, history).back().to);
    record.detail = "power and position adequate, G.652.D, 8 fibres";
    EXPECT_FALSE(owedWith(mass(), {careOf(mass(), "lens_clean", 2), record}, history).back().to);
    for (const char* open : {"", "done", "power adequate", "power and position adequate"}) {
        record.detail = open;
        EXPECT_FALSE(resultOf(record)) << open;
        EXPECT_EQ(effectOf(record), Effect::Unproved) << open;
    }
}

TEST(Calibration, IsOwedAfterATemperatureJumpOnly) {
    const auto with = [&](double celsiusAfter, ArcControl control) {
        Tool tool = toolNamed("S-01", Splicer{SplicerKind::MassFusion, 12, control});
        SplicerHistory history = historyOf(tool);
        addArc(history, 1, 12).temperature = Temperature{293150};
        addArc(history, 2, 12).temperature =
            Temperature{static_cast<std::int32_t>(273150 + celsiusAfter * 1000)};
        return owedWith(tool, {}, history);
    };
    const auto cold = with(4, ArcControl::Manual);
    ASSERT_EQ(cold.size(), 1U);
    EXPECT_EQ(cold[0].from, at(2));
    EXPECT_EQ(cold[0].condition, Condition::EnvironmentJump);
    EXPECT_EQ(with(36, ArcControl::Manual).size(), 1U);
    EXPECT_TRUE(with(10, ArcControl::Manual).empty());
    EXPECT_TRUE(with(4, ArcControl::SelfCalibrating).empty());
    EXPECT_EQ(with(-11, ArcControl::SelfCalibrating).size(), 1U) << "a drastic change: twice as far";
}

TEST(Calibration, IsOwedAfterAPressureJumpOnly) {
    const auto with = [&](double hectopascalsAfter) {
        SplicerHistory history = historyOf(mass());
        addArc(history, 1, 12).pressure = Pressure{101300};
        addArc(history, 2, 12).pressure = Pressure{static_cast<std::int32_t>(hectopascalsAfter * 100)};
        return owedWith(mass(), {}, history);
    };
    EXPECT_EQ(with(950).size(), 1U);
    EXPECT_TRUE(with(1000).empty());
}

TEST(Calibration, AtTheNewPlaceEndsTheJumpAndBecomesWhatTheNextIsMeasuredFrom) {
    SplicerHistory history = historyOf(mass());
    addArc(history, 1, 12).temperature = Temperature{293150};
    addArc(history, 2, 12).temperature = Temperature{275150};
    addArc(history, 4, 12).temperature = Temperature{275150};
    addArc(history, 5, 12).temperature = Temperature{285150};
    addArc(history, 6, 12).temperature = Temperature{293150};
    const auto owed = owedWith(mass(), {calibrationOf(mass(), 3)}, history);
    ASSERT_EQ(owed.size(), 2U);
    EXPECT_EQ(owed[0].from, at(2));
    EXPECT_EQ(owed[0].to, at(3));
    EXPECT_EQ(owed[1].from, at(6)) << "10 degrees are no jump, 18 are";
}

TEST(Calibration, IsOwedAfterAnIdleStretchOnly) {
    const auto with = [&](double gapDays, std::vector<CareRecord> records, ArcControl control) {
        Tool tool = toolNamed("S-01", Splicer{SplicerKind::MassFusion, 12, control});
        SplicerHistory history = historyOf(tool);
        addArc(history, 1, 12);
        addArc(history, 1 + gapDays, 12);
        return owedWith(tool, std::move(records), history);
    };
    const auto idle = with(20, {}, ArcControl::Manual);
    ASSERT_EQ(idle.size(), 1U);
    EXPECT_EQ(idle[0].from, at(21));
    EXPECT_EQ(idle[0].condition, Condition::IdleStretch);
    EXPECT_TRUE(with(13, {}, ArcControl::Manual).empty());
    EXPECT_TRUE(with(20, {calibrationOf(mass(), 20.9)}, ArcControl::Manual).empty());
    EXPECT_EQ(with(40, {calibrationOf(mass(), 2)}, ArcControl::Manual).size(), 1U);
    EXPECT_TRUE(with(20, {}, ArcControl::SelfCalibrating).empty());
    EXPECT_EQ(with(28, {}, ArcControl::SelfCalibrating).size(), 1U) << "long disuse: twice as long";
}

TEST(Calibration, IsOwedAfterANotedEnvironmentChange) {
    const SplicerHistory history = historyOf(single());
    EXPECT_EQ(owedWith(single(), {careOf(single(), "environment_change", 2)}, history).size(), 1U);
    EXPECT_TRUE(owedWith(single(), {careOf(single(), "note", 2)}, history).empty());
}

TEST(Obligations, OfNewElectrodesAreStabiliseThenCalibrate) {
    const Deck deck = smallDeck();
    std::vector<CareRecord> records{careOf(mass(), "electrode_replace", 2)};
    auto open = openObligations(mass(), records, deck, {});
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[0].action, "stabilise");
    EXPECT_EQ(open[1].action, "arc_calibration");
    records.push_back(careOf(mass(), "stabilise", 2.1));
    open = openObligations(mass(), records, deck, {});
    ASSERT_EQ(open.size(), 1U);
    EXPECT_EQ(open[0].action, "arc_calibration");
    records.push_back(calibrationOf(mass(), 2.2));
    EXPECT_TRUE(openObligations(mass(), records, deck, {}).empty());
}

TEST(Obligations, AreNotClosedByWhatCameBefore) {
    const std::vector<CareRecord> records{calibrationOf(mass(), 1), careOf(mass(), "stabilise", 1.5),
                                          careOf(mass(), "electrode_replace", 2)};
    EXPECT_EQ(openObligations(mass(), records, smallDeck(), {}).size(), 2U);
}

TEST(Diagnostic, IsOwedAfterFourRunsInVainNotAfterThree) {
    using enum Adequacy;
    const auto after = [&](int runs, std::vector<CareRecord> more) {
        CareRecord failed = calibrationOf(single(), 1, NotAdequate, Adequate);
        failed.calibration->runs = runs;
        more.insert(more.begin(), failed);
        return openObligations(single(), more, smallDeck(), {});
    };
    EXPECT_FALSE(owes(after(3, {}), "diagnostic"));
    EXPECT_TRUE(owes(after(4, {}), "diagnostic"));
    EXPECT_TRUE(owes(after(2, {calibrationOf(single(), 2, Adequate, NotAdequate),
                               calibrationOf(single(), 3, Adequate, NotAdequate)}),
                     "diagnostic"));
    EXPECT_FALSE(owes(after(4, {careOf(single(), "diagnostic", 2)}), "diagnostic"));
    EXPECT_FALSE(owes(after(4, {calibrationOf(single(), 2)}), "diagnostic"));
    EXPECT_FALSE(
        owes(after(3, {calibrationOf(single(), 2), calibrationOf(single(), 3, NotAdequate, Adequate)}),
             "diagnostic"))
        << "runs before one that counted are forgotten";
}

TEST(Diagnostic, IsOwedAfterACleaningThatDidNotReachItsEnd) {
    CareRecord dirty = careOf(mass(), "groove_clean", 1);
    dirty.fields[std::string(field::outcome)] = "not_reached";
    EXPECT_TRUE(owes(openObligations(mass(), std::vector{dirty}, smallDeck(), {}), "diagnostic"));
    const CareRecord clean = careOf(mass(), "groove_clean", 1);
    EXPECT_TRUE(openObligations(mass(), std::vector{clean}, smallDeck(), {}).empty());
    EXPECT_TRUE(
        openObligations(mass(), std::vector{dirty, careOf(mass(), "groove_clean", 2)}, smallDeck(), {})
            .empty());
}

TEST(Settings, AreReadInTheirRangeOnly) {
    EXPECT_EQ(withSetting({}, "care.idle_days", "30")->idleDays, 30);
    EXPECT_DOUBLE_EQ(withSetting({}, "care.environment_jump_c", "7.5")->jumpCelsius, 7.5);
    EXPECT_EQ(withSetting({}, "care.ribbon", "web")->ribbon, RibbonKind::WebType);
    EXPECT_EQ(withSetting({}, "theme", "night")->idleDays, 14);
    for (const auto& [key, value] : {std::pair("care.idle_days", "0"),
                                     {"care.idle_days", "many"},
                                     {"care.idle_days", "3 "},
                                     {"care.environment_jump_c", "nan"},
                                     {"care.ribbon", "round"},
                                     {"care.self_calibrating_times", "0"},
                                     {"care.calibration_runs", "400"}})
        EXPECT_FALSE(withSetting({}, key, value)) << key << value;
}

TEST(RecordCheck, RefusesCareOfTheWrongTool) {
    const Situation situation = situationAt(10);
    EXPECT_TRUE(checkedRecord(situation, careOf(mass(), "groove_clean", 1)));
    EXPECT_FALSE(checkedRecord(situation, careOf(cleaver(), "groove_clean", 1)));
    EXPECT_FALSE(checkedRecord(situation, careOf(mass(), "blade_rotate", 1)));
    EXPECT_FALSE(checkedRecord(situation, careOf(mass(), "dance", 1)));
    EXPECT_FALSE(checkedRecord(situation, careOf(toolNamed("S-99", Splicer{}), "groove_clean", 1)));
}

TEST(RecordCheck, WantsBothResultsAndTheFibreOfACalibration) {
    const Situation situation = situationAt(10);
    EXPECT_FALSE(checkedRecord(situation, careOf(mass(), "arc_calibration", 1)));
    EXPECT_TRUE(checkedRecord(situation, calibrationOf(mass(), 1)));
    EXPECT_FALSE(
        checkedRecord(situation, calibrationOf(mass(), 1, Adequacy::Adequate, Adequacy::Adequate, "")));
    CareRecord half = careOf(mass(), "arc_calibration", 1);
    half.fields["power"] = "adequate";
    EXPECT_FALSE(readFields(half));
}

}  // namespace
}  // namespace arc::care
