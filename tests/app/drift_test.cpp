// SPDX-License-Identifier: GPL-3.0-or-later
// arcw drift on the invented crew of Harrow Ridge, whose faults are known
// (sample-data/harrow-ridge.truth.json).
#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "source_dir.hpp"
#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

using test::arcw;
using test::Ran;

bool says(const nlohmann::json& report, const std::string& splicer, const std::string& cause) {
    return std::any_of(report["signals"].begin(), report["signals"].end(), [&](const nlohmann::json& signal) {
        return signal["splicer"] == splicer && signal["cause"] == cause;
    });
}

TEST(DriftCommand, FindsTheFaultsOfTheDemoBook) {
    const test::TempFolder folder;
    const std::string book = (folder / "demo.arcbook").string();
    ASSERT_EQ(arcw({"demo", book}).code, 0);
    const Ran ran = arcw({"drift", book, "--format", "json"});
    ASSERT_TRUE(ran.code == 0 || ran.code == 1) << ran.err;
    const auto report = nlohmann::json::parse(ran.out);
    EXPECT_TRUE(says(report, "S-01", "groove"));
    EXPECT_TRUE(says(report, "S-02", "calibration"));
    EXPECT_TRUE(says(report, "S-02", "fibre"));
    EXPECT_TRUE(says(report, "S-03", "electrode"));
    EXPECT_TRUE(says(report, "S-04", "cleaver"));
}

// What is said of a log does not depend on how it came in: at once, or day by day and out of order.
TEST(DriftCommand, TheLogMaySplitIntoImports) {
    const test::TempFolder folder;
    std::ifstream file(ARC_SOURCE_DIR "/sample-data/harrow-ridge.splices.csv", std::ios::binary);
    std::string head, line;
    ASSERT_TRUE(std::getline(file, head));
    std::vector<std::string> rows;
    while (std::getline(file, line)) rows.push_back(line);
    ASSERT_GT(rows.size(), 1000u);
    const auto write = [&](const char* name, std::size_t from, std::size_t to) {
        std::ofstream out(folder / name, std::ios::binary);
        out << head << '\n';
        for (std::size_t i = from; i < to; ++i) out << rows[i] << '\n';
    };
    write("all.splices.csv", 0, rows.size());
    const std::size_t third = rows.size() / 3;
    write("one.splices.csv", 0, third);
    write("two.splices.csv", third, 2 * third);
    write("three.splices.csv", 2 * third, rows.size());
    const auto verdicts = [&](const std::string& name, const std::vector<std::string>& files) {
        const std::string book = (folder / name).string();
        EXPECT_EQ(arcw({"new", book}).code, 0);
        for (const auto& csv : files) EXPECT_LE(arcw({"import", book, (folder / csv).string()}).code, 1);
        return arcw({"drift", book, "--format", "json"}).out;
    };
    const auto whole = verdicts("whole.arcbook", {"all.splices.csv"});
    EXPECT_NE(whole.find("\"groove\""), std::string::npos);
    EXPECT_EQ(verdicts("parts.arcbook", {"one.splices.csv", "three.splices.csv", "two.splices.csv"}), whole);
}

TEST(DriftCommand, GivesWhatOtherProgramsRelyOn) {
    const test::TempFolder folder;
    const std::string book = (folder / "demo.arcbook").string();
    ASSERT_EQ(arcw({"demo", book}).code, 0);
    const Ran ran = arcw({"drift", book, "--splicer", "S-01", "--budget", "500", "--format", "json"});
    const auto report = nlohmann::json::parse(ran.out);
    ASSERT_FALSE(report["signals"].empty());
    bool open = false;
    for (const auto& signal : report["signals"]) {
        EXPECT_EQ(signal["splicer"], "S-01");
        for (const char* key :
             {"stratum", "chart", "channel", "raised_at_arc", "raised_at_time", "began_at_arc", "began_low",
              "began_high", "size_db", "cause", "causes", "state", "action"})
            EXPECT_TRUE(signal.contains(key)) << key;
        double sum = 0;
        for (const auto& cause : signal["causes"]) sum += cause["weight"].get<double>();
        EXPECT_NEAR(sum, 1, 1e-9);
        open = open || signal["state"] == "open";
    }
    EXPECT_EQ(ran.code, open ? 1 : 0);
}

TEST(DriftCommand, TellsPeopleTheSameInWords) {
    const test::TempFolder folder;
    const std::string book = (folder / "demo.arcbook").string();
    ASSERT_EQ(arcw({"demo", book}).code, 0);
    const Ran ran = arcw({"drift", book, "--splicer", "S-01"});
    EXPECT_NE(ran.out.find("Groove 5 is dirty, likely"), std::string::npos);
    EXPECT_NE(ran.out.find("one false signal per 1000 arcs"), std::string::npos);
    EXPECT_EQ(ran.out.find("S-02:"), std::string::npos);
}

TEST(DriftCommand, RefusesInOneSentence) {
    const test::TempFolder folder;
    const std::string book = (folder / "new.arcbook").string();
    ASSERT_EQ(arcw({"new", book}).code, 0);
    EXPECT_EQ(arcw({"drift", book}).code, 0);
    for (const auto& words : std::vector<std::vector<std::string>>{{"drift", (folder / "none").string()},
                                                                   {"drift", book, "--budget", "x"},
                                                                   {"drift", book, "--budget", "50"},
                                                                   {"drift", book, "--splicer", "S-99"},
                                                                   {"drift"}}) {
        const Ran ran = arcw(words);
        EXPECT_EQ(ran.code, 2);
        EXPECT_TRUE(ran.out.empty());
        EXPECT_FALSE(ran.err.empty());
    }
}

}  // namespace
}  // namespace arc::app
