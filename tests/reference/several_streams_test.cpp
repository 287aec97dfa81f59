// SPDX-License-Identifier: GPL-3.0-or-later
// Source: R package spc 0.6.7 (mewma.crit, mewma.arl; products of xewma.sf); the call stands in the first
// line of each file.
#include "core/analytics/several_streams.hpp"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

using support::ReferenceRow;
using support::referenceRows;

void expectRelative(const Result<double>& got, double want, double tolerance, const ReferenceRow& row) {
    ASSERT_TRUE(got) << row.describe() << got.error().sentence();
    EXPECT_LE(std::abs(*got - want), tolerance * std::abs(want)) << row.describe() << "got " << *got;
}

EwmaChart chartOf(const ReferenceRow& row) {
    EwmaChart chart{.lambda = row.number("lambda")};
    chart.sides = row.text("sided") == "two" ? Sides::Both : Sides::Upper;
    return chart;
}

TEST(SeveralStreamsReference, AnyOfSeveralEwmas) {
    for (const auto& row : referenceRows("group_ewma_arl.csv")) {
        EwmaChart chart = chartOf(row);
        chart.limit = row.number("L");
        std::vector<double> shifts(static_cast<std::size_t>(row.whole("streams")), 0.0);
        shifts.front() = row.number("shift_in_one_stream");
        expectRelative(groupRunLength(chart, shifts), row.number("arl_group"), 1e-7, row);
    }
}

TEST(SeveralStreamsReference, LimitOfAGroup) {
    for (const auto& row : referenceRows("group_ewma_crit.csv"))
        expectRelative(groupLimit(chartOf(row), row.whole("streams"), row.number("arl0")), row.number("L"),
                       1e-7, row);
}

TEST(SeveralStreamsReference, MultivariateEwmaLimits) {
    for (const auto& row : referenceRows("mewma_critical.csv"))
        expectRelative(
            limitFor(MewmaChart{.streams = row.whole("p"), .r = row.number("r")}, row.number("arl0")),
            row.number("h4"), 1e-6, row);
}

TEST(SeveralStreamsReference, MultivariateEwmaRunLengthsInControl) {
    int seen = 0;
    for (const auto& row : referenceRows("mewma_arl.csv")) {
        if (row.number("delta") != 0) continue;
        ++seen;
        expectRelative(averageRunLength(MewmaChart{row.whole("p"), row.number("r"), row.number("h4")}),
                       row.number("arl_zero_state"), 2e-6, row);
    }
    EXPECT_GT(seen, 10);
}

TEST(SeveralStreams, OneStreamIsThePlainChart) {
    const EwmaChart chart{0.1, 2.7};
    for (const double shift : {0.0, 0.4, 2.0}) {
        const double one[] = {shift};
        EXPECT_NEAR(*groupRunLength(chart, one) / *averageRunLength(chart, shift), 1, 1e-9);
    }
    // T2 of one stream is the squared standardised EWMA.
    EXPECT_NEAR(*averageRunLength(MewmaChart{1, 0.1, 2.7 * 2.7}) / *averageRunLength(chart, 0), 1, 1e-9);
}

TEST(SeveralStreams, RefusesWhatMakesNoSense) {
    const EwmaChart chart{0.1, 2.7};
    EXPECT_FALSE(groupRunLength(chart, {}));
    EXPECT_FALSE(groupRunLength(chart, std::vector<double>(65, 0.0)));
    EXPECT_FALSE(groupRunLength(EwmaChart{0, 2.7}, std::vector<double>(2, 0.0)));
    EXPECT_FALSE(groupLimit(chart, 0, 500));
    EXPECT_FALSE(groupLimit(chart, 4, 1));
    EXPECT_FALSE(averageRunLength(MewmaChart{0, 0.1, 9}));
    EXPECT_FALSE(averageRunLength(MewmaChart{4, 0, 9}));
    EXPECT_FALSE(averageRunLength(MewmaChart{4, 0.1, std::nan("")}));
}

}  // namespace
}  // namespace arc::drift
