// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/canonical.hpp"

#include <sodium/crypto_hash_sha256.h>
#include <utility>

namespace arc::storage {

Digest sha256(std::string_view bytes) {
    Digest digest;
    crypto_hash_sha256(digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return digest;
}

std::string toHex(std::span<const std::uint8_t> bytes) {
    static constexpr char digits[] = "0123456789abcdef";
    std::string text;
    text.reserve(bytes.size() * 2);
    for (const auto b : bytes) {
        text += digits[b >> 4];
        text += digits[b & 15];
    }
    return text;
}

std::string_view asText(std::span<const std::uint8_t> bytes) {
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

// Seven bits a byte, lowest first: short for the small numbers that rows mostly hold.
void Canonical::number(std::uint64_t value) {
    while (value >= 0x80) {
        out_ += static_cast<char>(value | 0x80);
        value >>= 7;
    }
    out_ += static_cast<char>(value);
}

Canonical& Canonical::integer(std::int64_t value) {
    out_ += 'i';
    // Sign in the lowest bit, so that small negative numbers are short too.
    number((static_cast<std::uint64_t>(value) << 1) ^ static_cast<std::uint64_t>(value >> 63));
    return *this;
}

Canonical& Canonical::text(std::string_view value) {
    out_ += 't';
    number(value.size());
    out_ += value;
    return *this;
}

Canonical& Canonical::bytes(std::span<const std::uint8_t> value) {
    out_ += 'b';
    number(value.size());
    out_ += asText(value);
    return *this;
}

Canonical& Canonical::nothing() {
    out_ += 'n';
    return *this;
}

Canonical& Canonical::same() {
    out_ += 's';
    return *this;
}

std::string Canonical::take() {
    return std::exchange(out_, {});
}

}  // namespace arc::storage
