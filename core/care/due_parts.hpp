// SPDX-License-Identifier: GPL-3.0-or-later
// The parts dueItems is put together from; not for use outside core/care.
#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/care/queues.hpp"

namespace arc::care::parts {

/// An item with tool, action, title and key filled in. `anchor` is what made it due and stays the same until
/// it is done: the key is made from it.
DueItem itemFor(const Situation& situation, const Tool& tool, const ActionKey& action, Queue queue,
                Basis basis, const std::string& anchor);

/// Obligations and calibration owed.
std::vector<DueItem> compulsory(const Situation& situation, const Tool& tool);
/// Count, days and condition rules of the cards.
std::vector<DueItem> byRule(const Situation& situation, const kit::ToolLife& life);
/// Electrodes and blades: forecast and what to order for them.
std::vector<DueItem> byForecast(const Situation& situation, const kit::ToolLife& life,
                                std::span<const drift::SplicerReport> reports);
/// Open signals of the charts, through the ladder.
std::vector<DueItem> bySignal(const Situation& situation, std::span<const kit::ToolLife> lives,
                              std::span<const drift::SplicerReport> reports);

/// Swabs, alcohol, brushes: what the next four weeks take if they are like the last four.
std::vector<OrderLine> consumables(const Situation& situation);

/// How the electrodes stand: the fewest arcs left by the plain rule and by the forecast.
struct ElectrodeLeft {
    double arcs = 0;  ///< may be negative: past due
    std::uint32_t used = 0;
    std::uint32_t limit = 5000;
    enum class By { Rule, Forecast } by = By::Rule;
    std::optional<double> low, high;  ///< of a forecast
};
std::optional<ElectrodeLeft> electrodesLeft(const kit::ToolLife& life,
                                            std::span<const drift::SplicerReport> reports);
/// Mean uses a day over the days it was used in the last four weeks of use; empty when it was not used.
std::optional<double> usesPerDay(const Situation& situation, ToolId tool, Per per);

}  // namespace arc::care::parts
