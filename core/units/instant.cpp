// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/instant.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <optional>

namespace arc {
namespace {

/// Takes exactly `digits` decimal digits off the front.
std::optional<int> takeNumber(std::string_view& text, std::size_t digits) {
    if (text.size() < digits) return std::nullopt;
    int value = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        const char c = text[i];
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    text.remove_prefix(digits);
    return value;
}

bool takeChar(std::string_view& text, std::string_view anyOf) {
    if (text.empty() || anyOf.find(text.front()) == std::string_view::npos) return false;
    text.remove_prefix(1);
    return true;
}

/// Fraction of a second in ms; digits past the third are dropped.
std::optional<int> takeFraction(std::string_view& text) {
    int ms = 0;
    int scale = 100;
    std::size_t digits = 0;
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        ms += (text.front() - '0') * scale;
        scale /= 10;
        text.remove_prefix(1);
        ++digits;
    }
    if (digits == 0) return std::nullopt;
    return ms;
}

/// "Z", "+01:00", "+0100" or "+01"; minutes.
std::optional<int> takeOffset(std::string_view& text) {
    if (takeChar(text, "Zz")) return 0;
    if (text.empty()) return std::nullopt;
    const int sign = text.front() == '-' ? -1 : 1;
    if (!takeChar(text, "+-")) return std::nullopt;
    const auto hours = takeNumber(text, 2);
    if (!hours || *hours > 14) return std::nullopt;
    int minutes = 0;
    if (!text.empty()) {
        takeChar(text, ":");
        const auto read = takeNumber(text, 2);
        if (!read || *read > 59) return std::nullopt;
        minutes = *read;
    }
    return sign * (*hours * 60 + minutes);
}

tl::unexpected<Problem> badTime(std::string_view text, std::string why) {
    return fail(ProblemCode::BadInput,
                "the time \"" + std::string(text) + "\" cannot be read: " + std::move(why), {},
                "Write it like 2031-03-03T07:00:00Z or 2031-03-03T08:00:00+01:00");
}

}  // namespace

Result<Instant> parseInstant(std::string_view text) {
    const std::string_view whole = text;
    const auto year = takeNumber(text, 4);
    if (!year || !takeChar(text, "-")) return badTime(whole, "it does not start with a date YYYY-MM-DD");
    const auto month = takeNumber(text, 2);
    if (!month || !takeChar(text, "-")) return badTime(whole, "it does not start with a date YYYY-MM-DD");
    const auto day = takeNumber(text, 2);
    if (!day) return badTime(whole, "it does not start with a date YYYY-MM-DD");
    namespace ch = std::chrono;
    const ch::year_month_day date{ch::year(*year), ch::month(static_cast<unsigned>(*month)),
                                  ch::day(static_cast<unsigned>(*day))};
    if (!date.ok() || *year < 1970) return badTime(whole, "there is no such day");
    if (!takeChar(text, "Tt ")) return badTime(whole, "the time of day is missing");
    const auto hour = takeNumber(text, 2);
    if (!hour || *hour > 23 || !takeChar(text, ":")) return badTime(whole, "the hour is missing or above 23");
    const auto minute = takeNumber(text, 2);
    if (!minute || *minute > 59) return badTime(whole, "the minute is missing or above 59");
    int second = 0;
    int ms = 0;
    if (takeChar(text, ":")) {
        const auto read = takeNumber(text, 2);
        if (!read || *read > 60) return badTime(whole, "the second is missing or above 60");
        second = std::min(*read, 59);  // a leap second is written as the last second that every clock has
        if (takeChar(text, ".,")) {
            const auto fraction = takeFraction(text);
            if (!fraction) return badTime(whole, "the fraction of the second has no digits");
            ms = *fraction;
        }
    }
    const auto offset = takeOffset(text);
    if (!offset || !text.empty()) return badTime(whole, "the offset from UTC is missing or malformed");
    const std::int64_t days = ch::sys_days(date).time_since_epoch().count();
    const std::int64_t local = ((days * 24 + *hour) * 60 + *minute) * msPerMinute + second * 1000LL + ms;
    return Instant{local - *offset * msPerMinute, static_cast<std::int16_t>(*offset)};
}

CalendarTime calendar(Instant at) {
    namespace ch = std::chrono;
    const ch::sys_time<ch::milliseconds> local{ch::milliseconds(at.ms + at.offsetMinutes * msPerMinute)};
    const auto day = ch::floor<ch::days>(local);
    const ch::year_month_day date{day};
    const ch::hh_mm_ss clock{local - day};
    return {static_cast<int>(date.year()),
            static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day())),
            static_cast<int>(clock.hours().count()),
            static_cast<int>(clock.minutes().count()),
            static_cast<int>(clock.seconds().count())};
}

std::string toIso(Instant at) {
    const CalendarTime c = calendar(at);
    std::array<char, 64> buffer{};
    std::snprintf(buffer.data(), buffer.size(), "%04d-%02d-%02dT%02d:%02d:%02d", c.year, c.month, c.day,
                  c.hour, c.minute, c.second);
    std::string text = buffer.data();
    const auto ms = static_cast<int>(((at.ms % 1000) + 1000) % 1000);
    if (ms != 0) {
        std::snprintf(buffer.data(), buffer.size(), ".%03d", ms);
        text += buffer.data();
    }
    if (at.offsetMinutes == 0) return text + "Z";
    const int minutes = std::abs(at.offsetMinutes);
    std::snprintf(buffer.data(), buffer.size(), "%c%02d:%02d", at.offsetMinutes < 0 ? '-' : '+', minutes / 60,
                  minutes % 60);
    return text + buffer.data();
}

}  // namespace arc
