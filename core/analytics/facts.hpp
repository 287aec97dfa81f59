// SPDX-License-Identifier: GPL-3.0-or-later
// Gathers the facts about a signal from the arcs around it. Bounded: looks at the window it is given.
#pragma once
#include <span>

#include "core/analytics/case_file.hpp"

namespace arc::drift {

/// `window` holds rows in order, from well before the begin up to now; `events` is the care so far.
CaseFacts gatherFacts(const Case& about, std::span<const Row> window, const Model& model,
                      std::span<const CareRecord> events);

/// What the raising statistic alone says about the begin; cheap.
Explanation explainRaise(const Case& about, std::span<const Row> window, const Model& model);

}  // namespace arc::drift
