// SPDX-License-Identifier: GPL-3.0-or-later
// The gate every care record a person makes goes through before it is appended, from the window and from the
// command line alike. Imported history is not judged here: what was done was done.
#pragma once
#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/care/queues.hpp"
#include "core/care/record.hpp"
#include "core/result.hpp"

namespace arc::care {

/// The record as it may be appended: the action suits the tool, a calibration has its two results, fibre type
/// and count, blade work has the place it ends at (filled in when it is not given) and skips none.
/// `situation` as of the record's instant.
Result<CareRecord> checkedRecord(const Situation& situation, CareRecord record);

/// A gentler care that was not tried.
struct GentlerCare {
    ActionKey action;
    std::string why;  ///< "not in the logbook since \"turn the blade\" of 3 Mar 10:40"
    bool operator==(const GentlerCare&) const = default;
};
/// Gentle before drastic: the gentler care that this action skips at a tool, gentlest first. Empty when the
/// action is due itself, or when all gentler care was done since the action was last done there and, where a
/// signal asks for gentler care, since that signal. What was done may still be recorded; the window and the
/// command line say what was skipped and take a reason into the record.
std::vector<GentlerCare> skippedGentler(const Situation& situation, std::span<const DueItem> due, ToolId tool,
                                        const ActionKey& action);
/// What went before gentler care, and why, as fields of a run or a record.
void noteSkipped(std::map<std::string, std::string>& fields, std::span<const GentlerCare> skipped,
                 const std::string& reason);

}  // namespace arc::care
