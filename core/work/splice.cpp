// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/splice.hpp"

namespace arc {

ArcId importedArcId(ToolId splicer, Instant at, std::optional<ArcCount> counter) {
    std::string name = "arc/" + toText(splicer.uuid) + "/" + std::to_string(at.ms) + "/";
    if (counter) name += std::to_string(counter->value);
    return ArcId{namedUuid(name)};
}

}  // namespace arc
