// SPDX-License-Identifier: GPL-3.0-or-later
// The charts of a stratum as values: one row each, made from the report and the history. A new chart is one
// function and one row in chart_list.cpp.
#pragma once
#include <memory>
#include <span>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/rules.hpp"
#include "ui/widgets/chart_marks.hpp"
#include "ui/widgets/chart_view.hpp"
#include "ui/widgets/groove_strip.hpp"

namespace arc::ui {

struct ChartSource {
    const drift::StratumReport& report;
    const SplicerHistory& history;
};

/// Index of the history's arcs that belong to the stratum, ascending; arc number = index + 1.
std::vector<std::size_t> arcsOf(const drift::StratumReport& report, const SplicerHistory& history);

/// The chart on top: the common level, or the level of the one groove.
std::shared_ptr<const ChartData> levelChart(const ChartSource& source);
/// Below the strip, in the order they are shown; charts without a reading are left out.
std::vector<std::shared_ptr<const ChartData>> lowerCharts(const ChartSource& source);
/// One row a groove; empty for a single groove.
std::vector<StripRow> stripRows(const ChartSource& source);
/// Care actions as marks on the arc axis.
std::vector<CareMark> careMarks(const SplicerHistory& history);
/// The arcs of each stretch of this splicer; a stretch without an arc has no mark.
std::vector<OwedMark> owedMarks(const SplicerHistory& history, std::span<const care::OwedStretch> owed);

}  // namespace arc::ui
