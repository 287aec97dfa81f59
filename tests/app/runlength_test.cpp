// SPDX-License-Identifier: GPL-3.0-or-later
// Outside values: R package spc 0.6.7 (xewma.arl, xcusum.arl, xDewma.arl) and C. W. Champ & W. H. Woodall,
// Technometrics 29 (1987) for the run rules, as in tests/reference.
#include <algorithm>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/command_list.hpp"
#include "app/wiring.hpp"

namespace arc::app {
namespace {

struct Ran {
    int code;
    std::string out, err;
};

Ran runlength(std::vector<std::string> words) {
    words.insert(words.begin(), "runlength");
    std::ostringstream out, err;
    SystemClock clock;
    SystemRandom random;
    Environment environment{out, err, clock, random};
    const int code = runArcw(words, environment);
    return {code, out.str(), err.str()};
}

nlohmann::json json(std::vector<std::string> words) {
    words.insert(words.end(), {"--format", "json"});
    const Ran ran = runlength(std::move(words));
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    return nlohmann::json::parse(ran.out);
}

TEST(RunLengthCommand, AnswersLikeTheOutsideLibrary) {
    const double tolerance = 1e-4;
    EXPECT_NEAR(json({"--chart", "ewma", "--lambda", "0.05", "--limit", "2.615", "--shift", "0.25"})["arl"],
                84.005861726, 84 * tolerance);
    EXPECT_NEAR(json({"--chart", "ewma", "--sided", "one", "--lambda", "0.05", "--limit", "2.2"})["arl"],
                226.579789706, 226 * tolerance);
    EXPECT_NEAR(json({"--chart", "cusum", "--k", "0.25", "--h", "2", "--shift", "0.5"})["arl"], 5.921189631,
                6 * tolerance);
    EXPECT_NEAR(json({"--chart", "cusum", "--sided", "one", "--k", "0.5", "--h", "4", "--headstart"})["arl"],
                316.379438804, 316 * tolerance);
    EXPECT_NEAR(json({"--chart", "cusum", "--k", "0.5", "--h", "4", "--headstart", "2"})["arl"],
                148.695649991, 148 * tolerance);
    EXPECT_NEAR(json({"--chart", "shewhart", "--rules", "1,2,3,4"})["arl"], 91.75, 0.01);
    EXPECT_NEAR(json({"--chart", "shewhart", "--limit", "3"})["arl"], 370.398, 0.01);
    EXPECT_NEAR(json({"--chart", "ewma", "--lambda", "0.1", "--limit", "2.814", "--slope", "0.01"})["arl"],
                53.333998319, 53 * tolerance);
}

TEST(RunLengthCommand, NamesOfTheTwoNumbersAreInterchangeable) {
    EXPECT_EQ(json({"--chart", "cusum", "--lambda", "0.5", "--limit", "4"})["arl"],
              json({"--chart", "cusum", "--k", "0.5", "--h", "4"})["arl"]);
    EXPECT_EQ(json({"--chart", "ewma", "--k", "0.1", "--h", "2.8"})["arl"],
              json({"--chart", "ewma", "--lambda", "0.1", "--limit", "2.8"})["arl"]);
}

TEST(RunLengthCommand, TwoSidedIsTheDefaultAndANegativeShiftIsAValue) {
    const auto down = json({"--chart", "cusum", "--k", "0.5", "--h", "4", "--shift", "-1"});
    const auto up = json({"--chart", "cusum", "--k", "0.5", "--h", "4", "--shift", "1", "--sided", "two"});
    EXPECT_NEAR(down["arl"], up["arl"], 1e-9);
}

TEST(RunLengthCommand, FindsALimit) {
    // xcusum.crit(0.5, 168, sided = 'two').
    const auto found = json({"--chart", "cusum", "--k", "0.5", "--for-arl", "168"});
    EXPECT_NEAR(found["h"], 4.001827733, 1e-6);
    EXPECT_NEAR(found["arl"], 168, 1e-6);
}

TEST(RunLengthCommand, TextSaysTheConventions) {
    const Ran ran = runlength({"--chart", "cusum", "--k", "0.5", "--h", "4", "--headstart"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_NE(ran.out.find("148.69"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("two-sided"), std::string::npos);
    EXPECT_NE(ran.out.find("head start 2"), std::string::npos);
}

TEST(RunLengthCommand, BadInputIsOneSentenceAndExitTwo) {
    const std::vector<std::vector<std::string>> wrong = {
        {},
        {"--chart", "pie"},
        {"--chart", "cusum"},
        {"--chart", "cusum", "--k", "0.5"},
        {"--chart", "cusum", "--k", "half", "--h", "4"},
        {"--chart", "cusum", "--k", "0.5x", "--h", "4"},
        {"--chart", "cusum", "--k", "nan", "--h", "4"},
        {"--chart", "cusum", "--k", "0.5", "--h", "inf"},
        {"--chart", "cusum", "--k", "-1", "--h", "4"},
        {"--chart", "cusum", "--k", "0.5", "--h", "0"},
        {"--chart", "cusum", "--k", "0.5", "--h", "4", "--limit", "4"},
        {"--chart", "cusum", "--k", "0.5", "--h", "4", "--headstart", "4"},
        {"--chart", "cusum", "--k", "0.5", "--h", "4", "--sided", "three"},
        {"--chart", "cusum", "--k", "0.5", "--h", "150"},
        {"--chart", "ewma", "--lambda", "0", "--limit", "3"},
        {"--chart", "ewma", "--lambda", "1.5", "--limit", "3"},
        {"--chart", "ewma", "--lambda", "0.1", "--limit", "3", "--shift", ""},
        {"--chart", "shewhart", "--rules", "5"},
        {"--chart", "shewhart", "--rules", "1,,2"},
        {"--chart", "shewhart", "--rules", "1", "--run", "2.5"},
        {"--chart", "shewhart", "--headstart"},
        {"--chart", "ewma", "--lambda", "0.1", "--for-arl", "0.5"},
        {"--chart", "ewma", "--lambda", "0.1", "--limit", "3", "--nonsense"},
    };
    for (const auto& words : wrong) {
        const Ran ran = runlength(words);
        std::string shown;
        for (const auto& word : words) shown += word + " ";
        EXPECT_EQ(ran.code, 2) << shown;
        EXPECT_EQ(ran.out, "") << shown;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << shown << ran.err;
    }
}

}  // namespace
}  // namespace arc::app
