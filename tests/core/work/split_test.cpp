// SPDX-License-Identifier: GPL-3.0-or-later
// Attempt chains taken apart: whatever is moved where, no reading is lost or doubled, both chains stay in
// order, and what takes it back takes back all of it.
#include "core/work/split.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <rapidcheck/gtest.h>
#include <tuple>

#include "core/work/attempts.hpp"
#include "core/work/notes.hpp"

namespace arc {
namespace {

ArcId arcNumber(int number) {
    ArcId id;
    id.uuid.bytes[15] = static_cast<std::uint8_t>(number);
    return id;
}

ChainLink link(int arc, const std::string& fibre, int attempt, int loss, int channel = 1) {
    ChainLink made;
    made.arc = arcNumber(arc);
    made.at = Instant{arc * msPerMinute, 0};
    made.reading.fibreA = made.reading.fibreB = fibre;
    made.reading.attempt = attempt;
    made.reading.loss = Loss{loss};
    made.reading.channel = channel;
    return made;
}

/// What a book holds: the newest version of every groove.
using Book = std::map<std::pair<ArcId, int>, Reading>;

Book bookOf(std::initializer_list<const Chain*> chains) {
    Book book;
    for (const Chain* chain : chains)
        for (const auto& one : *chain) book[{one.arc, one.reading.channel}] = one.reading;
    return book;
}

void write(Book& book, const std::vector<ReadingChange>& changes) {
    for (const auto& change : changes) book[{change.arc, change.reading.channel}] = change.reading;
}

std::vector<Reading> good(const Book& book) {
    std::vector<Reading> readings;
    for (const auto& [key, reading] : book)
        if (reading.state == ReadingState::Good) readings.push_back(reading);
    return readings;
}

TEST(Split, theSecondAttemptOfFibreSevenWasFibreEight) {
    const Chain seven{link(1, "7", 1, 180), link(2, "7", 2, 40), link(3, "7", 3, 60)};
    const auto done = split(seven, 1, {}, {"8", "8", 1});
    ASSERT_TRUE(done);
    ASSERT_EQ(done->to.size(), 1u);
    EXPECT_EQ(done->to[0].reading.attempt, 1);
    EXPECT_EQ(done->to[0].reading.fibreA, "8");
    EXPECT_EQ(done->to[0].reading.loss, Loss{40});
    EXPECT_EQ(done->to[0].reading.note, "moved from fibre 7");
    ASSERT_EQ(done->from.size(), 2u);
    EXPECT_EQ(done->from[1].reading.attempt, 2) << "the third attempt is the second now";
    EXPECT_EQ(done->from[1].reading.loss, Loss{60});
    EXPECT_EQ(done->changes.size(), 2u) << "the first attempt was right and stays as it was written";
}

TEST(Split, itsTimePutsItBetweenTheAttemptsThatAreThere) {
    const Chain seven{link(2, "7", 1, 40)};
    const Chain eight{link(1, "8", 1, 200), link(3, "8", 2, 150)};
    const auto done = split(seven, 0, eight, {"8", "8", 1});
    ASSERT_TRUE(done);
    EXPECT_TRUE(done->from.empty());
    ASSERT_EQ(done->to.size(), 3u);
    EXPECT_EQ(done->to[1].arc, arcNumber(2));
    EXPECT_EQ(done->to[1].reading.attempt, 2);
    EXPECT_EQ(done->to[2].reading.attempt, 3);
}

TEST(Split, oneArcCannotSpliceAFibreTwice) {
    const Chain seven{link(1, "7", 1, 40, 7)};
    const Chain eight{link(1, "8", 1, 50, 8)};
    const auto done = split(seven, 0, eight, {"8", "8", 8});
    ASSERT_FALSE(done);
    EXPECT_NE(done.error().sentence().find("fibre 8"), std::string::npos);
    EXPECT_FALSE(split(seven, 1, {}, {"8", "8", 8}));
}

TEST(Split, inARibbonTheOldGrooveIsVoided) {
    const Chain seven{link(1, "7", 1, 40, 7)};
    const auto done = split(seven, 0, {}, {"8", "8", 8});
    ASSERT_TRUE(done);
    Book book = bookOf({&seven});
    write(book, done->changes);
    const auto now = good(book);
    ASSERT_EQ(now.size(), 1u);
    EXPECT_EQ(now[0].channel, 8);
    EXPECT_EQ(now[0].fibreA, "8");
    write(book, done->back);
    EXPECT_EQ(good(book), std::vector{seven[0].reading});
}

TEST(Split, whatTheProgramNotedDoesNotKeepAHighSplice) {
    EXPECT_TRUE(note::keeps("kept: no fibre left"));
    EXPECT_TRUE(note::keeps("agreed with the client"));
    for (const char* ours : {"", "moved from fibre 7", "corrected from 0.20 (kept: x)", "re-spliced: bubble",
                             "the clock stepped back"})
        EXPECT_FALSE(note::keeps(ours)) << ours;
}

Chain anyChain(const std::string& fibre, int& nextArc) {
    Chain chain;
    const int attempts = *rc::gen::inRange(0, 5);
    int number = 0;
    for (int i = 0; i < attempts; ++i) {
        number += *rc::gen::inRange(1, 3);  // a voided attempt leaves a gap
        chain.push_back(link(nextArc++, fibre, number, *rc::gen::inRange(0, 400)));
    }
    return chain;
}

/// Two chains; how their arcs lie between each other in time is left to chance.
std::pair<Chain, Chain> anyPair() {
    int arc = 1;
    Chain from = anyChain("7", arc), to = anyChain("8", arc);
    auto times = *rc::gen::container<std::vector<int>>(from.size() + to.size(), rc::gen::inRange(0, 1000));
    std::sort(times.begin(), times.end());
    std::vector<Instant> a, b;
    for (std::size_t i = 0; i < times.size(); ++i) {
        const bool first = a.size() < from.size() && (b.size() == to.size() || *rc::gen::arbitrary<bool>());
        (first ? a : b).push_back(Instant{times[i] * 1000 + static_cast<std::int64_t>(i), 0});
    }
    for (std::size_t i = 0; i < from.size(); ++i) from[i].at = a[i];
    for (std::size_t i = 0; i < to.size(); ++i) to[i].at = b[i];
    return {from, to};
}

RC_GTEST_PROP(SplitProperty, noReadingIsLostOrDoubledAndBothChainsStayInOrder, ()) {
    const auto [from, to] = anyPair();
    RC_PRE(!from.empty());
    const auto which = *rc::gen::inRange<std::size_t>(0, from.size());
    const auto done = split(from, which, to, {"8", "8", 1});
    RC_ASSERT(done.has_value());
    RC_ASSERT(done->from.size() + 1 == from.size());
    RC_ASSERT(done->to.size() == to.size() + 1);
    const auto inOrder = [](const Chain& chain, const std::string& fibre) {
        for (std::size_t i = 0; i < chain.size(); ++i) {
            if (chain[i].reading.fibreA != fibre || chain[i].reading.attempt < 1) return false;
            if (i > 0 && !(chain[i - 1].reading.attempt < chain[i].reading.attempt)) return false;
            if (i > 0 && chain[i].at < chain[i - 1].at) return false;
        }
        return true;
    };
    RC_ASSERT(inOrder(done->from, "7"));
    RC_ASSERT(inOrder(done->to, "8"));
    const auto what = [](std::initializer_list<const Chain*> chains) {
        std::vector<std::tuple<ArcId, std::int64_t, int>> all;
        for (const auto* chain : chains)
            for (const auto& one : *chain) all.emplace_back(one.arc, one.at.ms, one.reading.loss.value);
        std::sort(all.begin(), all.end());
        return all;
    };
    RC_ASSERT(what({&from, &to}) == what({&done->from, &done->to}));

    Book book = bookOf({&from, &to});
    const Book before = book;
    write(book, done->changes);
    RC_ASSERT(book == bookOf({&done->from, &done->to}));
    write(book, done->back);
    RC_ASSERT(book == before);
}

RC_GTEST_PROP(SplitProperty, movedThereAndBackLeavesTheChainsAsTheyWere, ()) {
    auto [from, to] = anyPair();
    RC_PRE(!from.empty());
    const auto number = [](Chain& chain) {
        for (std::size_t i = 0; i < chain.size(); ++i) chain[i].reading.attempt = static_cast<int>(i) + 1;
    };
    number(from);
    number(to);
    const auto which = *rc::gen::inRange<std::size_t>(0, from.size());
    const auto there = split(from, which, to, {"8", "8", 1});
    RC_ASSERT(there.has_value());
    const auto place = std::ranges::find(there->to, from[which].arc, &ChainLink::arc) - there->to.begin();
    const auto back = split(there->to, static_cast<std::size_t>(place), there->from, {"7", "7", 1});
    RC_ASSERT(back.has_value());
    Chain home = back->to;
    for (auto& one : home) one.reading.note.clear();
    RC_ASSERT(home == from);
    RC_ASSERT(back->from == to);
}

RC_GTEST_PROP(SplitProperty, theChainsOfTheBookAreTheOnesItAnswers, ()) {
    const auto [from, to] = anyPair();
    RC_PRE(!from.empty());
    const auto which = *rc::gen::inRange<std::size_t>(0, from.size());
    const auto done = split(from, which, to, {"8", "8", 1});
    RC_ASSERT(done.has_value());
    std::vector<SpliceRow> rows;
    for (const auto* chain : {&done->from, &done->to})
        for (const auto& one : *chain) {
            SpliceRow row;
            row.arc.id = one.arc;
            row.arc.at = one.at;
            row.reading = one.reading;
            row.row = rows.size() + 1;
            rows.push_back(row);
        }
    for (const auto& chain : attemptChains(rows)) {
        const Chain& expected = chain.fibreA == "7" ? done->from : done->to;
        RC_ASSERT(chain.readings.size() == expected.size());
        for (std::size_t i = 0; i < expected.size(); ++i)
            RC_ASSERT(rows[chain.readings[i]].arc.id == expected[i].arc);
    }
}

}  // namespace
}  // namespace arc
