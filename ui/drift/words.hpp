// SPDX-License-Identifier: GPL-3.0-or-later
// The charts' verdicts in words for people.
#pragma once
#include <QString>

#include "core/analytics/drift.hpp"
#include "core/care/card.hpp"
#include "core/kit/tool.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

/// "S-01 “Heron”"
QString nameOf(const Tool& tool);
/// "groove or clamp", "electrodes", …
QString wordOf(drift::Cause cause);
/// "groove 5 alone", "all grooves together", …
QString wordOf(drift::ChartKind chart, std::optional<int> channel);
QString wordOf(drift::SignalState state);
Mark markOf(drift::SignalState state);
QString wordOf(drift::CareVerdict verdict);
Mark markOf(drift::CareVerdict verdict);

/// "57 arcs", "1 arc"
QString arcsWord(std::uint64_t arcs);
/// Short, for the foot of a chart: "groove clean".
QString careName(const ActionKey& action);
/// The card's title, "Clean V-grooves"; the short name when there is no such card.
QString careTitle(const ActionKey& action, const care::Deck* deck);

/// "arc 1,482 (1,461–1,490)"
QString beginOf(const drift::Signal& signal);

}  // namespace arc::ui
