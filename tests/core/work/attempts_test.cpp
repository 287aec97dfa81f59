// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/attempts.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <set>

#include "core/work/completeness.hpp"

namespace arc {
namespace {

SpliceRow row(int minute, std::string fibre, int loss, int attempt = 1,
              ReadingState state = ReadingState::Good, std::string note = {}) {
    SpliceRow r;
    r.arc.at = Instant{minute * msPerMinute, 0};
    r.reading.fibreA = r.reading.fibreB = std::move(fibre);
    r.reading.loss = Loss{loss};
    r.reading.attempt = attempt;
    r.reading.state = state;
    r.reading.note = std::move(note);
    r.row = static_cast<std::uint64_t>(minute) + 1;
    return r;
}

TEST(Attempts, readingsOfOneFibrePairAreOneChain) {
    const std::vector<SpliceRow> rows{row(0, "7", 180), row(1, "8", 20), row(2, "7", 120, 2),
                                      row(3, "7", 140, 3)};
    const auto chains = attemptChains(rows);
    ASSERT_EQ(chains.size(), 2u);
    EXPECT_EQ(chains[0].readings, (std::vector<std::size_t>{0, 2, 3}));
    EXPECT_EQ(chains[0].standing, 3u);
    EXPECT_EQ(chains[0].best, 2u);
    EXPECT_EQ(chains[0].attempts, 3);
    EXPECT_EQ(chains[1].readings, (std::vector<std::size_t>{1}));
}

TEST(Attempts, aVoidedReadingNeitherStandsNorCounts) {
    const std::vector<SpliceRow> rows{row(0, "7", 40), row(1, "7", 10, 2, ReadingState::Voided)};
    const auto chains = attemptChains(rows);
    EXPECT_EQ(chains[0].standing, 0u);
    EXPECT_EQ(chains[0].best, 0u);
    EXPECT_EQ(chains[0].attempts, 1);
    EXPECT_EQ(chains[0].readings.size(), 2u);
}

TEST(Attempts, withoutNamesTheAttemptNumberTellsThemApart) {
    const std::vector<SpliceRow> rows{row(0, "", 180), row(1, "", 30, 2), row(2, "", 20), row(3, "", 25)};
    const auto chains = attemptChains(rows);
    ASSERT_EQ(chains.size(), 3u);
    EXPECT_EQ(chains[0].readings, (std::vector<std::size_t>{0, 1}));
}

TEST(Attempts, theSameFibreNumberInAnotherClosureIsAnotherChain) {
    std::vector<SpliceRow> rows{row(0, "7", 20), row(1, "7", 20)};
    ClosureId other;
    other.uuid.bytes[0] = 1;
    rows[1].arc.closure = other;
    EXPECT_EQ(attemptChains(rows).size(), 2u);
}

TEST(Attempts, endingsFollowTheRule) {
    const AcceptanceRule rule;
    const auto ending = [&](std::vector<SpliceRow> rows) {
        const auto chains = attemptChains(rows);
        return outcome(chains.at(0), rows, rule);
    };
    EXPECT_EQ(ending({row(0, "7", 100)}), Outcome::Accepted);
    EXPECT_EQ(ending({row(0, "7", 110)}), Outcome::Resplice);
    EXPECT_EQ(ending({row(0, "7", 110), row(1, "7", 130, 2), row(2, "7", 120, 3)}), Outcome::NoteMissing);
    EXPECT_EQ(
        ending({row(0, "7", 110), row(1, "7", 130, 2), row(2, "7", 120, 3, ReadingState::Good, "kept")}),
        Outcome::KeptWithNote);
    // A log that numbers no attempts: three readings of one pair are three attempts.
    EXPECT_EQ(ending({row(0, "7", 110), row(1, "7", 130), row(2, "7", 120)}), Outcome::NoteMissing);
    EXPECT_EQ(ending({row(0, "7", 310, 3)}), Outcome::OverCeiling);
    EXPECT_EQ(ending({row(0, "7", 40, 1, ReadingState::Voided)}), Outcome::Voided);
}

RC_GTEST_PROP(AttemptsProperty, everyReadingIsInExactlyOneChainWhateverTheOrder, ()) {
    std::vector<SpliceRow> rows;
    const auto count = *rc::gen::inRange(0, 40);
    for (int i = 0; i < count; ++i)
        rows.push_back(row(i, std::to_string(*rc::gen::inRange(1, 6)), *rc::gen::inRange(0, 300),
                           *rc::gen::inRange(1, 4),
                           *rc::gen::elementOf(std::vector{ReadingState::Good, ReadingState::Voided})));
    const auto chains = attemptChains(rows);
    std::set<std::size_t> seen;
    for (const auto& chain : chains)
        for (const auto index : chain.readings) RC_ASSERT(seen.insert(index).second);
    RC_ASSERT(seen.size() == rows.size());

    std::vector<SpliceRow> backwards(rows.rbegin(), rows.rend());
    const auto again = attemptChains(backwards);
    RC_ASSERT(again.size() == chains.size());
    for (std::size_t i = 0; i < chains.size(); ++i) {
        RC_ASSERT(chains[i].fibreA == again[i].fibreA);
        RC_ASSERT(chains[i].standing.has_value() == again[i].standing.has_value());
        if (chains[i].standing) RC_ASSERT(rows[*chains[i].standing].row == backwards[*again[i].standing].row);
    }
}

TEST(Completeness, saysWhatIsMissingOpenAndNotPlanned) {
    Closure closure;
    closure.plan = {{1, 1}, {2, 2}, {3, 3}, {4, 4}};
    std::vector<SpliceRow> rows{row(0, "1", 20), row(1, "2", 180), row(2, "4", 20, 1, ReadingState::Voided),
                                row(3, "9", 20)};
    rows.push_back(row(4, "3", 30));
    rows.back().reading.fibreB = "4";  // crossed
    const auto answer = completeness(closure, rows, AcceptanceRule{});
    EXPECT_EQ(answer.planned, 4);
    EXPECT_EQ(answer.spliced, 2);
    EXPECT_EQ(answer.accepted, 1);
    EXPECT_EQ(answer.missing, (std::vector<PlannedSplice>{{3, 3}, {4, 4}}));
    EXPECT_EQ(answer.open, (std::vector<PlannedSplice>{{2, 2}}));
    EXPECT_EQ(answer.unplanned, (std::vector<UnplannedSplice>{{"9", "9"}, {"3", "4"}}));
}

TEST(Completeness, oneNamedSideIsEnough) {
    Closure closure;
    closure.plan = {{1, 25}};
    std::vector<SpliceRow> rows{row(0, "25", 20)};
    rows[0].reading.fibreA.clear();
    EXPECT_EQ(completeness(closure, rows, AcceptanceRule{}).accepted, 1);
}

}  // namespace
}  // namespace arc
