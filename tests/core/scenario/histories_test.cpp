// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/histories.hpp"

#include <algorithm>
#include <gtest/gtest.h>

namespace arc::scenario {
namespace {

Scenario twoSplicers() {
    Scenario s;
    s.name = "test";
    s.start = *parseInstant("2031-03-03T00:00:00Z");
    JobSetting job;
    job.label = "J-1";
    job.cables.push_back({"cable", 48, FibreUnit::Tube, 12, "TIA-598", "G.652.D", std::nullopt, std::nullopt});
    for (const char* const label : {"S-01", "S-02"}) {
        Machine m;
        m.label = label;
        s.splicers.push_back(m);
        ClosureSetting closure;
        closure.label = std::string("K-") + label;
        closure.cableA = closure.cableB = "cable";
        closure.plan = *planFromText("1-48 straight");
        job.closures.push_back(closure);
        Assignment work;
        work.splicer = label;
        work.cleaver = "C-01";
        work.job = "J-1";
        work.closures = {closure.label};
        work.toDay = 9;
        s.work.push_back(work);
    }
    s.cleavers.push_back({"C-01", "", {}, 0.45, {}});
    s.jobs.push_back(job);
    CareSetting care;
    care.at.arc = 20;
    care.tool = "C-01";
    care.action = std::string(action::cleaverClean);
    s.care.push_back(care);
    care.tool = "S-02";
    care.action = std::string(action::environmentChange);
    s.care.push_back(care);
    care.action = std::string(action::grooveClean);
    s.care.push_back(care);
    return s;
}

TEST(Histories, holdEveryArcOnceAndTheCareThatConcernsTheSplicer) {
    const auto s = twoSplicers();
    const auto log = *simulate(s, 3);
    const auto crew = historiesOf(s, log);
    ASSERT_EQ(crew.size(), 2u);
    EXPECT_EQ(crew[0].label, "S-01");
    EXPECT_EQ(crew[0].arcs.size() + crew[1].arcs.size(), log.arcs.size());
    EXPECT_EQ(crew[0].jobLabels, std::vector<std::string>{"J-1"});
    ASSERT_EQ(crew[0].events.size(),
              3u);  // blade place before the log, cleaver care, change of the surroundings
    EXPECT_EQ(crew[1].events.size(), 4u);
    for (const auto& history : crew) {
        EXPECT_TRUE(std::is_sorted(history.arcs.begin(), history.arcs.end(),
                                   [](const auto& a, const auto& b) { return a.at < b.at; }));
        EXPECT_EQ(history.readings.size(), history.arcs.size());
    }
}

}  // namespace
}  // namespace arc::scenario
