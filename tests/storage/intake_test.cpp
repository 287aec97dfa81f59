// SPDX-License-Identifier: GPL-3.0-or-later
// Import: nasty files with their expected counts, the same file twice, stopping in the middle.
#include "storage/intake.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <sstream>

#include "source_dir.hpp"
#include "storage/csv_source.hpp"
#include "storage/csv_values.hpp"
#include "storage/migrations.hpp"
#include "storage/sqlite_logbook.hpp"
#include "storage/verify.hpp"
#include "tests/support/fakes.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

const std::string csvFolder = ARC_SOURCE_DIR "/tests/storage/csv/";

/// Stops at the n-th look.
class StopAt final : public Progress {
  public:
    explicit StopAt(int looks) : left_(looks) {}
    void report(std::uint64_t, std::uint64_t, std::string_view) override {}
    [[nodiscard]] bool stopRequested() const override { return left_-- <= 0; }

  private:
    mutable int left_;
};

/// Hears the indices being made, and may stop there.
class IndexWatch final : public Progress {
  public:
    enum class At { GoOn, Stop };
    explicit IndexWatch(At at) : at_(at) {}
    void report(std::uint64_t, std::uint64_t, std::string_view what) override {
        heard_ = heard_ || what == "Putting the splices in order";
    }
    [[nodiscard]] bool stopRequested() const override { return heard_ && at_ == At::Stop; }
    [[nodiscard]] bool heard() const { return heard_; }

  private:
    At at_;
    bool heard_ = false;
};

class Crew {
  public:
    Crew() { EXPECT_TRUE(createLogbook(book(), clock, random)); }
    [[nodiscard]] std::filesystem::path book() const { return folder / "crew.arcbook"; }
    std::filesystem::path write(const std::string& name, const std::string& text) const {
        std::ofstream(folder / name, std::ios::binary) << text;
        return folder / name;
    }
    Result<std::vector<ImportCount>> take(const std::vector<FileToRead>& files,
                                          Purpose purpose = Purpose::Import) {
        NoProgress unwatched;
        return take(files, purpose, unwatched);
    }
    Result<std::vector<ImportCount>> take(const std::vector<FileToRead>& files, Purpose purpose,
                                          Progress& progress) {
        return takeIn({book(), files, purpose, OpenMode::ReadWrite, "Ada"}, clock, random, progress);
    }
    Result<ImportCount> takeOne(const std::filesystem::path& file, Purpose purpose = Purpose::Import) {
        return take({{file, {}}}, purpose).map([](std::vector<ImportCount> counts) {
            return counts.front();
        });
    }
    std::unique_ptr<Logbook> open(OpenMode mode = OpenMode::ReadOnly) {
        return openLogbook(book(), mode, clock, random).value();
    }
    std::string head() { return open()->journalHead().value(); }
    void expectSound() {
        NoProgress unwatched;
        const auto verdict = verifyBook(book(), unwatched);
        EXPECT_TRUE(verdict) << verdict.error().sentence();
    }

    TempFolder folder;
    FakeClock clock;
    FakeRandom random;
};

struct Expected {
    const char* file;
    std::uint64_t read, added, known, setAside;
    const char* firstColumn = "";
    std::uint64_t firstLine = 0;
    const char* note = "";
};
void PrintTo(const Expected& e, std::ostream* out) {
    *out << e.file;
}

class NastyFiles : public ::testing::TestWithParam<Expected> {};

TEST_P(NastyFiles, EveryRowLandsOrIsSetAsideWithLineAndReasonAndTwiceChangesNothing) {
    const Expected& e = GetParam();
    Crew crew;
    const auto first = crew.takeOne(csvFolder + e.file);
    ASSERT_TRUE(first) << first.error().sentence();
    EXPECT_EQ(first->read, e.read);
    EXPECT_EQ(first->added, e.added);
    EXPECT_EQ(first->known, e.known);
    EXPECT_EQ(first->setAside, e.setAside);
    EXPECT_EQ(first->read, first->added + first->known + first->setAside);
    EXPECT_EQ(first->rows.size(), e.setAside);
    if (!first->rows.empty()) {
        EXPECT_EQ(first->rows.front().column, e.firstColumn);
        EXPECT_EQ(first->rows.front().line, e.firstLine);
        EXPECT_FALSE(first->rows.front().reason.empty());
        EXPECT_FALSE(first->rows.front().text.empty());
    }
    if (*e.note != '\0') {
        std::string all;
        for (const auto& note : first->notes) all += note + "\n";
        EXPECT_NE(all.find(e.note), std::string::npos) << all;
    }
    EXPECT_EQ(crew.open()->totals()->readings, e.added);
    crew.expectSound();
    const std::string head = crew.head();
    const auto second = crew.takeOne(csvFolder + e.file);
    ASSERT_TRUE(second);
    EXPECT_EQ(second->added, 0u);
    EXPECT_EQ(second->setAside, e.setAside);
    EXPECT_EQ(crew.head(), head);
}

INSTANTIATE_TEST_SUITE_P(
    Files, NastyFiles,
    ::testing::Values(Expected{"plain.csv", 2, 2, 0, 0}, Expected{"byte_order_mark.csv", 1, 1, 0, 0},
                      Expected{"utf16_little.csv", 1, 1, 0, 0, "", 0, "UTF-16"},
                      Expected{"utf16_big.csv", 1, 1, 0, 0, "", 0, "UTF-16"},
                      Expected{"utf16_no_mark.csv", 1, 1, 0, 0, "", 0, "UTF-16"},
                      Expected{"semicolon_decimal_comma.csv", 3, 3, 0, 0, "", 0, "decimal comma"},
                      Expected{"tabs.csv", 1, 1, 0, 0, "", 0, "tabs"},
                      Expected{"decimal_comma_in_commas.csv", 3, 1, 0, 2, "", 2},
                      Expected{"only_header.csv", 0, 0, 0, 0},
                      Expected{"odd_losses.csv", 6, 1, 0, 5, "loss_db", 2},
                      Expected{"one_channel_missing.csv", 11, 11, 0, 0, "", 0, "fewer readings than fibres"},
                      Expected{"rows_apart_and_backwards.csv", 5, 5, 0, 0, "", 0, "back in time"},
                      Expected{"said_twice.csv", 3, 1, 1, 1, "loss_db", 4},
                      Expected{"quotes_and_blank_lines.csv", 6, 2, 0, 4, "operator", 2},
                      Expected{"times.csv", 4, 1, 0, 3, "time", 2},
                      Expected{"field_counts.csv", 4, 1, 0, 3, "", 2},
                      Expected{"channels.csv", 5, 1, 0, 4, "channels", 2},
                      Expected{"hostile_labels.csv", 2, 1, 0, 1, "job", 3},
                      Expected{"wrong_tool.csv", 3, 1, 0, 2, "splicer", 3},
                      Expected{"header_spelling.csv", 1, 1, 0, 0, "", 0, "not read: colour"}));

struct Hopeless {
    const char* file;
    const char* words;
};
void PrintTo(const Hopeless& h, std::ostream* out) {
    *out << h.file;
}
class HopelessFiles : public ::testing::TestWithParam<Hopeless> {};

TEST_P(HopelessFiles, AreRefusedInOneSentenceAndChangeNothing) {
    Crew crew;
    const std::string head = crew.head();
    const auto answer = crew.takeOne(csvFolder + GetParam().file);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::BadInput);
    EXPECT_NE(answer.error().sentence().find(GetParam().words), std::string::npos)
        << answer.error().sentence();
    EXPECT_EQ(crew.head(), head);
}
INSTANTIATE_TEST_SUITE_P(Files, HopelessFiles,
                         ::testing::Values(Hopeless{"latin1.csv", "looks like ISO-8859-1"},
                                           Hopeless{"no_loss_column.csv", "no column \"loss_db\""},
                                           Hopeless{"column_twice.csv", "there twice"},
                                           Hopeless{"empty.csv", "is empty"},
                                           Hopeless{"spreadsheet.csv", "is no text"}));

TEST(Intake, TheDecimalCommaIsReadAsWritten) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "semicolon_decimal_comma.csv"));
    const auto rows = crew.open()->splices({}, PageOrder::OldestFirst, {}, 10).value();
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].reading.loss, Loss{30});
    EXPECT_EQ(rows[1].reading.loss, Loss{1'234});
    EXPECT_EQ(rows[2].reading.loss, Loss{40});
    EXPECT_EQ(rows[0].arc.operatorName, "Jörg");
}

TEST(Intake, LabelsAreTextAndNeverCode) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "hostile_labels.csv"));
    EXPECT_EQ(crew.open()->tools()->front().label, "S-01'); DROP TABLE arc;--");
    EXPECT_EQ(crew.open()->jobs()->front().label, "=1+1");
}

TEST(Intake, RowsOfOneArcMayStandApart) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "rows_apart_and_backwards.csv"));
    auto book = crew.open();
    const auto history = book->history(book->tools()->front().id, {}).value();
    ASSERT_EQ(history.arcs.size(), 3u);
    EXPECT_EQ(history.arcs[0].counter, ArcCount{9});
    EXPECT_EQ(history.arcs[1].readingCount, 2);
    EXPECT_EQ(history.readings[2].loss, Loss{50});
}

TEST(Intake, ACorrectionMadeInTheLogbookSurvivesTheSameFile) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "plain.csv"));
    {
        auto book = crew.open(OpenMode::ReadWrite);
        const auto row = book->splices({}, PageOrder::OldestFirst, {}, 1)->front();
        Reading corrected = row.reading;
        corrected.loss = Loss{90};
        ASSERT_TRUE(book->append(ReadingChange{row.arc.id, corrected}, {"Ada", "test", {}}));
        const auto other = book->splices({}, PageOrder::NewestFirst, {}, 1)->front();
        ASSERT_TRUE(book->append(Withdrawal{other.arc.id.uuid, "not ours"}, {"Ada", "test", {}}));
    }
    const std::string head = crew.head();
    const auto again = crew.takeOne(csvFolder + "plain.csv").value();
    EXPECT_EQ(again.known, 2u);
    EXPECT_EQ(again.setAside, 0u);
    EXPECT_EQ(crew.head(), head);
    EXPECT_EQ(crew.open()->splices({}, PageOrder::OldestFirst, {}, 10)->size(), 1u);
    EXPECT_EQ(crew.open()->splices({}, PageOrder::OldestFirst, {}, 1)->front().reading.loss, Loss{90});
}

TEST(Intake, TheSameSpliceWithAnotherLossIsSetAsideAndNotOverwritten) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "plain.csv"));
    const auto changed =
        crew.write("changed.csv", "time,splicer,loss_db,arc_count\n2031-03-03T07:00:00Z,S-01,0.07,10\n");
    const auto count = crew.takeOne(changed).value();
    EXPECT_EQ(count.setAside, 1u);
    EXPECT_EQ(count.rows.front().column, "loss_db");
    EXPECT_EQ(crew.open()->splices({}, PageOrder::OldestFirst, {}, 1)->front().reading.loss, Loss{30});
}

TEST(Intake, AFurtherChannelOfAKnownArcIsAdded) {
    Crew crew;
    const std::string header = "time,splicer,channels,channel,loss_db,arc_count\n";
    ASSERT_TRUE(crew.takeOne(crew.write("a.csv", header + "2031-03-03T07:00:00Z,S-01,2,1,0.03,10\n")));
    const auto count = crew.takeOne(crew.write("b.csv", header + "2031-03-03T07:00:00Z,S-01,2,1,0.03,10\n"
                                                                 "2031-03-03T07:00:00Z,S-01,2,2,0.04,10\n"))
                           .value();
    EXPECT_EQ(count.known, 1u);
    EXPECT_EQ(count.added, 1u);
    EXPECT_EQ(crew.open()->totals()->arcs, 1u);
    EXPECT_EQ(crew.open()->totals()->readings, 2u);
    crew.expectSound();
}

TEST(Intake, UnknownToolsAreMadeOfTheRightKind) {
    Crew crew;
    const auto splices =
        crew.write("s.csv",
                   "time,splicer,cleaver,channels,channel,loss_db\n"
                   "2031-03-03T07:00:00Z,S-01,C-01,1,1,0.03\n2031-03-03T08:00:00Z,S-01,C-01,12,1,0.03\n"
                   "2031-03-03T07:00:00Z,S-02,,1,1,0.03\n");
    const auto events = crew.write(
        "e.csv",
        "time,equipment,action,detail\n2031-03-03T09:00:00Z,C-02,blade_rotate,\"height 2, position 5\"\n"
        "2031-03-03T09:00:00Z,R-01,stripper_clean,\n2031-03-03T09:00:00Z,S-03,groove_clean,\n"
        "2031-03-03T09:00:00Z,S-01,environment_change,cold\n2031-03-03T09:00:00Z,van,note,parked\n"
        "2031-03-03T09:00:00Z,C-01,groove_clean,\n2031-03-03T09:00:00Z,S-01,polish,\n");
    const auto counts = crew.take({{splices, {}}, {events, FileKind::Events}}).value();
    EXPECT_EQ(counts[0].added, 3u);
    EXPECT_EQ(counts[1].added, 4u);
    EXPECT_EQ(counts[1].setAside, 3u);
    auto book = crew.open();
    const auto tools = book->tools().value();
    ASSERT_EQ(tools.size(), 6u);
    EXPECT_EQ(asSplicer(tools[3])->grooves, 12);
    EXPECT_EQ(asSplicer(tools[3])->kind, SplicerKind::MassFusion);
    EXPECT_EQ(asSplicer(tools[4])->kind, SplicerKind::SingleFibre);
    EXPECT_NE(asCleaver(tools[1]), nullptr);
    EXPECT_NE(asStripper(tools[2]), nullptr);
    EXPECT_EQ(book->careRecords(tools[1].id)->front().blade, (BladePlace{2, 5}));
    crew.expectSound();
}

TEST(Intake, AnEventLogIsToldByItsHeaderAndTwiceChangesNothing) {
    Crew crew;
    const auto events =
        crew.write("e.csv",
                   "time,equipment,action,detail\n"
                   "2031-03-20T09:00:00Z,S-02,arc_calibration,\"power and position adequate after 2 runs, "
                   "G.652.D, 12 fibres\"\n2031-03-21T09:00:00Z,S-02,arc_calibration,hurried\n"
                   "2031-03-22T09:00:00Z,S-02,arc_calibration,\"power adequate, position not adequate\"\n");
    EXPECT_EQ(crew.takeOne(events)->added, 3u);
    const std::string head = crew.head();
    EXPECT_EQ(crew.takeOne(events)->known, 3u);
    EXPECT_EQ(crew.head(), head);
    const auto care = crew.open()->careRecords({}).value();
    EXPECT_EQ(care[0].calibration,
              (CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", 12, 2}));
    EXPECT_EQ(care[1].calibration, std::nullopt);
    EXPECT_EQ(care[2].calibration->position, Adequacy::NotAdequate);
}

TEST(Intake, MeasuredLossesFindTheirClosure) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "plain.csv"));
    const auto measured =
        crew.write("m.csv",
                   "fibre,closure,wavelength_nm,loss_a_to_b_db,loss_b_to_a_db,time,instrument,note\n"
                   "1,C1,1550,-0.05,0.09,2031-03-24T15:00:00Z,O1,\n2,C1,1550,,0.03,2031-03-24T15:00:00Z,O1,\n"
                   "3,C9,1550,,0.03,2031-03-24T15:00:00Z,O1,\n1,C1,1550,-0.06,0.09,2031-03-24T15:00:00Z,O1,\n"
                   "4,C1,1550,,,2031-03-24T15:00:00Z,O1,\n");
    const auto count = crew.takeOne(measured).value();
    EXPECT_EQ(count.added, 2u);
    EXPECT_EQ(count.setAside, 3u);
    const auto head = crew.head();
    EXPECT_EQ(crew.takeOne(measured)->known, 2u);
    EXPECT_EQ(crew.head(), head);
    const auto losses = crew.open()->measuredLosses({}).value();
    ASSERT_EQ(losses.size(), 2u);
    crew.expectSound();
}

TEST(Intake, TryingChangesNothingAndCountsAsIfItHad) {
    Crew crew;
    const std::string head = crew.head();
    EXPECT_EQ(crew.takeOne(csvFolder + "plain.csv", Purpose::TryOnly)->added, 2u);
    EXPECT_EQ(crew.head(), head);
    EXPECT_TRUE(crew.open()->tools()->empty());
}

/// Single-fibre splices of three splicers, one a minute; 20,000 are text enough for indices to be made
/// afterwards.
std::string bigLog(int arcs) {
    std::ostringstream text;
    text << "time,splicer,job,closure,fibre_a,fibre_b,loss_db,arc_count,operator\n";
    for (int i = 0; i < arcs; ++i)
        text << toIso({1'900'000'000'000 + i * 60'000LL, 0}) << ",S-" << i % 3 << ",J-1,K-1," << i << ',' << i
             << ",0.03," << i << ",Ada\n";
    return text.str();
}

TEST(Intake, StoppedInTheMiddleLeavesNothingHalfDone) {
    Crew crew;
    const auto file = crew.write("big.csv", bigLog(20'000));
    const std::string head = crew.head();
    for (const int looks : {0, 1, 2, 4}) {
        StopAt stop(looks);
        const auto answer = crew.take({{file, {}}}, Purpose::Import, stop);
        ASSERT_FALSE(answer);
        EXPECT_EQ(answer.error().code, ProblemCode::Cancelled);
        EXPECT_EQ(crew.head(), head);
        EXPECT_EQ(crew.open()->totals()->arcs, 0u);
    }
    EXPECT_EQ(crew.takeOne(file)->added, 20'000u);
    crew.expectSound();
}

TEST(Intake, TheIndicesOfAVeryLargeFileAreMadeAfterwardsAndAreTheSame) {
    Crew crew;
    const auto file = crew.write("many.csv", bigLog(20'000));
    IndexWatch watch(IndexWatch::At::GoOn);
    const auto taken = crew.take({{file, {}}}, Purpose::Import, watch);
    ASSERT_TRUE(taken) << taken.error().sentence();
    EXPECT_EQ(taken->front().added, 20'000u);
    EXPECT_TRUE(watch.heard());
    {
        Connection connection(crew.book(), Access::ReadOnly);
        EXPECT_TRUE(hasSchemaOfLogbook(connection));
    }
    crew.expectSound();
    const auto head = crew.head();
    IndexWatch again(IndexWatch::At::GoOn);
    const auto twice = crew.take({{file, {}}}, Purpose::Import, again);
    ASSERT_TRUE(twice) << twice.error().sentence();
    EXPECT_EQ(twice->front().known, 20'000u);
    EXPECT_FALSE(again.heard()) << "the logbook has as many arcs as the file may bring";
    EXPECT_EQ(crew.head(), head);
}

TEST(Intake, StoppedWhileTheIndicesAreMadeChangesNothing) {
    Crew crew;
    const auto head = crew.head();
    const auto file = crew.write("many.csv", bigLog(20'000));
    IndexWatch watch(IndexWatch::At::Stop);
    const auto taken = crew.take({{file, {}}}, Purpose::Import, watch);
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().code, ProblemCode::Cancelled);
    EXPECT_EQ(crew.head(), head);
    Connection connection(crew.book(), Access::ReadOnly);
    EXPECT_TRUE(hasSchemaOfLogbook(connection));
}

TEST(Intake, AStrangersIndexIsNeitherDroppedNorRun) {
    Crew crew;
    Connection(crew.book(), Access::ReadWrite).execute("CREATE INDEX theirs ON arc(channels)");
    IndexWatch watch(IndexWatch::At::GoOn);
    const auto taken = crew.take({{crew.write("many.csv", bigLog(20'000)), {}}}, Purpose::Import, watch);
    ASSERT_TRUE(taken) << taken.error().sentence();
    EXPECT_FALSE(watch.heard());
    Connection connection(crew.book(), Access::ReadOnly);
    EXPECT_EQ(connection.number("SELECT count(*) FROM sqlite_schema WHERE name = 'theirs'"), 1);
}

TEST(Intake, AFileOfNothingButUnreadableRowsIsRefused) {
    Crew crew;
    std::string text = "time,splicer,loss_db\n";
    for (int i = 0; i < 5'000; ++i) text += "yesterday,S-01,0.03\n";
    const auto answer = crew.takeOne(crew.write("wrong.csv", text));
    ASSERT_FALSE(answer);
    EXPECT_NE(answer.error().what.find("not one of the first 1,000 rows"), std::string::npos);
}

TEST(Intake, AnEndlessLineDoesNotFillTheMemory) {
    Crew crew;
    const auto count =
        crew.takeOne(crew.write("long.csv", "time,splicer,loss_db\n2031-03-03T07:00:00Z,S-01,0.03\n" +
                                                std::string(3 << 20, 'x') +
                                                "\n2031-03-03T07:01:00Z,S-01,0.03\n"))
            .value();
    EXPECT_EQ(count.added, 2u);
    EXPECT_GE(count.setAside, 1u);
    for (const auto& row : count.rows) EXPECT_LT(row.text.size(), 5'000u);
}

TEST(Intake, SetAsideRowsAreKeptInTheLogbookOnce) {
    Crew crew;
    ASSERT_TRUE(crew.takeOne(csvFolder + "odd_losses.csv"));
    ASSERT_TRUE(crew.takeOne(csvFolder + "odd_losses.csv"));
    const auto lines = crew.open()->journal(0, 100).value();
    EXPECT_EQ(
        std::count_if(lines.begin(), lines.end(), [](const JournalLine& l) { return l.kind == "set_aside"; }),
        1);
}

TEST(Intake, TheSameLogOnTwoLaptopsMakesTheSameSplices) {
    Crew one;
    Crew two;
    two.random = FakeRandom(99);
    ASSERT_TRUE(one.takeOne(csvFolder + "plain.csv"));
    ASSERT_TRUE(two.takeOne(csvFolder + "plain.csv"));
    EXPECT_EQ(one.open()->splices({}, PageOrder::OldestFirst, {}, 1)->front().arc,
              two.open()->splices({}, PageOrder::OldestFirst, {}, 1)->front().arc);
    EXPECT_EQ(one.open()->tools().value(), two.open()->tools().value());
}

// Any cut of any file, taken in any order and any number of times, gives the same splices.
RC_GTEST_PROP(IntakeProperty, PiecesInAnyOrderAndAnyNumberOfTimesGiveTheSameBook, ()) {
    const int rows = *rc::gen::inRange(1, 40);
    std::vector<std::string> lines;
    for (int i = 0; i < rows; ++i)
        lines.push_back(toIso({1'900'000'000'000 + (i / 4) * 60'000LL, 0}) + ",S-01,4," +
                        std::to_string(i % 4 + 1) + ",0.0" + std::to_string(i % 10) + "," +
                        std::to_string(i / 4) + "\n");
    const std::string header = "time,splicer,channels,channel,loss_db,arc_count\n";
    std::string whole = header;
    for (const auto& line : lines) whole += line;
    Crew straight;
    RC_ASSERT(straight.takeOne(straight.write("w.csv", whole))->added == static_cast<std::uint64_t>(rows));
    Crew pieces;
    const auto order = *rc::gen::container<std::vector<int>>(30, rc::gen::inRange(0, rows));
    for (const int from : order) {
        std::string part = header;
        for (int i = from; i < std::min(rows, from + 7); ++i) part += lines[static_cast<std::size_t>(i)];
        RC_ASSERT(pieces.takeOne(pieces.write("p.csv", part))->setAside == 0u);
    }
    RC_ASSERT(pieces.takeOne(pieces.write("w.csv", whole))->setAside == 0u);
    const auto tool = straight.open()->tools()->front().id;
    const auto a = straight.open()->history(tool, {}).value();
    const auto b = pieces.open()->history(tool, {}).value();
    RC_ASSERT(a.arcs.size() == b.arcs.size());
    RC_ASSERT(a.readings.size() == b.readings.size());
    for (std::size_t i = 0; i < a.readings.size(); ++i) RC_ASSERT(a.readings[i].loss == b.readings[i].loss);
}

TEST(CsvValues, FixedPointReadsDigitsAndNothingElse) {
    EXPECT_EQ(fixedPoint("0.03", 3, DecimalMark::Point), 30);
    EXPECT_EQ(fixedPoint("-0.0355", 3, DecimalMark::Point), -36);
    EXPECT_EQ(fixedPoint("+7", 3, DecimalMark::Point), 7'000);
    EXPECT_EQ(fixedPoint(".5", 1, DecimalMark::Point), 5);
    EXPECT_EQ(fixedPoint("1,25", 2, DecimalMark::Comma), 125);
    for (const char* bad :
         {"", "-", ".", "1.2.3", "1,234.5", "0x10", "1e3", " 1", "inf", "nan", "1234567890123"})
        EXPECT_EQ(fixedPoint(bad, 3, DecimalMark::Point), std::nullopt) << bad;
}

// Markus Kuhn's list of malformed sequences is the model: overlong forms, surrogates, cut sequences.
TEST(CsvSource, TellsUtf8FromBytesThatAreNone) {
    for (const char* good : {"", "plain ascii, longer than eight bytes", "Jörg", "日本", "\xF0\x9F\x98\x80"})
        EXPECT_TRUE(isUtf8(good)) << good;
    for (const char* bad : {"\x80", "J\xF6rg", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                            "12345678\xE2\x82", "\xFF"})
        EXPECT_FALSE(isUtf8(bad)) << bad;
}

}  // namespace
}  // namespace arc::storage
