// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/kit/life.hpp"

#include <algorithm>
#include <gtest/gtest.h>

#include "core/care/run.hpp"
#include "tests/support/care_bench.hpp"

namespace arc::kit {
namespace {

using namespace arc::test;

const LifeBar& bar(const ToolLife& life, const std::string& counter) {
    const auto found = std::ranges::find(life.bars, counter, &LifeBar::counter);
    if (found == life.bars.end()) throw std::runtime_error("no bar " + counter);
    return *found;
}

TEST(Life, CountsArcsSinceEachCareApart) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 100, 12);
    addArcs(situation.histories[0], 2, 3, 30, 12);
    addArcs(situation.histories[0], 4, 5, 7, 12);
    situation.records = {careOf(mass(), "electrode_replace", 1.5), careOf(mass(), "groove_clean", 3.5)};
    const ToolLife life = *lifeOf(situation, mass().id);
    EXPECT_EQ(life.uses, 137U);
    EXPECT_EQ(bar(life, "electrodes").used, 37U);
    EXPECT_EQ(bar(life, "electrodes").limit, 5000U);
    EXPECT_EQ(bar(life, "electrodes").certainty, Certainty::Exact);
    EXPECT_EQ(bar(life, "grooves").used, 7U);
    EXPECT_EQ(bar(life, "clamps").used, 137U);
    EXPECT_EQ(bar(life, "clamps").certainty, Certainty::AtLeast);
    EXPECT_FALSE(bar(life, "lenses").limit);
}

TEST(Life, IsNotResetByStabilisingNorByACleaningThatFailed) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 50, 12);
    CareRecord dirty = careOf(mass(), "groove_clean", 2);
    dirty.fields[std::string(care::field::outcome)] = "not_reached";
    situation.records = {careOf(mass(), "stabilise", 2), dirty};
    const ToolLife life = *lifeOf(situation, mass().id);
    EXPECT_EQ(bar(life, "electrodes").used, 50U);
    EXPECT_EQ(bar(life, "grooves").used, 50U);
}

TEST(Life, FollowsTheSplicersOwnCounterForArcsOutsideTheBook) {
    care::Situation situation = situationAt(10);
    auto& history = situation.histories[0];
    situation.records = {careOf(mass(), "electrode_replace", 0)};
    addArc(history, 1, 12).counter = ArcCount{1000};
    addArc(history, 2, 12).counter = ArcCount{1001};
    addArc(history, 3, 12).counter = ArcCount{1201};
    EXPECT_EQ(bar(*lifeOf(situation, mass().id), "electrodes").used, 202U);
    EXPECT_EQ(lifeOf(situation, mass().id)->counter, ArcCount{1201});
}

TEST(Life, LeavesOutAJumpOfTheCounterThatWasCorrected) {
    care::Situation situation = situationAt(10);
    auto& history = situation.histories[0];
    addArc(history, 1, 12).counter = ArcCount{1000};
    addArc(history, 2, 12).counter = ArcCount{10010};  // typed wrong
    addArc(history, 3, 12).counter = ArcCount{1002};
    addArc(history, 4, 12).counter = ArcCount{7};  // replaced board
    addArc(history, 5, 12).counter = ArcCount{8};
    EXPECT_GT(usesOf(situation, mass().id).back().total, 9000U);
    situation.corrections = {{EntryId{}, mass().id, at(2), ArcCount{1001}, "typed wrong"},
                             {EntryId{}, mass().id, at(3.5), ArcCount{6}, "new board"}};
    EXPECT_EQ(usesOf(situation, mass().id).back().total, 5U);
    const ToolLife life = *lifeOf(situation, mass().id);
    EXPECT_EQ(life.counter, ArcCount{8});
    EXPECT_EQ(std::ranges::count(life.timeline, TimelineLine::Kind::Correction, &TimelineLine::kind), 2);
}

TEST(Life, GivesACleaversUseToTheSplicerItIsPairedWith) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    addArcs(situation.histories[0], 5, 6, 10, 12);
    addArcs(situation.histories[1], 5, 6, 3, 1);
    EXPECT_EQ(lifeOf(situation, cleaver().id)->uses, 40U) << "two cleaves an arc";
    Pairing swap;
    swap.splicer = single().id;
    swap.cleaver = cleaver().id;
    swap.at = at(2);
    situation.pairings.push_back(swap);
    EXPECT_EQ(lifeOf(situation, cleaver().id)->uses, 26U);
    EXPECT_EQ(lifeOf(situation, cleaver().id)->pairedWith, single().id);
    EXPECT_EQ(lifeOf(situation, single().id)->pairedWith, cleaver().id);
    EXPECT_FALSE(lifeOf(situation, mass().id)->pairedWith);
}

TEST(Life, SharesRibbonStripsAmongTheStrippers) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    addArcs(situation.histories[1], 0, 1, 50, 1);
    EXPECT_EQ(lifeOf(situation, stripper().id)->uses, 20U);
    situation.tools.push_back(toolNamed("R-02", Stripper{}));
    EXPECT_EQ(lifeOf(situation, stripper().id)->uses, 10U);
    EXPECT_EQ(bar(*lifeOf(situation, stripper().id), "strips").certainty, Certainty::Shared);
}

TEST(Life, SaysHowTheCalibrationStands) {
    using care::CalibrationState;
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 9, 90, 12);
    EXPECT_EQ(lifeOf(situation, mass().id)->calibration->state, CalibrationState::NeverDone);
    situation.records = {careOf(mass(), "arc_calibration", 1)};
    EXPECT_EQ(lifeOf(situation, mass().id)->calibration->state, CalibrationState::Unproved);
    situation.records = {calibrationOf(mass(), 1)};
    EXPECT_EQ(lifeOf(situation, mass().id)->calibration->state, CalibrationState::Valid);
    EXPECT_EQ(lifeOf(situation, mass().id)->calibration->at, at(1));
    situation.records.push_back(careOf(mass(), "lens_clean", 2));
    EXPECT_EQ(lifeOf(situation, mass().id)->calibration->state, CalibrationState::Owed);
    situation.records.push_back(
        calibrationOf(mass(), 3, Adequacy::Adequate, Adequacy::Adequate, "G.652.D", 1));
    const auto life = lifeOf(situation, mass().id)->calibration;
    EXPECT_EQ(life->state, CalibrationState::Owed);
    EXPECT_EQ(life->lastFaults, (std::vector{care::CalibrationFault::WrongFibreCount}));
}

TEST(Life, OwesACalibrationToASplicerThatHasLainIdle) {
    care::Situation situation = situationAt(30);
    addArcs(situation.histories[0], 0, 9, 90, 12);
    ASSERT_TRUE(owedNow(situation, mass()));
    EXPECT_EQ(owedNow(situation, mass())->condition, care::Condition::IdleStretch);
    situation.now = at(15);
    EXPECT_FALSE(owedNow(situation, mass()));
    situation.now = at(30);
    situation.records = {calibrationOf(mass(), 29)};
    EXPECT_FALSE(owedNow(situation, mass()));
    EXPECT_FALSE(owedNow(situation, single())) << "never used";
}

TEST(Life, OfAToolThatIsNotInTheKitIsAProblem) {
    EXPECT_FALSE(lifeOf(situationAt(1), toolNamed("X", Stripper{}).id));
}

TEST(Timeline, TellsWhenAToolWentOutOfServiceAndCameBack) {
    care::Situation situation = situationAt(10);
    const auto change = [&](double day, const char* text) {
        JournalLine line;
        line.at = at(day);
        line.who = "Ada";
        line.kind = "tool";
        line.text = text;
        situation.toolChanges.push_back({single().id, line});
    };
    change(1, "Splicer S-02");
    change(2, "Splicer S-02 taken out of service");
    change(3, "Splicer S-02");
    change(4, "Splicer S-02 \"Wren\"");
    const auto lines = lifeOf(situation, single().id)->timeline;
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[3].text, "Entered in the kit");
    EXPECT_EQ(lines[2].text, "Taken out of service");
    EXPECT_EQ(lines[2].by, "Ada");
    EXPECT_EQ(lines[1].text, "Back in service");
    EXPECT_EQ(lines[0].text, "Entry changed: Splicer S-02 \"Wren\"");
    EXPECT_TRUE(lifeOf(situation, stripper().id)->timeline.empty());
}

TEST(Timeline, HoldsCareAndPairingsNewestFirst) {
    care::Situation situation = situationAt(10);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    situation.records = {careOf(mass(), "groove_clean", 2), careOf(mass(), "environment_change", 3)};
    const auto lines = lifeOf(situation, mass().id)->timeline;
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].kind, TimelineLine::Kind::Environment);
    EXPECT_EQ(lines[1].kind, TimelineLine::Kind::Care);
    EXPECT_EQ(lines[1].usesBefore, 10U);
    EXPECT_EQ(lines[2].kind, TimelineLine::Kind::Pairing);
}

}  // namespace
}  // namespace arc::kit
