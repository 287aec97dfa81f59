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

}  // namespace arc::stats
