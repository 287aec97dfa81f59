// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/plain_arc.hpp"

#include <functional>
#include <gtest/gtest.h>

#include "core/entry.hpp"

namespace arc::storage {
namespace {

SpliceArc ordinary() {
    SpliceArc arc;
    arc.id = ArcId{namedUuid("an arc")};
    arc.splicer = ToolId{namedUuid("a splicer")};
    arc.at = *parseInstant("2031-03-03T07:00:00Z");
    arc.mode = "G.652-G.652";
    arc.channels = 12;
    Reading reading;
    reading.loss = Loss{40};
    arc.readings = {reading};
    return arc;
}

/// Pushes one value of the arc up or down until the quick answer is no; every yes on the way must be a yes of
/// the rules.
void walk(const std::function<void(SpliceArc&, int)>& set, int from, int step) {
    constexpr int farEnough = 100'000;
    int yes = 0;
    for (; yes < farEnough; ++yes) {
        SpliceArc arc = ordinary();
        const int value = from + yes * step;
        set(arc, value);
        if (!plainlyFine(arc)) break;
        ASSERT_TRUE(validate(Entry{arc})) << "value " << value;
    }
    EXPECT_GT(yes, 0) << "an ordinary value is not plainly fine";
    EXPECT_LT(yes, farEnough) << "no limit was met";
}

TEST(PlainArc, TheQuickYesNeverSaysYesWhereTheRulesSayNo) {
    for (const int step : {1, -1}) {
        walk([](SpliceArc& a, int v) { a.readings[0].loss = Loss{v}; }, 40, step);
        walk([](SpliceArc& a, int v) { a.readings[0].channel = v; }, 5, step);
        walk([](SpliceArc& a, int v) { a.readings[0].attempt = v; }, 1, step);
        walk([](SpliceArc& a, int v) { a.readings[0].cleaveLeft = Angle{v}; }, 50, step);
        walk([](SpliceArc& a, int v) { a.readings[0].cleaveRight = Angle{v}; }, 50, step);
        walk([](SpliceArc& a, int v) { a.ambient.temperature = Temperature{v}; }, 291'150, 10 * step);
        walk([](SpliceArc& a, int v) { a.ambient.humidity = Humidity{v}; }, 500, step);
        walk([](SpliceArc& a, int v) { a.ambient.pressure = Pressure{v}; }, 100'000, 10 * step);
    }
}

TEST(PlainArc, ChannelCountsThatNoArcHasGoTheLongWay) {
    for (int channels = -1; channels <= 20; ++channels) {
        SpliceArc arc = ordinary();
        arc.channels = channels;
        EXPECT_TRUE(!plainlyFine(arc) || validate(Entry{arc})) << channels;
    }
}

TEST(PlainArc, WordsWithControlCharactersGoTheLongWay) {
    for (const char* text : {"a\nb", "a\tb", "\x1b[31m", "caf\xc3\xa9"}) {
        SpliceArc arc = ordinary();
        arc.readings[0].fibreA = text;
        EXPECT_FALSE(plainlyFine(arc)) << text;
    }
}

}  // namespace
}  // namespace arc::storage
