// SPDX-License-Identifier: GPL-3.0-or-later
// arcw agreement on the invented crew of Harrow Ridge.
#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

using test::arcw;
using test::Ran;

TEST(AgreementCommand, JudgesEachSplicerOfTheDemoBook) {
    const test::TempFolder folder;
    const std::string book = (folder / "demo.arcbook").string();
    ASSERT_EQ(arcw({"demo", book}).code, 0);
    const Ran ran = arcw({"agreement", book, "--format", "json"});
    ASSERT_TRUE(ran.code == 0 || ran.code == 1) << ran.err;
    const auto report = nlohmann::json::parse(ran.out);
    ASSERT_FALSE(report["agreement"].empty());
    bool signal = false;
    for (const auto& one : report["agreement"]) {
        signal = signal || !one["signal"].is_null();
        if (one["mean_db"].is_null()) continue;
        EXPECT_LE(one["mean_interval_db"][0], one["mean_db"]);
        EXPECT_GE(one["mean_interval_db"][1], one["mean_db"]);
        EXPECT_LT(one["lower_limit_db"], one["upper_limit_db"]);
    }
    EXPECT_EQ(ran.code, signal ? 1 : 0);
    const Ran text = arcw({"agreement", book, "--splicer", "S-01"});
    EXPECT_NE(text.out.find("S-01"), std::string::npos);
    EXPECT_EQ(text.out.find("S-02"), std::string::npos);
}

TEST(AgreementCommand, RefusesInOneSentence) {
    const test::TempFolder folder;
    const std::string book = (folder / "new.arcbook").string();
    ASSERT_EQ(arcw({"new", book}).code, 0);
    EXPECT_EQ(arcw({"agreement", book}).code, 0);
    for (const auto& words : std::vector<std::vector<std::string>>{{"agreement", (folder / "none").string()},
                                                                   {"agreement", book, "--budget", "x"},
                                                                   {"agreement", book, "--budget", "nan"},
                                                                   {"agreement"}}) {
        const Ran ran = arcw(words);
        EXPECT_EQ(ran.code, 2);
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
    }
}

}  // namespace
}  // namespace arc::app
