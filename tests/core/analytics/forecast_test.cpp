// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/forecast.hpp"

#include <cmath>
#include <gtest/gtest.h>

namespace arc::drift {
namespace {

/// One splicer, one fibre an arc; the level is flat and then climbs in a straight line from `bend` on.
SplicerHistory history(std::uint32_t arcs, std::uint32_t bend, double perHundredDb) {
    SplicerHistory h;
    h.splicer.uuid.bytes[0] = 1;
    h.modes = {"G.652-G.652"};
    for (std::uint32_t i = 1; i <= arcs; ++i) {
        HistoryArc arc;
        arc.at = Instant{static_cast<std::int64_t>(i) * msPerMinute, 0};
        arc.counter = ArcCount{10'000 + i};
        arc.channels = 1;
        arc.readingCount = 1;
        arc.firstReading = h.readings.size();
        const double db = 0.02 + (i > bend ? perHundredDb * (i - bend) / 100 : 0.0);
        // Steps of 0.01 dB whose mean over 50 arcs is the level.
        const double share = std::fmod(i * 0.6180339887498949, 1.0);
        h.readings.push_back({Loss{static_cast<int>(std::floor(db * 100 + share)) * 10}, {}, {}, 1, 1});
        h.arcs.push_back(arc);
    }
    CareRecord exchange;
    exchange.tool = h.splicer;
    exchange.action = std::string(action::electrodeReplace);
    exchange.counter = ArcCount{10'000};
    h.events.push_back(exchange);
    return h;
}

TEST(Forecast, youngElectrodesHaveNoneAndThePlainRuleStandsBeside) {
    const auto young = forecastElectrodes(history(2'500, 9'000, 0));
    EXPECT_EQ(young.arcsSince, 2'500u);
    EXPECT_FALSE(young.arcsLeft);
    EXPECT_EQ(young.plainRuleLeft, 2'500);
}

TEST(Forecast, aStraightRiseIsFollowedToTheSpentLevel) {
    // 0.02 dB until 3,000 arcs, then 0.002 dB per 100 arcs: 0.05 dB at 4,500 arcs.
    const auto forecast = forecastElectrodes(history(4'000, 3'000, 0.002));
    ASSERT_TRUE(forecast.arcsLeft);
    // Bends are tried in tenths of a life, so the answer is not exact.
    EXPECT_NEAR(*forecast.arcsLeft, 500, 150);
    EXPECT_LT(*forecast.arcsLeftLow, *forecast.arcsLeft);
    EXPECT_GT(*forecast.arcsLeftHigh, *forecast.arcsLeft);
}

TEST(Forecast, aFasterRiseLeavesLess) {
    const auto slow = forecastElectrodes(history(3'800, 3'000, 0.001));
    const auto fast = forecastElectrodes(history(3'800, 3'000, 0.003));
    ASSERT_TRUE(slow.arcsLeft && fast.arcsLeft);
    EXPECT_LT(*fast.arcsLeft, *slow.arcsLeft);
}

TEST(Forecast, newElectrodesBeginAnew) {
    auto h = history(4'000, 3'000, 0.002);
    CareRecord again = h.events[0];
    again.at = Instant{3'900 * msPerMinute, 0};
    again.counter = ArcCount{13'900};
    h.events.push_back(again);
    const auto forecast = forecastElectrodes(h);
    EXPECT_EQ(forecast.arcsSince, 100u);
    EXPECT_FALSE(forecast.arcsLeft);
}

TEST(Forecast, anEmptyHistoryHasTheWholeLifeAhead) {
    const auto forecast = forecastElectrodes({});
    EXPECT_FALSE(forecast.arcsSince);
    EXPECT_EQ(forecast.plainRuleLeft, 5'000);
}

}  // namespace
}  // namespace arc::drift
