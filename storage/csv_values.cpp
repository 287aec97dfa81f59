// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/csv_values.hpp"

#include <algorithm>

#include "storage/csv_source.hpp"

namespace arc::storage {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

}  // namespace

std::optional<std::int64_t> fixedPoint(std::string_view text, int places, DecimalMark mark) {
    bool negative = false;
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        negative = text.front() == '-';
        text.remove_prefix(1);
    }
    const char decimal = mark == DecimalMark::Point ? '.' : ',';
    std::int64_t value = 0;
    std::size_t i = 0;
    constexpr std::size_t mostWhole = 12;
    for (; i < text.size() && isDigit(text[i]); ++i) {
        if (i >= mostWhole) return std::nullopt;
        value = value * 10 + (text[i] - '0');
    }
    std::size_t digits = i;
    int written = 0;
    bool up = false;
    if (i < text.size()) {
        if (text[i] != decimal) return std::nullopt;
        for (++i; i < text.size(); ++i) {
            if (!isDigit(text[i])) return std::nullopt;
            ++digits;
            if (written < places) {
                value = value * 10 + (text[i] - '0');
                ++written;
            } else if (written == places) {
                up = text[i] >= '5';
                ++written;
            }
        }
    }
    if (digits == 0) return std::nullopt;
    for (; written < places; ++written) value *= 10;
    if (up) ++value;
    return negative ? -value : value;
}

std::optional<std::int64_t> wholeNumber(std::string_view text) {
    constexpr std::size_t most = 18;
    if (text.empty() || text.size() > most) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : text) {
        if (!isDigit(c)) return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string showable(std::string_view raw, std::size_t limit) {
    static constexpr char digits[] = "0123456789abcdef";
    const bool plain = isUtf8(raw);
    std::string shown;
    for (const char c : raw.substr(0, limit)) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte < 0x20 && c != '\t' && c != '\n') || byte == 0x7f || (byte >= 0x80 && !plain)) {
            shown += "\\x";
            shown += digits[byte >> 4];
            shown += digits[byte & 15];
        } else {
            shown += c;
        }
    }
    // The cut must not leave half a character.
    while (!shown.empty() && !isUtf8(shown)) shown.pop_back();
    if (raw.size() > limit) shown += "…";
    return shown;
}

}  // namespace arc::storage
