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
    /// With their rows read.
    Result<std::vector<SetAsideSheet>> sheets() {
        auto open = openSheets(book());
        if (!open) return open;
        for (auto& sheet : *open) EXPECT_TRUE(readRows(book(), sheet, 0, sheet.rows.size()));
        return open;
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
    const auto open = sheets().value();
    ASSERT_EQ(open.size(), 1u);
    const auto& sheet = open.front();
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
    auto left = sheets().value();
    ASSERT_EQ(left.size(), 1u);
    ASSERT_EQ(left[0].rows.size(), 1u);
    EXPECT_EQ(left[0].rows[0].line, 4u);

    mend(left[0], {mended(0, {}, "2031-03-03T07:06:00Z;S-1;0,05")}, MendPurpose::Import);
    EXPECT_EQ(book_->totals()->readings, 3u);
    EXPECT_TRUE(sheets().value().empty());
    take();
    EXPECT_TRUE(sheets().value().empty()) << "the same file again does not open them again";
}

TEST_F(SetAsideSheets, ARowIsLeftOutOnPurposeAndMayBeTakenBack) {
    take();
    const auto sheet = sheets().value().front();
    const Setting out = leftOutSetting(sheet, 1);
    ASSERT_TRUE(book_->append(out, {"Ada", "window", {}}));
    ASSERT_EQ(sheets().value().front().rows.size(), 1u);
    ASSERT_TRUE(book_->append(opposite(out, std::nullopt), {"Ada", "window", {}}));
    EXPECT_EQ(sheets().value().front().rows.size(), 2u);
}

TEST_F(SetAsideSheets, EveryRowOfALongFileWaitsNotOnlyTheFirstThousand) {
    constexpr int many = 25'000;
    {
        std::ofstream file(log(), std::ios::binary);
        file << "time;unit;loss\n2031-03-03T06:00:00Z;S-1;0,03\n";
        for (int i = 0; i < many; ++i) file << "2031-03-03T07:00:00Z;S-1;o," << i << '\n';
    }
    EXPECT_EQ(take().setAside, std::uint64_t{many});
    auto open = openSheets(book()).value();
    std::size_t rows = 0;
    for (const auto& sheet : open) rows += sheet.rows.size();
    EXPECT_EQ(rows, std::size_t{many});
    auto& last = open.front();
    const std::size_t end = last.rows.size() - 1;
    EXPECT_EQ(last.rows[end].line, 0u) << "not read before it is asked for";
    ASSERT_TRUE(readRows(book(), last, end, 1));
    EXPECT_EQ(last.rows[end].text, "2031-03-03T07:00:00Z;S-1;o,24999");
    EXPECT_EQ(last.cells[end].size(), 3u);
    // 1,500 mended at once: each of the wrong ones is named.
    std::vector<MendedRow> all;
    for (std::size_t r = 0; r < 1'500; ++r)
        all.push_back(mended(
            r, {"2031-03-04T07:" + std::to_string(10 + r % 50) + ":00Z", "S-1", r % 2 ? "x" : "0,04"}));
    std::size_t wrong = 0;
    for (const auto& row : mend(last, all, MendPurpose::Try)) wrong += row.verdict == MendVerdict::StillWrong;
    EXPECT_EQ(wrong, 750u);
}

TEST_F(SetAsideSheets, AnotherFileOfTheSameNameHidesNoRowAndAFileThatGrewShowsEachOnce) {
    take();
    std::ofstream(log(), std::ios::binary)
        << "time;unit;loss\n2031-03-04T06:00:00Z;S-1;0,03\n2031-03-04T07:05:00Z;"
           "S-1;p,07\n";
    take();
    const auto rows = [this] {
        std::vector<std::string> texts;
        const auto open = sheets().value();
        for (const auto& sheet : open)
            for (const auto& row : sheet.rows) texts.push_back(row.text);
        return texts;
    };
    EXPECT_EQ(rows(),
              (std::vector<std::string>{"2031-03-04T07:05:00Z;S-1;p,07", "2031-03-03T07:05:00Z;S-1;o,04",
                                        "2031-03-03T07:06:00Z;S-1;0,05;extra"}));
    std::ofstream(log(), std::ios::binary) << threeRows << "2031-03-03T07:09:00Z;S-1;q,09\n";
    take();
    EXPECT_EQ(rows().size(), 4u);
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
