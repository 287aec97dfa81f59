// SPDX-License-Identifier: GPL-3.0-or-later
// Other people's columns, separators, marks and dates; what can be read in two ways is refused.
#include "storage/column_key.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "storage/intake.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

class ColumnKeyTest : public ::testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(createLogbook(book(), clock_, random_)); }
    [[nodiscard]] std::filesystem::path book() const { return folder_ / "crew.arcbook"; }
    Result<ImportCount> take(const std::string& key, const std::string& csv) {
        const auto file = folder_ / ("log-" + std::to_string(++files_) + ".csv");
        std::ofstream(file, std::ios::binary) << csv;
        auto read = readColumnKey(key, "key.json");
        if (!read) return tl::unexpected(read.error());
        IntakeRequest request{book(), {{file, {}}}, Purpose::Import, OpenMode::ReadWrite, "Ada", *read};
        NoProgress unwatched;
        return takeIn(request, clock_, random_, unwatched).map([](auto counts) { return counts.front(); });
    }
    std::vector<SpliceRow> rows() {
        return openLogbook(book(), OpenMode::ReadOnly, clock_, random_)
            .value()
            ->splices({}, PageOrder::OldestFirst, {}, 100)
            .value();
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    int files_ = 0;
};

TEST_F(ColumnKeyTest, ForeignNamesDayFirstDatesAndDecimalCommas) {
    const auto count =
        take(R"({"name": "Crew B", "separator": ";", "decimal": ",", "dates": "day_month_year",
        "offset": "+01:00", "columns": {"time": "Datum", "splicer": "Gerät", "loss_db": "Dämpfung"},
        "time_of_day": "Uhrzeit", "fixed": {"mode": "G.652-G.652"}})",
             "Datum;Uhrzeit;Gerät;Dämpfung;Rest\n03.04.2031;07:00;S-9;0,03;x\n3/4/2031;8:05:30;S-9;0,04;x\n"
             "31.02.2031;07:00;S-9;0,03;x\n");
    ASSERT_TRUE(count) << count.error().sentence();
    EXPECT_EQ(count->added, 2u);
    EXPECT_EQ(count->setAside, 1u);
    EXPECT_EQ(count->rows.front().line, 4u);
    const auto list = rows();
    EXPECT_EQ(toIso(list[0].arc.at), "2031-04-03T07:00:00+01:00");
    EXPECT_EQ(toIso(list[1].arc.at), "2031-04-03T08:05:30+01:00");
    EXPECT_EQ(list[0].reading.loss, Loss{30});
    EXPECT_EQ(list[0].arc.mode, "G.652-G.652");
}

TEST_F(ColumnKeyTest, OneColumnPerChannelInMillidecibels) {
    const auto count =
        take(R"({"loss_unit": "mdB", "columns": {"time": "when", "splicer": "unit", "arc_count": "no"},
        "wide": {"1": "f1", "2": "f2", "3": "f3", "4": "f4"}})",
             "when,unit,no,f1,f2,f3,f4\n2031-03-03T07:00:00Z,S-1,5,30,41,,22\n"
             "2031-03-03T07:05:00Z,S-1,6,30,x,1,22\n2031-03-03T07:06:00Z,S-1,7,,,,\n");
    ASSERT_TRUE(count) << count.error().sentence();
    EXPECT_EQ(count->added, 3u);
    EXPECT_EQ(count->setAside, 2u);
    EXPECT_EQ(count->rows.front().column, "f2");
    const auto list = rows();
    ASSERT_EQ(list.size(), 3u);
    EXPECT_EQ(list[0].arc.channels, 4);
    EXPECT_EQ(list[1].reading.loss, Loss{41});
    EXPECT_EQ(list[2].reading.channel, 4);
}

TEST_F(ColumnKeyTest, DatesThatCanBeReadInTwoWaysAreRefusedUntilTheKeySaysHow) {
    const std::string csv = "when,unit,loss_db\n03/04/2031 07:00 PM,S-1,0.03\n";
    const std::string columns = R"("offset": "Z", "columns": {"time": "when", "splicer": "unit"})";
    const auto silent = take("{" + columns + "}", csv).value();
    EXPECT_EQ(silent.setAside, 1u);
    EXPECT_NE(silent.rows.front().reason.find("more than one way"), std::string::npos);
    EXPECT_EQ(take(R"({"dates": "month_day_year", )" + columns + "}", csv)->added, 1u);
    EXPECT_EQ(toIso(rows().front().arc.at), "2031-03-04T19:00:00Z");
}

TEST_F(ColumnKeyTest, EventWordsAreTranslated) {
    const auto count =
        take(R"({"kind": "events", "columns": {"time": "when", "equipment": "unit", "action": "what"},
        "values": {"action": {"Nuten gereinigt": "groove_clean"}}})",
             "when,unit,what\n2031-03-03T07:00:00Z,S-1,Nuten gereinigt\n2031-03-03T07:00:00Z,S-1,tea\n");
    ASSERT_TRUE(count) << count.error().sentence();
    EXPECT_EQ(count->added, 1u);
    EXPECT_EQ(count->setAside, 1u);
}

TEST_F(ColumnKeyTest, AKeyThatDoesNotFitTheFileIsSaid) {
    const auto answer = take(R"({"columns": {"time": "when", "splicer": "unit"}})", "time,splicer,loss_db\n");
    ASSERT_FALSE(answer);
    EXPECT_NE(answer.error().what.find("no column \"unit\""), std::string::npos) << answer.error().sentence();
}

TEST(ColumnKeys, AreCheckedMemberByMember) {
    for (const char* bad :
         {"", "[]", "{\"columns\": 1}", "{\"colums\": {}}", "{\"columns\": {\"loss\": \"x\"}}",
          "{\"dates\": \"maybe\"}", "{\"offset\": \"CET\"}", "{\"wide\": {\"17\": \"x\"}}",
          "{\"columns\": {\"time\": \"a\"}, \"columns\": {\"time\": \"b\"}}",
          "{\"columns\": {\"mode\": \"a\"}, \"fixed\": {\"mode\": \"b\"}}",
          "{\"columns\": {\"loss_db\": \"a\"}, \"wide\": {\"1\": \"b\"}}", "{\"separator\": \"x\"}"}) {
        const auto key = readColumnKey(bad, "key.json");
        ASSERT_FALSE(key) << bad;
        EXPECT_EQ(key.error().code, ProblemCode::BadInput);
    }
}

}  // namespace
}  // namespace arc::storage
