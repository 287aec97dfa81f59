// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/queues.hpp"

#include <algorithm>
#include <gtest/gtest.h>

#include "core/care/run.hpp"
#include "tests/support/care_bench.hpp"
#include "tests/support/memory_logbook.hpp"

namespace arc::care {
namespace {

using namespace arc::test;
using drift::Cause;

drift::SplicerReport reportOf(const Tool& splicer, Cause cause, double raisedDay) {
    drift::Signal signal;
    signal.key = "12/single_groove/5@" + std::to_string(raisedDay);
    signal.stratum = "G.652-G.652 / 12";
    signal.chart = drift::ChartKind::SingleGroove;
    signal.cause = cause;
    signal.causes = {{cause, 0.9, {"groove 5: 0.04 to 0.08 dB"}}};
    signal.raisedAt = at(raisedDay);
    signal.beganAt = at(raisedDay - 1);
    signal.headline = "Groove 5 is dirty, likely";
    drift::StratumReport stratum;
    stratum.stratum = signal.stratum;
    stratum.signals = {signal};
    drift::SplicerReport report;
    report.splicer = splicer.id;
    report.label = splicer.label;
    report.strata = {stratum};
    return report;
}

TEST(Queues, AreEmptyForAFreshCrew) {
    EXPECT_TRUE(dueItems(situationAt(1), {}).empty());
}

TEST(Queues, ByCountBeginAtTheLimitNotBefore) {
    Situation situation = situationAt(2);
    addArcs(situation.histories[0], 0, 1, 199, 12);
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "groove_clean"), nullptr);
    addArc(situation.histories[0], 1.5, 12);
    const auto items = dueItems(situation, {});
    const DueItem* item = itemOf(items, mass(), "groove_clean");
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->queue, Queue::ShiftEnd);
    EXPECT_EQ(item->basis, Basis::Count);
    EXPECT_EQ(item->since, at(1.5));
    EXPECT_EQ(item->why, "200 arcs, every 200");
    EXPECT_NE(item->basedOn.find("common practice"), std::string::npos);
    EXPECT_FALSE(item->otherwise.empty());
    situation.records = {careOf(mass(), "groove_clean", 1.6)};
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "groove_clean"), nullptr);
}

TEST(Queues, AreNotClosedByTheSameCareOfAnotherTool) {
    Situation situation = situationAt(2);
    addArcs(situation.histories[0], 0, 1, 300, 12);
    situation.records = {careOf(single(), "groove_clean", 1.6)};
    EXPECT_NE(itemOf(dueItems(situation, {}), mass(), "groove_clean"), nullptr);
}

TEST(Queues, HoldAfterElectrodeWorkUntilStabilisedAndCalibrated) {
    Situation situation = situationAt(3);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    situation.records = {careOf(mass(), "electrode_replace", 2)};
    auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, mass(), "stabilise"), nullptr);
    ASSERT_NE(itemOf(items, mass(), "arc_calibration"), nullptr);
    EXPECT_EQ(itemOf(items, mass(), "stabilise")->queue, Queue::Hold);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->queue, Queue::Hold);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->basis, Basis::Obligation);
    EXPECT_EQ(holdsOf(items, situation, mass().id).size(), 2U);
    EXPECT_TRUE(holdsOf(items, situation, single().id).empty());
    situation.records.push_back(careOf(mass(), "stabilise", 2.1));
    situation.records.push_back(calibrationOf(mass(), 2.2));
    EXPECT_TRUE(holdsOf(dueItems(situation, {}), situation, mass().id).empty());
}

TEST(Queues, KeepAHoldThatSomebodyOverrodeAndNameThePerson) {
    Situation situation = situationAt(3);
    situation.records = {careOf(mass(), "lens_clean", 2)};
    const std::string key = itemOf(dueItems(situation, {}), mass(), "arc_calibration")->key;
    HoldOverride named;
    named.tool = mass().id;
    named.dueKey = key;
    named.by = "Kit";
    named.reason = "last ribbon of the closure";
    situation.overrides = {named};
    const auto items = dueItems(situation, {});
    ASSERT_TRUE(itemOf(items, mass(), "arc_calibration")->overridden);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->overridden->by, "Kit");
    EXPECT_EQ(holdsOf(items, situation, mass().id).size(), 1U);
    // The next lens clean is another occasion: the old override does not cover it.
    situation.records.push_back(calibrationOf(mass(), 2.2));
    situation.records.push_back(careOf(mass(), "lens_clean", 2.5));
    EXPECT_FALSE(itemOf(dueItems(situation, {}), mass(), "arc_calibration")->overridden);
}

TEST(Queues, HoldWhenTheWeatherJumpedUnlessTheModeCalibratesItself) {
    Situation situation = situationAt(3);
    addArc(situation.histories[0], 1, 12).temperature = Temperature{293150};
    addArc(situation.histories[0], 2, 12).temperature = Temperature{273150};
    auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, mass(), "arc_calibration"), nullptr);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->queue, Queue::Hold);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->basis, Basis::Condition);
    EXPECT_EQ(calibrationOwed(situation).size(), 1U);
    std::get<Splicer>(situation.tools[0].traits).arcControl = ArcControl::SelfCalibrating;
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "arc_calibration"), nullptr);
    EXPECT_TRUE(calibrationOwed(situation).empty());
}

TEST(Queues, HoldASplicerThatLayIdleBeforeItsFirstArc) {
    Situation situation = situationAt(40);
    addArcs(situation.histories[0], 0, 1, 10, 12);
    const auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, mass(), "arc_calibration"), nullptr);
    EXPECT_EQ(itemOf(items, mass(), "arc_calibration")->since, at(0.9 + 14));
    situation.settings.idleDays = 60;
    EXPECT_EQ(itemOf(dueItems(situation, {}), mass(), "arc_calibration"), nullptr);
}

// common practice: electrodes are exchanged at about 5,000 arcs, or earlier when the losses say so.
TEST(Electrodes, AreDueByCountOrForecastWhicheverIsEarlier) {
    Situation situation = situationAt(100);
    situation.records = {careOf(mass(), "electrode_replace", 0), careOf(mass(), "stabilise", 0.01),
                         calibrationOf(mass(), 0.02)};
    addArcs(situation.histories[0], 1, 99, 4999, 12);
    auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, mass(), "electrode_replace"), nullptr);
    EXPECT_EQ(itemOf(items, mass(), "electrode_replace")->queue, Queue::BenchDay) << "order, not yet replace";
    EXPECT_EQ(itemOf(items, mass(), "electrode_replace")->title, "Order electrodes for S-01");
    addArc(situation.histories[0], 99.5, 12);
    items = dueItems(situation, {});
    EXPECT_EQ(itemOf(items, mass(), "electrode_replace")->queue, Queue::ShiftEnd);
    EXPECT_EQ(itemOf(items, mass(), "electrode_replace")->basis, Basis::Count);

    Situation young = situationAt(100);
    young.records = situation.records;
    addArcs(young.histories[0], 1, 99, 3000, 12);
    EXPECT_EQ(itemOf(dueItems(young, {}), mass(), "electrode_replace"), nullptr);
    drift::SplicerReport report;
    report.splicer = mass().id;
    report.electrodes.arcsLeft = 0;
    EXPECT_EQ(itemOf(dueItems(young, {&report, 1}), mass(), "electrode_replace")->basis, Basis::Forecast);
    EXPECT_EQ(itemOf(dueItems(young, {&report, 1}), mass(), "electrode_replace")->queue, Queue::ShiftEnd);
    report.electrodes.arcsLeft = 200;
    EXPECT_EQ(itemOf(dueItems(young, {&report, 1}), mass(), "electrode_replace")->queue, Queue::BenchDay);
    report.electrodes.arcsLeft = 9000;
    EXPECT_EQ(itemOf(dueItems(young, {&report, 1}), mass(), "electrode_replace"), nullptr)
        << "a forecast never lengthens the plain rule, nor shortens it here";
    young.settings.electrodeArcs = 2500;
    EXPECT_EQ(itemOf(dueItems(young, {}), mass(), "electrode_replace")->queue, Queue::ShiftEnd);
}

TEST(Electrodes, CountArcsFromTheCounterWrittenDownWhenTheyWereFitted) {
    Situation situation = situationAt(100);
    CareRecord paper = careOf(mass(), "electrode_replace", -200);
    paper.counter = ArcCount{10'000};
    situation.records = {paper, careOf(mass(), "stabilise", -199), calibrationOf(mass(), -198)};
    addArc(situation.histories[0], 98, 12).counter = ArcCount{14'810};
    addArc(situation.histories[0], 99, 12).counter = ArcCount{14'830};
    situation.settings.orderWithinDays = 365;
    const auto life = *kit::lifeOf(situation, mass().id);
    const auto bar = std::ranges::find(life.bars, "electrodes", &kit::LifeBar::counter);
    EXPECT_EQ(bar->used, 4830U);
    const auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, mass(), "electrode_replace"), nullptr);
    EXPECT_EQ(itemOf(items, mass(), "electrode_replace")->queue, Queue::BenchDay);
}

// common practice: after each strip for web-type ribbon and ribbonised loose tubes.
TEST(Stripper, IsCleanedAfterEachStripOfWhatShedsAndByCountOtherwise) {
    Situation situation = situationAt(2);
    addArc(situation.histories[0], 1, 12);
    EXPECT_EQ(itemOf(dueItems(situation, {}), stripper(), "stripper_clean"), nullptr);
    for (const RibbonKind kind : {RibbonKind::WebType, RibbonKind::RibbonisedTubes}) {
        situation.settings.ribbon = kind;
        const auto items = dueItems(situation, {});
        ASSERT_NE(itemOf(items, stripper(), "stripper_clean"), nullptr);
        EXPECT_EQ(itemOf(items, stripper(), "stripper_clean")->queue, Queue::NextGap);
        EXPECT_EQ(itemOf(items, stripper(), "stripper_clean")->basis, Basis::Condition);
    }
    situation.records = {careOf(stripper(), "stripper_clean", 1.5)};
    EXPECT_EQ(itemOf(dueItems(situation, {}), stripper(), "stripper_clean"), nullptr);
    situation.settings.ribbon = RibbonKind::Flat;
    addArcs(situation.histories[0], 1.6, 1.9, 12, 12);
    EXPECT_EQ(itemOf(dueItems(situation, {}), stripper(), "stripper_clean")->basis, Basis::Count);
}

/// The cables of the closure the arc was made in.
void workedOn(SplicerHistory& history, HistoryArc& arc, std::vector<Cable> cables) {
    arc.closure = static_cast<std::uint32_t>(history.closures.size());
    history.closures.push_back({{}, std::move(cables)});
}
Cable cableOf(FibreUnit unit, std::optional<RibbonKind> ribbon) {
    Cable cable;
    cable.label = "K-1";
    cable.unit = unit;
    cable.ribbon = ribbon;
    return cable;
}

// common practice: what has to be cleaned after each strip follows from the cable that is worked.
TEST(Stripper, FollowsTheCableThatIsWorked) {
    const Cable flat = cableOf(FibreUnit::Ribbon, RibbonKind::Flat);
    const Cable web = cableOf(FibreUnit::Ribbon, RibbonKind::WebType);
    const Cable silent = cableOf(FibreUnit::Ribbon, std::nullopt);
    const Cable tubes = cableOf(FibreUnit::Tube, std::nullopt);
    const auto strips = [](std::vector<Cable> cables, int channels, RibbonKind setting) {
        Situation situation = situationAt(2);
        situation.settings.ribbon = setting;
        SplicerHistory& history = situation.histories[0];
        workedOn(history, addArc(history, 1, channels), std::move(cables));
        const auto items = dueItems(situation, {});
        const DueItem* item = itemOf(items, stripper(), "stripper_clean");
        return item ? item->basedOn.substr(0, 1) + " " + item->why : std::string();
    };
    EXPECT_EQ(strips({flat, flat}, 12, RibbonKind::WebType), "") << "the cable says more than the setting";
    EXPECT_EQ(strips({web, web}, 12, RibbonKind::Flat),
              "2 web-type ribbon (cable K-1) sheds fragments at every strip");
    EXPECT_EQ(strips({flat, web}, 12, RibbonKind::Flat).front(), '1') << "one side sheds";
    EXPECT_EQ(strips({web}, 12, RibbonKind::Flat).front(), '2') << "the other side is not known: as this one";
    EXPECT_EQ(strips({silent}, 12, RibbonKind::Flat), "") << "a book of before: by its setting";
    EXPECT_EQ(strips({silent}, 12, RibbonKind::WebType).front(), '2');
    EXPECT_EQ(strips({tubes}, 12, RibbonKind::Flat),
              "2 ribbonised loose tubes (cable K-1) shed fragments at every strip");
    EXPECT_EQ(strips({tubes}, 1, RibbonKind::Flat), "") << "one fibre at a time";
    EXPECT_EQ(strips({}, 12, RibbonKind::RibbonisedTubes).front(), '2') << "no cable is known";
}

TEST(Stripper, ACleanClosesOnlyTheStripsBeforeIt) {
    Situation situation = situationAt(4);
    SplicerHistory& history = situation.histories[0];
    const Cable web = cableOf(FibreUnit::Ribbon, RibbonKind::WebType);
    workedOn(history, addArc(history, 1, 12), {web});
    situation.records = {careOf(stripper(), "stripper_clean", 2)};
    EXPECT_EQ(itemOf(dueItems(situation, {}), stripper(), "stripper_clean"), nullptr);
    workedOn(history, addArc(history, 3, 12), {web});
    const auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, stripper(), "stripper_clean"), nullptr);
    EXPECT_EQ(itemOf(items, stripper(), "stripper_clean")->since, at(3));
    EXPECT_TRUE(itemOf(items, stripper(), "stripper_clean")->basedOn.starts_with("2 such strips"));
}

TEST(Blade, IsTurnedByCountAndRaisedAfterItsLastPosition) {
    Situation situation = situationAt(5);
    addArcs(situation.histories[0], 1, 2, 42, 12);
    EXPECT_EQ(itemOf(dueItems(situation, {}), cleaver(), "blade_rotate")->basis, Basis::Count);
    CareRecord there = careOf(cleaver(), "blade_rotate", 0.5);
    there.blade = BladePlace{1, 16};
    situation.records = {there};
    EXPECT_EQ(itemOf(dueItems(situation, {}), cleaver(), "blade_rotate"), nullptr);
    EXPECT_NE(itemOf(dueItems(situation, {}), cleaver(), "blade_raise"), nullptr);
}

TEST(Blade, AtItsLastPlaceIsToBeOrdered) {
    Situation situation = situationAt(5);
    addArcs(situation.histories[0], 1, 2, 5, 12);
    CareRecord there = careOf(cleaver(), "blade_rotate", 0.5);
    there.blade = BladePlace{3, 16};
    situation.records = {there};
    const auto items = dueItems(situation, {});
    ASSERT_NE(itemOf(items, cleaver(), "blade_rotate"), nullptr);
    EXPECT_EQ(itemOf(items, cleaver(), "blade_rotate")->title, "Order a blade for C-01");
    EXPECT_EQ(itemOf(items, cleaver(), "blade_rotate")->queue, Queue::BenchDay);
    const auto orders = toOrder(situation, {});
    ASSERT_FALSE(orders.empty());
    EXPECT_EQ(orders.front().what, "cleaver blade");
    EXPECT_EQ(orders.front().forWhat, "C-01");
    there.blade = BladePlace{2, 16};
    situation.records = {there};
    EXPECT_TRUE(toOrder(situation, {}).empty());
}

TEST(Signals, BecomeTheFirstCareOfTheLadderWithTheirReason) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 6, 10, 12);
    const auto report = reportOf(mass(), Cause::Groove, 5);
    const auto items = dueItems(situation, {&report, 1});
    const DueItem* item = itemOf(items, mass(), "groove_clean");
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->queue, Queue::Hold);
    EXPECT_EQ(item->basis, Basis::Signal);
    EXPECT_NE(item->why.find("Groove 5"), std::string::npos);
    EXPECT_NE(item->basedOn.find("0.04 to 0.08"), std::string::npos);
    auto answered = report;
    answered.strata[0].signals[0].state = drift::SignalState::Dismissed;
    EXPECT_EQ(itemOf(dueItems(situation, {&answered, 1}), mass(), "groove_clean"), nullptr);
}

TEST(Signals, OfTheDifferenceAskForAMeasuredSpliceBeforeAnybodyCleans) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 6, 10, 12);
    auto report = reportOf(mass(), Cause::Groove, 5);
    drift::Signal& signal = report.strata[0].signals[0];
    signal.chart = drift::ChartKind::Difference;
    signal.cause = Cause::Unknown;
    signal.causes = {{Cause::Unknown, 1.0, {"estimate 0.03 below the measured loss"}}};
    signal.action = ActionKey("lens_clean");
    signal.actionTool = mass().id;
    signal.advice = "Check with a measured splice from both ends; if it bears this out, clean the lenses.";
    const auto items = dueItems(situation, {&report, 1});
    const DueItem* item = itemOf(items, mass(), "lens_clean");
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(item->basis, Basis::Signal);
    EXPECT_EQ(item->why.find("Check with a measured splice from both ends"), 0U);
    EXPECT_NE(item->basedOn.find("0.03 below the measured loss"), std::string::npos);
    EXPECT_NE(item->otherwise.find("an estimate that does not hold"), std::string::npos);
    // Losses say nothing of grooves here, whatever the ladder of grooves would have begun with.
    EXPECT_EQ(itemOf(items, mass(), "groove_clean"), nullptr);
}

TEST(Signals, WaitForTheVerdictThenGoOneRungUp) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 6, 10, 12);
    auto report = reportOf(mass(), Cause::Groove, 5);
    CareRecord cleaned = careOf(mass(), "groove_clean", 5.5);
    cleaned.cardVersion = 1;
    situation.records = {cleaned};
    EXPECT_TRUE(dueItems(situation, {&report, 1}).empty()) << "the verdict is not there yet";
    drift::CareEffect effect;
    effect.care = cleaned.id;
    effect.action = cleaned.action;
    effect.verdict = drift::CareVerdict::NoChange;
    report.strata[0].effects = {effect};
    const auto items = dueItems(situation, {&report, 1});
    ASSERT_NE(itemOf(items, mass(), "clamp_clean"), nullptr);
    EXPECT_NE(itemOf(items, mass(), "clamp_clean")->why.find("changed nothing"), std::string::npos);
}

TEST(Signals, OfACleaverLandOnTheCleaver) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 6, 10, 12);
    auto report = reportOf(mass(), Cause::Cleaver, 5);
    ASSERT_NE(itemOf(dueItems(situation, {&report, 1}), cleaver(), "cleaver_clean"), nullptr);
    situation.pairings.clear();
    EXPECT_NE(itemOf(dueItems(situation, {&report, 1}), mass(), "note"), nullptr);
}

TEST(Signals, OfTheFibreAskForNoCareOfATool) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 6, 10, 12);
    const auto report = reportOf(mass(), Cause::Fibre, 5);
    const auto items = dueItems(situation, {&report, 1});
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].action, "note");
}

TEST(Queues, LeaveOutToolsThatAreOutOfService) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 5, 500, 12);
    const auto report = reportOf(mass(), Cause::Groove, 5);
    situation.tools[0].service = Service::OutOfService;
    for (const DueItem& item : dueItems(situation, {&report, 1}))
        EXPECT_NE(item.tool, mass().id) << item.title;
}

TEST(Queues, PutOneItemPerToolAndCareWithAllItsReasons) {
    Situation situation = situationAt(6);
    addArcs(situation.histories[0], 0, 5, 500, 12);
    const auto report = reportOf(mass(), Cause::Groove, 5);
    const auto items = dueItems(situation, {&report, 1});
    EXPECT_EQ(std::ranges::count_if(
                  items, [](const DueItem& i) { return i.tool == mass().id && i.action == "groove_clean"; }),
              1);
    const DueItem* item = itemOf(items, mass(), "groove_clean");
    EXPECT_EQ(item->queue, Queue::Hold);
    EXPECT_NE(item->why.find("500 arcs"), std::string::npos) << item->why;
    EXPECT_TRUE(std::ranges::is_sorted(items, {}, &DueItem::queue));
}

TEST(Gather, LeavesOutWhatCameLater) {
    MemoryLogbook book;
    book.toolList = {mass()};
    book.careList = {careOf(mass(), "lens_clean", 2), calibrationOf(mass(), 4)};
    const auto early = gather(book, smallDeck(), at(3));
    ASSERT_TRUE(early);
    EXPECT_EQ(early->records.size(), 1U);
    EXPECT_NE(itemOf(dueItems(*early, {}), mass(), "arc_calibration"), nullptr);
    const auto late = gather(book, smallDeck(), at(5));
    EXPECT_EQ(itemOf(dueItems(*late, {}), mass(), "arc_calibration"), nullptr);
    book.settings["care.idle_days"] = "often";
    EXPECT_EQ(gather(book, smallDeck(), at(5))->problems.size(), 1U);
    EXPECT_EQ(gather(book, smallDeck(), at(5))->settings.idleDays, 14);
}

TEST(Orders, CountConsumablesFromTheCareThatWasDone) {
    Situation situation = situationAt(30);
    situation.deck.cards[0].materials = {{"lint-free swabs", 2, "", 0, ""}};
    situation.records = {careOf(mass(), "groove_clean", 10), careOf(mass(), "groove_clean", 20),
                         careOf(mass(), "groove_clean", 1)};
    situation.records[0].fields["rounds"] = "3";
    const auto orders = toOrder(situation, {});
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_EQ(orders[0].pieces, 8);
    situation.now = at(200);
    EXPECT_TRUE(toOrder(situation, {}).empty());
}

TEST(Orders, ForeseeConsumablesFromTheWorkThoughNobodyCleaned) {
    Situation situation = situationAt(30);
    situation.deck.cards[0].materials = {{"lint-free swabs", 2, "", 0, ""}};
    const auto& rule = std::get<CountRule>(situation.deck.cards[0].when.front().when);
    addArcs(situation.histories[0], 3, 29, static_cast<int>(rule.every) * 2, 12);
    const auto orders = toOrder(situation, {});
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_EQ(orders[0].what, "lint-free swabs");
    EXPECT_EQ(orders[0].pieces, 4) << "two cleanings are called for";
    for (Tool& tool : situation.tools) tool.service = Service::OutOfService;
    EXPECT_TRUE(toOrder(situation, {}).empty());
}

TEST(Orders, TakeInWhatWearsWhenItsRunsAreReached) {
    const auto ordered = [](int runs) {
        Situation situation = situationAt(60);
        situation.deck.cards[0].materials = {{"soft brush", 0, "", 10, "groove kit"}};
        for (int i = 0; i < runs; ++i)
            situation.records.push_back(careOf(mass(), "groove_clean", 58.0 - 6 * i));
        return toOrder(situation, {});
    };
    EXPECT_TRUE(ordered(4).empty()) << "about four more: none reaches ten";
    const auto lines = ordered(7);
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines[0].what, "groove kit");
    EXPECT_EQ(lines[0].pieces, 1);
    ASSERT_TRUE(lines[0].neededBy);
    EXPECT_GT(*lines[0].neededBy, at(60));
    EXPECT_LE(*lines[0].neededBy, at(88));
}

}  // namespace
}  // namespace arc::care
