// SPDX-License-Identifier: GPL-3.0-or-later
// A splice as it was made: one arc joins 1-16 fibre pairs, each with its own estimated loss.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/units/quantity.hpp"

namespace arc {

struct Ambient {
    std::optional<Temperature> temperature;
    std::optional<Humidity> humidity;
    std::optional<Pressure> pressure;
    bool operator==(const Ambient&) const = default;
};

/// Voided readings stay in the logbook and are left out of charts, completeness and closeout.
enum class ReadingState { Good, Voided };

/// One fibre pair in one arc. Its identity is (arc, channel).
struct Reading {
    int channel = 1;  ///< 1-based V-groove number
    Loss loss;        ///< estimated by the splicer, >= 0
    std::optional<Angle> cleaveLeft;
    std::optional<Angle> cleaveRight;
    std::string fibreA;  ///< fibre identity on either side; may be empty
    std::string fibreB;
    int attempt = 1;  ///< > 1 re-does the same fibre pair
    ReadingState state = ReadingState::Good;
    std::string note;  ///< why it was kept, corrected or voided
    bool operator==(const Reading&) const = default;
};

enum class Origin { Typed, Imported, Simulated };

struct SpliceArc {
    ArcId id;
    Instant at;
    ToolId splicer;
    std::optional<ToolId> cleaver;
    std::optional<JobId> job;  ///< none = "unassigned"
    std::optional<ClosureId> closure;
    std::string mode;                 ///< splice mode label, e.g. "G.652-G.652"
    int channels = 1;                 ///< fibres in this arc: 1, 2, 4, 8, 12 or 16
    std::optional<ArcCount> counter;  ///< the splicer's lifetime arc counter
    Ambient ambient;
    std::string operatorName;
    Origin origin = Origin::Typed;
    std::vector<Reading> readings;  ///< at most one a channel, ascending
    bool operator==(const SpliceArc&) const = default;
};

/// A further reading of an arc that is in the logbook, or a new version of one.
struct ReadingChange {
    ArcId arc;
    Reading reading;
    bool operator==(const ReadingChange&) const = default;
};

/// A loss measured from the ends of the span (OTDR), signed, per wavelength. One direction alone is a one-way
/// value and says so everywhere it appears.
struct MeasuredLoss {
    EntryId id;
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    std::string fibre;
    int wavelengthNm = 1550;
    std::optional<Loss> aToB;
    std::optional<Loss> bToA;
    Instant at;
    std::string instrument;
    std::string note;
    bool operator==(const MeasuredLoss&) const = default;
};

/// The identity of an arc read from a file: the same on every laptop that imports it for the same splicer.
ArcId importedArcId(ToolId splicer, Instant at, std::optional<ArcCount> counter);

}  // namespace arc
