// SPDX-License-Identifier: GPL-3.0-or-later
// The filter by verdict is worked out in SQL; core's verdictOf is what it must agree with, reading by
// reading.
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <set>

#include "core/work/notes.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc {
namespace {

using Name = std::pair<Uuid, int>;

class Search : public testing::Test {
  protected:
    void SetUp() override {
        book = storage::createLogbook(folder / "b.arcbook", clock, random).value();
        kit = test::addKit(*book, clock, random);
        Job strict = kit.job;
        strict.id = makeId<JobId>(clock, random);
        strict.label = "HR-S";
        strict.rule.perSplice = Loss{60};
        strict.rule.average = Loss{40};
        strict.rule.ceiling = Loss{150};
        strict.rule.attempts = 2;
        ASSERT_TRUE(book->append(strict, test::testContext));
        rules = {{kit.job.id, kit.job.rule}, {strict.id, strict.rule}};
        // What most jobs have is the strict rule, not the usual one.
        for (const auto* label : {"HR-T", "HR-U"}) {
            Job alike = strict;
            alike.id = makeId<JobId>(clock, random);
            alike.label = label;
            ASSERT_TRUE(book->append(alike, test::testContext));
            rules.emplace(alike.id, alike.rule);
        }
        const std::vector<std::optional<JobId>> jobs{kit.job.id, strict.id, std::nullopt,
                                                     rules.begin()->first, rules.rbegin()->first};
        const std::vector<std::string> notes{"",
                                             "kept: nothing left",
                                             "agreed",
                                             std::string(note::respliced) + "bubble",
                                             std::string(note::corrected) + "0.20 (kept: x)",
                                             std::string(note::moved) + "7",
                                             std::string(note::clockBack)};
        std::mt19937 any(20311103);
        for (int i = 0; i < 60; ++i) {
            SpliceArc arc = test::arcOf(kit, makeId<ArcId>(clock, random), 1'900'000'000'000 + i * 1000, 4);
            arc.job = jobs[any() % jobs.size()];
            if (i % 2 == 0) arc.cleaver = kit.cleaver.id;
            for (auto& reading : arc.readings) {
                reading.loss = Loss{static_cast<int>(any() % 40) * 10};
                reading.attempt = 1 + static_cast<int>(any() % 4);
                reading.note = notes[any() % notes.size()];
                if (any() % 8 == 0) reading.state = ReadingState::Voided;
            }
            ASSERT_TRUE(book->append(arc, test::testContext));
            all.push_back(arc);
        }
    }
    std::set<Name> expected(ReadingVerdict verdict) const {
        std::set<Name> names;
        for (const auto& arc : all)
            for (const auto& reading : arc.readings) {
                const auto rule = arc.job ? rules.at(*arc.job) : sampleRules().front();
                if (verdictOf(rule, reading) == verdict) names.insert({arc.id.uuid, reading.channel});
            }
        return names;
    }
    std::set<Name> found(const SpliceFilter& filter, PageOrder order, std::size_t window) {
        std::set<Name> names;
        std::optional<PageKey> after;
        while (true) {
            const auto page = book->splices(filter, order, after, window).value();
            for (const auto& row : page)
                EXPECT_TRUE(names.insert({row.arc.id.uuid, row.reading.channel}).second) << "a row twice";
            if (page.size() < window) return names;
            after = PageKey{page.back().arc.at.ms, page.back().row};
        }
    }

    test::TempFolder folder;
    test::FakeClock clock;
    test::FakeRandom random;
    std::unique_ptr<Logbook> book;
    test::SmallKit kit;
    std::map<JobId, AcceptanceRule> rules;
    std::vector<SpliceArc> all;
};

TEST_F(Search, EveryVerdictFindsExactlyItsReadings) {
    std::size_t sum = 0;
    for (const auto verdict : {ReadingVerdict::Accept, ReadingVerdict::AcceptHigh, ReadingVerdict::Resplice,
                               ReadingVerdict::NoteMissing, ReadingVerdict::Kept, ReadingVerdict::OverCeiling,
                               ReadingVerdict::Voided}) {
        SpliceFilter filter;
        filter.verdicts = {verdict};
        const auto wanted = expected(verdict);
        EXPECT_FALSE(wanted.empty());
        EXPECT_EQ(found(filter, PageOrder::NewestFirst, 7), wanted) << static_cast<int>(verdict);
        EXPECT_EQ(found(filter, PageOrder::OldestFirst, 1000), wanted) << static_cast<int>(verdict);
        sum += wanted.size();
    }
    EXPECT_EQ(sum, 240u);
}

TEST_F(Search, VerdictsCleaverAndWordsNarrowTogether) {
    SpliceFilter filter;
    filter.verdicts = {ReadingVerdict::Kept, ReadingVerdict::Resplice};
    auto wanted = expected(ReadingVerdict::Kept);
    wanted.merge(expected(ReadingVerdict::Resplice));
    EXPECT_EQ(found(filter, PageOrder::NewestFirst, 11), wanted);
    filter.cleaver = kit.cleaver.id;
    filter.text = "nothing";
    std::set<Name> narrowed;
    for (const auto& arc : all)
        for (const auto& reading : arc.readings)
            if (arc.cleaver && reading.note == "kept: nothing left" &&
                wanted.contains({arc.id.uuid, reading.channel}))
                narrowed.insert({arc.id.uuid, reading.channel});
    ASSERT_FALSE(narrowed.empty());
    EXPECT_EQ(found(filter, PageOrder::NewestFirst, 3), narrowed);
    filter.text = "Ada";
    EXPECT_GT(found(filter, PageOrder::NewestFirst, 100).size(), narrowed.size());
}

TEST_F(Search, AChangedRuleCountsFromThenOnWhoeverChangedIt) {
    SpliceFilter filter;
    filter.verdicts = {ReadingVerdict::OverCeiling};
    auto second =
        storage::openLogbook(folder / "b.arcbook", storage::OpenMode::ReadOnly, clock, random).value();
    const auto before = found(filter, PageOrder::NewestFirst, 1000);
    EXPECT_EQ(second->splices(filter, PageOrder::NewestFirst, {}, 1000)->size(), before.size());
    Job looser = kit.job;
    looser.rule.ceiling = Loss{10'000};
    ASSERT_TRUE(book->append(looser, test::testContext));
    rules.at(kit.job.id) = looser.rule;
    const auto after = expected(ReadingVerdict::OverCeiling);
    EXPECT_LT(after.size(), before.size());
    EXPECT_EQ(found(filter, PageOrder::NewestFirst, 1000), after);
    EXPECT_EQ(second->splices(filter, PageOrder::NewestFirst, {}, 1000)->size(), after.size());
}

TEST_F(Search, AReadingThatWasMovedToAnotherFibreCountsAsCorrected) {
    Reading moved = all[0].readings[0];
    const auto versions = [&] {
        SpliceFilter filter;
        filter.toMs = all[0].at.ms + 1;
        return book->splices(filter, PageOrder::OldestFirst, std::nullopt, 1).value().at(0).versions;
    };
    moved.note = "a word more";
    ASSERT_TRUE(book->append(ReadingChange{all[0].id, moved}, test::testContext));
    EXPECT_EQ(versions(), 1) << "a note is no correction";
    moved.fibreA = "47";
    ASSERT_TRUE(book->append(ReadingChange{all[0].id, moved}, test::testContext));
    EXPECT_EQ(versions(), 2);
}

}  // namespace
}  // namespace arc
