// SPDX-License-Identifier: GPL-3.0-or-later
// The charts of one stratum as rows of a table: what each looks at, its reference value and limit, and where
// its cumulative sum stands. One arc costs O(charts).
#pragma once
#include <cstdint>
#include <optional>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/analytics/model.hpp"

namespace arc::drift {

/// The number of an arc that a chart adds up.
enum class Statistic { Common, Shift, Angle, Spread, Apart, Pair, Respliced };

struct Chart {
    Statistic statistic = Statistic::Common;
    int index = 0;     ///< entry of shiftCells, or groove (first of a pair), from 0
    double k = 0.5;    ///< reference value, in standard deviations
    double limit = 5;  ///< in standard deviations
    double offset =
        0;           ///< level that is known already (an open or dismissed signal), taken off before adding
    double sum = 0;  ///< where it stands
    std::uint64_t zeroAt = 0;  ///< arc number at which the sum last was zero
};

ChartKind kindOf(const Chart& chart);

/// What the chart sees of an arc; empty when the arc has nothing for it (a missing groove, no angles).
std::optional<double> seen(Statistic statistic, int index, const Row& row, const Model& model);
/// What a chart, a case or a complaint looks at.
template <class Looker>
std::optional<double> seen(const Looker& looker, const Row& row, const Model& model) {
    return seen(looker.statistic, looker.index, row, model);
}

/// One-sided upward cumulative sum: max(0, sum + x - offset - k).
void advance(Chart& chart, double x, std::uint64_t arcNumber);

/// Where the chart stands as a share of its limit; 1 and above is an alarm.
inline double fullness(const Chart& chart) {
    return chart.sum / chart.limit;
}

/// Limit of a chart (or of each member of its family) whose false alarms come once in `arl` arcs.
double chartLimit(Statistic statistic, int index, double k, double arl, const Model& model);

/// The charts for a stratum, with limits that keep the budget all together.
std::vector<Chart> makeCharts(const Model& model, double budgetArcs);

/// Limits for a re-learned model; sums and offsets stay.
void refit(std::vector<Chart>& charts, const Model& model, double budgetArcs);

}  // namespace arc::drift
