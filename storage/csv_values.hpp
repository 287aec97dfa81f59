// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers and headers of CSV files. Numbers are read digit by digit into whole numbers of the wanted unit: no
// binary fraction in between, no locale.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/column_key.hpp"

namespace arc::storage {

/// "-0.035" with 3 places is -35; further digits are rounded (half away from zero). Empty, exponents, group
/// marks and more than 12 digits before the mark are no number.
std::optional<std::int64_t> fixedPoint(std::string_view text, int places, DecimalMark mark);

/// Whole number without sign, at most 18 digits.
std::optional<std::int64_t> wholeNumber(std::string_view text);

/// Bytes that are not UTF-8 and control characters as \xNN, at most `limit` bytes: for keeping and showing a
/// row that could not be read.
std::string showable(std::string_view raw, std::size_t limit);

}  // namespace arc::storage
