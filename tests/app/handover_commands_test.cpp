// SPDX-License-Identifier: GPL-3.0-or-later
// arcw between two laptops: packing, taking in, accepting a device, passphrases, edits made here and there;
// and what keeps a logbook: backups, copies, rescue.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "tests/support/laptop.hpp"
#include "tests/support/run_arcw.hpp"

namespace arc::app {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using test::arcw;
using test::Laptop;
using test::Ran;

Tool splicerNamed(Laptop& laptop, const std::string& label) {
    Tool tool;
    tool.id = makeId<ToolId>(laptop.clock, laptop.random);
    tool.label = label;
    tool.traits = Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual};
    return tool;
}

class HandoverCommand : public ::testing::Test {
  protected:
    void SetUp() override {
        tool = splicerNamed(vanA, "S-01");
        vanA.save(tool);
    }
    void TearDown() override { ::unsetenv("ARCWRIGHT_HOME"); }

    /// On that laptop, with its own device key and its own accepted devices.
    static Ran on(Laptop& laptop, std::vector<std::string> words) {
        ::setenv("ARCWRIGHT_HOME", (laptop.folder / "home").c_str(), 1);
        return arcw(words);
    }
    /// Packs on A and takes in on B, which accepts A.
    Ran handOver(Laptop& from, Laptop& to) {
        const auto satchel = fresh("satchel");
        const auto packed = on(from, {"pack", from.file(), satchel});
        EXPECT_EQ(packed.code, 0) << packed.err;
        return on(to, {"unpack", to.file(), satchel, "--accept", "the other van"});
    }
    std::string fresh(const std::string& ending) {
        return (folder / (std::to_string(++made) + "." + ending)).string();
    }
    std::string written(const std::string& text) {
        const auto file = fresh("txt");
        std::ofstream(file) << text;
        return file;
    }
    static std::vector<std::string> toolsOf(Laptop& laptop) {
        std::vector<std::string> labels;
        const auto tools = laptop.open(storage::OpenMode::ReadOnly)->tools().value();
        for (const auto& one : tools) labels.push_back(one.label);
        return labels;
    }

    test::TempFolder folder;
    Laptop vanA{1}, vanB{2};
    Tool tool;
    int made = 0;
};

TEST_F(HandoverCommand, AnUnknownDeviceWaitsUntilItIsAcceptedByName) {
    const auto satchel = fresh("satchel");
    const auto packed = on(vanA, {"pack", vanA.file(), satchel});
    ASSERT_EQ(packed.code, 0) << packed.err;
    EXPECT_NE(packed.out.find("of 1 device into " + satchel), std::string::npos) << packed.out;
    EXPECT_EQ(on(vanA, {"verify", satchel}).code, 0);

    const auto before = vanB.head();
    const auto told = on(vanB, {"unpack", vanB.file(), satchel, "--format", "json"});
    EXPECT_EQ(told.code, 1) << told.err;
    const auto waiting = json::parse(told.out).at("waiting").get<std::string>();
    EXPECT_TRUE(fs::exists(waiting));
    EXPECT_EQ(vanB.head(), before) << "nothing is taken in from a stranger";
    const auto spoken = on(vanB, {"unpack", vanB.file(), satchel});
    EXPECT_EQ(spoken.code, 1);
    EXPECT_NE(spoken.out.find("not accepted yet"), std::string::npos) << spoken.out;

    const auto taken = on(vanB, {"unpack", vanB.file(), waiting, "--accept", "van A"});
    EXPECT_EQ(taken.code, 0) << taken.err;
    EXPECT_NE(taken.out.find("from van A"), std::string::npos) << taken.out;
    EXPECT_EQ(toolsOf(vanB), std::vector<std::string>{"S-01"});
    vanB.expectSound();

    const auto again = on(vanB, {"unpack", vanB.file(), satchel, "--format", "json"});
    EXPECT_EQ(again.code, 0) << again.err;
    EXPECT_EQ(json::parse(again.out).at("new"), 0);
}

TEST_F(HandoverCommand, APassphraseComesFromAFileAndIsNeeded) {
    const auto satchel = fresh("satchel");
    const auto words = written("seven quiet grooves\n");
    ASSERT_EQ(on(vanA, {"pack", vanA.file(), satchel, "--passphrase-file", words}).code, 0);
    const auto without = on(vanB, {"unpack", vanB.file(), satchel, "--accept", "van A"});
    EXPECT_EQ(without.code, 2) << without.out;
    EXPECT_NE(without.err.find("passphrase"), std::string::npos) << without.err;
    EXPECT_EQ(on(vanB, {"unpack", vanB.file(), satchel, "--passphrase-file", written("another")}).code, 2);
    EXPECT_TRUE(toolsOf(vanB).empty());
    const auto with = on(vanB, {"unpack", vanB.file(), satchel, "--passphrase-file", words});
    EXPECT_EQ(with.code, 0) << with.err;
    EXPECT_EQ(toolsOf(vanB).size(), 1u);
    const auto empty = on(vanA, {"pack", vanA.file(), fresh("satchel"), "--passphrase-file", written("")});
    EXPECT_EQ(empty.code, 2);
    EXPECT_NE(empty.err.find("the passphrase file cannot be read or is empty"), std::string::npos)
        << empty.err;
}

TEST_F(HandoverCommand, WrongUseOfPackEndsInOneSentenceAndWritesNothing) {
    for (const auto& options :
         std::vector<std::vector<std::string>>{{"--job", "HR-Z"},
                                               {"--since", "yesterday"},
                                               {"--since", "2031-01-01T00:00:00Z", "--job", "HR-B"}}) {
        const auto satchel = fresh("satchel");
        std::vector<std::string> words{"pack", vanA.file(), satchel};
        words.insert(words.end(), options.begin(), options.end());
        const auto ran = on(vanA, words);
        EXPECT_EQ(ran.code, 2) << ran.out;
        EXPECT_EQ(ran.err.find('\n'), ran.err.size() - 1) << ran.err;
        EXPECT_FALSE(fs::exists(satchel));
    }
}

TEST_F(HandoverCommand, ASatchelOfOneJobAndSinceATimeHoldLess) {
    Job job;
    job.id = makeId<JobId>(vanA.clock, vanA.random);
    job.label = "HR-B";
    vanA.save(job);
    const auto rows = [&](std::vector<std::string> options) {
        std::vector<std::string> words{"pack", vanA.file(), fresh("satchel"), "--format", "json"};
        words.insert(words.end(), options.begin(), options.end());
        const auto ran = on(vanA, words);
        EXPECT_EQ(ran.code, 0) << ran.err;
        return json::parse(ran.out);
    };
    const auto all = rows({}).at("journal_rows").get<int>();
    const auto ofJob = rows({"--job", "HR-B"});
    EXPECT_LT(ofJob.at("journal_rows").get<int>(), all);
    EXPECT_EQ(ofJob.at("journal_rows").get<int>() + ofJob.at("headlines").get<int>(), all);
    EXPECT_LT(rows({"--since", "2099-01-01T00:00:00Z"}).at("journal_rows").get<int>(), all);
}

TEST_F(HandoverCommand, EditsMadeHereAndThereAreListedAndSettled) {
    ASSERT_EQ(handOver(vanA, vanB).code, 0);
    Tool here = tool, there = tool;
    here.label = "S-01 of the north";
    there.label = "S-01 of the south";
    vanA.save(here);
    vanB.save(there);
    const auto taken = handOver(vanA, vanB);
    EXPECT_EQ(taken.code, 1) << taken.err;
    EXPECT_NE(taken.out.find("1 records were edited here and there"), std::string::npos) << taken.out;

    const auto list = on(vanB, {"conflicts", vanB.file()});
    EXPECT_EQ(list.code, 1);
    EXPECT_NE(list.out.find("1. "), std::string::npos) << list.out;
    EXPECT_NE(list.out.find("<- shows"), std::string::npos) << list.out;
    const auto edits = json::parse(on(vanB, {"conflicts", vanB.file(), "--format", "json"}).out)
                           .at("edits")
                           .at(0)
                           .at("edits");
    ASSERT_EQ(edits.size(), 2u);
    EXPECT_TRUE(edits[1].at("shows").get<bool>());

    for (const auto& wrong : std::vector<std::vector<std::string>>{
             {"--settle", "9"}, {"--settle", "1", "--keep", "9"}, {"--settle", "1"}}) {
        std::vector<std::string> words{"conflicts", vanB.file()};
        words.insert(words.end(), wrong.begin(), wrong.end());
        EXPECT_EQ(on(vanB, words).code, 2);
    }
    const auto settled = on(vanB, {"conflicts", vanB.file(), "--settle", "1", "--keep", "1", "--by", "Ada"});
    EXPECT_EQ(settled.code, 0) << settled.err;
    EXPECT_NE(settled.out.find("From now on shows"), std::string::npos) << settled.out;
    const auto after = on(vanB, {"conflicts", vanB.file()});
    EXPECT_EQ(after.code, 0);
    EXPECT_NE(after.out.find("No record was edited here and there"), std::string::npos) << after.out;
    vanB.expectSound();
}

TEST_F(HandoverCommand, BackupsAreMadeListedAndRestoredUnderANewName) {
    const auto none = on(vanA, {"backups", vanA.file(), "--restore", "--into", fresh("arcbook")});
    EXPECT_EQ(none.code, 2);
    EXPECT_NE(none.err.find("there is no backup of this logbook"), std::string::npos) << none.err;
    const auto madeOne = on(vanA, {"backups", vanA.file(), "--make"});
    EXPECT_EQ(madeOne.code, 0) << madeOne.err;
    EXPECT_EQ(madeOne.out.find("1 backups in "), 0u) << madeOne.out;
    const auto list = json::parse(on(vanA, {"backups", vanA.file(), "--format", "json"}).out);
    ASSERT_EQ(list.at("backups").size(), 1u);

    const auto nowhere = on(vanA, {"backups", vanA.file(), "--restore"});
    EXPECT_EQ(nowhere.code, 2);
    EXPECT_NE(nowhere.err.find("under a new name"), std::string::npos) << nowhere.err;
    const auto into = fresh("arcbook");
    const auto restored = on(vanA, {"backups", vanA.file(), "--restore", "--into", into});
    EXPECT_EQ(restored.code, 0) << restored.err;
    EXPECT_EQ(on(vanA, {"verify", into}).code, 0);

    // The logbook itself is gone: its backups lie beside it.
    const auto copy = list.at("backups").at(0).at("file").get<std::string>();
    std::ofstream(vanA.file(), std::ios::trunc) << "not a logbook any more";
    const auto second = fresh("arcbook");
    const auto saved =
        on(vanA, {"backups", vanA.file(), "--restore", copy, "--into", second, "--format", "json"});
    EXPECT_EQ(saved.code, 0) << saved.err;
    EXPECT_EQ(json::parse(saved.out).at("logbook"), second);
    EXPECT_EQ(on(vanA, {"verify", second}).code, 0);
}

TEST_F(HandoverCommand, ACopyAndARescueNeverWriteOverAFile) {
    const auto copy = fresh("arcbook");
    EXPECT_EQ(on(vanA, {"backup", vanA.file(), copy}).code, 0);
    EXPECT_EQ(on(vanA, {"verify", copy}).code, 0);
    EXPECT_EQ(on(vanA, {"backup", vanA.file(), copy}).code, 2);
    EXPECT_EQ(on(vanA, {"rescue", vanA.file(), copy}).code, 2);
    const auto rescued = fresh("arcbook");
    const auto ran = on(vanA, {"rescue", vanA.file(), rescued, "--format", "json"});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(json::parse(ran.out).at("lost"), 0);
    EXPECT_EQ(on(vanA, {"verify", rescued}).code, 0);
    EXPECT_NE(on(vanA, {"rescue", vanA.file(), fresh("arcbook")}).out.find("0 lost."), std::string::npos);
}

}  // namespace
}  // namespace arc::app
