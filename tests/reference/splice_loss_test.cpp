// SPDX-License-Identifier: GPL-3.0-or-later
// Sources: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977, confirmed by numerical overlap integrals; the formula
// stands in the first line of each file. OTDR: derived there, procedure of IEC 60793-1-40 annex C.
#include "core/optics/splice_loss.hpp"

#include <cmath>
#include <gtest/gtest.h>

#include "tests/support/reference_csv.hpp"

namespace arc::optics {
namespace {

using support::referenceRows;

const ModeField at1310 = typicalAt1310(), at1550 = typicalAt1550();
constexpr double fourDigits = 0.000051, fiveDigits = 0.0000051, threeDigits = 0.00051;

TEST(SpliceLossReference, LateralOffset) {
    for (const auto& row : referenceRows("loss_lateral_offset.csv")) {
        const Misalignment meeting{.offsetUm = row.number("offset_um")};
        EXPECT_NEAR(*spliceLossDb(at1310, at1310, meeting), row.number("loss_dB_1310_MFD9.2"), fourDigits);
        EXPECT_NEAR(*spliceLossDb(at1550, at1550, meeting), row.number("loss_dB_1550_MFD10.4"), fourDigits);
    }
    EXPECT_NEAR(*spliceLossDb(at1310, at1310, {.offsetUm = 1}), 0.2052, fourDigits);
    EXPECT_NEAR(*spliceLossDb(at1550, at1550, {.offsetUm = 1}), 0.1606, fourDigits);
}

TEST(SpliceLossReference, AxisTiltTakesThePhaseIndex) {
    for (const auto& row : referenceRows("loss_axis_tilt.csv")) {
        const Misalignment meeting{.tiltDeg = row.number("axis_tilt_deg")};
        EXPECT_NEAR(*spliceLossDb(at1310, at1310, meeting), row.number("loss_dB_1310_MFD9.2_n1.4468"),
                    fourDigits);
        EXPECT_NEAR(*spliceLossDb(at1550, at1550, meeting), row.number("loss_dB_1550_MFD10.4_n1.4440"),
                    fourDigits);
    }
}

TEST(SpliceLossReference, Gap) {
    for (const auto& row : referenceRows("loss_gap.csv")) {
        const double gap = row.number("gap_um");
        EXPECT_NEAR(*gapLossDb(at1310, gap, at1310.phaseIndex), row.number("index_matched_1310"), fiveDigits);
        EXPECT_NEAR(*gapLossDb(at1550, gap, at1550.phaseIndex), row.number("index_matched_1550"), fiveDigits);
        EXPECT_NEAR(*gapLossDb(at1310, gap, 1), row.number("air_1310_no_fresnel"), fiveDigits);
        EXPECT_NEAR(*gapLossDb(at1550, gap, 1), row.number("air_1550_no_fresnel"), fiveDigits);
    }
}

TEST(SpliceLossReference, BackFromLossToMisalignment) {
    for (const auto& row : referenceRows("loss_to_equivalent_misalignment.csv")) {
        const double db = row.number("loss_dB");
        EXPECT_NEAR(*offsetForLossUm(at1310, db), row.number("offset_um_1310"), threeDigits);
        EXPECT_NEAR(*tiltForLossDeg(at1310, db), row.number("tilt_deg_1310"), threeDigits);
        EXPECT_NEAR(*offsetForLossUm(at1550, db), row.number("offset_um_1550"), threeDigits);
        EXPECT_NEAR(*tiltForLossDeg(at1550, db), row.number("tilt_deg_1550"), threeDigits);
    }
}

TEST(SpliceLossReference, MismatchAndWhatTheOtdrShows) {
    for (const auto& row : referenceRows("mfd_mismatch_and_otdr.csv")) {
        ModeField a = at1310, b = at1310;
        a.diameterUm = row.number("MFD_A_um");
        b.diameterUm = row.number("MFD_B_um");
        const double loss = *spliceLossDb(a, b, {});
        EXPECT_NEAR(loss, row.number("true_mismatch_loss_dB"), fourDigits) << row.describe();
        const double there = oneWayReadingDb(loss, a, b), back = oneWayReadingDb(loss, b, a);
        EXPECT_NEAR(there, row.number("OTDR_reading_A_to_B_dB"), fourDigits) << row.describe();
        EXPECT_NEAR(back, row.number("OTDR_reading_B_to_A_dB"), fourDigits) << row.describe();
        EXPECT_NEAR((there + back) / 2, row.number("mean_of_two_dB"), fourDigits) << row.describe();
    }
}

TEST(SpliceLoss, ContributionsAddWithoutAGap) {
    ModeField narrow = at1310;
    narrow.diameterUm = 8.6;
    const double whole = *spliceLossDb(at1310, narrow, {1, 0.5});
    const double parts = *spliceLossDb(at1310, narrow, {1, 0}) + *spliceLossDb(at1310, narrow, {0, 0.5}) -
                         *spliceLossDb(at1310, narrow, {});
    EXPECT_NEAR(whole, parts, 1e-14);
    const auto apart = *spliceLossParts(at1310, narrow, {1, 0.5});
    EXPECT_NEAR(apart.mismatchDb, *spliceLossDb(at1310, narrow, {}), 1e-14);
    EXPECT_NEAR(apart.totalDb(), whole, 1e-14);
    EXPECT_NEAR(spliceLossParts(at1310, at1310, {1, 0})->offsetDb, 0.2052, fourDigits);
    EXPECT_NEAR(spliceLossParts(at1310, at1310, {0, 0.5})->tiltDb, 0.0842, fourDigits);
    EXPECT_NEAR(*spliceLossDb(at1310, narrow, {1, 0.5}), *spliceLossDb(narrow, at1310, {1, 0.5}), 1e-14);
}

TEST(SpliceLoss, SignedDirectionsAreAveragedAndOneIsLabelled) {
    using namespace arc::literals;
    const auto both = measuredLoss(Loss{-273}, Loss{313});
    ASSERT_TRUE(both);
    EXPECT_NEAR(both->db, 0.020, 1e-12);
    EXPECT_EQ(both->ways, Ways::Two);
    const auto one = measuredLoss(std::nullopt, Loss{-50});
    ASSERT_TRUE(one);
    EXPECT_NEAR(one->db, -0.05, 1e-12);
    EXPECT_EQ(one->ways, Ways::One);
    EXPECT_FALSE(measuredLoss(std::nullopt, std::nullopt));
    MeasuredLoss record;
    record.aToB = 40_mdb;
    EXPECT_EQ(measuredLoss(record)->ways, Ways::One);
}

// 20 km at 0.4 dB/km, five splices at 0.15 dB, two connections at 0.5 dB: 9.75 dB (coefficients of an
// installers' association's loss-budget page; common practice).
TEST(SpliceLoss, LinkBudget) {
    const auto budget = linkBudget({.lengthKm = 20, .splices = 5, .connections = 2});
    ASSERT_TRUE(budget);
    EXPECT_NEAR(budget->totalDb(), 9.75, 1e-12);
    EXPECT_NEAR(budget->fibreDb, 8, 1e-12);
    EXPECT_FALSE(linkBudget({.lengthKm = -1}));
    EXPECT_FALSE(linkBudget({.lengthKm = 1, .spliceDb = std::nan("")}));
}

TEST(SpliceLoss, RefusesWhatCannotBe) {
    EXPECT_FALSE(spliceLossDb(at1310, at1550, {}));
    EXPECT_FALSE(spliceLossDb(at1310, at1310, {.offsetUm = -1}));
    EXPECT_FALSE(spliceLossDb(at1310, at1310, {.tiltDeg = 20}));
    EXPECT_FALSE(spliceLossDb({0, 1.31, 1.45}, at1310, {}));
    EXPECT_FALSE(gapLossDb(at1310, -1, 1));
    EXPECT_FALSE(gapLossDb(at1310, 1, 0.5));
    EXPECT_FALSE(offsetForLossUm(at1310, -0.1));
    EXPECT_FALSE(tiltForLossDeg(at1310, std::nan("")));
}

}  // namespace
}  // namespace arc::optics
