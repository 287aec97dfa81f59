// SPDX-License-Identifier: GPL-3.0-or-later
// Jobs, cables, closures with their splice plan, and the spans that acceptance and link budgets are about.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/work/acceptance.hpp"

namespace arc {

struct Job {
    JobId id;
    std::string label;  ///< unique in a logbook: "HR-B"
    std::string title;  ///< for people, may be empty
    AcceptanceRule rule;
    bool operator==(const Job&) const = default;
};

enum class FibreUnit { Tube, Ribbon };
/// How fibres that are spliced together lie side by side. Web-type ribbon and loose tubes that are ribbonised
/// by hand shed fragments at every strip (common practice).
enum class RibbonKind { Flat, WebType, RibbonisedTubes };

struct Cable {
    CableId id;
    JobId job;
    std::string label;
    int fibreCount = 0;  ///< 1-6912
    FibreUnit unit = FibreUnit::Tube;
    int unitSize = 12;  ///< fibres per tube or ribbon
    std::string colourOrder = "TIA-598";
    std::string fibreType = "G.652.D";
    std::optional<double> lengthKm;
    std::optional<RibbonKind> ribbon;  ///< how its fibres are stripped together; none: nobody said
    bool operator==(const Cable&) const = default;
};

/// One row of a splice plan: this fibre of side A to that fibre of side B.
struct PlannedSplice {
    int fibreA = 0;  ///< 1-based number in the cable on side A
    int fibreB = 0;
    bool operator==(const PlannedSplice&) const = default;
};

struct Closure {
    ClosureId id;
    JobId job;
    std::string label;  ///< unique in its job: "HR-17"
    std::optional<CableId> cableA;
    std::optional<CableId> cableB;
    int trays = 1;
    int perTray = 24;  ///< splices a tray holds
    std::vector<PlannedSplice> plan;
    bool operator==(const Closure&) const = default;
};

/// Where a span ends: in a closure of the job, or at a named end ("rack 2"), where a connector sits.
struct SpanEnd {
    std::optional<ClosureId> closure;
    std::string name;  ///< empty when it is a closure
    bool operator==(const SpanEnd&) const = default;
};

/// A stretch that is accepted as one: the average of the contract and the link budget are about a span. What
/// is spliced in its closures belongs to it. A job without spans is one span.
struct Span {
    SpanId id;
    JobId job;
    std::string label;  ///< unique in its job
    SpanEnd from, to;
    std::optional<CableId> cable;
    std::optional<double> lengthKm;  ///< none: that of the cable
    std::vector<ClosureId> closures;
    bool operator==(const Span&) const = default;
};

}  // namespace arc
