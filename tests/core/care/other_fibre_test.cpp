// SPDX-License-Identifier: GPL-3.0-or-later
// A mass splicer's calibration holds for the type and the number of fibres it was made with, and for no other
// (common practice); a single-fibre splicer is calibrated with one fibre of ITU-T G.652 for all its work.
#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/care/queues.hpp"
#include "tests/support/care_bench.hpp"

namespace arc::care {
namespace {

using namespace arc::test;

std::vector<OwedStretch> owedWith(const Tool& tool, const std::vector<CareRecord>& records,
                                  const SplicerHistory& history) {
    return calibrationOwed(tool, records, history, smallDeck(), Settings{});
}

CareRecord madeWith(double day, const std::string& type, int fibres, const Tool& tool = mass()) {
    return calibrationOf(tool, day, Adequacy::Adequate, Adequacy::Adequate, type, fibres);
}

HistoryArc& arcIn(SplicerHistory& history, double day, int channels, const std::string& mode) {
    HistoryArc& arc = addArc(history, day, channels);
    const auto known = std::ranges::find(history.modes, mode);
    arc.mode = static_cast<std::uint32_t>(known - history.modes.begin());
    if (known == history.modes.end()) history.modes.push_back(mode);
    return arc;
}

void inCables(SplicerHistory& history, HistoryArc& arc, std::vector<std::string> fibreTypes) {
    HistoryClosure closure;
    for (std::string& type : fibreTypes) closure.cables.emplace_back().fibreType = std::move(type);
    arc.closure = static_cast<std::uint32_t>(history.closures.size());
    history.closures.push_back(std::move(closure));
}

TEST(OtherFibre, AnotherCountIsOwedForThoseArcsOnly) {
    SplicerHistory history = historyOf(mass());
    addArc(history, 1, 12);
    addArc(history, 2, 8);
    addArc(history, 3, 8);
    addArc(history, 4, 12);
    const auto owed = owedWith(mass(), {madeWith(0, "G.652.D", 12)}, history);
    ASSERT_EQ(owed.size(), 1U);
    EXPECT_EQ(owed[0].condition, Condition::OtherFibre);
    EXPECT_EQ(owed[0].from, at(2));
    EXPECT_EQ(owed[0].to, at(4)) << "twelve again: what it was calibrated for";
    EXPECT_EQ(owedAt(owed, mass().id, at(1)), nullptr);
    EXPECT_NE(owedAt(owed, mass().id, at(3)), nullptr);
    EXPECT_EQ(owedAt(owed, mass().id, at(4)), nullptr);
    EXPECT_TRUE(
        owedWith(mass(),
                 {madeWith(0, "G.652.D", 12), madeWith(1.5, "G.652.D", 8), madeWith(3.5, "G.652.D", 12)},
                 history)
            .empty())
        << "calibrated before each change";
}

TEST(OtherFibre, AnotherTypeIsOwedByTheModeOrByTheCable) {
    const auto owedFor = [](const char* made, const char* mode, std::vector<std::string> cables) {
        SplicerHistory history = historyOf(mass());
        inCables(history, arcIn(history, 1, 12, mode), std::move(cables));
        return owedWith(mass(), {madeWith(0, made, 12)}, history).size();
    };
    EXPECT_EQ(owedFor("G.652.D", "G.652-G.652", {}), 0U);
    EXPECT_EQ(owedFor("G.652.D", "G.657-G.657", {}), 1U);
    EXPECT_EQ(owedFor("G.657.A1", "G.652-G.657", {}), 0U);
    EXPECT_EQ(owedFor("G.652.D", "G.652-G.652", {"G.652.D", "G.657.A1"}), 0U) << "one side is of it";
    EXPECT_EQ(owedFor("G.652.D", "G.652-G.652", {"G.657.A1"}), 1U) << "the fibre to be spliced counts too";
    EXPECT_EQ(owedFor("G.652.D", "ribbon", {"G.657.A1"}), 1U);
    EXPECT_EQ(owedFor("G.652.D", "ribbon", {"some fibre"}), 0U) << "no type is named";
}

TEST(OtherFibre, IsNoMatterForASingleFibreSplicer) {
    SplicerHistory history = historyOf(single());
    inCables(history, arcIn(history, 1, 1, "G.657-G.657"), {"G.657.A1"});
    EXPECT_TRUE(owedWith(single(), {madeWith(0, "G.652.D", 1, single())}, history).empty());
    const auto wrong = owedWith(
        single(), {careOf(single(), "lens_clean", 0), madeWith(0.5, "G.657.A1", 1, single())}, history);
    ASSERT_EQ(wrong.size(), 1U);
    EXPECT_FALSE(wrong[0].to) << "and G.657 never calibrates one";
}

TEST(OtherFibre, IsNotKnownOfACalibrationThatDoesNotSay) {
    SplicerHistory history = historyOf(mass());
    addArc(history, 1, 8);
    EXPECT_TRUE(owedWith(mass(), {careOf(mass(), "arc_calibration", 0)}, history).empty());
    EXPECT_TRUE(owedWith(mass(), {}, history).empty());
}

TEST(OtherFibre, CalibratingForItEndsWhatWasOwedAndNothingElseDoes) {
    SplicerHistory history = historyOf(mass());
    addArcs(history, 0, 10, 50, 12);
    const CareRecord lenses = careOf(mass(), "lens_clean", 2);
    const auto wrong = owedWith(mass(), {lenses, madeWith(3.1, "G.652.D", 8)}, history);
    ASSERT_FALSE(wrong.empty());
    EXPECT_FALSE(wrong.back().to);
    for (const HistoryArc& arc : history.arcs)
        EXPECT_EQ(owedAt(wrong, mass().id, arc.at) != nullptr, arc.at >= lenses.at);
    const auto right =
        owedWith(mass(), {lenses, madeWith(3.1, "G.652.D", 8), madeWith(4.1, "G.652.D", 12)}, history);
    EXPECT_EQ(right.back().to, at(4.1));
    const auto failed = owedWith(
        mass(), {madeWith(0, "G.652.D", 8), calibrationOf(mass(), 4.1, Adequacy::NotAdequate)}, history);
    EXPECT_FALSE(failed.back().to) << "not adequate";
}

TEST(OtherFibre, MoreFibresThanGroovesAreNoCalibration) {
    const auto owed =
        owedWith(mass(), {careOf(mass(), "lens_clean", 1), madeWith(2, "G.652.D", 16)}, historyOf(mass()));
    ASSERT_EQ(owed.size(), 1U);
    EXPECT_FALSE(owed[0].to);
}

TEST(OtherFibre, ShowsInTheLifeAndHoldsTheSplicer) {
    Situation situation = situationAt(3);
    situation.records = {madeWith(0, "G.652.D", 12)};
    addArc(situation.histories[0], 1, 12);
    auto life = kit::lifeOf(situation, mass().id);
    EXPECT_EQ(life->calibration->state, CalibrationState::Valid);
    EXPECT_EQ(life->calibration->madeFor->fibreCount, 12);
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "arc_calibration"), nullptr);
    addArc(situation.histories[0], 2, 8);
    life = kit::lifeOf(situation, mass().id);
    EXPECT_EQ(life->calibration->state, CalibrationState::Owed);
    const auto items = dueItems(situation, {});
    const DueItem* item = itemOf(items, mass(), "arc_calibration");
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->queue, Queue::Hold);
    EXPECT_EQ(item->basis, Basis::Condition);
    EXPECT_NE(item->why.find("12 fibres of G.652.D"), std::string::npos) << item->why;
    EXPECT_EQ(item->since, at(2));
    situation.records.push_back(madeWith(2.5, "G.652.D", 8));
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "arc_calibration"), nullptr);
    EXPECT_EQ(kit::lifeOf(situation, mass().id)->calibration->madeFor->fibreCount, 8);
}

// Against a reading that knows only one arc at a time: owed since care or a calibration that failed, or made
// for other fibre than this arc's.
RC_GTEST_PROP(OtherFibreProperty, EveryArcIsOwedJustWhenAPlainReadingSaysSo, ()) {
    SplicerHistory history = historyOf(mass());
    history.modes = {"G.652-G.652", "G.657-G.657", "ribbon"};
    const std::vector<std::string> types{"G.652.D", "G.657.A1"};
    std::vector<CareRecord> records;
    std::vector<std::pair<Instant, bool>> expected;
    enum class Hard { No, Yes } hard = Hard::No;
    std::optional<CalibrationResult> made;
    const auto count = *rc::gen::inRange(1, 40);
    for (int i = 0; i < count; ++i) {
        const double day = 0.1 * (i + 1);
        const int what = *rc::gen::inRange(0, 6);
        if (what == 0) {
            records.push_back(careOf(mass(), "lens_clean", day));
            hard = Hard::Yes;
        } else if (what < 3) {
            const bool good = *rc::gen::inRange(0, 4) > 0;
            CareRecord record =
                calibrationOf(mass(), day, good ? Adequacy::Adequate : Adequacy::NotAdequate,
                              Adequacy::Adequate, *rc::gen::elementOf(types), *rc::gen::element(8, 12));
            hard = good ? Hard::No : Hard::Yes;
            if (good) made = record.calibration;
            records.push_back(std::move(record));
        } else {
            HistoryArc& arc = addArc(history, day, *rc::gen::element(8, 12));
            arc.mode = *rc::gen::inRange<std::uint32_t>(0, 3);
            const bool typeFits = !made || arc.mode == 2 || (arc.mode == 0) == (made->fibreType == types[0]);
            const bool fits = !made || (typeFits && made->fibreCount == arc.channels);
            expected.emplace_back(arc.at, hard == Hard::Yes || !fits);
        }
    }
    const auto owed = owedWith(mass(), records, history);
    for (const auto& [when, is] : expected) RC_ASSERT((owedAt(owed, mass().id, when) != nullptr) == is);
    for (std::size_t s = 1; s < owed.size(); ++s) {
        RC_ASSERT(owed[s - 1].to.has_value());
        RC_ASSERT(*owed[s - 1].to <= owed[s].from);
    }
}

}  // namespace
}  // namespace arc::care
