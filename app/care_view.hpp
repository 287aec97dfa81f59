// SPDX-License-Identifier: GPL-3.0-or-later
// What is due in a logbook, with everything it is based on, read once.
#pragma once
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/queues.hpp"
#include "core/logbook.hpp"
#include "core/result.hpp"

namespace arc::app {

struct CareView {
    care::Situation situation;
    std::vector<drift::SplicerReport> reports;  ///< as of the same instant
    std::vector<care::DueItem> due;
    std::vector<Problem> problems;  ///< cards and settings that were put aside for the shipped ones
};

/// As it was at `now`: what was written down for later instants is left out.
Result<CareView> careView(Logbook& book, Instant now);

}  // namespace arc::app
