// SPDX-License-Identifier: GPL-3.0-or-later
// Identities that no two laptops make twice. New ones are UUID version 7 (RFC 9562); an imported arc gets one
// that is computed from what identifies it, so that the same log imported on two laptops is one record, not
// two.
#pragma once
#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/ports.hpp"

namespace arc {

struct Uuid {
    std::array<std::uint8_t, 16> bytes{};
    constexpr auto operator<=>(const Uuid&) const = default;
};

/// Typed identity; ids of different kinds do not convert into each other.
template <class Tag>
struct Id {
    Uuid uuid;
    constexpr auto operator<=>(const Id&) const = default;
};

using ToolId = Id<struct ToolTag>;
using JobId = Id<struct JobTag>;
using CableId = Id<struct CableTag>;
using ClosureId = Id<struct ClosureTag>;
using SpanId = Id<struct SpanTag>;
using ArcId = Id<struct ArcTag>;
using CareId = Id<struct CareTag>;
using EntryId = Id<struct EntryTag>;  ///< for entries nothing else refers to
using DeviceId = Id<struct DeviceTag>;

/// 8-4-4-4-12 lower-case hexadecimal.
std::string toText(const Uuid& uuid);
std::optional<Uuid> parseUuid(std::string_view text);

/// Version 7: 48 bits of UTC milliseconds, the rest random.
Uuid makeUuid7(Instant now, Random& random);

/// Version 8: computed from a name alone, the same on every laptop. Not a cryptographic hash: names come from
/// our own records, never from an adversary who gains by a collision (the journal's hashes are SHA-256).
Uuid namedUuid(std::string_view name);

template <class AnyId>
AnyId makeId(Clock& clock, Random& random) {
    return AnyId{makeUuid7(clock.now(), random)};
}

}  // namespace arc

template <>
struct std::hash<arc::Uuid> {
    std::size_t operator()(const arc::Uuid& u) const noexcept {
        std::uint64_t h = 1469598103934665603ULL;
        for (const auto b : u.bytes) h = (h ^ b) * 1099511628211ULL;
        return static_cast<std::size_t>(h);
    }
};
template <class Tag>
struct std::hash<arc::Id<Tag>> {
    std::size_t operator()(const arc::Id<Tag>& id) const noexcept { return std::hash<arc::Uuid>{}(id.uuid); }
};
