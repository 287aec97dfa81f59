// SPDX-License-Identifier: GPL-3.0-or-later
// All rows written under one journal row, as values, and their digest. The digest is taken in an order and in
// a form that do not depend on the file they lie in: the same on every laptop.
#pragma once
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/work/splice.hpp"
#include "storage/canonical.hpp"
#include "storage/record_json.hpp"

namespace arc::storage {

/// First half of the hash of the journal row that wrote the version which this one replaces.
using Base = std::optional<std::array<std::uint8_t, 16>>;

struct RecordVersion {
    RecordRow row;
    Base base;
};
struct ArcVersion {
    SpliceArc arc;  ///< readings are left empty
    Base base;
};
struct ReadingVersion {
    Uuid arc;
    Reading reading;
    Base base;
};
struct SetAsideVersion {
    std::string kind;  ///< "splices", "events", "measured"
    std::string file;
    std::uint64_t line = 0;
    std::string column;
    std::string reason;
    std::string text;
};

/// Whether the arcs of a batch are known to be in no version in the book yet.
enum class Novelty { Unknown, AllArcsNew };

struct Batch {
    std::vector<RecordVersion> records;
    std::vector<ArcVersion> arcs;
    std::vector<ReadingVersion> readings;
    std::vector<SetAsideVersion> setAside;
    Novelty novelty = Novelty::Unknown;

    [[nodiscard]] bool empty() const {
        return records.empty() && arcs.empty() && readings.empty() && setAside.empty();
    }
    void clear();
};

/// Sorts the batch into its canonical order and hashes it.
Digest digestOf(Batch& batch);

/// Tells equal set-aside rows apart from new ones: over kind, line and text.
Digest setAsideKey(const SetAsideVersion& row);

}  // namespace arc::storage
