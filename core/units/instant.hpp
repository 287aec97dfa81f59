// SPDX-License-Identifier: GPL-3.0-or-later
// A point in time: UTC milliseconds, and the offset from UTC that was in force where it was written down.
#pragma once
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/result.hpp"

namespace arc {

struct Instant {
    std::int64_t ms = 0;             ///< milliseconds since 1970-01-01T00:00:00Z
    std::int16_t offsetMinutes = 0;  ///< local = UTC + offset; -14 h … +14 h; kept for people, never compared

    constexpr bool operator==(const Instant& other) const { return ms == other.ms; }
    constexpr auto operator<=>(const Instant& other) const { return ms <=> other.ms; }
};

constexpr std::int64_t msPerMinute = 60'000;
constexpr std::int64_t msPerHour = 60 * msPerMinute;
constexpr std::int64_t msPerDay = 24 * msPerHour;

/// Reads ISO 8601 / RFC 3339: "2031-03-03T07:00:00Z", "2031-03-03 07:00+01:00", fractions of a second
/// allowed. Years 1970-9999. An offset or Z is required: a time without one is refused, because it cannot be
/// ordered.
Result<Instant> parseInstant(std::string_view text);

/// "2031-03-03T07:00:00Z" or "…+01:00"; milliseconds only when there are any. parseInstant reads it back
/// exactly.
std::string toIso(Instant at);

/// Calendar parts at the instant's own offset, for texts and for "per day" grouping.
struct CalendarTime {
    int year, month, day, hour, minute, second;
};
CalendarTime calendar(Instant at);

}  // namespace arc
