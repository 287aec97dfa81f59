// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/fibre.hpp"
#include "source_dir.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <stdexcept>
#include <string>

namespace arc {
namespace {

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

// ANSI/TIA-598-D colour order.
TEST(Fibre, theDefaultOrderIsThatOfTia598) {
    const char* order[] = {"blue", "orange", "green",  "brown",  "slate", "white",
                           "red",  "black",  "yellow", "violet", "rose",  "aqua"};
    ASSERT_EQ(colourOrders().front().name, "TIA-598");
    for (int i = 0; i < 12; ++i) EXPECT_EQ(word(colourOrders().front().colours[i]), order[i]) << i + 1;
}

// tests/reference/data/fibre_colour_schemes.csv: orders as quoted by secondary public pages, see its first
// line.
TEST(Fibre, everyShippedOrderAgreesWithTheTableOfOrders) {
    std::ifstream file(ARC_SOURCE_DIR "/tests/reference/data/fibre_colour_schemes.csv");
    ASSERT_TRUE(file);
    std::map<std::string, int> rows;
    std::string line;
    while (std::getline(file, line)) {
        if (line.empty() || line[0] != '"') continue;
        const auto quote = line.find('"', 1);
        const std::string scheme = line.substr(1, quote - 1);
        const auto comma = line.find(',', quote + 2);
        const int position = std::stoi(line.substr(quote + 2, comma - quote - 2));
        std::string colour = line.substr(comma + 1);
        if (!colour.empty() && colour.back() == '\r') colour.pop_back();
        const auto order = colourOrderNamed(scheme);
        ASSERT_TRUE(order) << scheme;
        EXPECT_EQ(word(order->colours[position - 1]), lower(colour)) << scheme << " " << position;
        ++rows[scheme];
    }
    EXPECT_EQ(rows.size(), colourOrders().size());
    for (const auto& [scheme, count] : rows) EXPECT_EQ(count, 12) << scheme;
}

TEST(Fibre, fromThirteenOnFibresCarryATracer) {
    const auto& tia = colourOrders().front();
    EXPECT_EQ(look(tia, 12).tracerMarks, 0);
    EXPECT_EQ(look(tia, 13).colour, FibreColour::Blue);
    EXPECT_EQ(look(tia, 13).tracerMarks, 1);
    EXPECT_EQ(look(tia, 24).colour, FibreColour::Aqua);
    EXPECT_EQ(look(tia, 25).tracerMarks, 2);
    EXPECT_THROW(look(tia, 0), std::out_of_range);
}

TEST(Fibre, fibre27OfRibbonsOfTwelveIsTheThirdOfTheThird) {
    const auto place = placeInCable(colourOrders().front(), 12, 27);
    EXPECT_EQ(place.unit, 3);
    EXPECT_EQ(place.position, 3);
    EXPECT_EQ(place.unitLook.colour, FibreColour::Green);
    EXPECT_EQ(place.fibreLook.colour, FibreColour::Green);
    EXPECT_EQ(placeInCable(colourOrders().front(), 12, 12).unit, 1);
    EXPECT_EQ(placeInCable(colourOrders().front(), 12, 145).unitLook.tracerMarks, 1);
}

TEST(Fibre, anUnknownOrderIsRefusedWithTheKnownOnes) {
    const auto order = colourOrderNamed("rainbow");
    ASSERT_FALSE(order);
    EXPECT_NE(order.error().next.find("TIA-598"), std::string::npos);
}

TEST(Fibre, onlyPlainDigitsAreAFibreNumber) {
    EXPECT_EQ(fibreNumber("7"), 7);
    EXPECT_EQ(fibreNumber(" 07 "), 7);
    EXPECT_EQ(fibreNumber("0"), std::nullopt);
    EXPECT_EQ(fibreNumber("-3"), std::nullopt);
    EXPECT_EQ(fibreNumber("A7"), std::nullopt);
    EXPECT_EQ(fibreNumber("99999999999"), std::nullopt);
    EXPECT_EQ(fibreNumber(""), std::nullopt);
}

}  // namespace
}  // namespace arc
