// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "core/analytics/difference_signals.hpp"
#include "tests/support/memory_logbook.hpp"

namespace arc::drift {
namespace {

Uuid numbered(int n) {
    Uuid id{};
    id.bytes[14] = static_cast<std::uint8_t>(n >> 8);
    id.bytes[15] = static_cast<std::uint8_t>(n);
    return id;
}

constexpr std::int64_t firstDay = 1'900'000'000'000;

/// A splicer and splices 1 … n of one closure, each estimated at 0.03 dB and measured `away` mdB off.
class Book {
  public:
    Book() {
        Tool tool;
        tool.id = splicer;
        tool.label = "S-01";
        tool.traits = Splicer{};
        logbook.toolList.push_back(tool);
    }
    void splice(int away, std::optional<Loss> back = Loss{0}) {
        ++count;
        SpliceArc arc;
        arc.id = ArcId{numbered(1000 + count)};
        arc.at = Instant{firstDay + count * 60'000, 0};
        arc.splicer = splicer;
        arc.closure = closure;
        Reading reading;
        reading.fibreA = std::to_string(count);
        reading.loss = Loss{30};
        arc.readings = {reading};
        logbook.arcList.push_back(arc);
        MeasuredLoss loss;
        loss.closure = closure;
        loss.fibre = reading.fibreA;
        loss.aToB = Loss{2 * (30 + away)};
        loss.bToA = back;
        logbook.measuredList.push_back(loss);
    }
    void lensClean() {
        CareRecord care;
        care.tool = splicer;
        care.action = action::lensClean;
        care.at = Instant{firstDay + count * 60'000 + 1, 0};
        logbook.careList.push_back(care);
    }
    const ToolId splicer{numbered(1)};
    const ClosureId closure{numbered(2)};
    int count = 0;
    test::MemoryLogbook logbook;
};

TEST(AgreementReport, ABlindEstimatorSignalsAndALensCleanStartsAfresh) {
    Book book;
    for (int i = 0; i < 20; ++i) book.splice((i % 3) * 5 - 5);
    for (int i = 0; i < 10; ++i) book.splice(60 + (i % 3) * 5);
    auto report = agreementReport(book.logbook, 500);
    ASSERT_TRUE(report);
    ASSERT_EQ(report->splicers.size(), 1u);
    const SplicerAgreement& before = report->splicers[0];
    EXPECT_EQ(before.label, "S-01");
    EXPECT_EQ(before.splices.size(), 30u);
    ASSERT_TRUE(before.chart.signal);
    EXPECT_GE(*before.chart.began, 19u);
    EXPECT_LE(*before.chart.began, 21u);
    book.lensClean();
    for (int i = 0; i < 10; ++i) book.splice((i % 3) * 5 - 5);
    report = agreementReport(book.logbook, 500);
    ASSERT_TRUE(report);
    EXPECT_EQ(report->splicers[0].chartFrom, 30u);
    EXPECT_FALSE(report->splicers[0].chart.signal);
    EXPECT_EQ(report->splicers[0].agreement->n, 40);
}

TEST(AgreementReport, OneWayAndUnknownFibresAreCountedNotUsed) {
    Book book;
    book.splice(0);
    book.splice(0, std::nullopt);
    MeasuredLoss stranger;
    stranger.closure = book.closure;
    stranger.fibre = "nobody";
    stranger.aToB = stranger.bToA = Loss{10};
    book.logbook.measuredList.push_back(stranger);
    const auto report = agreementReport(book.logbook, 500);
    ASSERT_TRUE(report);
    ASSERT_EQ(report->splicers.size(), 1u);
    EXPECT_EQ(report->splicers[0].splices.size(), 1u);
    EXPECT_FALSE(report->splicers[0].agreement);
    EXPECT_EQ(report->oneWay, 1);
    EXPECT_EQ(report->unmatched, 1);
}

TEST(AgreementReport, TheDifferenceIsDrawnOnTheArcAxisOfItsStratum) {
    Book book;
    for (int i = 0; i < 12; ++i) book.splice((i % 3) * 5 - 5);
    SplicerHistory history;
    history.splicer = book.splicer;
    history.modes = {"A-A"};
    // An arc that was not measured comes first.
    history.arcs.emplace_back().at = Instant{firstDay, 0};
    for (const SpliceArc& arc : book.logbook.arcList) history.arcs.emplace_back().at = arc.at;
    SplicerReport report;
    report.splicer = book.splicer;
    StratumReport other, own;
    other.stratum = stratumKey("B-B", 1);
    own.stratum = stratumKey("A-A", 1);
    report.strata = {other, own};
    std::vector<SplicerReport> reports = {report};
    ASSERT_TRUE(addDifferences(book.logbook, std::span(&history, 1), reports, {}));
    EXPECT_TRUE(reports[0].strata[0].traces.empty());
    ASSERT_EQ(reports[0].strata[1].traces.size(), 1u);
    const Trace& trace = reports[0].strata[1].traces[0];
    EXPECT_EQ(trace.chart, ChartKind::Difference);
    EXPECT_EQ(trace.arc.front(), 2u);
    EXPECT_EQ(trace.arc.back(), 13u);
    EXPECT_EQ(trace.value.size(), 12u);
    EXPECT_GT(*trace.limit, 4);
}

TEST(AgreementReport, ABlindEstimatorIsASignalWithItsBeginUntilItIsDismissed) {
    Book book;
    for (int i = 0; i < 20; ++i) book.splice((i % 3) * 5 - 5);
    for (int i = 0; i < 10; ++i) book.splice(60 + (i % 3) * 5);
    SplicerHistory history;
    history.splicer = book.splicer;
    history.modes = {"A-A"};
    for (const SpliceArc& arc : book.logbook.arcList) history.arcs.emplace_back().at = arc.at;
    StratumReport stratum;
    stratum.stratum = stratumKey("A-A", 1);
    SplicerReport steady;
    steady.splicer = book.splicer;
    steady.strata = {stratum};
    std::vector<SplicerReport> reports = {steady};
    ASSERT_TRUE(addDifferences(book.logbook, std::span(&history, 1), reports, {}));
    ASSERT_EQ(reports[0].strata[0].signals.size(), 1u);
    const Signal signal = reports[0].strata[0].signals[0];
    EXPECT_EQ(signal.chart, ChartKind::Difference);
    EXPECT_EQ(signal.state, SignalState::Open);
    EXPECT_LE(signal.beganLow, 21u);
    EXPECT_GE(signal.beganHigh, 21u);
    EXPECT_GT(signal.raisedAtArc, 20u);
    EXPECT_NEAR(signal.sizeDb, 0.065, 0.01);
    EXPECT_EQ(signal.action, action::lensClean);
    EXPECT_EQ(reports[0].standing, Standing::Drifting);

    SignalAnswer answer;
    answer.splicer = book.splicer;
    answer.signalKey = signal.key;
    answer.reason = "the reflectometer was set to the wrong index";
    reports = {steady};
    ASSERT_TRUE(addDifferences(book.logbook, std::span(&history, 1), reports, std::span(&answer, 1)));
    EXPECT_EQ(reports[0].strata[0].signals[0].state, SignalState::Dismissed);
    EXPECT_NE(reports[0].standing, Standing::Drifting);
}

TEST(AgreementReport, AnEmptyBookIsAnEmptyReport) {
    test::MemoryLogbook book;
    EXPECT_TRUE(agreementReport(book, 500)->splicers.empty());
}

}  // namespace
}  // namespace arc::drift
