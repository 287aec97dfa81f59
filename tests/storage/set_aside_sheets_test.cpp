// SPDX-License-Identifier: GPL-3.0-or-later
// Rows that were set aside wait until they are mended or left out; a look at a table changes nothing; saved
// column keys come back as they were.
#include "storage/set_aside_sheets.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "storage/column_key.hpp"
#include "storage/intake.hpp"
#include "storage/table_preview.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

const char* const threeRows =
    "time;unit;loss\n2031-03-03T07:00:00Z;S-1;0,03\n2031-03-03T07:05:00Z;S-1;o,04\n"
    "2031-03-03T07:06:00Z;S-1;0,05;extra\n";

ColumnKey crewB() {
    ColumnKey key;
    key.name = "Crew B";
    key.separator = ';';
    key.decimal = DecimalMark::Comma;
    key.columns = {{"splicer", "unit"}, {"loss_db", "loss"}};
    key.header = {"time", "unit", "loss"};
    return key;
}

MendedRow mended(std::size_t row, std::vector<std::string> cells, std::string text = {}) {
    MendedRow one;
    one.row = row;
    one.cells = std::move(cells);
    one.text = std::move(text);
    return one;
}

class SetAsideSheets : public ::testing::Test {
  protected:
    void SetUp() override {
        book_ = createLogbook(book(), clock_, random_).value();
        std::ofstream(log(), std::ios::binary) << threeRows;
    }
    [[nodiscard]] std::filesystem::path book() const { return folder_ / "crew.arcbook"; }
    [[nodiscard]] std::filesystem::path log() const { return folder_ / "monday.csv"; }
    ImportCount take() {
        NoProgress unwatched;
        IntakeRequest request{book(), {{log(), {}}}, Purpose::Import, OpenMode::Companion, "Ada", crewB()};
        request.setAsideTable = SetAsideTable::Wanted;
        return takeIn(request, clock_, random_, unwatched).value().front();
    }
    std::vector<MendedRow> mend(const SetAsideSheet& sheet, std::vector<MendedRow> rows,
                                MendPurpose purpose) {
        return mendRows(book(), sheet, std::move(rows), purpose, "Ada", clock_, random_).value();
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    std::unique_ptr<Logbook> book_;
};

TEST_F(SetAsideSheets, RowsWaitWithTheirHeaderAndKeyUntilTheyAreMended) {
    EXPECT_EQ(take().setAside, 2u);
    const auto sheets = openSheets(book()).value();
    ASSERT_EQ(sheets.size(), 1u);
    const auto& sheet = sheets.front();
    EXPECT_EQ(sheet.file, "monday.csv");
    EXPECT_EQ(sheet.header, (std::vector<std::string>{"time", "unit", "loss"}));
    EXPECT_EQ(sheet.key, crewB());
    ASSERT_EQ(sheet.rows.size(), 2u);
    EXPECT_EQ(sheet.rows[0].line, 3u);
    EXPECT_EQ(sheet.cells[0], (std::vector<std::string>{"2031-03-03T07:05:00Z", "S-1", "o,04"}));

    const auto before = book_->totals()->journalRows;
    auto tried = mend(sheet, {mended(0, {"2031-03-03T07:05:00Z", "S-1", "-0,04"})}, MendPurpose::Try);
    EXPECT_EQ(tried[0].verdict, MendVerdict::StillWrong);
    EXPECT_EQ(tried[0].column, "loss_db");
    tried = mend(sheet, {mended(0, {"2031-03-03T07:05:00Z", "S-1", "0,04"})}, MendPurpose::Try);
    EXPECT_EQ(tried[0].verdict, MendVerdict::Lands);
    tried = mend(sheet, {mended(0, {"2031-03-03T07:00:00Z", "S-1", "0,03"})}, MendPurpose::Try);
    EXPECT_EQ(tried[0].verdict, MendVerdict::Known);
    EXPECT_EQ(book_->totals()->journalRows, before) << "trying writes nothing";

    // One of two lands; the other stays and is not set aside a second time.
    const auto taken = mend(sheet,
                            {mended(0, {"2031-03-03T07:05:00Z", "S-1", "0,04"}),
                             mended(1, {}, "2031-03-03T07:06:00Z;S-1;0,05;still one too many")},
                            MendPurpose::Import);
    EXPECT_EQ(taken[1].verdict, MendVerdict::StillWrong);
    EXPECT_EQ(book_->totals()->readings, 2u);
    auto left = openSheets(book()).value();
    ASSERT_EQ(left.size(), 1u);
    ASSERT_EQ(left[0].rows.size(), 1u);
    EXPECT_EQ(left[0].rows[0].line, 4u);

    mend(left[0], {mended(0, {}, "2031-03-03T07:06:00Z;S-1;0,05")}, MendPurpose::Import);
    EXPECT_EQ(book_->totals()->readings, 3u);
    EXPECT_TRUE(openSheets(book()).value().empty());
    take();
    EXPECT_TRUE(openSheets(book()).value().empty()) << "the same file again does not open them again";
}

TEST_F(SetAsideSheets, ARowIsLeftOutOnPurposeAndMayBeTakenBack) {
    take();
    const auto sheet = openSheets(book()).value().front();
    const Setting out = leftOutSetting(sheet, 1);
    ASSERT_TRUE(book_->append(out, {"Ada", "window", {}}));
    ASSERT_EQ(openSheets(book()).value().front().rows.size(), 1u);
    ASSERT_TRUE(book_->append(opposite(out, std::nullopt), {"Ada", "window", {}}));
    EXPECT_EQ(openSheets(book()).value().front().rows.size(), 2u);
}

TEST_F(SetAsideSheets, TheSetAsideRowsAsATableAreTheHeaderAndTheRowsAsTheyStood) {
    EXPECT_EQ(take().setAsideTable,
              "time;unit;loss\r\n2031-03-03T07:05:00Z;S-1;o,04\r\n2031-03-03T07:06:00Z;S-1;0,05;extra\r\n");
}

TEST_F(SetAsideSheets, ALookSaysWhatTheImportWillDoAndWritesNothing) {
    const auto before = book_->totals()->journalRows;
    const auto bare = previewTable(book(), {log(), FileKind::SpliceLog, {}}, clock_, random_).value();
    EXPECT_EQ(bare.separator, ';');
    ASSERT_TRUE(bare.problem);
    EXPECT_NE(bare.problem->what.find("splicer"), std::string::npos);
    ASSERT_EQ(bare.rows.size(), 3u);
    EXPECT_EQ(bare.rows[1].theirs[2], "o,04");

    const auto keyed = previewTable(book(), {log(), FileKind::SpliceLog, crewB()}, clock_, random_).value();
    EXPECT_FALSE(keyed.problem);
    EXPECT_EQ(keyed.rows[0].reason, "");
    const auto loss = static_cast<std::size_t>(
        std::find(keyed.ourHeader.begin(), keyed.ourHeader.end(), "loss_db") - keyed.ourHeader.begin());
    EXPECT_EQ(keyed.rows[0].ours.at(0).at(loss), "0.03");
    EXPECT_EQ(keyed.rows[1].column, "loss_db");
    EXPECT_FALSE(keyed.rows[2].reason.empty());
    EXPECT_EQ(book_->totals()->journalRows, before);
    EXPECT_TRUE(book_->tools()->empty()) << "a look makes no splicer";
    const auto imported = take();
    for (const auto& row : imported.rows)
        EXPECT_EQ(row.reason, keyed.rows[row.line - 2].reason) << "line " << row.line;
}

TEST_F(SetAsideSheets, SavedKeysComeBackAsTheyWere) {
    ColumnKey wide = crewB();
    wide.name = "a wide one";
    wide.kind = FileKind::SpliceLog;
    wide.dates = DateForm::DayMonthYear;
    wide.offset = "+01:00";
    wide.lossUnit = LossUnit::Millidecibel;
    wide.columns = {{"time", "datum"}};
    wide.timeOfDay = "uhrzeit";
    wide.fixed = {{"splicer", "S-9 \"Heron\""}};
    wide.values = {{"mode", {{"SM", "G.652-G.652"}}}};
    wide.wide = {{1, "f1"}, {12, "f12"}};
    ASSERT_TRUE(book_->append(keySetting(crewB()).value(), {"Ada", "window", {}}));
    ASSERT_TRUE(book_->append(keySetting(wide).value(), {"Ada", "window", {}}));
    EXPECT_EQ(savedKeys(book()).value(), (std::vector{crewB(), wide}));
    EXPECT_EQ(readColumnKey(toJson(wide), "x").value(), wide);
    EXPECT_FALSE(keySetting(ColumnKey{}));
    ASSERT_TRUE(book_->append(Setting{"column_key/Crew B", ""}, {"Ada", "window", {}}));
    EXPECT_EQ(savedKeys(book())->size(), 1u);
    EXPECT_EQ(text(Entry(keySetting(wide).value())), "Column key a wide one saved");
}

}  // namespace
}  // namespace arc::storage
