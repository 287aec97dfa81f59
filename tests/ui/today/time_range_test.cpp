// SPDX-License-Identifier: GPL-3.0-or-later
// Days against ISO 8601 instants, which core reads on its own.
#include "ui/today/time_range.hpp"

#include <gtest/gtest.h>

namespace arc::ui {
namespace {

std::int64_t ms(const char* iso) {
    return parseInstant(iso).value().ms;
}

TEST(TimeRange, DaysMonthsAndStretchesAtTheOffsetOfThePlace) {
    const Instant now{ms("2031-03-20T12:00:00+01:00"), 60};
    const auto range = [&](const char* typed) { return readTimeRange(typed, now).value(); };
    EXPECT_EQ(range("  "), TimeRange{});
    EXPECT_EQ(range("7 d"), (TimeRange{ms("2031-03-13T12:00:00+01:00"), std::nullopt}));
    EXPECT_EQ(range("2031-03-03"),
              (TimeRange{ms("2031-03-03T00:00:00+01:00"), ms("2031-03-04T00:00:00+01:00")}));
    EXPECT_EQ(range("2032-02"),
              (TimeRange{ms("2032-02-01T00:00:00+01:00"), ms("2032-03-01T00:00:00+01:00")}));
    EXPECT_EQ(range("2031"), (TimeRange{ms("2031-01-01T00:00:00+01:00"), ms("2032-01-01T00:00:00+01:00")}));
    const TimeRange both{ms("2031-03-03T00:00:00+01:00"), ms("2031-03-16T00:00:00+01:00")};
    EXPECT_EQ(range("2031-03-03 to 2031-03-15"), both);
    EXPECT_EQ(range("2031-03-03..2031-03-15"), both);
}

TEST(TimeRange, WhatCannotBeReadSaysWhatCan) {
    const Instant now{ms("2031-03-20T12:00:00Z"), 0};
    for (const char* typed :
         {"3.4.2031", "2031-02-30", "last week", "2031-03-15 to 2031-03-03", "a to b to c"}) {
        const auto range = readTimeRange(typed, now);
        ASSERT_FALSE(range) << typed;
        EXPECT_NE(range.error().sentence().find("2031-03-03"), std::string::npos);
    }
}

}  // namespace
}  // namespace arc::ui
