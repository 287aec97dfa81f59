// SPDX-License-Identifier: GPL-3.0-or-later
// What the charts read: the arcs of one splicer in book order as plain columns, and the care done meanwhile.
// A stratum is one splicer + splice mode + fibres per arc.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/care/record.hpp"
#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/units/quantity.hpp"
#include "core/work/job.hpp"

namespace arc {

struct HistoryReading {
    Loss loss;
    std::optional<Angle> cleaveLeft;
    std::optional<Angle> cleaveRight;
    std::uint8_t channel = 1;
    std::uint8_t attempt = 1;
};

struct HistoryArc {
    Instant at;
    std::optional<ArcCount> counter;
    std::optional<std::uint32_t> job;      ///< index into SplicerHistory::jobs
    std::optional<std::uint32_t> cleaver;  ///< index into SplicerHistory::cleavers
    std::optional<std::uint32_t> closure;  ///< index into SplicerHistory::closures
    std::uint32_t mode = 0;                ///< index into SplicerHistory::modes
    std::optional<Temperature> temperature;
    std::optional<Pressure> pressure;
    std::uint8_t channels = 1;
    std::uint8_t readingCount = 0;
    std::uint64_t firstReading = 0;  ///< index into SplicerHistory::readings
};

/// Where fibres were spliced.
struct HistoryClosure {
    ClosureId id;
    std::vector<Cable> cables;  ///< of side A, then of side B, as far as the book knows them
    bool operator==(const HistoryClosure&) const = default;
};

/// Arcs in order of (instant, counter, row): arc number n of the splicer is arcs[n - 1].
struct SplicerHistory {
    ToolId splicer;
    std::string label;
    std::vector<HistoryArc> arcs;
    std::vector<HistoryReading> readings;
    std::vector<std::string> modes;
    std::vector<JobId> jobs;
    std::vector<std::string> jobLabels;
    std::vector<ToolId> cleavers;
    std::vector<HistoryClosure> closures;
    std::vector<CareRecord> events;  ///< of the splicer and of its cleavers, by time; environment changes too
};

/// "G.652-G.652 / 12": the key of the stratum within a splicer.
std::string stratumKey(const std::string& mode, int channels);

}  // namespace arc
