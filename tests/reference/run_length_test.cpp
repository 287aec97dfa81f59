// SPDX-License-Identifier: GPL-3.0-or-later
// Source: R package spc 0.6.7 under R 4.2.2 (Debian 12); the call stands in the first line of each file. The
// figures agree with the printed tables of Lucas & Saccucci (Technometrics 32, 1990), Crowder (Technometrics
// 29, 1987) and Lucas & Crosier (Technometrics 24, 1982).
#include "core/analytics/run_length.hpp"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <utility>

#include "tests/support/reference_csv.hpp"

namespace arc::drift {
namespace {

using support::ReferenceRow;
using support::referenceRows;

/// Files print 9 or 10 digits.
constexpr double printed = 2e-8;

void expectRelative(const Result<double>& got, double want, double tolerance, const ReferenceRow& row) {
    ASSERT_TRUE(got) << row.describe() << got.error().sentence();
    EXPECT_LE(std::abs(*got - want), tolerance * std::abs(want)) << row.describe() << "got " << *got;
}

/// Run lengths far beyond a million lose digits in both programs.
double toleranceFor(double arl) {
    return printed + 1e-15 * arl;
}

TEST(RunLengthReference, EwmaTwoSided) {
    for (const auto& row : referenceRows("ewma_two_sided_arl.csv"))
        expectRelative(
            averageRunLength(EwmaChart{row.number("lambda"), row.number("limit")}, row.number("shift")),
            row.number("arl"), toleranceFor(row.number("arl")), row);
    for (const auto& row : referenceRows("ewma_arl_twosided.csv")) {
        const EwmaChart chart{row.number("lambda"), row.number("L")};
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_zero_state"),
                       toleranceFor(row.number("arl_zero_state")), row);
    }
}

TEST(RunLengthReference, EwmaUpperReflected) {
    for (const auto& row : referenceRows("ewma_upper_reflected_arl.csv"))
        expectRelative(averageRunLength(EwmaChart{row.number("lambda"), row.number("limit"), Sides::Upper},
                                        row.number("shift")),
                       row.number("arl"), toleranceFor(row.number("arl")), row);
    for (const auto& row : referenceRows("ewma_arl_onesided.csv"))
        expectRelative(averageRunLength(EwmaChart{row.number("lambda"), row.number("L"), Sides::Upper},
                                        row.number("shift")),
                       row.number("arl_zero_state"), toleranceFor(row.number("arl_zero_state")), row);
}

TEST(RunLengthReference, EwmaSteadyState) {
    for (const auto& row : referenceRows("ewma_two_sided_steady_state.csv"))
        expectRelative(
            steadyStateRunLength(EwmaChart{row.number("lambda"), row.number("limit")}, row.number("shift")),
            row.number("steady_state_arl"), 1e-7, row);
    for (const char* file : {"ewma_arl_twosided.csv", "ewma_arl_onesided.csv"})
        for (const auto& row : referenceRows(file)) {
            if (!row.has("arl_steady_state")) continue;
            const Sides sides = row.text("sided") == "two" ? Sides::Both : Sides::Upper;
            const double tolerance = std::max(1e-7 + 1e-15 * row.number("arl_steady_state"),
                                              10 * row.number("ss_reldiff_60_vs_100_nodes"));
            expectRelative(steadyStateRunLength(EwmaChart{row.number("lambda"), row.number("L"), sides},
                                                row.number("shift")),
                           row.number("arl_steady_state"), tolerance, row);
        }
}

TEST(RunLengthReference, EwmaExactVarianceAndHeadStart) {
    for (const auto& row : referenceRows("ewma_arl_vacl_fir.csv")) {
        EwmaChart chart{row.number("lambda"), row.number("L")};
        chart.limits = EwmaLimits::ExactVariance;
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_exact_variance_limits"),
                       1e-6, row);
        chart.limits = EwmaLimits::Fixed;
        chart.headStart = chart.limit / 2;
        expectRelative(averageRunLength(chart, row.number("shift")),
                       row.number("arl_fir_headstart_half_limit"), 1e-6, row);
    }
}

TEST(RunLengthReference, EwmaUnderDrift) {
    for (const auto& row : referenceRows("drift_arl.csv"))
        expectRelative(driftRunLength(EwmaChart{row.number("ewma_lambda"), row.number("ewma_limit")},
                                      row.number("slope_per_step")),
                       row.number("ewma_arl"), 1e-7, row);
    for (const auto& row : referenceRows("ewma_drift_arl.csv")) {
        const Sides sides = row.text("sided") == "two" ? Sides::Both : Sides::Upper;
        expectRelative(
            driftRunLength(EwmaChart{row.number("lambda"), row.number("L"), sides}, row.number("slope")),
            row.number("arl_drift"), std::max(1e-7, 10 * row.number("reldiff_vs_check")), row);
    }
}

TEST(RunLengthReference, EwmaLimits) {
    for (const auto& row : referenceRows("ewma_critical_limits.csv")) {
        expectRelative(limitFor(EwmaChart{.lambda = row.number("lambda")}, row.number("arl0")),
                       row.number("limit_two"), 1e-8, row);
        expectRelative(
            limitFor(EwmaChart{.lambda = row.number("lambda"), .sides = Sides::Upper}, row.number("arl0")),
            row.number("limit_upper"), 1e-8, row);
    }
    for (const auto& row : referenceRows("ewma_crit_L.csv")) {
        const Sides sides = row.text("sided") == "two" ? Sides::Both : Sides::Upper;
        expectRelative(
            limitFor(EwmaChart{.lambda = row.number("lambda"), .sides = sides}, row.number("arl0")),
            row.number("L"), 1e-8, row);
    }
}

TEST(RunLengthReference, EwmaQuantilesOfTheRunLength) {
    for (const auto& row : referenceRows("ewma_runlength_quantiles.csv")) {
        const int wanted = row.whole("run_length_quantile");
        const auto survival =
            runLengthSurvival(EwmaChart{row.number("lambda"), row.number("L")}, row.number("shift"), wanted);
        ASSERT_TRUE(survival) << row.describe();
        const double left = 1 - row.number("prob");
        EXPECT_LE(survival->at(static_cast<std::size_t>(wanted)), left) << row.describe();
        EXPECT_GT(survival->at(static_cast<std::size_t>(wanted) - 1), left) << row.describe();
    }
}

TEST(RunLengthReference, Cusum) {
    for (const auto& row : referenceRows("cusum_arl.csv")) {
        CusumChart chart{row.number("k"), row.number("h"), Sides::Upper};
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_upper"),
                       toleranceFor(row.number("arl_upper")), row);
        chart.sides = Sides::Both;
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_two"),
                       toleranceFor(row.number("arl_two")), row);
    }
    for (const char* file : {"cusum_arl_onesided.csv", "cusum_arl_twosided.csv"})
        for (const auto& row : referenceRows(file)) {
            CusumChart chart{row.number("k"), row.number("h"),
                             row.text("sided") == "two" ? Sides::Both : Sides::Upper};
            const double tolerance = toleranceFor(row.number("arl_zero_state"));
            expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_zero_state"),
                           tolerance, row);
            chart.headStart = chart.h / 4;
            expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_headstart_h4"),
                           tolerance, row);
            chart.headStart = chart.h / 2;
            expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_headstart_h2"),
                           tolerance, row);
        }
}

TEST(RunLengthReference, CusumHeadStart) {
    for (const auto& row : referenceRows("cusum_headstart_arl.csv")) {
        CusumChart chart{row.number("k"), row.number("h"), Sides::Upper, row.number("headstart")};
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_upper"),
                       toleranceFor(row.number("arl_upper")), row);
        chart.sides = Sides::Both;
        expectRelative(averageRunLength(chart, row.number("shift")), row.number("arl_two"),
                       toleranceFor(row.number("arl_two")), row);
    }
}

TEST(RunLengthReference, CusumSteadyState) {
    for (const auto& row : referenceRows("cusum_arl_onesided.csv"))
        expectRelative(steadyStateRunLength(CusumChart{row.number("k"), row.number("h"), Sides::Upper},
                                            row.number("shift")),
                       row.number("arl_steady_state"), toleranceFor(row.number("arl_steady_state")) + 1e-7,
                       row);
}

// xcusum.ad(k, h, shift, sided = 'two', r = 25, 40, 60) of R's spc climbs with 1 / r^2 (k 1, h 4: 7176.09,
// 7223.15, 7239.71), so the column of the file, made with r = 25, is up to 8 % low. Here: its figures for 40
// and 60 extrapolated, which end in agreement with three million simulated runs (63.83 +- 0.04).
TEST(RunLengthReference, CusumSteadyStateTwoSided) {
    struct Case {
        double k, h, shift, by40, by60;
    };
    for (const Case& c : {Case{1, 4, 0, 7223.1468, 7239.7104}, Case{0.25, 5, 0, 63.682994, 63.743649},
                          Case{0.5, 5, 0.5, 36.444296, 36.450866}}) {
        const double extrapolated = (3600 * c.by60 - 1600 * c.by40) / 2000;
        const auto arl = steadyStateRunLength(CusumChart{c.k, c.h}, c.shift);
        ASSERT_TRUE(arl);
        EXPECT_NEAR(*arl / extrapolated, 1, 5e-5) << c.k;
    }
}

TEST(RunLengthReference, CusumUnderDrift) {
    for (const auto& row : referenceRows("cusum_drift_arl_onesided.csv"))
        expectRelative(
            driftRunLength(CusumChart{row.number("k"), row.number("h"), Sides::Upper}, row.number("slope")),
            row.number("arl_drift"), std::max(1e-7, 10 * row.number("reldiff_vs_second_method")), row);
}

TEST(RunLengthReference, CusumLimits) {
    for (const auto& row : referenceRows("cusum_critical_h.csv")) {
        expectRelative(limitFor(CusumChart{.k = row.number("k"), .sides = Sides::Upper}, row.number("arl0")),
                       row.number("h_upper"), 1e-8, row);
        expectRelative(limitFor(CusumChart{.k = row.number("k")}, row.number("arl0")), row.number("h_two"),
                       1e-8, row);
    }
    for (const auto& row : referenceRows("cusum_crit_h.csv"))
        expectRelative(limitFor(CusumChart{.k = row.number("k"),
                                           .sides = row.text("sided") == "two" ? Sides::Both : Sides::Upper},
                                row.number("arl0")),
                       row.number("h"), 1e-8, row);
}

TEST(RunLength, ASumThatNeverSignalsLeavesTheOtherOne) {
    // The downward sum cannot move; the upward one climbs by 30 a reading.
    const auto far = averageRunLength(CusumChart{20, 200}, 50);
    ASSERT_TRUE(far) << far.error().sentence();
    EXPECT_NEAR(*far, *averageRunLength(CusumChart{20, 200, Sides::Upper}, 50), 1e-9);
    EXPECT_NEAR(*averageRunLength(CusumChart{20, 200}, -50), *far, 1e-9);
    EXPECT_NEAR(*averageRunLength(CusumChart{.k = 20, .h = 200, .headStart = 100}, 50), *far - 3.3, 0.7);
}

TEST(RunLength, RefusesWhatMakesNoSense) {
    const double nan = std::nan("");
    for (const EwmaChart& chart :
         {EwmaChart{0, 3}, EwmaChart{1.1, 3}, EwmaChart{nan, 3}, EwmaChart{0.1, 0}, EwmaChart{0.1, nan},
          EwmaChart{0.1, 21}, EwmaChart{0.1, 12}, EwmaChart{.lambda = 0.1, .limit = 3, .headStart = 3},
          EwmaChart{.lambda = 0.1, .limit = 3, .headStart = -1}})
        EXPECT_FALSE(averageRunLength(chart, 0)) << chart.lambda << ' ' << chart.limit;
    for (const CusumChart& chart :
         {CusumChart{-0.1, 4}, CusumChart{nan, 4}, CusumChart{0.5, 0}, CusumChart{0.5, nan},
          CusumChart{0.5, 300}, CusumChart{0.5, 60}, CusumChart{.k = 0.5, .h = 4, .headStart = 4},
          CusumChart{.k = 0.5, .h = 4, .headStart = 2.6}})
        EXPECT_FALSE(averageRunLength(chart, 0)) << chart.k << ' ' << chart.h;
    EXPECT_FALSE(averageRunLength(EwmaChart{}, nan));
    EXPECT_FALSE(averageRunLength(CusumChart{}, 1e300));
    EXPECT_FALSE(driftRunLength(EwmaChart{.sides = Sides::Upper}, -0.1));
    EXPECT_FALSE(driftRunLength(EwmaChart{}, nan));
    EXPECT_FALSE(driftRunLength(CusumChart{}, 0.1));
    EXPECT_FALSE(steadyStateRunLength(CusumChart{0.01, 4}, 0));
    EXPECT_FALSE(runLengthSurvival(EwmaChart{}, 0, -1));
    EXPECT_FALSE(limitFor(EwmaChart{}, 1));
    EXPECT_FALSE(limitFor(EwmaChart{}, nan));
    EXPECT_FALSE(limitFor(CusumChart{.k = 0}, 1e9));
}

// Twice the nodes must change nothing, from slow narrow kernels to lambda = 1.
TEST(RunLength, NodesAreEnough) {
    for (const double lambda : {0.005, 0.05, 0.2, 0.5, 1.0})
        for (const double limit : {0.5, 2.0, 3.0, 4.0})
            for (const double shift : {0.0, 0.5, 3.0})
                for (const Sides sides : {Sides::Upper, Sides::Both}) {
                    const EwmaChart chart{lambda, limit, sides};
                    const double arl = *averageRunLength(chart, shift);
                    EXPECT_NEAR(arl / *averageRunLength(chart, shift, Nodes::Twice), 1, 1e-9 + 1e-14 * arl)
                        << lambda << ' ' << limit << ' ' << shift;
                }
    for (const double k : {0.0, 0.25, 1.0})
        for (const double h : {0.1, 3.0, 8.0, 20.0})
            for (const double shift : {0.5, 1.0, 4.0}) {
                const CusumChart chart{k, h, Sides::Upper};
                const double arl = *averageRunLength(chart, shift);
                EXPECT_NEAR(arl / *averageRunLength(chart, shift, Nodes::Twice), 1, 1e-9) << k << ' ' << h;
            }
    for (const auto& [k, h] : {std::pair(0.25, 2.3), std::pair(0.5, 3.2), std::pair(1.0, 1.5)})
        EXPECT_NEAR(*steadyStateRunLength(CusumChart{k, h}, 0.5) /
                        *steadyStateRunLength(CusumChart{k, h}, 0.5, Nodes::Twice),
                    1, 1e-8)
            << k;
    const EwmaChart slow{0.05, 2.6};
    EXPECT_NEAR(*driftRunLength(slow, 0.01) / *driftRunLength(slow, 0.01, Nodes::Twice), 1, 1e-9);
    EXPECT_NEAR(*steadyStateRunLength(slow, 0.5) / *steadyStateRunLength(slow, 0.5, Nodes::Twice), 1, 1e-9);
}

}  // namespace
}  // namespace arc::drift
