// SPDX-License-Identifier: GPL-3.0-or-later
// The crew's kit: splicers, cleavers and ribbon strippers as values. Lives and counters are worked out from
// the records (core/kit/life), never stored in the tool.
#pragma once
#include <optional>
#include <string>
#include <variant>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/units/quantity.hpp"

namespace arc {

enum class SplicerKind { SingleFibre, MassFusion };
/// Whether the splice mode in use adjusts the arc at each splice by itself.
enum class ArcControl { Manual, SelfCalibrating };

struct Splicer {
    SplicerKind kind = SplicerKind::SingleFibre;
    int grooves = 1;  ///< V-grooves, 1-16; 1 for a single-fibre splicer
    ArcControl arcControl = ArcControl::Manual;
    bool operator==(const Splicer&) const = default;
};

struct Cleaver {
    int positions = 16;  ///< blade positions per height, 1-24 (common practice: 16)
    int heights = 3;     ///< blade heights before the blade is used up, 1-9
    bool operator==(const Cleaver&) const = default;
};

struct Stripper {
    bool operator==(const Stripper&) const = default;
};

enum class Service { InUse, OutOfService };

struct Tool {
    ToolId id;
    std::string label;     ///< what the crew and the files call it, unique in a logbook: "S-01"
    std::string nickname;  ///< may be empty
    std::variant<Splicer, Cleaver, Stripper> traits;
    Service service = Service::InUse;
    bool operator==(const Tool&) const = default;
};

inline const Splicer* asSplicer(const Tool& tool) {
    return std::get_if<Splicer>(&tool.traits);
}
inline const Cleaver* asCleaver(const Tool& tool) {
    return std::get_if<Cleaver>(&tool.traits);
}
inline const Stripper* asStripper(const Tool& tool) {
    return std::get_if<Stripper>(&tool.traits);
}

/// From this instant on the cleaver prepares the fibres of that splicer, until the next pairing of either.
struct Pairing {
    EntryId id;
    ToolId splicer;
    ToolId cleaver;
    Instant at;
    bool operator==(const Pairing&) const = default;
};

/// The tool's own counter (splicer: lifetime arcs; cleaver: cleaves) was replaced or had been written down
/// wrong.
struct CounterCorrection {
    EntryId id;
    ToolId tool;
    Instant at;
    ArcCount shows;  ///< what the counter shows from `at` on
    std::string reason;
    bool operator==(const CounterCorrection&) const = default;
};

}  // namespace arc
