// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/fibre.hpp"

#include <array>
#include <charconv>
#include <stdexcept>

namespace arc {

std::string_view word(FibreColour colour) {
    switch (colour) {
        case FibreColour::Blue:
            return "blue";
        case FibreColour::Orange:
            return "orange";
        case FibreColour::Green:
            return "green";
        case FibreColour::Brown:
            return "brown";
        case FibreColour::Slate:
            return "slate";
        case FibreColour::White:
            return "white";
        case FibreColour::Red:
            return "red";
        case FibreColour::Black:
            return "black";
        case FibreColour::Yellow:
            return "yellow";
        case FibreColour::Violet:
            return "violet";
        case FibreColour::Rose:
            return "rose";
        case FibreColour::Aqua:
            return "aqua";
        case FibreColour::Turquoise:
            return "turquoise";
        case FibreColour::Natural:
            return "natural";
        case FibreColour::Lime:
            return "lime";
        case FibreColour::Grey:
            return "grey";
        case FibreColour::Pink:
            return "pink";
    }
    return "unknown colour";
}

std::span<const ColourOrder> colourOrders() {
    using enum FibreColour;
    // IEC 60304 names the colours and fixes no order, IEC TR 63194:2019 endorses none.
    static const std::array<ColourOrder, 3> orders{{
        {"TIA-598",
         {Blue, Orange, Green, Brown, Slate, White, Red, Black, Yellow, Violet, Rose, Aqua},
         "ANSI/TIA-598-D"},
        {"German/DIN",
         {Red, Green, Blue, Yellow, White, Grey, Brown, Violet, Turquoise, Black, Orange, Pink},
         "secondary public pages; confirm with the cable's data sheet"},
        {"Historic IEC 60794-2",
         {Blue, Yellow, Red, White, Green, Violet, Orange, Grey, Turquoise, Black, Brown, Pink},
         "secondary public pages; confirm with the cable's data sheet"},
    }};
    return orders;
}

Result<ColourOrder> colourOrderNamed(std::string_view name) {
    std::string known;
    for (const auto& order : colourOrders()) {
        if (order.name == name) return order;
        known += (known.empty() ? "" : ", ") + order.name;
    }
    return fail(ProblemCode::NotFound, "there is no colour order \"" + std::string(name) + "\"",
                "colour order", "Take one of: " + known);
}

FibreLook look(const ColourOrder& order, int number) {
    if (number < 1) throw std::out_of_range("fibre numbers begin at 1");
    const int index = number - 1;
    return {order.colours[index % 12], index / 12};
}

FibrePlace placeInCable(const ColourOrder& order, int unitSize, int number) {
    if (number < 1 || unitSize < 1) throw std::out_of_range("fibre numbers and unit sizes begin at 1");
    FibrePlace place;
    place.unit = (number - 1) / unitSize + 1;
    place.position = (number - 1) % unitSize + 1;
    place.unitLook = look(order, place.unit);
    place.fibreLook = look(order, place.position);
    return place;
}

std::optional<int> fibreNumber(std::string_view name) {
    const auto first = name.find_first_not_of(" \t");
    if (first == std::string_view::npos) return std::nullopt;
    name = name.substr(first, name.find_last_not_of(" \t") - first + 1);
    int number = 0;
    const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), number);
    if (error != std::errc{} || end != name.data() + name.size() || number < 1) return std::nullopt;
    return number;
}

}  // namespace arc
