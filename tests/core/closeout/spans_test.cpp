// SPDX-License-Identifier: GPL-3.0-or-later
// Link budgets and averages by span, worked out by hand. Coefficients: 0.4 dB/km at 1310 nm and 0.3 dB/km at
// 1550 nm, 0.15 dB a splice, 0.5 dB a connector (an installers' association's loss-budget page; common
// practice). 20 km, 5 splices and 2 connections are 8 + 0.75 + 1 = 9.75 dB at 1310 nm.
#include "core/closeout/spans.hpp"

#include <gtest/gtest.h>

#include "core/closeout/build.hpp"
#include "tests/support/closeout_job.hpp"

namespace arc::closeout {
namespace {

using test::at;
using test::idOf;

/// Fibre 1 through five closures HR-1 to HR-5: estimates of 0.02, 0.03, 0.04, 0.05 and 0.06 dB.
test::MemoryLogbook line() {
    auto book = test::smallJob();
    book.arcList.clear();
    book.closureList.clear();
    book.jobList[0].rule.perSplice = Loss{150};
    book.jobList[0].rule.average = Loss{50};
    for (int n = 1; n <= 5; ++n) {
        Closure closure;
        closure.id = idOf<ClosureId>(n);
        closure.job = idOf<JobId>(1);
        closure.label = "HR-" + std::to_string(n);
        closure.plan = {{1, 1}};
        book.closureList.push_back(closure);
        auto arc = test::arcWith(n, "2031-03-03T08:00:00+01:00", "1", Loss{10 + 10 * n}, 1);
        arc.at.ms += n * 60'000;
        arc.closure = closure.id;
        book.arcList.push_back(arc);
    }
    return book;
}

/// HR-2 from both ends at 1310 nm, -0.1 and +0.3: 0.1 dB. HR-3 from one end only.
void measure(test::MemoryLogbook& book) {
    MeasuredLoss loss;
    loss.id = idOf<EntryId>(1);
    loss.job = idOf<JobId>(1);
    loss.closure = idOf<ClosureId>(2);
    loss.fibre = "1";
    loss.wavelengthNm = 1310;
    loss.aToB = Loss{-100};
    loss.bToA = Loss{300};
    loss.at = at("2031-03-05T10:00:00Z");
    book.measuredList.push_back(loss);
    loss.id = idOf<EntryId>(2);
    loss.closure = idOf<ClosureId>(3);
    loss.aToB = Loss{900};
    loss.bToA.reset();
    book.measuredList.push_back(loss);
}

Span span(int number, const char* label, SpanEnd from, SpanEnd to, double km, std::vector<int> closures) {
    Span made{idOf<SpanId>(number), idOf<JobId>(1), label, std::move(from), std::move(to), {}, km, {}};
    for (const int n : closures) made.closures.push_back(idOf<ClosureId>(n));
    return made;
}

Record built(test::MemoryLogbook& book) {
    BuildSettings settings;
    settings.madeAt = at("2031-03-06T17:00:00+01:00");
    NoProgress quiet;
    auto record = build(book, idOf<JobId>(1), settings, quiet);
    EXPECT_TRUE(record) << (record ? "" : record.error().sentence());
    return record.value_or(Record{});
}

TEST(SpanBudget, AddsUpMeasuredWhereMeasuredElseEstimated) {
    auto book = line();
    measure(book);
    book.spanList.push_back(span(1, "North", {{}, "rack 1"}, {{}, "rack 2"}, 20, {1, 2, 3, 4, 5}));
    const Record record = built(book);
    ASSERT_EQ(record.spans.size(), 1u);
    const SpanSection& north = record.spans[0];
    EXPECT_EQ(north.kind, SpanKind::Named);
    EXPECT_EQ(north.from, "rack 1");
    ASSERT_EQ(north.budgets.size(), 2u);
    const LinkBudget& at1310 = north.budgets[0];
    EXPECT_EQ(at1310.wavelengthNm, 1310);
    EXPECT_NEAR(at1310.allowedDb, 9.75, 1e-12);
    // 8 + (0.02 + 0.1 + 0.04 + 0.05 + 0.06) + 1; the one-way 0.9 of HR-3 does not count.
    EXPECT_NEAR(at1310.asSplicedDb, 9.27, 1e-12);
    EXPECT_EQ(at1310.measured, 1u);
    EXPECT_EQ(at1310.estimated, 4u);
    const LinkBudget& at1550 = north.budgets[1];
    // 6 + 0.75 + 1 and 6 + 0.2 + 1: nothing was measured at 1550 nm.
    EXPECT_NEAR(at1550.allowedDb, 7.75, 1e-12);
    EXPECT_NEAR(at1550.asSplicedDb, 7.2, 1e-12);
    EXPECT_EQ(at1550.measured, 0u);
    EXPECT_EQ(at1550.estimated, 5u);
}

TEST(SpanBudget, TwoSpansAddUpToTheLinkAndAConnectorSitsOnlyAtANamedEnd) {
    auto book = line();
    const SpanEnd middle{idOf<ClosureId>(3), {}};
    book.spanList.push_back(span(2, "East", middle, {{}, "rack 2"}, 8, {4, 5}));
    book.spanList.push_back(span(1, "West", {{}, "rack 1"}, middle, 12, {1, 2, 3}));
    const Record record = built(book);
    ASSERT_EQ(record.spans.size(), 2u);
    // 3.2 + 0.3 + 0.5 and 4.8 + 0.45 + 0.5.
    EXPECT_NEAR(record.spans[0].budgets[0].allowedDb, 4.0, 1e-12);
    EXPECT_NEAR(record.spans[1].budgets[0].allowedDb, 5.75, 1e-12);
    // 3.2 + 0.11 + 0.5 and 4.8 + 0.09 + 0.5.
    EXPECT_NEAR(record.spans[0].budgets[0].asSplicedDb, 3.81, 1e-12);
    EXPECT_NEAR(record.spans[1].budgets[0].asSplicedDb, 5.39, 1e-12);
    EXPECT_EQ(record.spans[1].to, "HR-3");
}

TEST(SpanAverage, IsOverTheSplicesOfTheSpan) {
    auto book = line();
    const auto overs = [&] {
        std::vector<std::string> keys;
        for (const Exception& exception : built(book).exceptions)
            if (exception.kind == ExceptionKind::AverageOver) keys.push_back(exception.key);
        return keys;
    };
    // All five: 0.04 dB, 0.05 agreed.
    EXPECT_TRUE(overs().empty());
    book.spanList.push_back(span(1, "West", {{}, "rack 1"}, {idOf<ClosureId>(3), {}}, 12, {1, 2, 3}));
    book.spanList.push_back(span(2, "East", {idOf<ClosureId>(3), {}}, {{}, "rack 2"}, 8, {4, 5}));
    // West 0.03 dB; East (0.05 + 0.06) / 2.
    EXPECT_EQ(overs(), std::vector<std::string>{"average_over/East/0.055/2"});
    const Record record = built(book);
    EXPECT_NEAR(*record.spans[0].meanDb, 0.03, 1e-12);
    EXPECT_EQ(record.spans[1].splices, 2u);
    // What is on no span is a group of its own.
    book.spanList.pop_back();
    EXPECT_EQ(overs(), std::vector<std::string>{"average_over/On no span/0.055/2"});
    EXPECT_EQ(built(book).spans.back().kind, SpanKind::Rest);
    EXPECT_TRUE(built(book).spans.back().budgets.empty());
}

TEST(SpanBudget, AJobWithoutSpansIsOneSpan) {
    auto book = line();
    measure(book);
    book.cableList[0].lengthKm = 20;
    const Record record = built(book);
    ASSERT_EQ(record.spans.size(), 1u);
    EXPECT_EQ(record.spans[0].kind, SpanKind::WholeJob);
    EXPECT_NEAR(record.spans[0].budgets[0].allowedDb, 9.75, 1e-12);
    EXPECT_NEAR(record.spans[0].budgets[0].asSplicedDb, 9.27, 1e-12);
}

TEST(SpanBudget, SaysWhyThereIsNone) {
    auto book = line();
    auto north = span(1, "North", {{}, "rack 1"}, {{}, "rack 2"}, 20, {1});
    north.lengthKm.reset();
    book.spanList.push_back(north);
    EXPECT_EQ(built(book).spans[0].budgetNote,
              "No link budget: the length of span North is not written down.");
    // The cable says it.
    book.spanList[0].cable = idOf<CableId>(1);
    EXPECT_EQ(built(book).spans[0].lengthKm, 20.0);
    EXPECT_FALSE(built(book).spans[0].budgets.empty());
    book.arcList.erase(book.arcList.begin());
    EXPECT_EQ(built(book).spans[0].budgetNote, "No link budget: nothing is spliced yet.");
}

}  // namespace
}  // namespace arc::closeout
