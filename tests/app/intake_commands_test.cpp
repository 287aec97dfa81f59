// SPDX-License-Identifier: GPL-3.0-or-later
// arcw import: set-aside rows as a file to mend and import again; column keys saved in the logbook and used
// by name.
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

namespace fs = std::filesystem;

using test::arcw;

class IntakeCommands : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
        folder_ = fs::temp_directory_path() / (std::string("arcw-intake-") + test->name());
        fs::remove_all(folder_);
        fs::create_directories(folder_);
        ASSERT_EQ(arcw({"new", in("crew.arcbook")}).code, 0);
        write("key.json", R"({"name": "Crew B", "separator": ";", "decimal": ",",
            "columns": {"splicer": "unit", "loss_db": "loss"}})");
        write("monday.csv", "time;unit;loss\n2031-03-03T07:00:00Z;S-1;0,03\n2031-03-03T07:05:00Z;S-1;o,04\n");
    }
    void TearDown() override { fs::remove_all(folder_); }
    void write(const std::string& name, const std::string& text) {
        std::ofstream(folder_ / name, std::ios::binary) << text;
    }
    std::string content(const std::string& name) {
        std::ifstream file(folder_ / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    [[nodiscard]] std::string in(const std::string& name) const { return (folder_ / name).string(); }
    fs::path folder_;
};

TEST_F(IntakeCommands, setAsideRowsAreMendedInTheirFileAndImportedAgain) {
    fs::create_directories(folder_ / "aside");
    const std::vector<std::string> import{"import",       in("crew.arcbook"), in("monday.csv"),
                                          "--column-key", in("key.json"),     "--set-aside",
                                          in("aside")};
    const auto said = arcw(import);
    EXPECT_EQ(said.code, 1);
    EXPECT_NE(said.err.find("monday.set-aside.csv"), std::string::npos) << said.err;
    std::string table = content("aside/monday.set-aside.csv");
    EXPECT_EQ(table, "time;unit;loss\r\n2031-03-03T07:05:00Z;S-1;o,04\r\n");
    table.replace(table.find("o,04"), 4, "0,04");
    write("aside/monday.set-aside.csv", table);
    EXPECT_EQ(arcw(import).code, 1);
    EXPECT_EQ(content("aside/monday.set-aside.csv"), table) << "what somebody mends is not written over";
    const auto mended = arcw({"import", in("crew.arcbook"), in("aside/monday.set-aside.csv"), "--column-key",
                              in("key.json"), "--format", "json"});
    EXPECT_EQ(mended.code, 0) << mended.out;
    EXPECT_EQ(nlohmann::json::parse(mended.out).at("new"), 1);
}

TEST_F(IntakeCommands, aKeyIsSavedListedShownAndUsedByName) {
    ASSERT_EQ(arcw({"keys", in("crew.arcbook"), "--add", in("key.json")}).code, 0);
    EXPECT_EQ(arcw({"keys", in("crew.arcbook")}).out, "Crew B\n");
    write("again.json", arcw({"keys", in("crew.arcbook"), "--show", "Crew B"}).out);
    EXPECT_EQ(arcw({"keys", in("crew.arcbook"), "--add", in("again.json")}).out, "Crew B\n");
    const auto said =
        arcw({"import", in("crew.arcbook"), in("monday.csv"), "--column-key", "Crew B", "--format", "json"});
    EXPECT_EQ(nlohmann::json::parse(said.out).at("new"), 1) << said.err;
    EXPECT_EQ(arcw({"import", in("crew.arcbook"), in("monday.csv"), "--column-key", "nobody"}).code, 2);
    EXPECT_EQ(arcw({"keys", in("crew.arcbook"), "--show", "nobody"}).code, 2);
    EXPECT_EQ(arcw({"verify", in("crew.arcbook")}).code, 0);
}

}  // namespace
}  // namespace arc::app
