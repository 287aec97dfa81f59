// SPDX-License-Identifier: GPL-3.0-or-later
// A satchel of one job: what is needed to read the job comes along, the chains stay whole, and whatever
// follows in whatever order ends in one book.
#include <gtest/gtest.h>

#include "storage/ledger.hpp"
#include "tests/support/satchel_tools.hpp"

namespace arc::storage {
namespace {

using test::Laptop;

struct TwoJobs {
    test::SmallKit kit;  ///< its job is the first one
    Job other;
    Tool otherSplicer;
    ArcId ours, theirs, takenBack;
};

/// Every entry under a journal row of its own.
TwoJobs fill(Laptop& laptop) {
    TwoJobs made;
    auto book = laptop.open();
    made.kit = test::addKit(*book, laptop.clock, laptop.random);
    const auto write = [&](const Entry& entry) {
        const auto saved = book->append(entry, test::testContext);
        EXPECT_TRUE(saved) << saved.error().sentence();
    };
    made.other.id = makeId<JobId>(laptop.clock, laptop.random);
    made.other.label = "HR-C";
    write(made.other);
    made.otherSplicer = made.kit.splicer;
    made.otherSplicer.id = makeId<ToolId>(laptop.clock, laptop.random);
    made.otherSplicer.label = "S-02";
    write(made.otherSplicer);
    for (ArcId* id : {&made.ours, &made.theirs, &made.takenBack})
        *id = makeId<ArcId>(laptop.clock, laptop.random);
    SpliceArc theirs = test::arcOf(made.kit, made.theirs, 1'900'000'000'000, 2);
    theirs.job = made.other.id;
    theirs.splicer = made.otherSplicer.id;
    write(theirs);
    write(test::arcOf(made.kit, made.ours, 1'900'000'100'000, 2));
    Reading corrected;
    corrected.channel = 2;
    corrected.loss = Loss{77};
    write(ReadingChange{made.ours, corrected});
    write(test::arcOf(made.kit, made.takenBack, 1'900'000'200'000, 2));
    write(Withdrawal{made.takenBack.uuid, "the wrong closure"});
    CareRecord care;
    care.id = makeId<CareId>(laptop.clock, laptop.random);
    care.tool = made.kit.splicer.id;
    care.at = {1'900'000'300'000, 0};
    care.action = "groove_clean";
    write(care);
    write(Attachment{makeId<EntryId>(laptop.clock, laptop.random), care.id.uuid, "groove.jpg", "image/jpeg",
                     "pixels"});
    write(Setting{"a", "of nobody's concern"});
    return made;
}

TEST(JobSatchel, BringsTheJobItsToolsAndTheirCareAndNothingElse) {
    Laptop from(1);
    Laptop to(2);
    const TwoJobs made = fill(from);
    const auto satchel = from.packJob(made.kit.job.id);
    EXPECT_GT(from.lastPacked.headlines, 0u);
    NoProgress unwatched;
    const auto said = verifySatchel(satchel, {}, unwatched);
    ASSERT_TRUE(said) << said.error().sentence();
    EXPECT_NE(said->find("headlines"), std::string::npos);
    const auto taken = to.take(satchel);
    ASSERT_TRUE(taken) << taken.error().sentence();
    EXPECT_EQ(to.expectSound().headlines, from.lastPacked.headlines);
    auto book = to.open();
    ASSERT_EQ(book->jobs()->size(), 1u);
    EXPECT_EQ(book->jobs()->front(), made.kit.job);
    EXPECT_TRUE(book->arc(made.ours)->has_value());
    EXPECT_EQ((*book->arc(made.ours))->readings[1].loss, Loss{77});
    EXPECT_FALSE(book->arc(made.theirs)->has_value());
    EXPECT_FALSE(book->arc(made.takenBack)->has_value()) << "it was taken back";
    EXPECT_EQ(book->historyOf(made.takenBack.uuid)->size(), 2u);
    const auto care = book->careRecords(made.kit.splicer.id).value();
    ASSERT_EQ(care.size(), 1u);
    EXPECT_EQ(book->attachments(care[0].id.uuid)->front().bytes, "pixels");
    EXPECT_FALSE(book->setting("a")->has_value());
    const auto tools = book->tools().value();
    for (const Tool& tool : tools) EXPECT_NE(tool.label, "S-02");
}

TEST(JobSatchel, WhatComesLaterFillsItInAndTheBooksAreEqual) {
    Laptop from(1);
    Laptop jobFirst(2);
    Laptop jobLast(3);
    const TwoJobs made = fill(from);
    const auto job = from.packJob(made.kit.job.id);
    const auto all = from.pack();
    ASSERT_TRUE(jobFirst.take(job));
    const std::string withHeadlines = jobFirst.head();
    const auto filled = jobFirst.take(all);
    ASSERT_TRUE(filled) << filled.error().sentence();
    EXPECT_GT(filled->newRows, 0u);
    ASSERT_TRUE(jobLast.take(all));
    EXPECT_EQ(jobLast.take(job)->newRows, 0u);
    EXPECT_EQ(jobFirst.expectSound().headlines, 0u);
    EXPECT_EQ(jobLast.expectSound().headlines, 0u);
    EXPECT_NE(jobFirst.head(), withHeadlines) << "what is missing is part of the head";
    auto a = jobFirst.open();
    auto b = jobLast.open();
    EXPECT_EQ(a->tools(), b->tools());
    EXPECT_EQ(a->setting("a"), b->setting("a"));
    EXPECT_EQ(a->arc(made.theirs), b->arc(made.theirs));
    EXPECT_EQ(a->totals()->arcs, b->totals()->arcs);
    EXPECT_EQ(a->totals()->readings, b->totals()->readings);
    EXPECT_EQ(a->totals()->journalRows - b->totals()->journalRows, 0u);
}

TEST(JobSatchel, CanBeHandedOnAndFollowedByTheRest) {
    Laptop from(1);
    Laptop between(2);
    Laptop last(3);
    const TwoJobs made = fill(from);
    ASSERT_TRUE(between.take(from.packJob(made.kit.job.id)));
    between.save(Setting{"b", "1"});
    ASSERT_TRUE(last.take(between.pack()));
    EXPECT_TRUE(last.open()->arc(made.ours)->has_value());
    last.expectSound();
    ASSERT_TRUE(last.take(from.pack()));
    EXPECT_EQ(last.expectSound().headlines, 0u);
    EXPECT_TRUE(last.open()->arc(made.theirs)->has_value());
}

TEST(JobSatchel, ARowLeftOutOrChangedBreaksTheChain) {
    Laptop from(1);
    Laptop to(2);
    const TwoJobs made = fill(from);
    const auto satchel = from.packJob(made.kit.job.id);
    const std::string head = to.head();
    for (const char* change :
         {"DELETE FROM headline WHERE journal = (SELECT max(journal) FROM headline)",
          "DELETE FROM journal WHERE row = (SELECT journal FROM headline ORDER BY 1 LIMIT 1); DELETE FROM "
          "headline WHERE "
          "journal NOT IN (SELECT row FROM journal)",
          "UPDATE journal SET text = 'nothing happened' WHERE row IN (SELECT max(journal) FROM headline)",
          "UPDATE journal SET digest = zeroblob(32) WHERE row IN (SELECT max(journal) FROM headline)",
          "UPDATE reading SET loss_mdb = 10 WHERE loss_mdb = 77",
          "DELETE FROM reading WHERE loss_mdb = 77"}) {
        const auto bad =
            test::forged(from, satchel, [change](const auto& payload) { test::rawSql(payload, change); });
        NoProgress unwatched;
        EXPECT_FALSE(to.take(bad)) << change;
        EXPECT_EQ(to.head(), head) << change;
    }
}

TEST(JobSatchel, AHeadlineThatGotContentLaterMustFitItsDigest) {
    Laptop from(1);
    Laptop to(2);
    const TwoJobs made = fill(from);
    ASSERT_TRUE(to.take(from.packJob(made.kit.job.id)));
    const std::string head = to.head();
    const auto all = from.pack();
    const auto bad = test::forged(from, all, [](const auto& payload) {
        test::rawSql(
            payload,
            "UPDATE record SET body = replace(body, 'of nobody', 'of every') WHERE kind = 'setting'");
    });
    const auto answer = to.take(bad);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::Damaged);
    EXPECT_EQ(to.head(), head);
}

TEST(JobSatchel, OfAJobThatIsNotThereIsRefused) {
    Laptop from(1);
    fill(from);
    NoProgress unwatched;
    const auto answer = packSatchel(
        from.file(), {from.folder / "none.satchel", {}, makeId<JobId>(from.clock, from.random), {}}, from.key,
        from.clock, from.random, unwatched);
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, ProblemCode::NotFound);
    EXPECT_FALSE(std::filesystem::exists(from.folder / "none.satchel"));
}

}  // namespace
}  // namespace arc::storage
