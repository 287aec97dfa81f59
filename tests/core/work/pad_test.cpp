// SPDX-License-Identifier: GPL-3.0-or-later
// The entry pad against the way a crew works. Keys are counted as a person presses them: every character and
// every Enter is one. The bounds: 4 keys a fibre, 30 keys a ribbon of twelve.
#include "core/work/pad.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace arc::pad {
namespace {

using namespace arc::literals;

class StepClock final : public Clock {
  public:
    Instant now() override { return Instant{now_ += 1000, 60}; }

  private:
    std::int64_t now_ = 1'900'000'000'000;
};

class CountingRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override {
        for (std::size_t i = 0; i < count; ++i)
            bytes[i] = static_cast<std::uint8_t>(state_ = state_ * 73 + 41);
    }

  private:
    std::uint32_t state_ = 7;
};

/// A person at a pad; what a book would hold beside it.
struct Sitting {
    StepClock clock;
    CountingRandom random;
    Pad pad;
    std::vector<SpliceArc> book;
    int keys = 0;

    explicit Sitting(int fibresPerArc, int fibres = 24)
        : pad(setUp(fibresPerArc, clock, random), plan(fibres), {}) {}

    static SetUp setUp(int fibresPerArc, Clock& clock, Random& random) {
        SetUp s;
        s.splicer = makeId<ToolId>(clock, random);
        s.fibresPerArc = fibresPerArc;
        s.mode = "G.652-G.652";
        s.rule.perSplice = 150_mdb;
        s.rule.average = 100_mdb;
        s.rule.ceiling = 300_mdb;
        s.rule.attempts = 3;
        return s;
    }
    static std::vector<Fibre> plan(int fibres) {
        std::vector<Fibre> list;
        for (int n = 1; n <= fibres; ++n)
            list.push_back(
                {n, (n - 1) % 12 + 1, std::to_string(n), std::to_string(n), {FibreColour::Blue, 0}});
        return list;
    }
    void apply(const std::vector<Entry>& entries) {
        for (const auto& entry : entries) {
            if (const auto* arc = std::get_if<SpliceArc>(&entry)) book.push_back(*arc);
            if (const auto* w = std::get_if<Withdrawal>(&entry))
                std::erase_if(book, [&](const SpliceArc& a) { return a.id.uuid == w->of; });
            if (const auto* change = std::get_if<ReadingChange>(&entry))
                for (auto& arc : book)
                    if (arc.id == change->arc) {
                        std::erase_if(arc.readings,
                                      [&](const Reading& r) { return r.channel == change->reading.channel; });
                        arc.readings.push_back(change->reading);
                    }
        }
    }
    void type(std::string_view text) {
        for (const char c : text) {
            ++keys;
            if (c == ' ')
                ASSERT_TRUE(pad.note());
            else
                pad.type(c);
        }
    }
    Write enter() {
        ++keys;
        auto write = pad.enter(clock, random);
        EXPECT_TRUE(write) << write.error().sentence();
        if (!write) return {};
        for (const auto& entry : write->entries)
            EXPECT_TRUE(validate(entry)) << validate(entry).error().sentence();
        apply(write->entries);
        pad.written(*write);
        return *write;
    }
    void loss(std::string_view text) {
        type(text);
        enter();
    }
};

std::string at(const Pad& pad) {
    return pad.rows()[pad.current()].fibre.nameA;
}

TEST(Pad, TheFirstFibreWaitsWhenNothingIsDone) {
    Sitting s(1);
    EXPECT_EQ(at(s.pad), "1");
    EXPECT_EQ(s.pad.done(), 0u);
    EXPECT_EQ(s.pad.standing(0), Standing::Waiting);
}

TEST(Pad, OneFibreTakesAtMostFourKeys) {
    for (const auto* text : {"4", "12", "0", ",04"}) {
        Sitting s(1);
        s.loss(text);
        EXPECT_LE(s.keys, 4) << text;
        EXPECT_EQ(s.book.size(), 1u);
        EXPECT_EQ(at(s.pad), "2");
    }
}

TEST(Pad, ARibbonOfTwelveTakesAtMostThirtyKeys) {
    const std::vector<std::string> losses{"3", "4", "2", "5", "11", "3", "4", "6", "12", "2", "0", "10"};
    Sitting one(12);
    for (const auto& text : losses) one.loss(text);
    EXPECT_LE(one.keys, 30);
    ASSERT_EQ(one.book.size(), 1u);
    EXPECT_EQ(one.book[0].readings.size(), 12u);
    EXPECT_EQ(one.book[0].channels, 12);
    EXPECT_EQ(at(one.pad), "13");

    Sitting whole(12);
    std::string line;
    for (const auto& text : losses) line += (line.empty() ? "" : " ") + text;
    whole.loss(line);
    EXPECT_LE(whole.keys, 30);
    ASSERT_EQ(whole.book.size(), 1u);
    EXPECT_EQ(whole.book[0].readings.size(), 12u);
    for (std::size_t i = 0; i < 12; ++i)
        EXPECT_EQ(whole.book[0].readings[i].loss, readTyped(losses[i]).loss) << i;
}

TEST(Pad, EveryReadingOfARibbonIsWrittenWhenItIsEntered) {
    Sitting s(12);
    s.type("3");
    auto first = s.enter();
    ASSERT_EQ(first.entries.size(), 1u);
    EXPECT_TRUE(std::holds_alternative<SpliceArc>(first.entries[0]));
    s.type("4");
    auto second = s.enter();
    ASSERT_EQ(second.entries.size(), 1u);
    ASSERT_TRUE(std::holds_alternative<ReadingChange>(second.entries[0]));
    EXPECT_EQ(std::get<ReadingChange>(second.entries[0]).arc, s.book[0].id);
    EXPECT_EQ(std::get<ReadingChange>(second.entries[0]).reading.channel, 2);
}

TEST(Pad, AHighSingleSpliceIsAskedForAgainAndChained) {
    Sitting s(1);
    s.loss("4");
    s.loss("22");
    EXPECT_EQ(at(s.pad), "2");
    EXPECT_EQ(s.pad.standing(1), Standing::TooHigh);
    EXPECT_EQ(s.pad.preview().attempt, 2);
    s.type("6");
    EXPECT_EQ(s.pad.preview().verdict, Verdict::Accept);
    s.enter();
    EXPECT_EQ(at(s.pad), "3");
    ASSERT_EQ(s.pad.rows()[1].attempts.size(), 2u);
    EXPECT_EQ(s.book.back().readings[0].attempt, 2);
    EXPECT_EQ(s.book.back().readings[0].note, "");
}

TEST(Pad, AHighFibreInARibbonAsksForTheWholeRibbonAgain) {
    Sitting s(12);
    for (int i = 0; i < 12; ++i) s.loss(i == 4 ? "31" : "3");
    EXPECT_EQ(at(s.pad), "1");
    EXPECT_EQ(s.pad.preview().attempt, 2);
    EXPECT_EQ(s.pad.standing(4), Standing::OverCeiling);
    for (int i = 0; i < 12; ++i) s.loss("4");
    ASSERT_EQ(s.book.size(), 2u);
    EXPECT_EQ(s.book[1].readings.size(), 12u);
    EXPECT_EQ(s.book[1].readings[4].attempt, 2);
    EXPECT_EQ(at(s.pad), "13");
}

TEST(Pad, TheThirdHighSpliceIsKeptOnlyWithANote) {
    Sitting s(1);
    s.loss("22");
    auto early = s.pad.keep("sleeve is on");
    ASSERT_FALSE(early);
    EXPECT_NE(early.error().sentence().find("3 attempts"), std::string::npos);
    s.loss("21");
    s.loss("20");
    EXPECT_EQ(s.pad.standing(0), Standing::TooHigh);
    EXPECT_FALSE(s.pad.keep(""));
    auto kept = s.pad.keep("old fibre, same all day");
    ASSERT_TRUE(kept);
    s.apply(kept->entries);
    s.pad.written(*kept);
    EXPECT_EQ(s.pad.standing(0), Standing::Kept);
    EXPECT_EQ(at(s.pad), "2");
    EXPECT_TRUE(s.book.back().readings[0].note.starts_with("kept: old fibre"));
}

TEST(Pad, ANoteTypedWithTheLastAttemptIsInItsFirstVersion) {
    Sitting s(1);
    s.loss("22");
    s.loss("21");
    s.type("20");
    const auto write = s.pad.enterKept("no fibre left", s.clock, s.random);
    ASSERT_TRUE(write);
    ASSERT_EQ(write->entries.size(), 1u);
    EXPECT_EQ(std::get<SpliceArc>(write->entries[0]).readings[0].note, "kept: no fibre left");
    s.pad.written(*write);
    EXPECT_EQ(s.pad.standing(0), Standing::Kept);
    Sitting early(1);
    early.type("22");
    EXPECT_FALSE(early.pad.enterKept("tired", early.clock, early.random));
}

TEST(Pad, OverTheCeilingIsNeverKept) {
    Sitting s(1);
    for (int i = 0; i < 3; ++i) s.loss("40");
    const auto kept = s.pad.keep("tired");
    ASSERT_FALSE(kept);
    EXPECT_NE(kept.error().sentence().find("ceiling"), std::string::npos);
}

TEST(Pad, ASettledFibreIsCorrectedNotSplicedAgain) {
    Sitting s(1);
    s.loss("4");
    ASSERT_TRUE(s.pad.moveTo(0));
    EXPECT_EQ(s.pad.typing(), Typing::Correction);
    s.loss("5");
    ASSERT_EQ(s.book.size(), 1u);
    EXPECT_EQ(s.book[0].readings[0].loss, 50_mdb);
    EXPECT_EQ(s.book[0].readings[0].attempt, 1);
    EXPECT_EQ(s.book[0].readings[0].note, "corrected from 0.04");
    EXPECT_EQ(at(s.pad), "2");

    ASSERT_TRUE(s.pad.moveTo(0));
    s.pad.askResplice("bubble");
    EXPECT_EQ(s.pad.typing(), Typing::NextAttempt);
    s.loss("3");
    EXPECT_EQ(s.book.size(), 2u);
    EXPECT_EQ(s.book[1].readings[0].attempt, 2);
    EXPECT_EQ(s.book[1].readings[0].note, "re-spliced: bubble");
}

TEST(Pad, AReasonAloneIsNotANoteForKeeping) {
    Sitting s(1);
    for (const auto* reason : {"", "bubble", "bubble"}) {
        if (*reason) s.pad.askResplice(reason);
        s.loss("20");
    }
    EXPECT_EQ(s.pad.standing(0), Standing::TooHigh);
    EXPECT_EQ(s.book.back().readings[0].attempt, 3);
    EXPECT_EQ(s.book.back().readings[0].note, "re-spliced: bubble");
    ASSERT_TRUE(s.pad.keep("no fibre left"));
}

TEST(Pad, AnAttemptOfTheWrongFibreIsTakenOutOfItsChain) {
    Sitting s(1);
    s.loss("22");
    s.loss("4");  // was made at fibre 2
    ASSERT_TRUE(s.pad.moveTo(0));
    EXPECT_EQ(s.pad.splitOffer(), 2);
    EXPECT_FALSE(s.pad.split(3, 2));
    EXPECT_FALSE(s.pad.split(2, 1));
    EXPECT_FALSE(s.pad.split(2, 99));
    const auto write = s.pad.split(2, 2);
    ASSERT_TRUE(write) << write.error().sentence();
    EXPECT_EQ(write->text, "Split: attempt 2 of fibre 1 belongs to fibre 2");
    s.apply(write->entries);
    s.pad.written(*write);
    EXPECT_EQ(s.pad.standing(0), Standing::TooHigh);
    EXPECT_EQ(s.pad.standing(1), Standing::Accepted);
    EXPECT_EQ(at(s.pad), "1") << "its re-splice is still to be made";
    EXPECT_EQ(s.pad.preview().attempt, 2);
}

TEST(Pad, InARibbonAReadingGoesToItsGrooveOrTheWholeArcToItsRibbon) {
    Sitting s(12);
    for (int i = 0; i < 3; ++i) s.loss("3");
    ASSERT_TRUE(s.pad.moveTo(2));
    EXPECT_FALSE(s.pad.split(1, 2)) << "fibre 2 has a reading of this arc";
    auto write = s.pad.split(1, 4);
    ASSERT_TRUE(write);
    s.apply(write->entries);
    s.pad.written(*write);
    EXPECT_EQ(s.pad.standing(2), Standing::Waiting);
    EXPECT_EQ(s.pad.rows()[3].attempts.at(0).reading.channel, 4);
    EXPECT_EQ(at(s.pad), "3");

    ASSERT_TRUE(s.pad.moveTo(0));
    write = s.pad.split(1, 13);
    ASSERT_TRUE(write);
    s.apply(write->entries);
    s.pad.written(*write);
    for (const std::size_t r : {0u, 1u, 2u, 3u}) EXPECT_EQ(s.pad.standing(r), Standing::Waiting) << r;
    for (const std::size_t r : {12u, 13u, 15u}) EXPECT_EQ(s.pad.standing(r), Standing::Accepted) << r;
    Pad fresh(s.pad.setUp(), Sitting::plan(24), s.book);
    for (std::size_t r = 0; r < 24; ++r) EXPECT_EQ(fresh.standing(r), s.pad.standing(r)) << r;
}

TEST(Pad, AClockThatStepsBackIsAllowedAndMarked) {
    Sitting s(1);
    s.loss("4");
    StepClock early;
    s.pad.type('5');
    const auto write = s.pad.enter(early, s.random);
    ASSERT_TRUE(write);
    const auto& arc = std::get<SpliceArc>(write->entries[0]);
    EXPECT_LT(arc.at, s.book[0].at);
    EXPECT_EQ(arc.readings[0].note, "the clock stepped back");
}

TEST(Pad, AVoidedFibreWaitsAgain) {
    Sitting s(1);
    s.loss("4");
    ASSERT_TRUE(s.pad.moveTo(0));
    const auto write = s.pad.voidReading("fibre broke in the tray");
    ASSERT_TRUE(write);
    s.pad.written(*write);
    EXPECT_EQ(s.pad.standing(0), Standing::Waiting);
    EXPECT_FALSE(s.pad.voidReading("again"));
}

TEST(Pad, WhatIsTypedIsNotLostByMovingOrByAFailedSave) {
    Sitting s(1);
    s.type("4");
    EXPECT_FALSE(s.pad.moveTo(5));
    const auto first = s.pad.enter(s.clock, s.random);
    ASSERT_TRUE(first);
    EXPECT_EQ(s.pad.typed(), "4");  // no receipt yet
    const auto again = s.pad.enter(s.clock, s.random);
    ASSERT_TRUE(again);
    EXPECT_EQ(std::get<SpliceArc>(first->entries[0]), std::get<SpliceArc>(again->entries[0]));
}

TEST(Pad, AnUnusualLossIsAskedForTwice) {
    Sitting s(1);
    s.type("125");
    EXPECT_FALSE(s.pad.enter(s.clock, s.random));
    EXPECT_TRUE(s.pad.enter(s.clock, s.random));
    Sitting never(1);
    never.type("-4");
    EXPECT_FALSE(never.pad.enter(never.clock, never.random));
    EXPECT_FALSE(never.pad.enter(never.clock, never.random));
}

TEST(Pad, TheAverageSoFarIsJudgedWhileTyping) {
    Sitting s(1);
    s.type("8");
    EXPECT_EQ(s.pad.preview().average, AverageNow::Within);
    s.enter();
    s.type("14");
    EXPECT_NEAR(s.pad.preview().averageDb, 0.11, 1e-12);
    EXPECT_EQ(s.pad.preview().average, AverageNow::Over);
    EXPECT_EQ(s.pad.preview().verdict, Verdict::AcceptHigh);
}

TEST(Pad, TypedButUnsavedInputComesBackAfterACrash) {
    Sitting s(12);
    s.type("3 4 125");
    EXPECT_FALSE(s.pad.note());
    ASSERT_TRUE(s.pad.note());
    s.type("0,0");
    Sitting after(12);
    after.pad.restore(s.pad.typed(), s.pad.noted());
    EXPECT_EQ(after.pad.noted(), s.pad.noted());
    EXPECT_EQ(after.pad.typed(), "0,0");
    EXPECT_EQ(after.pad.current(), s.pad.current());
}

TEST(Pad, APastedRibbonIsTakenWholeOrNotAtAll) {
    Sitting s(12);
    EXPECT_FALSE(s.pad.paste("1 2 3 4 5 6 7 8 9 10 11 12 13"));
    EXPECT_TRUE(s.pad.noted().empty());
    ASSERT_TRUE(s.pad.paste("1 2 3 4 5 6 7 8 9 10 11 12"));
    s.enter();
    ASSERT_EQ(s.book.size(), 1u);
    EXPECT_EQ(s.book[0].readings.size(), 12u);
    EXPECT_EQ(s.book[0].readings[11].loss, 120_mdb);
}

TEST(Pad, ReadsTheBookBackAndGoesOnInTheSameArc) {
    Sitting s(12);
    for (int i = 0; i < 5; ++i) s.loss("3");
    Pad after(s.pad.setUp(), Sitting::plan(24), s.book);
    EXPECT_EQ(at(after), "6");
    after.type('4');
    const auto write = after.enter(s.clock, s.random);
    ASSERT_TRUE(write);
    ASSERT_TRUE(std::holds_alternative<ReadingChange>(write->entries[0]));
    EXPECT_EQ(std::get<ReadingChange>(write->entries[0]).arc, s.book[0].id);
}

/// Whatever is done: taking it back leaves the book as it was, and the pad shows what the book holds.
RC_GTEST_PROP(PadProperty, TheOppositeOfEveryWriteRestoresTheBook, ()) {
    Sitting s(*rc::gen::element(1, 12));
    const auto acts = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 75));
    for (const int act : acts) {
        std::optional<Write> write;
        if (act < 45) {
            for (const char c : std::to_string(act)) s.pad.type(c);
            if (auto w = s.pad.enter(s.clock, s.random)) write = *w;
        } else if (act < 50) {
            if (auto w = s.pad.keep("note")) write = *w;
        } else if (act < 53) {
            if (auto w = s.pad.voidReading("broke")) write = *w;
        } else if (act < 65) {
            (void)s.pad.moveTo(static_cast<std::size_t>(act - 53));
        } else if (auto w = s.pad.split(act % 2 + 1, act - 63)) {
            write = *w;
        }
        if (!write) continue;
        const auto good = [&] {
            std::vector<std::pair<std::string, int>> readings;
            for (const auto& arc : s.book)
                for (const auto& r : arc.readings)
                    if (r.state == ReadingState::Good) readings.emplace_back(r.fibreA, r.loss.value);
            std::sort(readings.begin(), readings.end());
            return readings;
        };
        const auto before = good();
        s.apply(write->entries);
        const auto after = good();
        s.apply(write->opposite);
        RC_ASSERT(good() == before);
        s.apply(write->entries);
        RC_ASSERT(good() == after);
        s.pad.written(*write);
        Pad fresh(s.pad.setUp(), Sitting::plan(24), s.book);
        for (std::size_t r = 0; r < 24; ++r) RC_ASSERT(fresh.standing(r) == s.pad.standing(r));
    }
}

}  // namespace
}  // namespace arc::pad
