// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over: in any order, any number of times, with one result; nothing half taken in; nothing from
// strangers.
#include "storage/satchel.hpp"

#include <fstream>
#include <gtest/gtest.h>

#include "storage/verify.hpp"
#include "tests/support/laptop.hpp"

namespace arc::storage {
namespace {

using test::FakeRandom;
using test::keyFrom;
using test::Laptop;

TEST(Satchel, BringsEverythingAcrossAndTwiceChangesNothing) {
    Laptop from(1);
    std::filesystem::remove(from.file());
    std::filesystem::remove(from.file().string() + "-wal");
    std::filesystem::remove(from.file().string() + "-shm");
    test::fillEveryTable(from.file(), from.folder.path, from.clock, from.random);
    Laptop to(2);
    const auto satchel = from.pack();
    NoProgress unwatched;
    const auto said = verifySatchel(satchel, {}, unwatched);
    ASSERT_TRUE(said) << said.error().sentence();
    const auto taken = to.take(satchel);
    ASSERT_TRUE(taken) << taken.error().sentence();
    EXPECT_GT(taken->newRows, 10u);
    EXPECT_TRUE(taken->concurrent.empty());
    to.expectSound();
    auto a = from.open(OpenMode::ReadOnly);
    auto b = to.open(OpenMode::ReadOnly);
    EXPECT_EQ(a->tools().value(), b->tools().value());
    EXPECT_EQ(a->totals()->readings, b->totals()->readings);
    EXPECT_EQ(a->setting("drift.budget_arcs").value(), "2000");
    const auto care = b->careRecords({}).value();
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(b->attachments(care[0].id.uuid)->front().bytes, "not a jpeg");
    const auto rows = b->splices({}, PageOrder::OldestFirst, {}, 100).value();
    EXPECT_EQ(rows.size(), a->splices({}, PageOrder::OldestFirst, {}, 100)->size());
    b.reset();
    const std::string head = to.head();
    const auto again = to.take(satchel);
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_EQ(again->newRows, 0u);
    EXPECT_EQ(to.head(), head);
}

TEST(Satchel, OfAnUnknownDeviceIsLeftAlone) {
    Laptop from(1);
    Laptop to(2);
    from.key = keyFrom(77);
    const std::string head = to.head();
    const auto answer = to.take(from.pack());
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Refused);
    EXPECT_NE(answer.error().sentence().find("not accepted yet"), std::string::npos);
    EXPECT_EQ(to.head(), head);
}

TEST(Satchel, AnyChangedByteIsFoundAndNothingIsTakenIn) {
    Laptop from(1);
    Laptop to(2);
    {
        auto book = from.open();
        test::addKit(*book, from.clock, from.random);
    }
    const auto satchel = from.pack();
    std::ifstream in(satchel, std::ios::binary);
    const std::string good((std::istreambuf_iterator<char>(in)), {});
    const std::string head = to.head();
    FakeRandom random(5);
    for (int i = 0; i < 200; ++i) {
        std::string bad = good;
        // Every byte of the label and signature region is met as well as random ones of the payload.
        const std::size_t at = i < 100 ? static_cast<std::size_t>(i * 5) : random.below(good.size());
        bad[at] = static_cast<char>(bad[at] ^ (1 << random.below(8)));
        const auto file = to.folder / "bad.satchel";
        std::ofstream(file, std::ios::binary | std::ios::trunc) << bad;
        EXPECT_FALSE(to.take(file)) << "byte " << at;
    }
    std::ofstream(to.folder / "cut.satchel", std::ios::binary) << good.substr(0, good.size() / 2);
    EXPECT_EQ(to.take(to.folder / "cut.satchel").error().code, ProblemCode::Damaged);
    EXPECT_EQ(to.head(), head);
}

TEST(Satchel, WithAPassphraseOpensOnlyWithIt) {
    Laptop from(1);
    Laptop to(2);
    from.save(Setting{"a", "secret value"});
    const auto satchel = from.packSealed("open sesame");
    std::ifstream in(satchel, std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(in)), {});
    EXPECT_EQ(bytes.find("secret value"), std::string::npos);
    EXPECT_EQ(to.take(satchel).error().code, ProblemCode::Refused);
    EXPECT_EQ(to.take(satchel, "open barley").error().code, ProblemCode::Refused);
    ASSERT_TRUE(to.take(satchel, "open sesame"));
    EXPECT_EQ(to.open()->setting("a").value(), "secret value");
}

TEST(Satchel, SinceATimeFollowsOnWhatIsThereAndSaysSoWhenItDoesNot) {
    Laptop from(1);
    Laptop near(2);
    Laptop far(3);
    from.save(Setting{"a", "1"});
    ASSERT_TRUE(near.take(from.pack()));
    const Instant cut = from.clock.now();
    from.save(Setting{"a", "2"});
    const auto rest = from.packSince(cut);
    EXPECT_EQ(near.take(rest)->newRows, 1u);
    EXPECT_EQ(near.open()->setting("a").value(), "2");
    const auto answer = far.take(rest);
    ASSERT_FALSE(answer);
    EXPECT_NE(answer.error().what.find("begins later"), std::string::npos);
}

TEST(Satchel, TwoEditsOfOneRecordAreBothKeptAndListed) {
    Laptop one(1);
    Laptop two(2);
    test::SmallKit kit;
    {
        auto book = one.open();
        kit = test::addKit(*book, one.clock, one.random);
    }
    ASSERT_TRUE(two.take(one.pack()));
    Tool mine = kit.splicer;
    mine.nickname = "the blue one";
    one.save(mine);
    Tool theirs = kit.splicer;
    theirs.nickname = "old faithful";
    two.clock.at.ms += 60'000;
    two.save(theirs);
    const auto taken = one.take(two.pack()).value();
    ASSERT_EQ(taken.concurrent.size(), 1u) << "listed for a person";
    ASSERT_TRUE(two.take(one.pack()));
    EXPECT_EQ(one.open()->tools()->back().nickname, "old faithful");
    EXPECT_EQ(two.open()->tools()->back().nickname, "old faithful");
    EXPECT_EQ(one.open()->historyOf(kit.splicer.id.uuid)->size(), 3u);
    // An edit that knew of both ends the matter.
    mine.nickname = "blue and faithful";
    one.save(mine);
    EXPECT_TRUE(two.take(one.pack())->concurrent.empty());
    EXPECT_EQ(two.open()->tools()->back().nickname, "blue and faithful");
}

TEST(Satchel, AClockThatIsAYearWrongDoesNotBreakTheOrder) {
    Laptop ahead(1);
    Laptop right(2);
    ahead.clock.at.ms += 365 * msPerDay;
    ahead.save(Setting{"a", "from the future"});
    ASSERT_TRUE(right.take(ahead.pack()));
    right.save(Setting{"a", "after it"});
    ASSERT_TRUE(ahead.take(right.pack()));
    EXPECT_EQ(ahead.open()->setting("a").value(), "after it");
    EXPECT_EQ(right.open()->setting("a").value(), "after it");
}

TEST(Satchel, AHistoryThatWasWrittenTwiceIsRefused) {
    Laptop one(1);
    Laptop two(2);
    one.save(Setting{"a", "1"});
    std::filesystem::copy_file(one.file(), one.folder / "copy");
    one.save(Setting{"a", "2"});
    ASSERT_TRUE(two.take(one.pack()));
    // The old copy put back into the very same file.
    std::ifstream in(one.folder / "copy", std::ios::binary);
    const std::string old((std::istreambuf_iterator<char>(in)), {});
    std::filesystem::remove(one.file().string() + "-wal");
    std::ofstream(one.file(), std::ios::binary) << old;
    one.save(Setting{"a", "other"});
    const std::string head = two.head();
    const auto answer = two.take(one.pack());
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Conflict);
    EXPECT_EQ(two.head(), head);
}

}  // namespace
}  // namespace arc::storage
