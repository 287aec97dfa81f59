// SPDX-License-Identifier: GPL-3.0-or-later
// arcw simulate and arcw demo, run as a person would.
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "source_dir.hpp"
#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

namespace fs = std::filesystem;

using test::arcw;

class Scenarios : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
        folder_ = fs::temp_directory_path() / (std::string("arcw-scenario-") + test->name());
        fs::remove_all(folder_);
        fs::create_directories(folder_);
    }
    void TearDown() override { fs::remove_all(folder_); }

    static std::string content(const fs::path& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    [[nodiscard]] std::string in(const std::string& name) const { return (folder_ / name).string(); }

    fs::path folder_;
    const std::string settings_ = ARC_SOURCE_DIR "/sample-data/harrow-ridge.json";
};

TEST_F(Scenarios, simulateWritesTheShippedFiles) {
    const auto said = arcw({"simulate", "--scenario", settings_, "--out", in("made")});
    ASSERT_EQ(said.code, 0) << said.err;
    for (const std::string name : {"splices.csv", "events.csv", "measured.csv", "truth.json"})
        EXPECT_EQ(content(folder_ / "made" / ("harrow-ridge." + name)),
                  content(ARC_SOURCE_DIR "/sample-data/harrow-ridge." + name))
            << name;
}

TEST_F(Scenarios, anotherSeedMakesAnotherLogAndJsonSaysHowMuch) {
    const auto said =
        arcw({"simulate", "--scenario", settings_, "--out", in("made"), "--seed", "7", "--format", "json"});
    ASSERT_EQ(said.code, 0) << said.err;
    const auto answer = nlohmann::json::parse(said.out);
    EXPECT_EQ(answer["seed"], 7);
    EXPECT_GT(answer["readings"], 8000);
    EXPECT_EQ(answer["files"].size(), 4u);
    EXPECT_NE(content(folder_ / "made" / "harrow-ridge.splices.csv"),
              content(ARC_SOURCE_DIR "/sample-data/harrow-ridge.splices.csv"));
}

TEST_F(Scenarios, badInputIsOneSentenceAndExitCodeTwo) {
    EXPECT_EQ(arcw({"simulate", "--scenario", in("none.json"), "--out", in("made")}).code, 2);
    const auto seed = arcw({"simulate", "--scenario", settings_, "--out", in("made"), "--seed", "-1"});
    EXPECT_EQ(seed.code, 2);
    EXPECT_NE(seed.err.find("seed"), std::string::npos);
    std::ofstream(in("bad.json")) << "{\"name\": 1}";
    const auto bad = arcw({"simulate", "--scenario", in("bad.json"), "--out", in("made")});
    EXPECT_EQ(bad.code, 2);
    EXPECT_NE(bad.err.find("name"), std::string::npos);
    EXPECT_FALSE(fs::exists(folder_ / "made"));
}

TEST_F(Scenarios, demoMakesALogbookOnceAndNeverOverOne) {
    const auto said = arcw({"demo", in("demo.arcbook"), "--format", "json"});
    ASSERT_EQ(said.code, 0) << said.err;
    const auto answer = nlohmann::json::parse(said.out);
    EXPECT_EQ(answer["invented"], true);
    EXPECT_GT(answer["readings"], 8000);
    EXPECT_EQ(arcw({"demo", in("demo.arcbook")}).code, 2);
}

}  // namespace
}  // namespace arc::app
