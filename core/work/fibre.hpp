// SPDX-License-Identifier: GPL-3.0-or-later
// Fibre identity. The colour order is a property of the cable: IEC 60304 names twelve colours and fixes no
// order; the default order is ANSI/TIA-598-D. Always show the number and the word.
#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/result.hpp"

namespace arc {

enum class FibreColour {
    Blue,
    Orange,
    Green,
    Brown,
    Slate,
    White,
    Red,
    Black,
    Yellow,
    Violet,
    Rose,
    Aqua,
    Turquoise,
    Natural,
    Lime,
    Grey,  ///< the word of orders that do not say slate
    Pink   ///< the word of orders that do not say rose
};

/// "blue", "slate", … in English, lower case; the window translates.
std::string_view word(FibreColour colour);

/// Twelve colours in the order a cable uses them.
struct ColourOrder {
    std::string name;  ///< "TIA-598"
    FibreColour colours[12]{};
    std::string source;  ///< where the order is written down, and how sure that is
    bool operator==(const ColourOrder&) const = default;
};

/// The orders we ship; the first is TIA-598.
std::span<const ColourOrder> colourOrders();
Result<ColourOrder> colourOrderNamed(std::string_view name);

/// How a fibre looks: colour of position ((number - 1) mod 12) + 1; from 13 on in its unit it carries a
/// tracer.
struct FibreLook {
    FibreColour colour;
    int tracerMarks;  ///< 0 for 1-12, 1 for 13-24, …
};
/// `number` is 1-based within the tube or ribbon; throws std::out_of_range below 1.
FibreLook look(const ColourOrder& order, int number);

/// Where a fibre of a cable is found: which tube or ribbon, and which fibre in it. Units carry the same
/// colour order as fibres.
struct FibrePlace {
    int unit = 1;      ///< 1-based tube or ribbon
    int position = 1;  ///< 1-based within it
    FibreLook unitLook{};
    FibreLook fibreLook{};
};
/// `number` is 1-based in the cable, `unitSize` fibres per unit; throws std::out_of_range below 1.
FibrePlace placeInCable(const ColourOrder& order, int unitSize, int number);

/// The number of a fibre written as digits alone ("7", " 07"); nothing for any other name.
std::optional<int> fibreNumber(std::string_view name);

}  // namespace arc
