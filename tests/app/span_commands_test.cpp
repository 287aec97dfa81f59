// SPDX-License-Identifier: GPL-3.0-or-later
// arcw spans: spans from a table, what they add up to, taken back.
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/support/book_fixture.hpp"
#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

using nlohmann::json;
using test::arcw;

class SpanCommands : public ::testing::Test {
  protected:
    void SetUp() override {
        book = (folder / "crew.arcbook").string();
        table = (folder / "spans.csv").string();
        const auto log = folder / "log.csv";
        // Three closures, a splice each: 0.02, 0.04 and 0.09 dB.
        std::ofstream(log) << "time,splicer,job,closure,fibre_a,fibre_b,loss_db\n"
                              "2031-03-03T08:00:00Z,S-1,J-1,HR-1,1,1,0.02\n"
                              "2031-03-03T09:00:00Z,S-1,J-1,HR-2,1,1,0.04\n"
                              "2031-03-03T10:00:00Z,S-1,J-1,HR-3,1,1,0.09\n";
        ASSERT_EQ(arcw({"new", book}).code, 0);
        ASSERT_EQ(arcw({"import", book, log.string()}).code, 0);
        std::ofstream(table) << "span,from,to,length_km,closures\n"
                                "West,rack 1,HR-2,10,HR-1 to HR-2\n"
                                "East,HR-2,rack 2,5,HR-3\n";
    }
    json asked(std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"spans", book, "--job", "J-1", "--format", "json"};
        words.insert(words.end(), more.begin(), more.end());
        const auto ran = arcw(words);
        EXPECT_NE(ran.code, 2) << ran.err;
        return ran.code == 2 ? json() : json::parse(ran.out);
    }
    test::TempFolder folder;
    std::string book, table;
};

TEST_F(SpanCommands, ATableMakesSpansThatAddUp) {
    EXPECT_EQ(asked()["spans"][0]["span"], nullptr) << "a job without spans is one";
    const auto said = asked({"--add", table});
    EXPECT_EQ(said["changed"], 2);
    const json& east = said["spans"][0];
    const json& west = said["spans"][1];
    EXPECT_EQ(west["closures"], json::array({"HR-1", "HR-2"}));
    EXPECT_NEAR(west["average_db"].get<double>(), 0.03, 1e-12);
    // 10 x 0.4 + 2 x 0.1 + 1 x 0.5 and 10 x 0.4 + 0.02 + 0.04 + 0.5 at 1310 nm.
    EXPECT_NEAR(west["link_budgets"][0]["allowed_db"].get<double>(), 4.7, 1e-12);
    EXPECT_NEAR(west["link_budgets"][0]["as_spliced_db"].get<double>(), 4.56, 1e-12);
    EXPECT_EQ(west["link_budgets"][0]["splices_estimated"], 2);
    EXPECT_NEAR(east["average_db"].get<double>(), 0.09, 1e-12);
    EXPECT_EQ(arcw({"spans", book, "--job", "J-1"}).code, 1) << "East is above its average of 0.05";
    EXPECT_NE(arcw({"spans", book, "--job", "J-1"}).out.find("average 0.090 dB of 0.05 agreed: over"),
              std::string::npos);
    EXPECT_EQ(asked({"--add", table})["changed"], 0) << "the same table changes nothing";
    EXPECT_EQ(arcw({"verify", book}).code, 0);
}

TEST_F(SpanCommands, ASpanIsTakenBackAndWrongUseWritesNothing) {
    asked({"--add", table});
    EXPECT_EQ(asked({"--remove", "East"})["spans"].size(), 2u) << "West, and what is on no span";
    EXPECT_EQ(arcw({"spans", book, "--job", "J-1", "--remove", "East"}).code, 2);
    std::ofstream(table) << "span,from,to,closures\nNorth,a,b,HR-9\n";
    const auto refused = arcw({"spans", book, "--job", "J-1", "--add", table});
    EXPECT_EQ(refused.code, 2);
    EXPECT_NE(refused.err.find("this job has no closure HR-9 (line 2)"), std::string::npos) << refused.err;
    EXPECT_EQ(asked()["spans"].size(), 2u);
    EXPECT_EQ(arcw({"spans", book, "--job", "J-2"}).code, 2);
}

}  // namespace
}  // namespace arc::app
