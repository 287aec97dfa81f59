// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/scenario_files.hpp"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <string>

#include "core/scenario/entries.hpp"
#include "source_dir.hpp"
#include "storage/demo_book.hpp"
#include "storage/scenario_json.hpp"

namespace arc::storage {
namespace {

std::string shipped(const std::string& name) {
    std::ifstream file(ARC_SOURCE_DIR "/sample-data/" + name, std::ios::binary);
    EXPECT_TRUE(file) << name;
    return {std::istreambuf_iterator<char>(file), {}};
}

/// First place where two texts differ, so that a failure says more than "not equal".
std::string difference(const std::string& a, const std::string& b) {
    if (a == b) return "";
    const auto at =
        static_cast<std::size_t>(std::mismatch(a.begin(), a.end(), b.begin(), b.end()).first - a.begin());
    return "at byte " + std::to_string(at) + ": " + a.substr(at, 60) + " | " + b.substr(at, 60);
}

TEST(HarrowRidge, shippedFilesAreExactlyWhatTheSettingsMake) {
    const auto settings = scenarioFromJson(shipped("harrow-ridge.json"));
    ASSERT_TRUE(settings) << settings.error().sentence();
    const auto log = scenario::simulate(*settings, settings->seed);
    ASSERT_TRUE(log);
    EXPECT_EQ(difference(splicesCsv(*log), shipped("harrow-ridge.splices.csv")), "");
    EXPECT_EQ(difference(eventsCsv(*log), shipped("harrow-ridge.events.csv")), "");
    EXPECT_EQ(difference(measuredCsv(*log), shipped("harrow-ridge.measured.csv")), "");
    EXPECT_EQ(difference(truthJson(*settings, *log, settings->seed), shipped("harrow-ridge.truth.json")), "");
}

TEST(HarrowRidge, theProgramCarriesTheSameSettings) {
    const auto carried = harrowRidge();
    ASSERT_TRUE(carried) << carried.error().sentence();
    EXPECT_EQ(*carried, *scenarioFromJson(shipped("harrow-ridge.json")));
    EXPECT_NE(carried->about.find("Invented"), std::string::npos);
}

TEST(HarrowRidge, isTheCrewThatWasAskedFor) {
    const auto settings = harrowRidge();
    ASSERT_TRUE(settings);
    const auto log = scenario::simulate(*settings, settings->seed);
    ASSERT_TRUE(log);
    const auto mass = std::count_if(settings->splicers.begin(), settings->splicers.end(),
                                    [](const auto& m) { return m.traits.grooves == 12; });
    EXPECT_EQ(mass, 2);
    EXPECT_EQ(settings->splicers.size(), 4u);
    EXPECT_EQ(settings->cleavers.size(), 3u);
    EXPECT_EQ(settings->strippers.size(), 2u);
    EXPECT_EQ(settings->jobs.size(), 5u);
    std::size_t fibres = 0;
    for (const auto& arc : log->arcs)
        if (arc.attempt == 1) fibres += arc.readings.size();
    EXPECT_NEAR(static_cast<double>(fibres), 9000, 300);
    EXPECT_NEAR(static_cast<double>(log->arcs.back().at.ms - log->arcs.front().at.ms) / msPerDay, 39, 2);
    std::set<drift::Cause> causes;
    for (const auto& fault : log->truth) causes.insert(fault.cause);
    EXPECT_EQ(causes.size(), 5u);
    for (const auto& entry : scenario::entriesOf(*settings, *log, 0)) {
        const auto valid = validate(entry);
        EXPECT_TRUE(valid) << kindName(entry) << (valid ? "" : valid.error().sentence());
    }
}

std::string problem(std::string_view text) {
    const auto scenario = scenarioFromJson(text);
    return scenario ? "" : scenario.error().sentence();
}

/// Under the sanitizers this tells an overflow from a refusal.
TEST(ScenarioJson, anAbsurdNumberInAnyPlaceIsRefusedOrHarmless) {
    std::ifstream file(ARC_SOURCE_DIR "/tests/fuzz/seeds/scenario/everything.json", std::ios::binary);
    const auto everything = nlohmann::json::parse(file).flatten();
    ASSERT_TRUE(scenarioFromJson(everything.unflatten().dump()));
    const std::regex place("/[0-9]+");
    std::set<std::string> tried;
    for (const auto& [pointer, value] : everything.items()) {
        if (!value.is_number() || !tried.insert(std::regex_replace(pointer, place, "/#")).second) continue;
        for (const double absurd : {1e300, -1e300, 1e9, -1.0}) {
            auto changed = everything;
            changed[pointer] = absurd;
            const auto settings = scenarioFromJson(changed.unflatten().dump());
            if (!settings) {
                EXPECT_FALSE(settings.error().what.empty()) << pointer << ' ' << absurd;
                continue;
            }
            const auto log = scenario::simulate(*settings, 1);
            EXPECT_TRUE(!log || !splicesCsv(*log).empty()) << pointer << ' ' << absurd;
        }
    }
    EXPECT_GT(tried.size(), 40U);
}

TEST(ScenarioJson, mistakesAreNamedByTheirPath) {
    EXPECT_EQ(problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z"})"), "");
    EXPECT_NE(problem("{").find("not JSON"), std::string::npos);
    EXPECT_NE(problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "seed": 1e999})")
                  .find("beyond every range"),
              std::string::npos);
    for (const char* hour : {"1000", "-0.5", "24.5"}) {
        const auto said =
            problem(std::string(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "care": [)"
                                R"({"tool": "S-01", "action": "lens_clean", "day": 1, "hour": )") +
                    hour + "}]}");
        EXPECT_NE(said.find("an hour from 0 to 24"), std::string::npos) << said;
        EXPECT_NE(said.find("care[0].hour"), std::string::npos) << said;
    }
    const auto said =
        problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "jobs": [{"label": "J", "rule": )"
                R"({"name": "r", "per_splice_db": 11}}]})");
    EXPECT_NE(said.find("a loss from 0 to 10 dB"), std::string::npos) << said;
    EXPECT_NE(said.find("rule.per_splice_db"), std::string::npos) << said;
    const auto hot = problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "weather": {"mean_c": 1e9}})");
    EXPECT_NE(hot.find("a number from -100000 to 100000"), std::string::npos) << hot;
    EXPECT_NE(hot.find("weather.mean_c"), std::string::npos) << hot;
    EXPECT_NE(problem("[]").find("an object"), std::string::npos);
    EXPECT_NE(problem(R"({"start": "2031-03-03T00:00:00Z"})").find("scenario file, name"), std::string::npos);
    EXPECT_NE(problem(R"({"name": "x", "name": "y", "start": "2031-03-03T00:00:00Z"})").find("twice"),
              std::string::npos);
    EXPECT_NE(problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "colour": 1})").find("colour"),
              std::string::npos);
    EXPECT_NE(
        problem(
            R"({"name": "x", "start": "2031-03-03T00:00:00Z", "splicers": [{"label": "S", "kind": "big"}]})")
            .find("splicers[0].kind"),
        std::string::npos);
    EXPECT_NE(problem(R"({"name": "x", "start": "2031-03-03T00:00:00Z", "jobs": [{"label": "J", "closures":
              [{"label": "K", "cable_a": "a", "cable_b": "b", "plan": "1-2 to 3"}]}]})")
                  .find("jobs[0].closures[0].plan"),
              std::string::npos);
    EXPECT_NE(problem(R"({"name": "x", "start": "yesterday"})").find("start"), std::string::npos);
}

}  // namespace
}  // namespace arc::storage
