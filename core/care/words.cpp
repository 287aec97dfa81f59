// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/words.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace arc::care {
namespace {

constexpr const char* months[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                  "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

}  // namespace

std::string grouped(std::uint64_t number) {
    std::string digits = std::to_string(number);
    for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, ",");
    return digits;
}

std::string plain(double number) {
    const double tenths = std::round(number * 10);
    std::string text = std::to_string(static_cast<long long>(tenths / 10));
    const auto rest = static_cast<long long>(std::abs(std::fmod(tenths, 10)));
    if (rest != 0) text += "." + std::to_string(rest);
    return number < 0 && tenths != 0 && text.front() != '-' ? "-" + text : text;
}

std::string shortDay(Instant at) {
    const CalendarTime time = calendar(at);
    return std::to_string(time.day) + " " + months[time.month - 1];
}

std::string shortTime(Instant at) {
    const CalendarTime time = calendar(at);
    char clock[32];
    std::snprintf(clock, sizeof clock, " %02d:%02d", time.hour, time.minute);
    return shortDay(at) + clock;
}

std::string spaced(std::string key) {
    std::ranges::replace(key, '_', ' ');
    return key;
}

std::string titled(std::string key) {
    std::string title = spaced(std::move(key));
    if (!title.empty() && title.front() >= 'a' && title.front() <= 'z')
        title.front() = static_cast<char>(title.front() - 'a' + 'A');
    return title;
}

std::string counted(std::uint64_t n, const char* one, const char* many) {
    return grouped(n) + " " + (n == 1 ? one : many);
}

}  // namespace arc::care
