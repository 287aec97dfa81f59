// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/format.hpp"

#include <QLocale>

#include <gtest/gtest.h>

namespace arc::ui::text {
namespace {

using namespace arc::literals;

class Format : public testing::Test {
  protected:
    void SetUp() override { QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom)); }
    void TearDown() override { QLocale::setDefault(before); }
    QLocale before;
};

Instant at(const char* iso) {
    return parseInstant(iso).value();
}

TEST_F(Format, ALossShowsTwoPlacesAndAThirdOnlyWhenThereIsOne) {
    EXPECT_EQ(loss(40_mdb), "0.04");
    EXPECT_EQ(loss(0_mdb), "0.00");
    EXPECT_EQ(loss(125_mdb, Unit::Shown), "0.125 dB");
    EXPECT_EQ(meanLoss(0.0425), "0.043");
}

TEST_F(Format, NumbersFollowTheLanguage) {
    EXPECT_EQ(number(std::int64_t{1482}), "1,482");
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(loss(40_mdb), "0,04");
    EXPECT_EQ(number(std::int64_t{1482}), "1.482");
}

TEST_F(Format, TimesShowAtTheOffsetTheyWereWrittenWith) {
    EXPECT_EQ(clockToSecond(at("2031-03-04T10:40:09+01:00")), "10:40:09");
    const auto now = at("2031-03-05T09:00:00+01:00");
    EXPECT_EQ(moment(at("2031-03-05T07:00:00+01:00"), now), "07:00");
    EXPECT_EQ(moment(at("2031-03-04T10:40:00+01:00"), now), "Tue 10:40");
    EXPECT_EQ(moment(at("2031-01-04T10:40:00+01:00"), now), "4 Jan 10:40");
    EXPECT_EQ(moment(at("2030-12-31T10:40:00+01:00"), now), "31 Dec 2030 10:40");
}

TEST_F(Format, AgoIsInTheLargestFittingUnit) {
    const auto now = at("2031-03-05T09:00:00Z");
    EXPECT_EQ(ago(now, now), "just now");
    EXPECT_EQ(ago(at("2031-03-05T08:48:00Z"), now), "12 min ago");
    EXPECT_EQ(ago(at("2031-03-05T07:00:00Z"), now), "2 h ago");
    EXPECT_EQ(ago(at("2031-03-04T08:00:00Z"), now), "1 day ago");
    EXPECT_EQ(ago(at("2031-03-01T08:00:00Z"), now), "4 days ago");
}

TEST_F(Format, TypedNumbersTakeCommaOrPoint) {
    EXPECT_EQ(typedNumber(" 18,5 "), 18.5);
    EXPECT_EQ(typedNumber("-3.25"), -3.25);
    EXPECT_FALSE(typedNumber("18 C"));
    EXPECT_FALSE(typedNumber(""));
    EXPECT_FALSE(typedNumber("nan"));
}

}  // namespace
}  // namespace arc::ui::text
