// SPDX-License-Identifier: GPL-3.0-or-later
// splices.csv of a closeout record: the columns of a splice log, one row per attempt, so that it can be read
// back; then colours, verdict and flags. RFC 4180, UTF-8.
#pragma once
#include <string>
#include <string_view>

#include "core/closeout/record.hpp"

namespace arc::storage {

std::string splicesCsv(const closeout::Record& record);

/// Quoted where RFC 4180 asks for it. A text that a spreadsheet would take for a formula (leading = + - @,
/// tab or carriage return) gets an apostrophe in front.
std::string csvText(std::string_view text);

/// Thousandths as a decimal number with at least two places: 20 → "0.02", -273 → "-0.273".
std::string thousandths(std::int64_t value);
/// Hundredths, one place at least: 40 → "0.4".
std::string hundredths(std::int64_t value);

}  // namespace arc::storage
