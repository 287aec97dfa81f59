// SPDX-License-Identifier: GPL-3.0-or-later
// Golden values: worked out by hand from the job in tests/support/closeout_job.hpp, the arithmetic beside
// each.
#include "core/closeout/build.hpp"

#include <gtest/gtest.h>

#include "core/closeout/find_exceptions.hpp"
#include "tests/support/closeout_job.hpp"

namespace arc::closeout {
namespace {

using test::at;
using test::idOf;

Record built(test::MemoryLogbook& book, BuildSettings settings = {}) {
    settings.madeAt = at("2031-03-04T17:00:00+01:00");
    NoProgress progress;
    auto record = build(book, idOf<JobId>(1), settings, progress);
    EXPECT_TRUE(record.has_value()) << (record ? "" : record.error().sentence());
    return record ? *record : Record{};
}

std::vector<std::string> keys(const Record& record) {
    std::vector<std::string> all;
    for (const Exception& exception : record.exceptions) all.push_back(exception.key);
    return all;
}

const Exception* find(const Record& record, ExceptionKind kind) {
    for (const Exception& exception : record.exceptions)
        if (exception.kind == kind) return &exception;
    return nullptr;
}

TEST(CloseoutRecord, TheLastAttemptIsTheSplice) {
    auto book = test::smallJob();
    const Record record = built(book);
    ASSERT_EQ(record.closures.size(), 1u);
    const auto& splices = record.closures[0].splices;
    ASSERT_EQ(splices.size(), 3u);
    EXPECT_EQ(splices[0].attempts.size(), 1u);
    EXPECT_EQ(splices[1].attempts.size(), 2u);
    EXPECT_EQ(splices[1].final().loss, Loss{40});
    EXPECT_EQ(splices[2].attempts.size(), 3u);
}

TEST(CloseoutRecord, AveragesAreThoseOfTheFinalSplices) {
    auto book = test::smallJob();
    const Record record = built(book);
    // 20, 40, 160: mean 220 / 3, median 40, deviations -53.33, -33.33, 86.67: sum of squares 11466.67 / 2.
    EXPECT_NEAR(*record.averages.meanDb, 0.220 / 3, 1e-12);
    EXPECT_DOUBLE_EQ(*record.averages.medianDb, 0.040);
    EXPECT_NEAR(*record.averages.sdDb, 0.0757188, 1e-7);
    EXPECT_EQ(*record.averages.worst, Loss{160});
    EXPECT_EQ(record.averages.attempts, 6u);
    EXPECT_EQ(record.averages.firstTime, 1u);
    // Bins of 0.01 dB up to twice the limit of 0.10: 20 bins; 20 mdB falls into the third, from 0.02 on.
    ASSERT_EQ(record.histogram.bins.size(), 20u);
    EXPECT_EQ(record.histogram.bins[2].count, 1u);
    EXPECT_EQ(record.histogram.bins[4].count, 1u);
    EXPECT_EQ(record.histogram.bins[16].count, 1u);
    EXPECT_EQ(record.histogram.beyond, 0u);
}

TEST(CloseoutRecord, ComparesWithThePlanAndTheRule) {
    auto book = test::smallJob();
    const Record record = built(book);
    ASSERT_TRUE(record.plan);
    EXPECT_EQ(record.plan->planned, 4);
    EXPECT_EQ(record.plan->spliced, 3);
    EXPECT_EQ(keys(record), (std::vector<std::string>{"over_limit/HR-17/3/00000006", "missing/HR-17/1"}));
    EXPECT_EQ(record.exceptions[0].what,
              "Fibre 3 green: 0.16 dB after 3 attempts, limit 0.10 dB; kept, fibre is short");
    EXPECT_EQ(record.exceptions[1].what, "1 of 4 planned splices is missing: fibre 4");
    EXPECT_EQ(record.verdict, RecordVerdict::Open);
    EXPECT_EQ(record.closures[0].splices[2].verdict, SpliceVerdict::OverLimit);
}

TEST(CloseoutRecord, WithoutPlanSaysNothingAboutCompleteness) {
    auto book = test::smallJob();
    book.closureList[0].plan.clear();
    const Record record = built(book);
    EXPECT_FALSE(record.plan);
    EXPECT_FALSE(record.closures[0].completeness);
    EXPECT_EQ(find(record, ExceptionKind::Missing), nullptr);
}

TEST(CloseoutRecord, VoidedReadingsAreLeftOutAndCounted) {
    auto book = test::smallJob();
    book.arcList[5].readings[0].state = ReadingState::Voided;
    const Record record = built(book);
    EXPECT_EQ(record.voided, 1u);
    EXPECT_EQ(record.closures[0].splices[2].attempts.size(), 2u);
}

TEST(CloseoutRecord, AboveTheCeilingIsNeverAccepted) {
    auto book = test::smallJob();
    book.arcList[5].readings[0].loss = Loss{301};
    book.dispositionList.push_back({idOf<EntryId>(1), idOf<JobId>(1), "over_ceiling/HR-17/3/00000006",
                                    "accepted", "customer agreed", "QA", at("2031-03-04T09:00:00Z")});
    const Record record = built(book);
    ASSERT_NE(find(record, ExceptionKind::OverCeiling), nullptr);
    EXPECT_TRUE(isDecided(*find(record, ExceptionKind::OverCeiling)));
    EXPECT_EQ(record.verdict, RecordVerdict::NotAccepted);
    // Exactly on the ceiling is not above it.
    book.arcList[5].readings[0].loss = Loss{300};
    EXPECT_EQ(find(built(book), ExceptionKind::OverCeiling), nullptr);
}

TEST(CloseoutRecord, OneWayValuesSaySo) {
    auto book = test::smallJob();
    MeasuredLoss loss;
    loss.id = idOf<EntryId>(9);
    loss.job = idOf<JobId>(1);
    loss.closure = idOf<ClosureId>(1);
    loss.fibre = "1";
    loss.aToB = Loss{-273};
    book.measuredList.push_back(loss);
    const Record record = built(book);
    ASSERT_NE(find(record, ExceptionKind::OneWay), nullptr);
    EXPECT_EQ(find(record, ExceptionKind::OneWay)->key, "one_way/HR-17/1550/1");
    EXPECT_FALSE(record.closures[0].splices[0].measured[0].twoWayDb());
}

// A splice of fibres with mode fields 9.2 and 8.6 um reads -0.273 dB one way and +0.313 the other; the mean
// is 0.020 (worked example of optical time-domain reflectometry; mode-field formula: D. Marcuse, 1977).
TEST(CloseoutRecord, ATwoWayRuleJudgesTheMeanOfBothDirections) {
    auto book = test::smallJob();
    book.jobList[0].rule.directions = Directions::TwoWay;
    MeasuredLoss loss;
    loss.id = idOf<EntryId>(9);
    loss.job = idOf<JobId>(1);
    loss.fibre = "3";
    loss.aToB = Loss{-273};
    loss.bToA = Loss{313};
    book.measuredList.push_back(loss);
    const Record record = built(book);
    const Splice& third = record.closures[0].splices[2];
    EXPECT_EQ(third.judgedBy, JudgedBy::TwoWayMean);
    EXPECT_DOUBLE_EQ(third.judgedDb, 0.020);
    EXPECT_EQ(third.verdict, SpliceVerdict::Accepted);
    // Fibres 1 and 2 have no such mean.
    EXPECT_EQ(find(record, ExceptionKind::OneWay)->key, "one_way/HR-17/no_mean/2");
}

TEST(CloseoutRecord, FlagsSplicesMadeWhileACalibrationWasOwed) {
    auto book = test::smallJob();
    BuildSettings settings;
    settings.owed = [](const Equipment& item, const std::vector<CareRecord>&) {
        care::OwedStretch stretch;
        stretch.splicer = item.tool.id;
        stretch.from = at("2031-03-03T08:03:00+01:00");
        stretch.to = at("2031-03-03T08:10:00+01:00");
        stretch.because = "electrodes replaced";
        return std::vector{stretch};
    };
    const Record record = built(book, settings);
    // Of the final splices only fibre 2 (08:04) lies inside; fibre 3 was made at 08:10, when it ended.
    const Exception* owed = find(record, ExceptionKind::CalibrationOwed);
    ASSERT_NE(owed, nullptr);
    EXPECT_EQ(owed->splices, 1u);
    EXPECT_EQ(owed->key, "calibration_owed/S-01/2031-03-03T08:03:00+01:00/1");
}

TEST(CloseoutRecord, ListsOverridesCorrectionsAndDoubleEntries) {
    auto book = test::smallJob();
    book.overrideList.push_back({idOf<EntryId>(7), idOf<ToolId>(1), "hold", "Crew 2", "customer waits",
                                 at("2031-03-03T08:05:00+01:00")});
    book.versions[{idOf<ArcId>(1), 1}] = 2;
    book.arcList[2].readings[0].attempt = 1;
    const Record record = built(book);
    ASSERT_NE(find(record, ExceptionKind::OverrideUsed), nullptr);
    EXPECT_EQ(find(record, ExceptionKind::OverrideUsed)->splices, 1u);
    EXPECT_EQ(find(record, ExceptionKind::Corrected)->key, "corrected/HR-17/1/00000001");
    EXPECT_EQ(find(record, ExceptionKind::EnteredTwice)->key, "entered_twice/HR-17/2/00000003");
    const Splice* corrected = spliceOf(record, *find(record, ExceptionKind::Corrected));
    ASSERT_NE(corrected, nullptr);
    EXPECT_EQ(corrected->final().arc, idOf<ArcId>(1));
    EXPECT_EQ(spliceOf(record, *find(record, ExceptionKind::OverrideUsed)), nullptr);
}

TEST(CloseoutRecord, ANewReadingIsNotCoveredByAnOldDisposition) {
    auto book = test::smallJob();
    book.dispositionList.push_back({idOf<EntryId>(1), idOf<JobId>(1), "over_limit/HR-17/3/00000006",
                                    "accepted", "short fibre", "QA", at("2031-03-04T09:00:00Z")});
    EXPECT_TRUE(isDecided(*find(built(book), ExceptionKind::OverLimit)));
    book.arcList.push_back(test::arcWith(7, "2031-03-03T09:00:00+01:00", "3", Loss{150}, 4));
    EXPECT_FALSE(isDecided(*find(built(book), ExceptionKind::OverLimit)));
}

TEST(CloseoutRecord, EquipmentShowsTheCareStateAtTheTime) {
    auto book = test::smallJob();
    CareRecord care;
    care.id = idOf<CareId>(1);
    care.tool = idOf<ToolId>(1);
    care.action = action::electrodeReplace;
    care.at = at("2031-03-03T07:00:00+01:00");
    book.careList.push_back(care);
    care.action = action::arcCalibration;
    care.at = at("2031-03-03T08:05:00+01:00");
    care.calibration = CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", 1, 2};
    book.careList.push_back(care);
    const Record record = built(book);
    const auto splicer =
        std::ranges::find(record.equipment, "S-01", [](const Equipment& e) { return e.tool.label; });
    ASSERT_NE(splicer, record.equipment.end());
    EXPECT_EQ(splicer->splicesHere, 6u);
    // No arc of the book is older than the electrodes, and their counter is not written down.
    EXPECT_EQ(splicer->sinceElectrodes, (ArcsSince{6, kit::Certainty::AtLeast}));
    EXPECT_EQ(splicer->sinceCalibration, (ArcsSince{3, kit::Certainty::Exact}));
    EXPECT_FALSE(splicer->sinceGrooveClean);
    ASSERT_EQ(splicer->before.size(), 1u);
    ASSERT_EQ(splicer->during.size(), 1u);
    EXPECT_EQ(splicer->during[0].detail, "power adequate, position adequate; G.652.D; 1 fibre, 2 runs");
}

TEST(CloseoutRecord, TheSplicersOwnCounterReachesBackBeforeTheBook) {
    auto book = test::smallJob();
    CareRecord care;
    care.id = idOf<CareId>(1);
    care.tool = idOf<ToolId>(1);
    care.action = action::electrodeReplace;
    care.at = at("2031-01-03T07:00:00+01:00");
    care.counter = ArcCount{500};
    book.careList.push_back(care);
    // The last arc shows 1006.
    EXPECT_EQ(built(book).equipment[0].sinceElectrodes, (ArcsSince{506, kit::Certainty::Exact}));
}

// 20 km, 5 splices, 2 connections with 0.4 dB/km, 0.15 dB and 0.5 dB: 8 + 0.75 + 1 = 9.75 dB (coefficients of
// an installers' association's loss-budget page; common practice).
TEST(LinkBudgetOfTheRecord, AddsFibreSplicesAndConnectors) {
    AcceptanceRule rule;
    rule.perSplice = Loss{150};
    const auto budgets = linkBudgets({}, 20, 5, rule, [](int) { return SplicedMean{0.03, 0, 5}; });
    ASSERT_TRUE(budgets);
    ASSERT_EQ(budgets->size(), 2u);
    EXPECT_EQ(budgets->at(0).wavelengthNm, 1310);
    EXPECT_NEAR(budgets->at(0).allowedDb, 9.75, 1e-12);
    EXPECT_NEAR(budgets->at(0).asSplicedDb, 9.15, 1e-12);
}

TEST(CloseoutRecord, AFinalRecordWaitsForEveryDisposition) {
    auto book = test::smallJob();
    BuildSettings settings;
    settings.state = RecordState::Final;
    settings.issuedBy = "QA";
    NoProgress progress;
    auto refused = build(book, idOf<JobId>(1), settings, progress);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ProblemCode::Refused);
    EXPECT_EQ(refused.error().where, "over_limit/HR-17/3/00000006, missing/HR-17/1");
    for (const char* key : {"over_limit/HR-17/3/00000006", "missing/HR-17/1"})
        book.dispositionList.push_back(
            {idOf<EntryId>(1), idOf<JobId>(1), key, "accepted", "agreed", "QA", at("2031-03-04T09:00:00Z")});
    auto issued = build(book, idOf<JobId>(1), settings, progress);
    ASSERT_TRUE(issued);
    EXPECT_EQ(issued->number, 1);
    EXPECT_FALSE(issued->supersedes);
    EXPECT_EQ(issued->verdict, RecordVerdict::AcceptedWithExceptions);
    book.issuedList.push_back(
        {idOf<EntryId>(2), idOf<JobId>(1), 1, "ab", {}, "QA", at("2031-03-04T10:00:00Z")});
    issued = build(book, idOf<JobId>(1), settings, progress);
    EXPECT_EQ(issued->number, 2);
    EXPECT_EQ(issued->supersedes, 1);
}

TEST(CloseoutRecord, NamesRepeatedWithoutAClosureStayApart) {
    auto book = test::smallJob();
    for (SpliceArc& arc : book.arcList) arc.closure.reset();
    for (SpliceArc& arc : book.arcList) arc.readings[0].fibreA = arc.readings[0].fibreB = "1";
    const Record record = built(book);
    // First attempts at 08:00, 08:02 and 08:06 begin three splices.
    ASSERT_EQ(record.closures.size(), 2u);
    EXPECT_EQ(record.closures[1].label, noClosure);
    EXPECT_EQ(record.closures[1].splices.size(), 3u);
}

TEST(CloseoutRecord, PagesThroughALongJob) {
    auto book = test::smallJob();
    book.arcList.clear();
    book.closureList[0].plan.clear();
    for (int i = 1; i <= 10'000; ++i)
        book.arcList.push_back(
            test::arcWith(i, "2031-03-03T08:00:00+01:00", std::to_string(i % 6912 + 1), Loss{i % 100}, 1));
    for (std::size_t i = 0; i < book.arcList.size(); ++i)
        book.arcList[i].at.ms += static_cast<std::int64_t>(i) * 1000;
    // 10,000 readings of 6,912 names: the names that come twice are chains of two.
    EXPECT_EQ(spliceCount(built(book)), 6912u);
}

TEST(Ranges, JoinsWhatFollows) {
    EXPECT_EQ(ranges({4}), "4");
    EXPECT_EQ(ranges({3, 1, 2, 7, 9, 10}), "1-3, 7, 9-10");
    EXPECT_EQ(ranges({}), "");
}

}  // namespace
}  // namespace arc::closeout
