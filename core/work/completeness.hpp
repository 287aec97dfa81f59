// SPDX-License-Identifier: GPL-3.0-or-later
// Does a closure hold what was planned: which fibres are spliced, missing, crossed or not in the plan.
#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/work/attempts.hpp"
#include "core/work/job.hpp"

namespace arc {

/// A splice that was made though the plan does not say so.
struct UnplannedSplice {
    std::string fibreA, fibreB;
    bool operator==(const UnplannedSplice&) const = default;
};

struct Completeness {
    int planned = 0;
    int spliced = 0;                         ///< planned pairs with a splice that stands
    int accepted = 0;                        ///< of these, Accepted or KeptWithNote
    std::vector<PlannedSplice> missing;      ///< planned, nothing stands
    std::vector<PlannedSplice> open;         ///< spliced, but to be re-spliced, noted or decided
    std::vector<UnplannedSplice> unplanned;  ///< made, not planned: a crossing or a name that is not a number
    bool operator==(const Completeness&) const = default;
};

/// `rows` are all readings of this closure. Fibre names that are digits alone count as numbers; when only one
/// side is named, the plan supplies the other.
Completeness completeness(const Closure& closure, std::span<const SpliceRow> rows,
                          const AcceptanceRule& rule);

}  // namespace arc
