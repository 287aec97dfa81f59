// SPDX-License-Identifier: GPL-3.0-or-later
// Rows as bytes that are the same on every laptop: each value with its type and length, identities and words
// instead of this file's keys. And SHA-256 over them.
#pragma once
#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/units/id.hpp"

namespace arc::storage {

using Digest = std::array<std::uint8_t, 32>;

Digest sha256(std::string_view bytes);
std::string toHex(std::span<const std::uint8_t> bytes);
std::string_view asText(std::span<const std::uint8_t> bytes);

class Canonical {
  public:
    Canonical& integer(std::int64_t value);
    Canonical& text(std::string_view value);
    Canonical& bytes(std::span<const std::uint8_t> value);
    Canonical& uuid(const Uuid& value) { return bytes(value.bytes); }
    Canonical& nothing();
    /// As in the row before.
    Canonical& same();
    Canonical& maybe(const std::optional<std::int64_t>& value) { return value ? integer(*value) : nothing(); }
    Canonical& maybe(const std::optional<Uuid>& value) { return value ? uuid(*value) : nothing(); }

    [[nodiscard]] const std::string& view() const { return out_; }
    void clear() { out_.clear(); }
    /// Moves out what was written so far.
    std::string take();

  private:
    void number(std::uint64_t value);
    std::string out_;
};

}  // namespace arc::storage
