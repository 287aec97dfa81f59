// SPDX-License-Identifier: GPL-3.0-or-later
// arcw queues and arcw care on a real logbook file.
#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/command_list.hpp"
#include "storage/care_cards.hpp"
#include "storage/sqlite_logbook.hpp"
#include "tests/support/care_bench.hpp"
#include "tests/support/fakes.hpp"

namespace arc::app {
namespace {

using nlohmann::json;
using namespace arc::test;

struct Said {
    int code;
    std::string out, err;
};

std::string day(double days) {
    return toIso(at(days));
}

class CareCommand : public ::testing::Test {
  protected:
    void SetUp() override {
        auto made = storage::createLogbook(path(), clock, random);
        ASSERT_TRUE(made) << made.error().sentence();
        Pairing pairing;
        pairing.id = EntryId{namedUuid("pairing")};
        pairing.splicer = mass().id;
        pairing.cleaver = cleaver().id;
        pairing.at = at(-10);
        append(**made, {Entry{mass()}, Entry{single()}, Entry{cleaver()}, Entry{stripper()}, Entry{pairing}});
    }
    [[nodiscard]] std::string path() const { return (temporary / "crew.arcbook").string(); }

    void append(Logbook& book, const std::vector<Entry>& entries) {
        const auto receipt = book.append(entries, {"Ada", "test", {}});
        ASSERT_TRUE(receipt) << receipt.error().sentence();
    }
    void append(const std::vector<Entry>& entries) {
        auto book = storage::openLogbook(path(), storage::OpenMode::ReadWrite, clock, random);
        ASSERT_TRUE(book) << book.error().sentence();
        append(**book, entries);
    }
    void addArcsToBook(double fromDay, int count) {
        std::vector<Entry> entries;
        for (int i = 0; i < count; ++i) {
            SpliceArc arc;
            arc.at = Instant{at(fromDay).ms + i * msPerMinute, 0};
            arc.splicer = mass().id;
            arc.mode = "G.652-G.652";
            arc.channels = 12;
            arc.id = importedArcId(arc.splicer, arc.at, std::nullopt);
            Reading reading;
            reading.loss = Loss{20};
            arc.readings = {reading};
            entries.emplace_back(arc);
        }
        append(entries);
    }
    Said run(std::vector<std::string> arguments) {
        std::ostringstream out, err;
        Environment environment{out, err, clock, random};
        const int code = runArcw(arguments, environment);
        return {code, out.str(), err.str()};
    }
    Said record(std::vector<std::string> more) {
        std::vector<std::string> all{"care", path(), "record"};
        all.insert(all.end(), more.begin(), more.end());
        return run(all);
    }
    json queuesAt(double days) {
        const Said said = run({"queues", path(), "--at", day(days), "--format", "json"});
        EXPECT_EQ(said.code, 0) << said.err;
        return json::parse(said.out);
    }
    static bool holds(const json& queues, const char* queue, const char* tool, const char* action) {
        return std::ranges::any_of(queues["queues"][queue], [&](const json& item) {
            return item["tool"] == tool && item["action"] == action;
        });
    }

    TempFolder temporary;
    FakeClock clock{at(100).ms};
    FakeRandom random;
};

TEST_F(CareCommand, QueuesOfAFreshCrewAreEmptyAndHaveAllFourNames) {
    const json queues = queuesAt(1);
    for (const char* queue : {"hold", "next_gap", "shift_end", "bench_day"})
        EXPECT_TRUE(queues["queues"].at(queue).empty()) << queue;
    const Said text = run({"queues", path(), "--at", day(1)});
    EXPECT_EQ(text.code, 0);
    for (const char* title : {"Hold", "Next gap", "Shift end", "Bench day", "To order"})
        EXPECT_NE(text.out.find(title), std::string::npos) << title;
}

TEST_F(CareCommand, ElectrodeWorkHoldsUntilStabilisedAndCalibrated) {
    ASSERT_EQ(record({"--tool", "S-01", "--action", "electrode_replace", "--at", day(1), "--by", "Kit"}).code,
              0);
    json queues = queuesAt(2);
    EXPECT_TRUE(holds(queues, "hold", "S-01", "stabilise"));
    EXPECT_TRUE(holds(queues, "hold", "S-01", "arc_calibration"));
    ASSERT_EQ(queues["calibration_owed"].size(), 1U);
    EXPECT_TRUE(queues["calibration_owed"][0]["to"].is_null());

    const Said stabilised =
        record({"--tool", "S-01", "--action", "stabilise", "--at", day(1.1), "--format", "json"});
    ASSERT_EQ(stabilised.code, 0) << stabilised.err;
    EXPECT_EQ(json::parse(stabilised.out)["closed"][0]["action"], "stabilise");
    EXPECT_TRUE(holds(queuesAt(2), "hold", "S-01", "arc_calibration"));

    ASSERT_EQ(
        record({"--tool", "S-01", "--action", "arc_calibration", "--at", day(1.2), "--power", "adequate",
                "--position", "not-adequate", "--fibre-type", "G.652.D", "--fibre-count", "12"})
            .code,
        0);
    EXPECT_TRUE(holds(queuesAt(2), "hold", "S-01", "arc_calibration"));
    ASSERT_EQ(
        record({"--tool", "S-01", "--action", "arc_calibration", "--at", day(1.3), "--power", "adequate",
                "--position", "adequate", "--fibre-type", "G.652.D", "--fibre-count", "12", "--runs", "2"})
            .code,
        0);
    queues = queuesAt(2);
    EXPECT_TRUE(queues["queues"]["hold"].empty());
    EXPECT_EQ(queues["calibration_owed"][0]["to"], day(1.3));
}

TEST_F(CareCommand, RecordingResetsTheCounterAndClosesWhatItCovers) {
    addArcsToBook(1, 210);
    EXPECT_TRUE(holds(queuesAt(2), "shift_end", "S-01", "groove_clean"));
    EXPECT_TRUE(holds(queuesAt(2), "next_gap", "C-01", "cleaver_clean"));
    const Said said =
        record({"--tool", "S-01", "--action", "groove_clean", "--at", day(1.9), "--format", "json"});
    ASSERT_EQ(said.code, 0) << said.err;
    const json answer = json::parse(said.out);
    ASSERT_EQ(answer["closed"].size(), 1U);
    EXPECT_EQ(answer["closed"][0]["action"], "groove_clean");
    EXPECT_FALSE(holds(queuesAt(2), "shift_end", "S-01", "groove_clean"));
    EXPECT_TRUE(holds(queuesAt(2), "next_gap", "C-01", "cleaver_clean")) << "another tool";
    EXPECT_TRUE(holds(queuesAt(1.5), "shift_end", "S-01", "groove_clean")) << "before it was done";
}

TEST_F(CareCommand, ACleaningThatDidNotReachItsEndClosesNothing) {
    addArcsToBook(1, 210);
    ASSERT_EQ(record({"--tool", "S-01", "--action", "groove_clean", "--at", day(1.9), "--not-reached"}).code,
              0);
    EXPECT_TRUE(holds(queuesAt(2), "shift_end", "S-01", "groove_clean"));
    EXPECT_TRUE(holds(queuesAt(2), "hold", "S-01", "diagnostic"));
}

TEST_F(CareCommand, EveryItemSaysWhyAndWhatItIsBasedOn) {
    addArcsToBook(1, 210);
    ASSERT_EQ(record({"--tool", "S-01", "--action", "lens_clean", "--at", day(1.9)}).code, 0);
    const json queues = queuesAt(20);
    int items = 0;
    for (const auto& [queue, list] : queues["queues"].items())
        for (const json& item : list) {
            ++items;
            for (const char* member : {"key", "why", "based_on", "otherwise", "since", "title", "basis"})
                EXPECT_FALSE(item.at(member).get<std::string>().empty()) << queue << " " << member;
        }
    EXPECT_GE(items, 4);
}

TEST_F(CareCommand, BladeWorkGoesFromPlaceToPlace) {
    Said said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(1), "--format", "json"});
    ASSERT_EQ(said.code, 0) << said.err;
    EXPECT_EQ(json::parse(said.out)["record"]["blade"], (json{{"height", 1}, {"position", 2}}));
    said = record({"--tool", "C-01", "--action", "blade_raise", "--at", day(2)});
    EXPECT_EQ(said.code, 2);
    EXPECT_NE(said.err.find("16 positions"), std::string::npos) << said.err;
    said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(2), "--blade-height", "1",
                   "--blade-position", "9"});
    EXPECT_EQ(said.code, 2);
    said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(2), "--new-blade"});
    EXPECT_EQ(said.code, 0) << said.err;
}

TEST_F(CareCommand, WrongUseIsOneSentenceAndWritesNothing) {
    const std::vector<std::vector<std::string>> wrong{
        {"care", path(), "record"},
        {"care", path(), "record", "--tool", "S-09", "--action", "groove_clean"},
        {"care", path(), "record", "--tool", "S-01", "--action", "dance"},
        {"care", path(), "record", "--tool", "C-01", "--action", "groove_clean"},
        {"care", path(), "record", "--tool", "S-01", "--action", "arc_calibration"},
        {"care", path(), "record", "--tool", "S-01", "--action", "arc_calibration", "--power", "adequate"},
        {"care", path(), "record", "--tool", "S-01", "--action", "arc_calibration", "--power", "fine",
         "--position", "fine"},
        {"care", path(), "record", "--tool", "S-01", "--action", "groove_clean", "--at", "yesterday"},
        {"care", path(), "record", "--tool", "S-01", "--action", "note"},
        {"care", path(), "forget"},
        {"queues", path(), "--at", "2031-03-03"},
        {"queues", (temporary / "none.arcbook").string()}};
    for (const auto& arguments : wrong) {
        const Said said = run(arguments);
        EXPECT_EQ(said.code, 2);
        EXPECT_TRUE(said.out.empty());
        EXPECT_EQ(std::ranges::count(said.err, '\n'), 1) << said.err;
    }
    const Said list = run({"care", path(), "list", "--format", "json"});
    EXPECT_EQ(json::parse(list.out), (json{{"care", json::array()}}));
}

TEST_F(CareCommand, ListsWhatWasDoneWithItsResults) {
    ASSERT_EQ(record({"--tool", "S-02", "--action", "arc_calibration", "--at", day(1.2), "--power",
                      "adequate", "--position", "adequate", "--fibre-type", "G.652.D", "--fibre-count", "1",
                      "--by", "Kit", "--detail", "cold morning"})
                  .code,
              0);
    const json care =
        json::parse(run({"care", path(), "list", "--tool", "S-02", "--format", "json"}).out)["care"];
    ASSERT_EQ(care.size(), 1U);
    EXPECT_EQ(care[0]["by"], "Kit");
    EXPECT_EQ(care[0]["detail"], "cold morning");
    EXPECT_EQ(care[0]["calibration"]["power"], "adequate");
    EXPECT_TRUE(
        json::parse(run({"care", path(), "list", "--tool", "S-01", "--format", "json"}).out)["care"].empty());
}

TEST_F(CareCommand, ListsTheCardsAndNamesABrokenEdition) {
    Said said = run({"care", path(), "cards", "--format", "json"});
    EXPECT_EQ(said.code, 0);
    EXPECT_EQ(json::parse(said.out)["cards"].size(), 10U);
    const auto edition =
        storage::editionOf(*storage::shippedCardText("groove_clean"), {}, EntryId{namedUuid("e")});
    ASSERT_TRUE(edition);
    CardEdition broken = *edition;
    broken.id = EntryId{namedUuid("b")};
    broken.version = 3;
    broken.json.replace(broken.json.find("\"minutes\": 8"), 12, "\"minutes\": 0");
    append({Entry{*edition}, Entry{broken}});
    said = run({"care", path(), "cards", "--format", "json"});
    EXPECT_EQ(said.code, 1);
    EXPECT_NE(said.err.find("groove_clean.json, edition 3, line"), std::string::npos) << said.err;
    const auto told = json::parse(said.out);
    for (const json& card : told["cards"])
        if (card["action"] == "groove_clean") {
            EXPECT_EQ(card["version"], 2);
        }
}

TEST_F(CareCommand, AdoptsAnEditedCardAndRefusesABrokenOneWithFileLineAndReason) {
    const Said shipped = run({"care", path(), "card", "--action", "groove_clean"});
    ASSERT_EQ(shipped.code, 0) << shipped.err;
    const auto write = [&](const std::string& name, std::string text, const char* from, const char* to) {
        text.replace(text.find(from), std::string(from).size(), to);
        std::ofstream(temporary / name) << text;
        return (temporary / name).string();
    };
    const std::string good = write("ours.json", shipped.out, "Clean V-grooves", "Brush the grooves");
    Said said = run({"care", path(), "adopt", "--card", good, "--by", "Ada", "--format", "json"});
    ASSERT_EQ(said.code, 0) << said.err;
    EXPECT_EQ(json::parse(said.out)["version"], 2);
    EXPECT_NE(run({"care", path(), "card", "--action", "groove_clean"}).out.find("Brush the grooves"),
              std::string::npos);
    const std::string bad = write("bad.json", shipped.out, "\"minutes\": 8", "\"minutes\": 0");
    said = run({"care", path(), "adopt", "--card", bad});
    EXPECT_EQ(said.code, 2);
    EXPECT_NE(said.err.find("bad.json, line 8"), std::string::npos) << said.err;
    EXPECT_NE(said.err.find("1 to 480"), std::string::npos) << said.err;
    EXPECT_EQ(run({"care", path(), "adopt", "--card", (temporary / "none.json").string()}).code, 2);
    EXPECT_EQ(run({"care", path(), "adopt"}).code, 2);
    EXPECT_EQ(run({"care", path(), "card", "--action", "dance"}).code, 2);
    EXPECT_EQ(json::parse(run({"care", path(), "cards", "--format", "json"}).out)["cards"].size(), 10U);
}

TEST_F(CareCommand, SaysWhichGentlerCareWasSkipped) {
    Said said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(1), "--format", "json"});
    ASSERT_EQ(said.code, 0);
    EXPECT_EQ(json::parse(said.out)["skipped_gentler"], (json{"cleaver_clean", "blade_clean"}));
    EXPECT_NE(said.err.find("gentler care comes first"), std::string::npos);
    ASSERT_EQ(record({"--tool", "C-01", "--action", "cleaver_clean", "--at", day(2)}).code, 0);
    ASSERT_EQ(record({"--tool", "C-01", "--action", "blade_clean", "--at", day(2.1)}).code, 0);
    said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(2.2), "--format", "json"});
    EXPECT_TRUE(json::parse(said.out)["skipped_gentler"].empty());
    addArcsToBook(3, 50);
    said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(4), "--format", "json"});
    EXPECT_TRUE(json::parse(said.out)["skipped_gentler"].empty()) << "due by its count";
    EXPECT_FALSE(json::parse(said.out)["record"]["fields"].contains("skipped_gentler"));
    said = record({"--tool", "C-01", "--action", "blade_rotate", "--at", day(4.1), "--reason",
                   "the edge is chipped", "--format", "json"});
    const json fields = json::parse(said.out)["record"]["fields"];
    EXPECT_EQ(fields["skipped_gentler"], "cleaver_clean,blade_clean");
    EXPECT_EQ(fields["skipped_reason"], "the edge is chipped");
}

TEST_F(CareCommand, LimitsAreShownChangedInTheirRangeAndTakenBack) {
    const auto valueOf = [&](const std::string& key) {
        const json said = json::parse(run({"limits", path(), "--format", "json"}).out);
        for (const json& limit : said["limits"])
            if (limit["key"] == key) return limit["value"].get<std::string>();
        return std::string("no such limit");
    };
    EXPECT_EQ(valueOf("care.idle_days"), "14");
    EXPECT_EQ(run({"limits", path(), "--key", "care.idle_days", "--value", "21"}).code, 0);
    EXPECT_EQ(valueOf("care.idle_days"), "21");
    EXPECT_EQ(run({"limits", path(), "--key", "care.idle_days", "--value", "0"}).code, 2);
    EXPECT_EQ(run({"limits", path(), "--key", "care.dance", "--value", "1"}).code, 2);
    EXPECT_EQ(run({"limits", path(), "--key", "care.idle_days"}).code, 2);
    EXPECT_EQ(valueOf("care.idle_days"), "21");
    EXPECT_EQ(run({"limits", path(), "--key", "care.idle_days", "--as-shipped"}).code, 0);
    EXPECT_EQ(valueOf("care.idle_days"), "14");
}

TEST_F(CareCommand, AnOverriddenHoldStaysAndNamesThePerson) {
    ASSERT_EQ(record({"--tool", "S-01", "--action", "lens_clean", "--at", day(1)}).code, 0);
    const json item = queuesAt(2)["queues"]["hold"][0];
    EXPECT_TRUE(item["overridden"].is_null());
    HoldOverride named;
    named.id = EntryId{namedUuid("override")};
    named.tool = mass().id;
    named.dueKey = item["key"];
    named.by = "Kit";
    named.reason = "last ribbon of the closure";
    named.at = at(1.5);
    append({Entry{named}});
    EXPECT_EQ(queuesAt(2)["queues"]["hold"][0]["overridden"]["by"], "Kit");
    EXPECT_TRUE(queuesAt(1.2)["queues"]["hold"][0]["overridden"].is_null());
}

}  // namespace
}  // namespace arc::app
