// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/instant.hpp"

#include <gtest/gtest.h>

namespace arc {
namespace {

// RFC 3339 section 5.8 examples; the millisecond values follow from the civil calendar (date -u -d … +%s).
TEST(Instant, ReadsTheExamplesOfRfc3339) {
    EXPECT_EQ(parseInstant("1985-04-12T23:20:50.52Z")->ms, 482196050520);
    EXPECT_EQ(parseInstant("1996-12-19T16:39:57-08:00")->ms, 851042397000);
    EXPECT_EQ(parseInstant("1996-12-19T16:39:57-08:00")->offsetMinutes, -480);
}

TEST(Instant, ComparesByTheMomentNotByTheOffset) {
    EXPECT_EQ(*parseInstant("2031-03-03T08:00:00+01:00"), *parseInstant("2031-03-03T07:00:00Z"));
}

TEST(Instant, WritesWhatItReads) {
    for (const char* text :
         {"2031-03-03T07:00:00Z", "2031-03-03T07:00:00.125+05:30", "2000-02-29T23:59:59-03:30"})
        EXPECT_EQ(toIso(*parseInstant(text)), text);
}

TEST(Instant, RefusesWhatCannotBeOrdered) {
    for (const char* text :
         {"", "2031-03-03", "2031-03-03T07:00:00", "03/04/2031 07:00", "2031-02-30T07:00:00Z",
          "2031-03-03T24:00:00Z", "2031-03-03T07:60:00Z", "2031-03-03T07:00:00Zulu", "1969-12-31T23:00:00Z"})
        EXPECT_FALSE(parseInstant(text)) << text;
}

}  // namespace
}  // namespace arc
