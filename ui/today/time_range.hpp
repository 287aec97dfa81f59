// SPDX-License-Identifier: GPL-3.0-or-later
// A stretch of days as a person types it into a filter.
#pragma once
#include <QString>

#include <cstdint>
#include <optional>

#include "core/result.hpp"
#include "core/units/instant.hpp"

namespace arc::ui {

/// [from, to) in UTC ms; an empty end is open.
struct TimeRange {
    std::optional<std::int64_t> fromMs, toMs;
    bool operator==(const TimeRange&) const = default;
};

/// "" is any time; "7 d" the last seven days; "2031-03-03" that day, "2031-03" that month, "2031" that year,
/// "2031-03-03 to 2031-03-15" with both days in it, at the offset of `now`. Other orders of day and month are
/// refused, because nobody can know which is which.
Result<TimeRange> readTimeRange(const QString& typed, Instant now);

}  // namespace arc::ui
