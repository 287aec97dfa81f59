// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/splice.hpp"

#include <cstdint>

namespace arc {

ArcId importedArcId(ToolId splicer, Instant at, std::optional<ArcCount> counter) {
    std::string name = "arc/" + toText(splicer.uuid) + "/" + std::to_string(at.ms) + "/";
    if (counter) name += std::to_string(counter->value);
    ArcId id{namedUuid(name)};
    // Begins with the time like a version 7, so that arcs lie in a store's index in the order they were made.
    for (std::size_t i = 0; i < 6; ++i)
        id.uuid.bytes[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(at.ms) >> (8 * (5 - i)));
    return id;
}

}  // namespace arc
