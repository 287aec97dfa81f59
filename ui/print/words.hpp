// SPDX-License-Identifier: GPL-3.0-or-later
// Texts of the printed record: always with a decimal point and ISO dates, so that paper and files agree.
#pragma once
#include <QString>

#include <optional>
#include <string_view>

#include "core/closeout/record.hpp"

namespace arc::print {

/// UTF-8 from outside: control characters out, very long texts cut.
QString words(std::string_view utf8);
/// "2031-03-03 08:04" at the offset it was written down with.
QString when(const Instant& at);
QString when(const std::optional<Instant>& at);
QString loss(Loss value, int places);
QString loss(const std::optional<double>& db, int places);
/// "1,482"
QString count(std::uint64_t value);
/// Two places unless some loss of the record needs three.
int lossPlaces(const closeout::Record& record);

}  // namespace arc::print
