// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/chart_state.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/limits.hpp"

namespace arc::drift {

namespace {

/// A row of the plan: a kind of chart and its part of the false alarms.
struct Plan {
    Statistic statistic;
    int index;
    double k;       ///< 0: the chart's own likelihood-ratio drift
    double share;   ///< of the budget; a family of charts divides it
    double widen;   ///< limit x (1 + widen / sqrt(baseline arcs)) against estimation error
    double factor;  ///< correction of the normal limit, from simulation
};

constexpr std::array plans{
    Plan{Statistic::Common, 0, 0.25, 0.20, 1.5, 1.0}, Plan{Statistic::Shift, 0, 0.0, 0.20, 1.5, 1.0},
    Plan{Statistic::Shift, 1, 0.0, 0.05, 1.5, 1.0},   Plan{Statistic::Angle, 0, 0.5, 0.15, 1.5, 1.0},
    Plan{Statistic::Spread, 0, 0.5, 0.04, 1.5, 1.0},  Plan{Statistic::Apart, 0, 0.25, 0.20, 1.5, 1.0},
    Plan{Statistic::Apart, 0, 0.5, 0.10, 1.5, 1.0},   Plan{Statistic::Pair, 0, 0.5, 0.06, 1.5, 1.0},
};

bool applies(const Plan& plan, const Model& model) {
    switch (plan.statistic) {
        case Statistic::Angle:
            return !model.angle.empty();
        case Statistic::Apart:
            return model.grooves > 1;
        case Statistic::Pair:
            return model.grooves > 3;
        default:
            return true;
    }
}

int family(const Plan& plan, const Model& model) {
    if (plan.statistic == Statistic::Apart) return model.grooves;
    if (plan.statistic == Statistic::Pair) return model.grooves - 1;
    return 1;
}

/// The reference value of a likelihood-ratio sum in its own standard deviations.
double ownDrift(const Moments& sum) {
    return std::clamp(-sum.mean / sum.sd, 0.2, 2.5);
}

double limitOf(const Plan& plan, double k, double arl, const Model& model) {
    double inflate = 1;
    if (plan.statistic == Statistic::Common || plan.statistic == Statistic::Shift)
        inflate = std::sqrt(1 + 10 * model.wander);
    const double widen = 1 + plan.widen / std::sqrt(std::max(20.0, static_cast<double>(model.arcs)));
    return plan.factor * widen * inflate * normalCusumLimit(arl, k / inflate);
}

}  // namespace

ChartKind kindOf(const Chart& chart) {
    switch (chart.statistic) {
        case Statistic::Common:
        case Statistic::Shift:
            return ChartKind::CommonLevel;
        case Statistic::Angle:
            return ChartKind::CleaveAngle;
        case Statistic::Spread:
            return ChartKind::Spread;
        case Statistic::Apart:
        case Statistic::Pair:
            return ChartKind::SingleGroove;
        case Statistic::Respliced:
            return ChartKind::ResplicesRate;
    }
    return ChartKind::CommonLevel;
}

std::optional<double> seen(const Chart& chart, const Row& row, const Model& model) {
    const auto c = static_cast<std::size_t>(chart.index);
    switch (chart.statistic) {
        case Statistic::Common:
            return row.score.common;
        case Statistic::Shift:
            return row.score.shift[c];
        case Statistic::Angle:
            if (model.angle.empty() || (row.raw.leftMask | row.raw.rightMask) == 0) return std::nullopt;
            return row.score.angle;
        case Statistic::Spread:
            return row.score.spread;
        case Statistic::Apart:
            if (!row.raw.has(chart.index)) return std::nullopt;
            return row.score.apart[c];
        case Statistic::Pair: {
            if (!row.raw.has(chart.index) || !row.raw.has(chart.index + 1)) return std::nullopt;
            // Two grooves of m share the arc's mean: their correlation is -1 / (m - 1).
            const double sd = std::sqrt(2.0 - 2.0 / (model.grooves - 1));
            return (static_cast<double>(row.score.apart[c]) + row.score.apart[c + 1]) / sd;
        }
        case Statistic::Respliced:
            return std::nullopt;
    }
    return std::nullopt;
}

void advance(Chart& chart, double x, std::uint64_t arcNumber) {
    chart.sum = std::max(0.0, chart.sum + x - chart.offset - chart.k);
    if (chart.sum == 0) chart.zeroAt = arcNumber;
}

std::vector<Chart> makeCharts(const Model& model, double budgetArcs) {
    double used = 0;
    for (const auto& plan : plans)
        if (applies(plan, model)) used += plan.share;
    std::vector<Chart> charts;
    for (const auto& plan : plans) {
        if (!applies(plan, model)) continue;
        const int members = family(plan, model);
        const double k = plan.k > 0 ? plan.k : ownDrift(model.shiftSum[static_cast<std::size_t>(plan.index)]);
        const double limit = limitOf(plan, k, budgetArcs * members * used / plan.share, model);
        for (int member = 0; member < members; ++member) {
            Chart chart;
            chart.statistic = plan.statistic;
            chart.index = members > 1 ? member : plan.index;
            chart.k = k;
            chart.limit = limit;
            charts.push_back(chart);
        }
    }
    return charts;
}

void refit(std::vector<Chart>& charts, const Model& model, double budgetArcs) {
    const auto fresh = makeCharts(model, budgetArcs);
    for (auto& chart : charts)
        for (const auto& other : fresh)
            if (other.statistic == chart.statistic && other.index == chart.index &&
                (chart.statistic == Statistic::Shift || other.k == chart.k)) {
                chart.k = other.k;
                chart.limit = other.limit;
            }
}

}  // namespace arc::drift
