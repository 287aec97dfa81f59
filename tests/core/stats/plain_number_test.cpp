// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/plain_number.hpp"

#include <gtest/gtest.h>
#include <limits>

namespace arc::stats {
namespace {

TEST(PlainNumber, KeepsTheDecimalsAndTheSignThatWereAskedFor) {
    EXPECT_EQ(fixedNumber(0.04, 3), "0.040");
    EXPECT_EQ(fixedNumber(-12.5, 0), "-12");  // ties go to the even digit
    EXPECT_EQ(signedNumber(0.04, 2), "+0.04");
    EXPECT_EQ(signedNumber(-0.04, 2), "-0.04");
    EXPECT_EQ(fixedNumber(std::numeric_limits<double>::max(), 17).size(), 309u + 1 + 17);
}

}  // namespace
}  // namespace arc::stats
