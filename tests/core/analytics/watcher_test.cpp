// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/watcher.hpp"

#include <gtest/gtest.h>

#include "tests/support/splice_world.hpp"

namespace arc::drift {
namespace {

using testing::Fault;
using testing::makeLog;
using testing::World;

void feed(Watcher& watcher, const SplicerHistory& log, std::size_t from, std::size_t to) {
    for (std::size_t i = from; i < to; ++i) {
        const auto& arc = log.arcs[i];
        watcher.step(rawArc(arc, std::span(log.readings).subspan(arc.firstReading, arc.readingCount), i + 1));
    }
}

WatchSettings settings() {
    return {"G.652-G.652 / 12", 12, 1000, std::nullopt};
}

TEST(Watcher, StoppedAndGoneOnIsBitEqualToOneGo) {
    World world;
    world.fault = Fault::Groove;
    world.sizeDb = 0.05;
    const auto log = makeLog(world, 6);
    Watcher batch(settings());
    feed(batch, log, 0, log.arcs.size());
    // Stops while learning, between two folds, right after the fault began, after the signal.
    for (const std::size_t stop : {30UL, 60UL, 333UL, 610UL, 800UL}) {
        Watcher first(settings());
        feed(first, log, 0, stop);
        auto second = Watcher::restore(settings(), first.save());
        ASSERT_TRUE(second);
        EXPECT_EQ(second->lastArc(), stop);
        feed(*second, log, stop, log.arcs.size());
        EXPECT_EQ(second->save(), batch.save()) << stop;
    }
}

TEST(Watcher, StateIsBounded) {
    World world;
    world.arcs = 1500;
    const auto log = makeLog(world, 6);
    Watcher watcher(settings());
    feed(watcher, log, 0, 1000);
    const auto size = watcher.save().size();
    feed(watcher, log, 1000, 1500);
    EXPECT_LT(watcher.save().size(), size + size / 10);
}

TEST(Watcher, BytesThatAreNoStateAreRefused) {
    World world;
    world.arcs = 100;
    const auto log = makeLog(world, 6);
    Watcher watcher(settings());
    feed(watcher, log, 0, 100);
    const auto bytes = watcher.save();
    EXPECT_FALSE(Watcher::restore(settings(), ""));
    EXPECT_FALSE(Watcher::restore(settings(), "nonsense"));
    EXPECT_FALSE(Watcher::restore(settings(), bytes.substr(0, bytes.size() / 2)));
    EXPECT_FALSE(Watcher::restore(settings(), bytes + "x"));
}

}  // namespace
}  // namespace arc::drift
