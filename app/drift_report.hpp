// SPDX-License-Identifier: GPL-3.0-or-later
// The drift report as words for people and as JSON for other programs.
#pragma once
#include <iosfwd>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"

namespace arc::app {

/// {"signals":[…],"splicers":[…],"budget_arcs":N}; the signals as FORMATS promises, the rest is more.
std::string driftJson(const std::vector<drift::SplicerReport>& reports, double budgetArcs);

void writeDriftText(std::ostream& out, const std::vector<drift::SplicerReport>& reports, double budgetArcs);

}  // namespace arc::app
