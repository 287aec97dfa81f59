// SPDX-License-Identifier: GPL-3.0-or-later
// A search for words, for high losses and for what was voided looks into a table of where words stand, not
// into every splice: it must answer what a plain look at every splice answers, after corrections, withdrawals
// and satchels in any order, and after an older logbook was brought up to date.
#include <algorithm>
#include <gtest/gtest.h>
#include <tuple>

#include "storage/open_book.hpp"
#include "tests/support/laptop.hpp"
#include "tests/support/satchel_tools.hpp"

namespace arc::storage {
namespace {

using test::FakeRandom;
using test::Laptop;

/// LIKE of SQLite without its signs: letters A to Z match in both cases.
bool holds(std::string text, std::string word) {
    const auto lower = [](std::string& s) {
        for (char& c : s)
            if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    };
    lower(text);
    lower(word);
    return text.find(word) != std::string::npos;
}

using Place = std::tuple<std::int64_t, std::uint64_t>;

/// By the plain look: every splice that shows.
std::vector<Place> plainAnswer(Logbook& book, const SpliceFilter& filter) {
    SpliceFilter rest = filter;
    rest.text.clear();
    std::vector<Place> places;
    const auto rows = book.splices(rest, PageOrder::OldestFirst, {}, 1'000'000).value();
    for (const SpliceRow& row : rows) {
        const Reading& r = row.reading;
        if (holds(r.fibreA, filter.text) || holds(r.fibreB, filter.text) || holds(r.note, filter.text) ||
            holds(row.arc.operatorName, filter.text))
            places.emplace_back(row.arc.at.ms, row.row);
    }
    return places;
}

std::vector<Place> foundInPages(Logbook& book, const SpliceFilter& filter, PageOrder order,
                                std::size_t size) {
    std::vector<Place> places;
    std::optional<PageKey> after;
    while (true) {
        const auto page = book.splices(filter, order, after, size).value();
        for (const auto& row : page) places.emplace_back(row.arc.at.ms, row.row);
        if (page.size() < size) return places;
        after = PageKey{page.back().arc.at.ms, page.back().row};
    }
}

const std::vector<std::string> names{"",    "1",   "12",   "A-12",  "a-120", "B 7",
                                     "50%", "5_0", "K\\3", "übrig", "Z"};
const std::vector<std::string> notes{"", "", "", "wind", "Wind, gusts", "100% sure", "12"};
const std::vector<std::string> people{"Ada", "Bo", "crew 12", ""};
const std::vector<std::string> asked{"1",  "12", "2\n", "a-1", "WIND", "%",   "_", "\\",     "ü",
                                     "da", "B ", "z",   "50%", "crew", "120", "q", "no such"};

template <class T>
const T& any(const std::vector<T>& list, FakeRandom& random) {
    return list[random.below(list.size())];
}

Reading anyReading(int channel, FakeRandom& random) {
    Reading reading;
    reading.channel = channel;
    reading.loss =
        Loss{static_cast<std::int32_t>(random.below(4) == 0 ? random.below(700) : random.below(100))};
    if (random.below(12) == 0) reading.state = ReadingState::Voided;
    reading.fibreA = any(names, random);
    reading.fibreB = random.below(2) == 0 ? reading.fibreA : any(names, random);
    reading.note = any(notes, random);
    return reading;
}

SpliceArc anyArc(const test::SmallKit& kit, ArcId id, FakeRandom& random) {
    // Few moments, so that several arcs share one.
    SpliceArc arc =
        test::arcOf(kit, id, 1'900'000'000'000 + static_cast<std::int64_t>(random.below(40)) * 60'000, 4);
    arc.operatorName = any(people, random);
    for (auto& reading : arc.readings) reading = anyReading(reading.channel, random);
    return arc;
}

void expectAnswer(Logbook& book, const SpliceFilter& filter, std::vector<Place> wanted) {
    EXPECT_EQ(foundInPages(book, filter, PageOrder::OldestFirst, 7), wanted);
    std::ranges::reverse(wanted);
    EXPECT_EQ(foundInPages(book, filter, PageOrder::NewestFirst, 1'000), wanted);
    EXPECT_EQ(foundInPages(book, filter, PageOrder::NewestFirst, 5), wanted);
}

/// What is seldom is found by marks: it must be what a look at every splice finds.
void expectPlainAnswersOfLosses(Logbook& book) {
    const auto all = book.splices({}, PageOrder::OldestFirst, {}, 1'000'000).value();
    const AcceptanceRule rule = book.jobs()->front().rule;
    for (const int above : {-1, 60, 99, 100, 101, 150, 249, 300, 499, 500, 650, 900}) {
        SpliceFilter filter;
        filter.lossAbove = Loss{above};
        std::vector<Place> wanted;
        for (const auto& row : all)
            if (row.reading.loss > Loss{above}) wanted.emplace_back(row.arc.at.ms, row.row);
        SCOPED_TRACE(above);
        expectAnswer(book, filter, wanted);
    }
    using Verdict = ReadingVerdict;
    for (const std::vector<Verdict>& verdicts : {std::vector{Verdict::Voided},
                                                 {Verdict::OverCeiling},
                                                 {Verdict::Kept, Verdict::Voided},
                                                 {Verdict::Accept},
                                                 {Verdict::AcceptHigh, Verdict::OverCeiling},
                                                 {Verdict::NoteMissing, Verdict::Resplice}}) {
        SpliceFilter filter;
        filter.verdicts = verdicts;
        std::vector<Place> wanted;
        for (const auto& row : all)
            if (std::ranges::find(verdicts, verdictOf(rule, row.reading)) != verdicts.end())
                wanted.emplace_back(row.arc.at.ms, row.row);
        SCOPED_TRACE(static_cast<int>(verdicts.front()));
        expectAnswer(book, filter, wanted);
    }
}

void expectPlainAnswers(Logbook& book) {
    expectPlainAnswersOfLosses(book);
    for (const std::string& word : asked)
        for (const bool narrowed : {false, true}) {
            SpliceFilter filter;
            filter.text = word;
            if (narrowed) {
                filter.fromMs = 1'900'000'000'000 + 5 * 60'000;
                filter.toMs = 1'900'000'000'000 + 30 * 60'000;
                filter.lossAbove = Loss{40};
            }
            SCOPED_TRACE("searching for \"" + word + "\"");
            expectAnswer(book, filter, plainAnswer(book, filter));
        }
}

TEST(MentionSearch, AnswersWhatAPlainLookAtEverySpliceAnswers) {
    for (std::uint64_t seed = 1; seed <= 3; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        FakeRandom random(seed);
        Laptop one(1), two(2);
        const auto kit = test::addKit(*one.open(), one.clock, one.random);
        ASSERT_TRUE(two.take(one.pack()));
        std::vector<ArcId> arcs;
        std::vector<std::filesystem::path> satchels;
        auto first = one.open(), second = two.open();
        for (int edit = 0; edit < 100; ++edit) {
            const bool atFirst = random.below(2) == 0;
            Laptop& who = atFirst ? one : two;
            Logbook& book = atFirst ? *first : *second;
            who.clock.at.ms += 1'000;
            std::vector<Entry> entries;
            const auto what = arcs.empty() ? 0 : random.below(10);
            if (what < 5) {
                arcs.push_back(makeId<ArcId>(who.clock, who.random));
                entries.push_back(anyArc(kit, arcs.back(), random));
            } else if (what < 6) {
                SpliceArc moved = anyArc(kit, any(arcs, random), random);
                if (random.below(2) == 0) moved.readings.clear();
                entries.push_back(moved);
            } else if (what < 8) {
                entries.push_back(ReadingChange{any(arcs, random),
                                                anyReading(1 + static_cast<int>(random.below(3)), random)});
            } else {
                entries.push_back(Withdrawal{any(arcs, random).uuid, "undone"});
            }
            // It may be on the other laptop only.
            static_cast<void>(book.append(entries, test::testContext));
            if (random.below(12) == 0) {
                first.reset();
                second.reset();
                satchels.push_back(who.pack());
                ASSERT_TRUE((atFirst ? two : one).take(any(satchels, random)));
                first = one.open();
                second = two.open();
            }
        }
        first.reset();
        second.reset();
        ASSERT_TRUE(one.take(two.pack()));
        one.expectSound();
        EXPECT_GT(one.open()->totals()->readings, 40u);
        expectPlainAnswers(*one.open());
    }
}

TEST(MentionSearch, AnOlderBookIsBroughtUpToDateAndFindsTheSame) {
    FakeRandom random(7);
    Laptop laptop(1);
    {
        auto book = laptop.open();
        const auto kit = test::addKit(*book, laptop.clock, laptop.random);
        for (int i = 0; i < 60; ++i) {
            const auto id = makeId<ArcId>(laptop.clock, laptop.random);
            const auto saved = book->append(anyArc(kit, id, random), test::testContext);
            ASSERT_TRUE(saved) << saved.error().sentence();
            if (i % 5 == 0) {
                ASSERT_TRUE(book->append(ReadingChange{id, anyReading(2, random)}, test::testContext));
            }
            if (i % 7 == 0) {
                ASSERT_TRUE(book->append(Withdrawal{id.uuid, "undone"}, test::testContext));
            }
        }
    }
    const auto head = laptop.head();
    test::rawSql(laptop.file(), test::backToSchema2);
    expectPlainAnswers(*laptop.open());
    laptop.expectSound();
    EXPECT_EQ(laptop.head(), head);
}

TEST(MentionSearch, AWordOfVeryManyNamesIsFoundAsWell) {
    Laptop laptop(1);
    auto book = laptop.open();
    const auto kit = test::addKit(*book, laptop.clock, laptop.random);
    std::vector<Entry> entries;
    for (int i = 0; i < 2'100; ++i) {
        SpliceArc arc =
            test::arcOf(kit, makeId<ArcId>(laptop.clock, laptop.random), 1'900'000'000'000 + i, 1);
        arc.readings[0].fibreA = "fibre " + std::to_string(i);
        entries.push_back(arc);
    }
    ASSERT_TRUE(book->append(entries, test::testContext));
    SpliceFilter filter;
    filter.text = "FIBRE";
    EXPECT_EQ(foundInPages(*book, filter, PageOrder::NewestFirst, 500).size(), 2'100u);
    filter.text = "fibre 2099";
    EXPECT_EQ(foundInPages(*book, filter, PageOrder::NewestFirst, 500).size(), 1u);
}

}  // namespace
}  // namespace arc::storage
