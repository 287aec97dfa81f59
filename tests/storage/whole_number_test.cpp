// SPDX-License-Identifier: GPL-3.0-or-later
// RFC 8259, section 6: JSON sets no limit to a number. C++ [conv.fpint]: a floating-point value that does not
// fit into the integer has no defined conversion.
#include "storage/whole_number.hpp"

#include <gtest/gtest.h>
#include <limits>
#include <nlohmann/json.hpp>

#include "storage/export_manifest.hpp"

namespace arc::storage {
namespace {

using nlohmann::json;

TEST(WholeNumber, TheEndsOfEachRangeAreTaken) {
    EXPECT_EQ(wholeNumber<int>(json::parse("2147483647")), std::numeric_limits<int>::max());
    EXPECT_EQ(wholeNumber<int>(json::parse("-2147483648")), std::numeric_limits<int>::min());
    EXPECT_EQ(wholeNumber<std::uint32_t>(json::parse("4294967295")), 4294967295U);
    EXPECT_EQ(wholeNumber<std::uint64_t>(json::parse("18446744073709551615")),
              std::numeric_limits<std::uint64_t>::max());
}

TEST(WholeNumber, BeyondARangeThereIsNone) {
    EXPECT_FALSE(wholeNumber<int>(json::parse("2147483648")));
    EXPECT_FALSE(wholeNumber<int>(json::parse("-2147483649")));
    EXPECT_FALSE(wholeNumber<std::uint32_t>(json::parse("-1")));
    EXPECT_FALSE(wholeNumber<std::uint32_t>(json::parse("4294967296")));
    EXPECT_FALSE(wholeNumber<std::uint64_t>(json::parse("18446744073709551616")));
    EXPECT_FALSE(wholeNumber<std::uint64_t>(json::parse("1e90")));
}

TEST(WholeNumber, WhatIsNoWholeNumberIsNone) {
    for (const char* text : {"0.5", "1.0", "1e3", "true", "null", "\"7\"", "[7]", "{}"})
        EXPECT_FALSE(wholeNumber<int>(json::parse(text))) << text;
    EXPECT_THROW(needWholeNumber<int>(json::parse("0.5")), std::range_error);
}

TEST(WholeNumber, AManifestWithOneBeyondEveryRangeIsRefused) {
    for (const char* version : {"1e90", "4294967297", "0.5"}) {
        const std::string text =
            std::string(R"({"format": "arcwright closeout manifest", "version": )") + version + "}";
        const auto manifest = parseManifest(text);
        ASSERT_FALSE(manifest) << version;
        EXPECT_EQ(manifest.error().code, ProblemCode::Damaged) << manifest.error().sentence();
        EXPECT_NE(manifest.error().sentence().find("not whole or too big"), std::string::npos)
            << manifest.error().sentence();
    }
}

}  // namespace
}  // namespace arc::storage
