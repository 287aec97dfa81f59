// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "source_dir.hpp"
#include "storage/export_csv.hpp"
#include "storage/export_json.hpp"
#include "storage/export_xlsx.hpp"
#include "tests/support/closeout_folder.hpp"
#include "tests/support/fakes.hpp"

namespace arc::storage {
namespace {

using nlohmann::json;

TEST(CloseoutCsv, HasOneRowPerAttemptInTheColumnsOfASpliceLog) {
    auto book = test::smallJob();
    const std::string csv = splicesCsv(test::recordOf(book));
    const std::string head = csv.substr(0, csv.find("\r\n"));
    EXPECT_EQ(head.substr(0, 60), "time,splicer,job,closure,mode,channels,channel,fibre_a,fibre");
    const auto rows = std::count(csv.begin(), csv.end(), '\n');
    EXPECT_EQ(rows, 7);
    EXPECT_NE(
        csv.find("2031-03-03T08:04:00+01:00,S-01,HR-B,HR-17,G.652-G.652,1,1,2,2,0.04,0.4,0.6,1003,21.5,,,"
                 "Crew 2,2,yes,accepted,,orange,orange,C-01,\r\n"),
        std::string::npos)
        << csv;
    EXPECT_NE(csv.find(",3,yes,over_limit,over_limit,green,green,C-01,\"kept, fibre is short\"\r\n"),
              std::string::npos)
        << csv;
}

// RFC 4180 section 2, rules 5-7, and the formula starts that spreadsheets obey.
TEST(CloseoutCsv, QuotesAndDisarms) {
    EXPECT_EQ(csvText("plain"), "plain");
    EXPECT_EQ(csvText("a,b"), "\"a,b\"");
    EXPECT_EQ(csvText("say \"so\""), "\"say \"\"so\"\"\"");
    EXPECT_EQ(csvText("two\nlines"), "\"two\nlines\"");
    EXPECT_EQ(csvText("=1+1"), "'=1+1");
    EXPECT_EQ(csvText("+1"), "'+1");
    EXPECT_EQ(csvText("-1"), "'-1");
    EXPECT_EQ(csvText("@SUM(A1)"), "'@SUM(A1)");
    EXPECT_EQ(csvText("\tx"), "'\tx");
    EXPECT_EQ(csvText("=cmd|' /C calc'!A0,\"x\""), "\"'=cmd|' /C calc'!A0,\"\"x\"\"\"");
}

TEST(CloseoutCsv, WritesThousandthsExactly) {
    EXPECT_EQ(thousandths(20), "0.02");
    EXPECT_EQ(thousandths(-273), "-0.273");
    EXPECT_EQ(thousandths(0), "0.00");
    EXPECT_EQ(thousandths(12'345), "12.345");
    EXPECT_EQ(thousandths(-5), "-0.005");
    EXPECT_EQ(hundredths(40), "0.4");
    EXPECT_EQ(hundredths(-105), "-1.05");
}

TEST(CloseoutJson, CarriesTheGoldenValues) {
    auto book = test::smallJob();
    const auto text = recordJson(test::recordOf(book));
    ASSERT_TRUE(text);
    const json record = json::parse(*text);
    EXPECT_EQ(record["job"]["label"], "HR-B");
    EXPECT_EQ(record["journal_head"], book.head);
    EXPECT_EQ(record["number"], nullptr);
    EXPECT_DOUBLE_EQ(record["summary"]["averages"]["worst_db"].get<double>(), 0.16);
    EXPECT_EQ(record["summary"]["plan"]["planned"], 4);
    EXPECT_EQ(record["closures"][0]["plan"]["missing"][0]["fibre_a"], 4);
    const json& third = record["closures"][0]["splices"][2];
    EXPECT_EQ(third["fibre_a"]["colour"], "green");
    EXPECT_EQ(third["attempts"].size(), 3u);
    EXPECT_EQ(third["verdict"], "over_limit");
    // 20 km x 0.40 + 1 splice x 0.10 + 2 x 0.5 = 9.1 dB at 1310 nm.
    EXPECT_NEAR(record["link_budgets"][0]["allowed"]["total_db"].get<double>(), 9.1, 1e-12);
}

TEST(CloseoutJson, SurvivesTextThatIsNoUtf8) {
    auto book = test::smallJob();
    book.jobList[0].title = "caf\xe9";
    const auto text = recordJson(test::recordOf(book));
    ASSERT_TRUE(text);
    EXPECT_FALSE(json::parse(*text, nullptr, false).is_discarded());
}

class WithFolder : public ::testing::Test {
  protected:
    /// A job with everything in it that a record can hold.
    static test::MemoryLogbook fullJob() {
        auto book = test::smallJob();
        MeasuredLoss loss;
        loss.id = test::idOf<EntryId>(9);
        loss.job = test::idOf<JobId>(1);
        loss.closure = test::idOf<ClosureId>(1);
        loss.fibre = "1";
        loss.aToB = Loss{-273};
        loss.at = test::at("2031-03-05T10:00:00Z");
        book.measuredList.push_back(loss);
        loss.fibre = "23";
        loss.bToA = Loss{313};
        book.measuredList.push_back(loss);
        CareRecord care;
        care.id = test::idOf<CareId>(1);
        care.tool = test::idOf<ToolId>(1);
        care.action = action::electrodeReplace;
        care.at = test::at("2031-03-03T07:00:00+01:00");
        care.detail = "=HYPERLINK(\"http://x\")";
        book.careList.push_back(care);
        book.arcList[0].readings[0].note = "=1+1";
        book.arcList[0].operatorName = "@crew";
        book.dispositionList.push_back({test::idOf<EntryId>(1), test::idOf<JobId>(1), "missing/HR-17/1",
                                        "accepted", "dark fibre", "QA", test::at("2031-03-04T09:00:00Z")});
        return book;
    }
    test::TempFolder temporary;
};

TEST_F(WithFolder, TheJsonFollowsItsPublishedSchema) {
    auto book = fullJob();
    const auto json_ = temporary / "record.json";
    std::ofstream(json_) << *recordJson(test::recordOf(book));
    const std::string check = "python3 -I -m jsonschema -i '" + json_.string() +
                              "' '" ARC_SOURCE_DIR "/resources/closeout/closeout-record-1.schema.json'";
    const auto good = test::shell(check);
    EXPECT_EQ(good.code, 0) << good.text;
    // With spans there are budgets by span.
    book.spanList.push_back({test::idOf<SpanId>(1),
                             test::idOf<JobId>(1),
                             "North",
                             {std::nullopt, "rack 1"},
                             {test::idOf<ClosureId>(1), {}},
                             test::idOf<CableId>(1),
                             12.5,
                             {test::idOf<ClosureId>(1)}});
    std::ofstream(json_) << *recordJson(test::recordOf(book));
    const auto spans = test::shell(check);
    EXPECT_EQ(spans.code, 0) << spans.text;
    const json record = json::parse(test::contents(json_));
    EXPECT_TRUE(record["link_budgets"].empty());
    EXPECT_EQ(record["spans"][0]["closures"], json::array({"HR-17"}));
    // 12.5 km x 0.40 + 1 splice x 0.10 + 1 x 0.5 = 5.6 dB at 1310 nm.
    EXPECT_NEAR(record["spans"][0]["link_budgets"][0]["allowed"]["total_db"].get<double>(), 5.6, 1e-12);
    // The schema can say no.
    std::string broken = test::contents(json_);
    broken.replace(broken.find("\"over_limit\""), 12, "\"fine\"");
    std::ofstream(json_) << broken;
    EXPECT_NE(test::shell(check).code, 0);
}

TEST_F(WithFolder, TheWorkbookHasTypedCellsFiltersAndNoFormula) {
    auto book = fullJob();
    ASSERT_TRUE(writeRecordXlsx(test::recordOf(book), temporary / "record.xlsx"));
    // Read with Python's zip and XML modules: neither knows our writer.
    std::ofstream(temporary / "look.py") << R"(
import sys, zipfile, xml.etree.ElementTree as E
n = {'m': 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'}
z = zipfile.ZipFile(sys.argv[1])
assert z.testzip() is None
texts = [''.join(t.text or '' for t in s.iter('{%s}t' % n['m'])) for s in E.fromstring(z.read('xl/sharedStrings.xml'))]
names = [s.get('name') for s in E.fromstring(z.read('xl/workbook.xml')).iter('{%s}sheet' % n['m'])]
print('|'.join(names))
for i in range(1, len(names) + 1):
    sheet = E.fromstring(z.read('xl/worksheets/sheet%d.xml' % i))
    assert not list(sheet.iter('{%s}f' % n['m'])), 'a formula'
    pane = sheet.find('.//m:pane', n)
    assert pane.get('state') == 'frozen' and pane.get('ySplit') == '1'
    if i == 2:
        assert sheet.find('m:autoFilter', n).get('ref') == 'A1:T4', sheet.find('m:autoFilter', n).get('ref')
        for row in sheet.iter('{%s}row' % n['m']):
            cells = []
            for c in row:
                v = c.find('m:v', n)
                v = '' if v is None else v.text
                cells.append('T:' + texts[int(v)] if c.get('t') == 's' else 'N:' + v)
            print(';'.join(cells))
)";
    const auto seen = test::shell("python3 -I '" + (temporary / "look.py").string() + "' '" +
                                  (temporary / "record.xlsx").string() + "'");
    ASSERT_EQ(seen.code, 0) << seen.text;
    EXPECT_NE(seen.text.find("Summary|Splices|Exceptions|Equipment|Measured losses"), std::string::npos)
        << seen.text;
    // Spreadsheet day number of 2031-03-03 (ECMA-376, 1900 date system): 47910; 08:00 is a third of it.
    EXPECT_NE(seen.text.find("T:HR-17;N:1;T:blue;N:1;T:blue;N:0.02;T:Accepted;N:1;N:47910.3333333333"),
              std::string::npos)
        << seen.text;
    EXPECT_NE(seen.text.find("T:@crew"), std::string::npos);
    EXPECT_NE(seen.text.find("T:=1+1"), std::string::npos);
}

TEST_F(WithFolder, TheSameRecordMakesTheSameWorkbook) {
    auto book = fullJob();
    ASSERT_TRUE(writeRecordXlsx(test::recordOf(book), temporary / "a.xlsx"));
    ASSERT_TRUE(writeRecordXlsx(test::recordOf(book), temporary / "b.xlsx"));
    EXPECT_EQ(test::contents(temporary / "a.xlsx"), test::contents(temporary / "b.xlsx"));
}

}  // namespace
}  // namespace arc::storage
