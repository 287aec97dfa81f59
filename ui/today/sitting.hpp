// SPDX-License-Identifier: GPL-3.0-or-later
// The set-up of a sitting: which splicer, cleaver, person, mode, job and closure the readings belong to, the
// air around, and what was typed and not yet saved. Kept on this laptop, apart from the logbook, so that it
// is set once and survives a crash.
#pragma once
#include <QString>

#include <optional>
#include <string>
#include <vector>

#include "core/logbook.hpp"
#include "core/work/pad.hpp"

namespace arc::ui {

struct Sitting {
    std::optional<ToolId> splicer, cleaver;
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    std::string mode;
    int fibresPerArc = 1;
    std::string operatorName;
    Ambient ambient;
    std::optional<Instant> ambientAt;
    bool operator==(const Sitting&) const = default;
};

/// Typed and not saved yet.
struct Draft {
    std::optional<ClosureId> closure;
    std::string fibre;  ///< Fibre::nameA of the first fibre it is meant for
    std::vector<Loss> noted;
    std::string typed;
    [[nodiscard]] bool empty() const { return noted.empty() && typed.empty(); }
    bool operator==(const Draft&) const = default;
};

/// The laptop's own memory; a file of its own below the user's configuration.
Sitting rememberedSitting();
void remember(const Sitting& sitting);
/// A draft is nobody's record yet, so it stays on this laptop and out of the logbook; one for each closure,
/// so that work on another closure or in another logbook does not push it out.
Draft rememberedDraft(const std::optional<ClosureId>& closure);
void remember(const Draft& draft);

/// Fills what is empty, or no longer in the book, from the latest arc and the pairings.
Result<Sitting> completed(Sitting sitting, Logbook& book);

/// What the pad works on.
struct Desk {
    Tool splicer;
    std::optional<Tool> cleaver;
    std::optional<Job> job;
    std::optional<Closure> closure;
    std::optional<Cable> cableA;
    std::vector<pad::Fibre> fibres;
    std::vector<SpliceArc> arcs;
    pad::SetUp setUp;
    std::string span;    ///< label of the span the closure is on; may be empty
    bool twice = false;  ///< the closure was edited on two laptops
};
/// Reads tools, job, closure and its splices. The Problem says what is missing from the set-up.
Result<Desk> desk(const Sitting& sitting, Logbook& book);

/// Arcs with their readings from rows of one closure, oldest first.
std::vector<SpliceArc> arcsOf(const std::vector<SpliceRow>& rows);
/// All rows of a filter, page by page.
Result<std::vector<SpliceRow>> allRows(Logbook& book, const SpliceFilter& filter);

}  // namespace arc::ui
