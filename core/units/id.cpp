// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/id.hpp"

namespace arc {

std::string toText(const Uuid& uuid) {
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    text.reserve(36);
    for (std::size_t i = 0; i < 16; ++i) {
        if (i == 4 || i == 6 || i == 8 || i == 10) text += '-';
        text += digits[uuid.bytes[i] >> 4];
        text += digits[uuid.bytes[i] & 15];
    }
    return text;
}

std::optional<Uuid> parseUuid(std::string_view text) {
    if (text.size() != 36) return std::nullopt;
    Uuid uuid;
    std::size_t nibble = 0;
    for (std::size_t i = 0; i < 36; ++i) {
        const char c = text[i];
        if (i == 8 || i == 13 || i == 18 || i == 23) {
            if (c != '-') return std::nullopt;
            continue;
        }
        int v = 0;
        if (c >= '0' && c <= '9') {
            v = c - '0';
        } else if (c >= 'a' && c <= 'f') {
            v = c - 'a' + 10;
        } else if (c >= 'A' && c <= 'F') {
            v = c - 'A' + 10;
        } else {
            return std::nullopt;
        }
        auto& byte = uuid.bytes[nibble / 2];
        byte = static_cast<std::uint8_t>(nibble % 2 == 0 ? v << 4 : byte | v);
        ++nibble;
    }
    return uuid;
}

Uuid namedUuid(std::string_view name) {
    // Two FNV-1a passes with different offsets, each finished by the splitmix64 mixer.
    const auto hash = [name](std::uint64_t h) {
        for (const char c : name) h = (h ^ static_cast<std::uint8_t>(c)) * 1099511628211ULL;
        h ^= h >> 30;
        h *= 0xbf58476d1ce4e5b9ULL;
        h ^= h >> 27;
        h *= 0x94d049bb133111ebULL;
        return h ^ (h >> 31);
    };
    const std::uint64_t halves[2] = {hash(14695981039346656037ULL), hash(0x9e3779b97f4a7c15ULL)};
    Uuid uuid;
    for (std::size_t i = 0; i < 16; ++i)
        uuid.bytes[i] = static_cast<std::uint8_t>(halves[i / 8] >> (8 * (7 - i % 8)));
    uuid.bytes[6] = static_cast<std::uint8_t>((uuid.bytes[6] & 0x0f) | 0x80);
    uuid.bytes[8] = static_cast<std::uint8_t>((uuid.bytes[8] & 0x3f) | 0x80);
    return uuid;
}

Uuid makeUuid7(Instant now, Random& random) {
    Uuid uuid;
    random.fill(uuid.bytes.data(), uuid.bytes.size());
    for (std::size_t i = 0; i < 6; ++i)
        uuid.bytes[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(now.ms) >> (8 * (5 - i)));
    uuid.bytes[6] = static_cast<std::uint8_t>((uuid.bytes[6] & 0x0f) | 0x70);
    uuid.bytes[8] = static_cast<std::uint8_t>((uuid.bytes[8] & 0x3f) | 0x80);
    return uuid;
}

}  // namespace arc
