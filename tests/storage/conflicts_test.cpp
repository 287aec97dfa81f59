// SPDX-License-Identifier: GPL-3.0-or-later
// Edits that did not know of each other are listed until a person settles them, and a settled matter is
// settled on every laptop.
#include "storage/conflicts.hpp"

#include <gtest/gtest.h>

#include "tests/support/laptop.hpp"

namespace arc::storage {
namespace {

using test::Laptop;

class ConflictsTest : public ::testing::Test {
  protected:
    void SetUp() override {
        {
            auto book = one_.open();
            kit_ = test::addKit(*book, one_.clock, one_.random);
            arc_ = makeId<ArcId>(one_.clock, one_.random);
            ASSERT_TRUE(book->append(test::arcOf(kit_, arc_, 1'900'000'000'000, 2), test::testContext));
        }
        ASSERT_TRUE(two_.take(one_.pack()));
    }
    static Tool called(Tool tool, const std::string& nickname) {
        tool.nickname = nickname;
        return tool;
    }
    void call(Laptop& laptop, const std::string& nickname) { laptop.save(called(kit_.splicer, nickname)); }
    static void correct(Laptop& laptop, ArcId id, int loss) {
        Reading reading;
        reading.channel = 1;
        reading.loss = Loss{loss};
        laptop.save(ReadingChange{id, reading});
    }
    static void exchange(Laptop& a, Laptop& b) {
        ASSERT_TRUE(b.take(a.pack()));
        ASSERT_TRUE(a.take(b.pack()));
    }
    static std::vector<ConcurrentEdits> listOf(const Laptop& laptop) {
        return concurrentEditsOf(laptop.file()).value();
    }
    static Result<Receipt> settleOn(Laptop& laptop, const ConcurrentEdits& edits, std::size_t keep) {
        return settleEdits({laptop.file(), OpenMode::ReadWrite}, edits, keep, {"Bo", "test", {}},
                           laptop.clock, laptop.random);
    }
    static std::string nickname(Laptop& laptop) { return laptop.open()->tools()->back().nickname; }

    Laptop one_{1}, two_{2};
    test::SmallKit kit_;
    ArcId arc_;
};

TEST_F(ConflictsTest, WhoWhenWhereAndWhatDiffers) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    call(two_, "old faithful");
    EXPECT_TRUE(listOf(one_).empty());
    exchange(one_, two_);
    for (const Laptop* laptop : {&one_, &two_}) {
        const auto list = listOf(*laptop);
        ASSERT_EQ(list.size(), 1u);
        EXPECT_EQ(list[0].record, kit_.splicer.id.uuid);
        EXPECT_EQ(list[0].kind, "tool");
        ASSERT_EQ(list[0].edits.size(), 2u);
        EXPECT_EQ(list[0].edits[0].content, "nickname: the blue one");
        EXPECT_EQ(list[0].showing().content, "nickname: old faithful");
        EXPECT_EQ(list[0].showing().who, "Ada");
        EXPECT_GT(list[0].showing().at, list[0].edits[0].at);
    }
}

TEST_F(ConflictsTest, AnEditOnTopOfOnesOwnHidesNoneOfTheOther) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    call(two_, "old");
    call(two_, "old faithful");
    exchange(one_, two_);
    const auto list = listOf(one_);
    ASSERT_EQ(list.size(), 1u) << "the second edit knew its own first one, not the other laptop's";
    EXPECT_EQ(list[0].edits[0].content, "nickname: the blue one");
    EXPECT_EQ(list[0].showing().content, "nickname: old faithful");
}

TEST_F(ConflictsTest, TheSameEditHereAndThereIsNone) {
    call(one_, "the blue one");
    call(two_, "the blue one");
    exchange(one_, two_);
    EXPECT_TRUE(listOf(one_).empty());
}

TEST_F(ConflictsTest, KeepingWhatShowsSettlesItEverywhere) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    call(two_, "old faithful");
    exchange(one_, two_);
    ASSERT_TRUE(settleOn(one_, listOf(one_)[0], 1));
    EXPECT_TRUE(listOf(one_).empty());
    ASSERT_TRUE(two_.take(one_.pack()));
    EXPECT_TRUE(listOf(two_).empty());
    EXPECT_EQ(nickname(one_), "old faithful");
    EXPECT_EQ(nickname(two_), "old faithful");
    one_.expectSound();
    two_.expectSound();
    const auto history = two_.open()->historyOf(kit_.splicer.id.uuid).value();
    EXPECT_TRUE(history.back().text.starts_with("Kept: ")) << history.back().text;
    EXPECT_EQ(history.back().who, "Bo");
}

TEST_F(ConflictsTest, TheOtherEditCanBeBroughtBack) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    call(two_, "old faithful");
    exchange(one_, two_);
    ASSERT_TRUE(settleOn(two_, listOf(two_)[0], 0));
    ASSERT_TRUE(one_.take(two_.pack()));
    EXPECT_TRUE(listOf(one_).empty());
    EXPECT_EQ(nickname(one_), "the blue one");
    EXPECT_EQ(nickname(two_), "the blue one");
    one_.expectSound();
}

TEST_F(ConflictsTest, SettledTwoWaysIsListedAgain) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    call(two_, "old faithful");
    exchange(one_, two_);
    ASSERT_TRUE(settleOn(one_, listOf(one_)[0], 0));
    ASSERT_TRUE(settleOn(two_, listOf(two_)[0], 1));
    exchange(one_, two_);
    ASSERT_EQ(listOf(one_).size(), 1u);
    EXPECT_EQ(listOf(one_)[0].edits.size(), 2u);
    ASSERT_TRUE(settleOn(one_, listOf(one_)[0], 1));
    exchange(one_, two_);
    EXPECT_TRUE(listOf(two_).empty());
    EXPECT_EQ(nickname(one_), nickname(two_));
}

TEST_F(ConflictsTest, AListThatIsNoLongerTrueIsNotSettled) {
    call(one_, "the blue one");
    call(two_, "old faithful");
    exchange(one_, two_);
    const auto stale = listOf(one_);
    call(one_, "something else");
    const auto answer = settleOn(one_, stale[0], 0);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Conflict);
    EXPECT_EQ(nickname(one_), "something else");
}

TEST_F(ConflictsTest, ThreeLaptopsThreeEdits) {
    Laptop three(3);
    ASSERT_TRUE(three.take(one_.pack()));
    call(one_, "a");
    call(two_, "b");
    call(three, "c");
    exchange(one_, two_);
    exchange(one_, three);
    exchange(one_, two_);
    ASSERT_EQ(listOf(two_).size(), 1u);
    EXPECT_EQ(listOf(two_)[0].edits.size(), 3u);
    ASSERT_TRUE(settleOn(two_, listOf(two_)[0], 1));
    exchange(two_, three);
    EXPECT_TRUE(listOf(three).empty());
    EXPECT_EQ(nickname(three), nickname(two_));
}

TEST_F(ConflictsTest, ReadingsCorrectedHereAndThere) {
    correct(one_, arc_, 110);
    two_.clock.at.ms += 60'000;
    correct(two_, arc_, 120);
    exchange(one_, two_);
    const auto list = listOf(one_);
    ASSERT_EQ(list.size(), 1u);
    EXPECT_EQ(list[0].kind, "reading");
    EXPECT_EQ(list[0].channel, 1);
    EXPECT_EQ(list[0].edits[0].content, "loss_mdb: 110");
    ASSERT_TRUE(settleOn(one_, list[0], 0));
    exchange(one_, two_);
    EXPECT_TRUE(listOf(two_).empty());
    EXPECT_EQ((*two_.open()->arc(arc_))->readings[0].loss, Loss{110});
    two_.expectSound();
}

TEST_F(ConflictsTest, ACorrectionOfWhatWasTakenBackElsewhereIsNotLost) {
    correct(one_, arc_, 110);
    two_.clock.at.ms += 60'000;
    two_.save(Withdrawal{arc_.uuid, "the wrong closure"});
    exchange(one_, two_);
    const auto list = listOf(one_);
    ASSERT_EQ(list.size(), 1u);
    EXPECT_EQ(list[0].kind, "arc");
    EXPECT_TRUE(list[0].showing().content.starts_with("taken back"));
    ASSERT_TRUE(settleOn(one_, list[0], 0));
    exchange(one_, two_);
    EXPECT_TRUE(listOf(one_).empty());
    EXPECT_TRUE(listOf(two_).empty());
    const auto back = two_.open()->arc(arc_).value();
    ASSERT_TRUE(back.has_value());
    EXPECT_EQ(back->readings[0].loss, Loss{110});
    two_.expectSound();
}

TEST_F(ConflictsTest, TakingBackWhatOneKnewIsNoConflict) {
    correct(two_, arc_, 110);
    exchange(one_, two_);
    one_.save(Withdrawal{arc_.uuid, "the wrong closure"});
    exchange(one_, two_);
    EXPECT_TRUE(listOf(one_).empty());
    one_.save(test::arcOf(kit_, arc_, 1'900'000'000'000, 2));
    exchange(one_, two_);
    EXPECT_TRUE(listOf(two_).empty());
    EXPECT_TRUE(two_.open()->arc(arc_)->has_value());
}

TEST_F(ConflictsTest, AToolTakenBackHereAndRenamedThere) {
    call(one_, "the blue one");
    two_.clock.at.ms += 60'000;
    two_.save(Withdrawal{kit_.splicer.id.uuid, "sold"});
    exchange(one_, two_);
    const auto list = listOf(one_);
    ASSERT_EQ(list.size(), 1u);
    EXPECT_EQ(list[0].showing().content, "taken back");
    ASSERT_TRUE(settleOn(one_, list[0], 0));
    exchange(one_, two_);
    EXPECT_EQ(nickname(two_), "the blue one");
    EXPECT_TRUE(listOf(two_).empty());
}

TEST_F(ConflictsTest, OneNumberForTwoFinalRecordsIsNamed) {
    const auto issue = [&](Laptop& laptop, int number, const std::string& hash) {
        IssuedRecord record;
        record.id = makeId<EntryId>(laptop.clock, laptop.random);
        record.job = kit_.job.id;
        record.number = number;
        record.manifestSha256 = std::string(64, hash[0]);
        record.by = "Ada";
        record.at = laptop.clock.now();
        laptop.save(record);
    };
    issue(one_, 1, "a");
    EXPECT_TRUE(numberClashesOf(one_.file())->empty());
    issue(two_, 1, "b");
    exchange(one_, two_);
    const auto clashes = numberClashesOf(one_.file()).value();
    ASSERT_EQ(clashes.size(), 1u);
    EXPECT_EQ(clashes[0].jobLabel, "HR-B");
    EXPECT_EQ(clashes[0].number, 1);
    ASSERT_EQ(clashes[0].records.size(), 2u);
    EXPECT_NE(clashes[0].records[0].manifestSha256, clashes[0].records[1].manifestSha256);
    EXPECT_FALSE(clashes[0].supersededBy);
    issue(two_, 2, "c");
    exchange(one_, two_);
    EXPECT_EQ(numberClashesOf(one_.file())->front().supersededBy, 2);
    EXPECT_EQ(one_.open()->issuedRecords(kit_.job.id)->size(), 3u) << "none replaces another";
}

}  // namespace
}  // namespace arc::storage
