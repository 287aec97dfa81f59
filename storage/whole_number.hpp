// SPDX-License-Identifier: GPL-3.0-or-later
// Whole numbers out of JSON. The library's own get<int>() cuts off what does not fit, drops fractions and has
// no defined answer for 1e90.
#pragma once
#include <concepts>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <utility>

namespace arc::storage {

/// Nothing when the value is no whole number, or outside the range of T.
template <std::integral T, class Json>
std::optional<T> wholeNumber(const Json& value) {
    if (value.is_number_unsigned()) {
        const auto number = value.template get<std::uint64_t>();
        if (std::in_range<T>(number)) return static_cast<T>(number);
    } else if (value.is_number_integer()) {
        const auto number = value.template get<std::int64_t>();
        if (std::in_range<T>(number)) return static_cast<T>(number);
    }
    return std::nullopt;
}

/// Throws std::range_error instead.
template <std::integral T, class Json>
T needWholeNumber(const Json& value) {
    const auto number = wholeNumber<T>(value);
    if (!number) throw std::range_error("a number in it is not whole or too big");
    return *number;
}

}  // namespace arc::storage
