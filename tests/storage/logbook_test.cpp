// SPDX-License-Identifier: GPL-3.0-or-later
// Every function of the logbook against a temporary file, and again after it was closed and opened.
#include "core/logbook.hpp"

#include <functional>
#include <gtest/gtest.h>

#include "storage/sqlite_logbook.hpp"
#include "tests/support/fakes.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

const Context context{"Ada", "test", {}};

class LogbookTest : public ::testing::Test {
  protected:
    void SetUp() override {
        book_ = createLogbook(folder_ / "crew.arcbook", clock_, random_).value();
        splicer_ = {makeId<ToolId>(clock_, random_), "S-01", "Big one",
                    Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual}, Service::InUse};
        cleaver_ = {makeId<ToolId>(clock_, random_), "C-01", "", Cleaver{16, 3}, Service::InUse};
        job_ = {makeId<JobId>(clock_, random_), "HR-B", "Harrow Ridge B", sampleRule()};
        closure_ = {makeId<ClosureId>(clock_, random_), job_.id, "HR-17", {}, {}, 2, 24, {{1, 1}, {2, 2}}};
        save({splicer_, cleaver_, job_, closure_});
    }
    static AcceptanceRule sampleRule() {
        AcceptanceRule rule;
        rule.name = "Sample: single fibre";
        return rule;
    }

    void save(const std::vector<Entry>& entries) {
        const auto receipt = book_->append(entries, context);
        ASSERT_TRUE(receipt) << receipt.error().sentence();
    }
    /// Runs the check now and after closing and opening the book.
    void nowAndReopened(const std::function<void(Logbook&)>& check) {
        check(*book_);
        book_.reset();
        book_ = openLogbook(folder_ / "crew.arcbook", OpenMode::ReadWrite, clock_, random_).value();
        check(*book_);
        const auto reader = openLogbook(folder_ / "crew.arcbook", OpenMode::ReadOnly, clock_, random_);
        ASSERT_TRUE(reader) << reader.error().sentence();
        check(**reader);
    }
    SpliceArc someArc(int channels, std::int64_t atMs) {
        SpliceArc a;
        a.id = makeId<ArcId>(clock_, random_);
        a.at = {atMs, 60};
        a.splicer = splicer_.id;
        a.job = job_.id;
        a.closure = closure_.id;
        a.mode = "G.652-G.652";
        a.channels = channels;
        a.counter = ArcCount{4711};
        a.ambient.temperature = Temperature{278'150};
        a.operatorName = "Ada";
        for (int c = 1; c <= channels; ++c) {
            Reading r;
            r.channel = c;
            r.loss = Loss{20 + c};
            r.cleaveLeft = Angle{50};
            r.fibreA = "R1-" + std::to_string(c);
            a.readings.push_back(r);
        }
        return a;
    }

    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    std::unique_ptr<Logbook> book_;
    Tool splicer_, cleaver_;
    Job job_;
    Closure closure_;
};

TEST_F(LogbookTest, KeepsToolsJobsAndClosures) {
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.tools().value(), (std::vector<Tool>{cleaver_, splicer_}));
        EXPECT_EQ(book.jobs().value(), std::vector<Job>{job_});
        EXPECT_EQ(book.closures(job_.id).value(), std::vector<Closure>{closure_});
        EXPECT_TRUE(book.closures(makeId<JobId>(clock_, random_)).value().empty());
    });
}

TEST_F(LogbookTest, KeepsASpliceWithAllItsReadings) {
    const SpliceArc made = someArc(12, 1'900'000'000'000);
    save({made});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.arc(made.id).value(), made);
        EXPECT_EQ(book.lastArc(splicer_.id).value(), made);
        EXPECT_EQ(book.totals().value().arcs, 1u);
        EXPECT_EQ(book.totals().value().readings, 12u);
    });
}

TEST_F(LogbookTest, AReadingIsCorrectedByANewVersionAndTheOldOneStays) {
    const SpliceArc made = someArc(2, 1'900'000'000'000);
    save({made});
    Reading corrected = made.readings[1];
    corrected.loss = Loss{310};
    corrected.note = "typed wrong";
    save({ReadingChange{made.id, corrected}});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.arc(made.id).value()->readings[1], corrected);
        const auto rows = book.splices({}, PageOrder::OldestFirst, {}, 10).value();
        ASSERT_EQ(rows.size(), 2u);
        EXPECT_EQ(rows[0].versions, 1);
        EXPECT_EQ(rows[1].versions, 2);
        EXPECT_EQ(book.historyOf(made.id.uuid).value().size(), 2u);
        EXPECT_EQ(book.totals().value().readings, 2u);
    });
}

TEST_F(LogbookTest, OnlyAnotherLossIsACorrection) {
    const SpliceArc made = someArc(1, 1'900'000'000'000);
    save({made});
    Reading kept = made.readings[0];
    kept.note = "kept: fibre is short";
    save({ReadingChange{made.id, kept}});
    const auto versions = [&] {
        return book_->splices({}, PageOrder::OldestFirst, {}, 10).value()[0].versions;
    };
    EXPECT_EQ(versions(), 1);
    Reading other = kept;
    other.loss = Loss{310};
    save({ReadingChange{made.id, other}});
    EXPECT_EQ(versions(), 2);
    save({ReadingChange{made.id, kept}});
    EXPECT_EQ(versions(), 2) << "that it was changed stays known when it is put back";
}

TEST_F(LogbookTest, EveryJournalLineLeadsToItsRecord) {
    const SpliceArc made = someArc(2, 1'900'000'000'000);
    Reading corrected = made.readings[1];
    corrected.loss = Loss{310};
    Tool renamed = splicer_;
    renamed.nickname = "Heron";
    const std::vector<Entry> entries{made, ReadingChange{made.id, corrected}, renamed,
                                     Withdrawal{made.id.uuid, "undone"}};
    const auto receipt = book_->append(entries, context).value();
    nowAndReopened([&](Logbook& book) {
        for (std::size_t i = 0; i < entries.size(); ++i)
            EXPECT_EQ(book.recordBehind(receipt.firstJournalRow + i).value(), recordOf(entries[i])) << i;
        EXPECT_EQ(book.recordBehind(receipt.lastJournalRow + 1).value(), std::nullopt);
    });
}

TEST_F(LogbookTest, WhatWasTakenBackIsLeftOutAndCanComeAgain) {
    const SpliceArc made = someArc(2, 1'900'000'000'000);
    save({made});
    save({Withdrawal{made.id.uuid, "undone"}});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.arc(made.id).value(), std::nullopt);
        EXPECT_TRUE(book.history(splicer_.id, {}).value().arcs.empty());
        EXPECT_EQ(book.totals().value().readings, 0u);
    });
    save({made});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.arc(made.id).value(), made);
        EXPECT_EQ(book.totals().value().arcs, 1u);
        EXPECT_EQ(book.totals().value().readings, 2u);
        EXPECT_EQ(book.historyOf(made.id.uuid).value().size(), 3u);
    });
}

TEST_F(LogbookTest, TheSameRetryKeyTwiceIsWrittenOnce) {
    Context retried = context;
    retried.retryKey = makeUuid7(clock_.now(), random_);
    const SpliceArc made = someArc(1, 1'900'000'000'000);
    const auto first = book_->append(made, retried).value();
    SpliceArc again = someArc(1, 1'900'000'000'000);
    const auto second = book_->append(again, retried).value();
    EXPECT_EQ(first.lastJournalRow, second.lastJournalRow);
    EXPECT_EQ(book_->totals().value().arcs, 1u);
}

TEST_F(LogbookTest, AllOrNothing) {
    const auto before = book_->totals().value().journalRows;
    SpliceArc stray = someArc(1, 1'900'000'000'000);
    stray.splicer = makeId<ToolId>(clock_, random_);
    const std::vector<Entry> entries{someArc(1, 1'900'000'000'000), stray};
    const auto answer = book_->append(entries, context);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::NotFound);
    EXPECT_EQ(book_->totals().value().journalRows, before);
    EXPECT_EQ(book_->totals().value().arcs, 0u);
    save({someArc(1, 1'900'000'000'000)});
    EXPECT_EQ(book_->totals().value().arcs, 1u);
}

TEST_F(LogbookTest, LabelsAreUnique) {
    Tool other = splicer_;
    other.id = makeId<ToolId>(clock_, random_);
    const auto answer = book_->append(other, context);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Conflict);
}

TEST_F(LogbookTest, TheCleaverComesFromThePairingOrFromTheArc) {
    Tool second = cleaver_;
    second.id = makeId<ToolId>(clock_, random_);
    second.label = "C-02";
    Tool otherSplicer = splicer_;
    otherSplicer.id = makeId<ToolId>(clock_, random_);
    otherSplicer.label = "S-02";
    save({second, otherSplicer});
    save({Pairing{makeId<EntryId>(clock_, random_), splicer_.id, cleaver_.id, {2'000, 0}},
          Pairing{makeId<EntryId>(clock_, random_), otherSplicer.id, cleaver_.id, {6'000, 0}}});
    SpliceArc named = someArc(1, 4'000);
    named.cleaver = second.id;
    save({someArc(1, 1'000), someArc(1, 3'000), named, someArc(1, 5'000), someArc(1, 7'000)});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.countArcs(splicer_.id, 0, 10'000).value(), 5u);
        EXPECT_EQ(book.countArcs(splicer_.id, 3'000, 5'000).value(), 2u);
        EXPECT_EQ(book.countArcs(cleaver_.id, 0, 10'000).value(), 2u);
        EXPECT_EQ(book.countArcs(second.id, 0, 10'000).value(), 1u);
        const auto history = book.history(splicer_.id, {}).value();
        ASSERT_EQ(history.arcs.size(), 5u);
        EXPECT_EQ(history.arcs[0].cleaver, std::nullopt);
        EXPECT_EQ(history.cleavers.at(*history.arcs[1].cleaver), cleaver_.id);
        EXPECT_EQ(history.cleavers.at(*history.arcs[2].cleaver), second.id);
        EXPECT_EQ(history.arcs[4].cleaver, std::nullopt);
        EXPECT_EQ(history.label, "S-01");
        EXPECT_EQ(history.jobLabels, std::vector<std::string>{"HR-B"});
        EXPECT_EQ(book.history(splicer_.id, 4'000).value().arcs.size(), 3u);
    });
}

TEST_F(LogbookTest, TheHistoryKnowsTheCablesThatWereWorked) {
    Cable west{makeId<CableId>(clock_, random_),
               job_.id,
               "K-1",
               144,
               FibreUnit::Ribbon,
               12,
               "TIA-598",
               "G.657.A1",
               {},
               RibbonKind::WebType};
    const Cable east{makeId<CableId>(clock_, random_),
                     job_.id,
                     "K-2",
                     144,
                     FibreUnit::Tube,
                     12,
                     "TIA-598",
                     "G.652.D",
                     {},
                     {}};
    Closure joined = closure_;
    joined.cableA = west.id;
    joined.cableB = east.id;
    SpliceArc nowhere = someArc(1, 2'000);
    nowhere.closure.reset();
    save({west, east, joined, someArc(1, 1'000), nowhere, someArc(1, 3'000)});
    west.ribbon = RibbonKind::Flat;
    save({west});
    nowAndReopened([&](Logbook& book) {
        const auto history = book.history(splicer_.id, {}).value();
        EXPECT_EQ(history.closures, (std::vector{HistoryClosure{closure_.id, {west, east}}}));
        EXPECT_EQ(history.arcs[0].closure, 0u);
        EXPECT_EQ(history.arcs[1].closure, std::nullopt);
        EXPECT_EQ(history.arcs[2].closure, 0u);
    });
}

TEST_F(LogbookTest, VoidedReadingsAreNoHistory) {
    const SpliceArc made = someArc(4, 1'000);
    save({made});
    Reading voided = made.readings[1];
    voided.state = ReadingState::Voided;
    save({ReadingChange{made.id, voided}});
    nowAndReopened([&](Logbook& book) {
        const auto history = book.history(splicer_.id, {}).value();
        ASSERT_EQ(history.readings.size(), 3u);
        EXPECT_EQ(history.readings[1].channel, 3);
        EXPECT_EQ(history.arcs[0].readingCount, 3);
    });
}

TEST_F(LogbookTest, PagesMeetEverySpliceOnceInBothDirections) {
    std::vector<Entry> arcs;
    for (int i = 0; i < 7; ++i) arcs.push_back(someArc(4, 1'000 + i / 2));
    save(arcs);
    for (const auto order : {PageOrder::OldestFirst, PageOrder::NewestFirst}) {
        std::vector<std::uint64_t> seen;
        std::optional<PageKey> after;
        while (true) {
            const auto page = book_->splices({}, order, after, 5).value();
            if (page.empty()) break;
            for (const auto& row : page) seen.push_back(row.row);
            after = PageKey{page.back().arc.at.ms, page.back().row};
        }
        EXPECT_EQ(seen.size(), 28u);
        std::sort(seen.begin(), seen.end());
        EXPECT_EQ(std::unique(seen.begin(), seen.end()), seen.end());
    }
}

TEST_F(LogbookTest, FiltersNarrow) {
    SpliceArc other = someArc(1, 5'000);
    other.job.reset();
    other.closure.reset();
    other.readings[0].note = "100% checked";
    save({someArc(2, 1'000), other});
    const auto count = [&](const SpliceFilter& filter) {
        return book_->splices(filter, PageOrder::OldestFirst, {}, 100).value().size();
    };
    SpliceFilter filter;
    filter.job = job_.id;
    EXPECT_EQ(count(filter), 2u);
    filter = {};
    filter.closure = closure_.id;
    EXPECT_EQ(count(filter), 2u);
    filter = {};
    filter.fromMs = 2'000;
    EXPECT_EQ(count(filter), 1u);
    filter = {};
    filter.toMs = 2'000;
    EXPECT_EQ(count(filter), 2u);
    filter = {};
    filter.lossAbove = Loss{21};
    EXPECT_EQ(count(filter), 1u);
    filter = {};
    filter.text = "0% c";
    EXPECT_EQ(count(filter), 1u);
    filter.text = "_%";
    EXPECT_EQ(count(filter), 0u);
    filter.text = "ada";
    EXPECT_EQ(count(filter), 3u);
}

TEST_F(LogbookTest, EveryKindComesBackAsItWentIn) {
    const Instant at{1'900'000'000'123, -330};
    const auto entryId = [&] { return makeId<EntryId>(clock_, random_); };
    const Pairing pairing{entryId(), splicer_.id, cleaver_.id, at};
    const CounterCorrection correction{entryId(), splicer_.id, at, ArcCount{99}, "board changed"};
    const Cable cable{makeId<CableId>(clock_, random_),
                      job_.id,
                      "K-1",
                      144,
                      FibreUnit::Ribbon,
                      12,
                      "TIA-598",
                      "G.657.A1",
                      1.25,
                      RibbonKind::WebType};
    CareRecord care{makeId<CareId>(clock_, random_),
                    splicer_.id,
                    at,
                    "arc_calibration",
                    2,
                    "after the cold",
                    "Ada",
                    {},
                    {},
                    {},
                    {},
                    {}};
    care.calibration = CalibrationResult{Adequacy::Adequate, Adequacy::NotAdequate, "G.652.D", 12, 3};
    care.counter = ArcCount{5};
    care.fields = {{"swab", "new"}};
    care.answers = {"due/1"};
    CareRecord rotated{
        makeId<CareId>(clock_, random_), cleaver_.id, at, "blade_rotate", 1, "", "Ada", {}, {}, {}, {}, {}};
    rotated.blade = BladePlace{1, 7};
    CareRun run{makeId<CareId>(clock_, random_),
                splicer_.id,
                "groove_clean",
                1,
                at,
                "Ada",
                3,
                {{"brush", 2}},
                {},
                {},
                RunState::Open};
    CareRun finished = run;
    finished.id = makeId<CareId>(clock_, random_);
    finished.state = RunState::Finished;
    const CardEdition edition{entryId(), "groove_clean", 4, "{\"a\": \"ä\"}"};
    const HoldOverride hold{entryId(), splicer_.id, "hold/1", "Ada", "last fibre", at};
    const BaselineChoice baseline{entryId(), splicer_.id, "G.652 / 12", {1, 0}, {2, 0}, "better", "Ada"};
    const SignalAnswer answer{entryId(), splicer_.id, "key", SignalAnswerKind::Reopened, "no", "Ada", at};
    const ExceptionDisposition disposition{entryId(), job_.id, "e/1", "accepted", "short span", "Ada", at};
    const IssuedRecord issued{entryId(), job_.id, 1, std::string(64, 'a'), {}, "Ada", at};
    MeasuredLoss measured{entryId(), job_.id, closure_.id, "1", 1310, Loss{-40}, {}, at, "OTDR 1", ""};
    Attachment photo{entryId(), closure_.id.uuid, "tray.jpg", "image/jpeg", std::string("\xff\0\x01", 3)};
    const Span span{makeId<SpanId>(clock_, random_),
                    job_.id,
                    "North",
                    {std::nullopt, "rack 1"},
                    {closure_.id, {}},
                    cable.id,
                    12.5,
                    {closure_.id}};
    save({pairing, correction, cable, span, care, rotated, run, finished, edition, hold, baseline, answer,
          disposition, issued, measured, photo, Setting{"drift.budget_arcs", "1000"}});
    nowAndReopened([&](Logbook& book) {
        EXPECT_EQ(book.pairings().value(), std::vector{pairing});
        EXPECT_EQ(book.counterCorrections().value(), std::vector{correction});
        EXPECT_EQ(book.cables(job_.id).value(), std::vector{cable});
        EXPECT_EQ(book.spans(job_.id).value(), std::vector{span});
        EXPECT_EQ(book.careRecords(splicer_.id).value(), std::vector{care});
        EXPECT_EQ(book.careRecords({}).value().size(), 2u);
        EXPECT_EQ(book.careRecords(cleaver_.id).value(), std::vector{rotated});
        EXPECT_EQ(book.openCareRuns().value(), std::vector{run});
        EXPECT_EQ(book.cardEditions().value(), std::vector{edition});
        EXPECT_EQ(book.holdOverrides().value(), std::vector{hold});
        EXPECT_EQ(book.baselineChoices().value(), std::vector{baseline});
        EXPECT_EQ(book.signalAnswers().value(), std::vector{answer});
        EXPECT_EQ(book.dispositions(job_.id).value(), std::vector{disposition});
        EXPECT_EQ(book.issuedRecords(job_.id).value(), std::vector{issued});
        EXPECT_EQ(book.measuredLosses(job_.id).value(), std::vector{measured});
        EXPECT_EQ(book.measuredLosses({}).value(), std::vector{measured});
        EXPECT_EQ(book.attachments(closure_.id.uuid).value(), std::vector{photo});
        EXPECT_EQ(book.setting("drift.budget_arcs").value(), "1000");
        EXPECT_EQ(book.setting("nothing").value(), std::nullopt);
        EXPECT_EQ(book.totals().value().care, 2u);
        EXPECT_EQ(book.journalHead().value().size(), 64u);
    });
}

TEST_F(LogbookTest, NothingIsWrittenWhenNothingChanges) {
    const SpliceArc made = someArc(2, 1'000);
    save({made, Setting{"a", "1"}});
    const auto head = book_->journalHead().value();
    save({made, Setting{"a", "1"}, splicer_});
    EXPECT_EQ(book_->journalHead().value(), head);
}

TEST_F(LogbookTest, AnIssuedRecordIsNeverChangedNorTakenBack) {
    IssuedRecord issued{
        makeId<EntryId>(clock_, random_), job_.id, 1, std::string(64, 'a'), {}, "Ada", {5, 0}};
    save({issued});
    EXPECT_FALSE(book_->append(Withdrawal{issued.id.uuid, "no"}, context));
    issued.by = "Bo";
    EXPECT_FALSE(book_->append(issued, context));
}

TEST_F(LogbookTest, ASecondWriterIsRefusedAndAReaderIsNot) {
    const auto second = openLogbook(folder_ / "crew.arcbook", OpenMode::ReadWrite, clock_, random_);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code, ProblemCode::Refused);
    EXPECT_NE(second.error().what.find("another program"), std::string::npos);
    auto reader = openLogbook(folder_ / "crew.arcbook", OpenMode::ReadOnly, clock_, random_).value();
    EXPECT_EQ(reader->append(splicer_, context).error().code, ProblemCode::Refused);
    const auto before = reader->changeCount().value();
    save({someArc(1, 1'000)});
    EXPECT_NE(reader->changeCount().value(), before);
    EXPECT_EQ(reader->totals().value().arcs, 1u);
}

TEST_F(LogbookTest, ACompanionWritesBesideTheHolderOfTheLock) {
    auto worker = openLogbook(folder_ / "crew.arcbook", OpenMode::Companion, clock_, random_).value();
    ASSERT_TRUE(worker->append(someArc(1, 1'000), context));
    save({someArc(1, 2'000)});
    EXPECT_EQ(worker->totals().value().arcs, 2u);
}

TEST_F(LogbookTest, AnExistingFileIsNotOverwritten) {
    const auto again = createLogbook(folder_ / "crew.arcbook", clock_, random_);
    ASSERT_FALSE(again);
    EXPECT_EQ(book_->tools().value().size(), 2u);
}

}  // namespace
}  // namespace arc::storage
