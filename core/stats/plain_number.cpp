// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/plain_number.hpp"

#include <array>
#include <charconv>

namespace arc::stats {

std::string plainNumber(double value) {
    std::array<char, 32> digits{};
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    return error == std::errc{} ? std::string(digits.data(), end) : std::string("a number");
}

std::string fixedNumber(double value, int places) {
    std::array<char, 340> digits;  // the longest double has 309 before the point
    const auto [end, error] =
        std::to_chars(digits.data(), digits.data() + digits.size(), value, std::chars_format::fixed, places);
    return error == std::errc{} ? std::string(digits.data(), end) : plainNumber(value);
}

std::string signedNumber(double value, int places) {
    std::string text = fixedNumber(value, places);
    return text.front() == '-' ? text : "+" + text;
}

}  // namespace arc::stats
