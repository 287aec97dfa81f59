// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/chart_state.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/discrete_cusum.hpp"
#include "core/analytics/limits.hpp"

namespace arc::drift {

namespace {

/// A row of the plan: a kind of chart and its part of the false alarms.
struct Plan {
    Statistic statistic;
    int index;
    double k;      ///< 0: the chart's own likelihood-ratio drift
    double share;  ///< of the budget; a family of charts divides it
};

/// Long-run variance of scores that share set-ups of about 24 arcs, per share of the variance.
/// Charts that see the same arcs alarm together more often than apart: what the whole program loses in
/// alarms, found on simulated logs of many kinds.
constexpr double together = 0.66;

constexpr double longRunWander = 20;
constexpr double setUpArcs = 24;
constexpr double spreadTail = 1.5;  ///< the log variance is a little skewed, more so with outliers

constexpr double longBaseline = 400;    ///< arcs
constexpr double shortDoubt = 0.6;      ///< more error of the mean to count on, up to half of that
constexpr double chainStep = 1.0 / 12;  ///< standard deviations
constexpr double furthestJump = 1.6;
constexpr double unseenAbove = 0.1;  ///< share of the readings among which unseen ones are counted on

constexpr std::array plans{
    Plan{Statistic::Common, 0, 0.25, 0.23}, Plan{Statistic::Shift, 0, 0.0, 0.29},
    Plan{Statistic::Shift, 1, 0.0, 0.10},   Plan{Statistic::Angle, 0, 0.35, 0.22},
    Plan{Statistic::Spread, 0, 0.5, 0.01},  Plan{Statistic::Respliced, 0, 0.5, 0.01},
    Plan{Statistic::Apart, 0, 0.25, 0.08},  Plan{Statistic::Apart, 0, 0.5, 0.04},
    Plan{Statistic::Pair, 0, 0.3, 0.02},
};

bool applies(const Plan& plan, const Model& model) {
    switch (plan.statistic) {
        case Statistic::Angle:
            return !model.tables.angle.empty();
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
double ownDrift(const Learned& sum) {
    return std::clamp(-sum.mean / sum.sd, 0.2, 2.5);
}

/// What so many readings have not shown may still come: one reading's worth of it among the highest cells.
std::vector<double> withUnseen(std::span<const double> p, double readings) {
    std::vector<double> with(p.begin(), p.end());
    double above = 1, cells = 0;
    std::size_t first = 0;
    for (; first + 1 < p.size() && above > unseenAbove; ++first) above -= p[first];
    cells = static_cast<double>(p.size() - first);
    for (std::size_t q = 0; q < with.size(); ++q)
        with[q] = (readings * with[q] + (q >= first ? 1 / cells : 0)) / (readings + 1);
    return with;
}

/// A score by its values, `count` of which are averaged.
struct Counted {
    std::vector<double> p;
    ScoreTable score;
    int count = 1;
};

struct ChartLaw {
    ScoreLaw law;
    Counted counted;  ///< empty for a score that takes any value
};

ChartLaw lawOf(Statistic statistic, int index, double k, const Model& model) {
    const auto s = static_cast<std::size_t>(index);
    const auto& tables = model.tables;
    Counted counted;
    ScoreLaw law;
    double perMdb = 0, ownShare = 1;
    switch (statistic) {
        case Statistic::Common:
            law.wander = model.common.wander;
            counted = {tables.lossP, tables.pooledRank, model.grooves};
            perMdb = model.common.perMdb;
            break;
        case Statistic::Shift:
            law.wander = model.shift[s].wander;
            counted = {tables.lossP, tables.pooledShift[s], model.grooves};
            perMdb = model.shift[s].perMdb;
            break;
        case Statistic::Angle:
            counted = {tables.angleP, tables.angle, 2 * model.grooves};
            break;
        case Statistic::Apart:
        case Statistic::Pair:
            counted = {tables.lossP, tables.pooledRank, statistic == Statistic::Pair ? 2 : 1};
            ownShare = std::max(0.1, model.ownWeight);
            break;
        case Statistic::Spread:
            law.wander = model.spread.wander;
            law.tail.fill(spreadTail);
            break;
        case Statistic::Respliced:
            counted = {{1 - model.redone.mean, model.redone.mean}, {0.0, 1.0}, 1};
            break;
    }
    const double arcs = std::max(20.0, static_cast<double>(model.arcs));
    // The wandering itself is known from few set-ups only: count on one standard error more.
    law.wander *= 1 + std::sqrt(2 / (arcs / setUpArcs + 4));
    // Nine baselines in ten are to keep the budget, not the mean of all: a short one is trusted less.
    const double shortness = std::clamp(2 * (1 - arcs / longBaseline), 0.0, 1.0);
    law.meanError =
        (1 + shortDoubt * shortness) *
        std::hypot(std::sqrt(ownShare * (1 + longRunWander * law.wander) / arcs), perMdb * lotsMdb);
    if (!counted.p.empty()) {
        const auto moments = momentsUnder(counted.p, counted.score);
        const auto p = withUnseen(counted.p, counted.count * arcs);
        law.tail = tailsOf({p, counted.score, moments.mean, moments.sd, counted.count}, k, law.meanError);
    }
    return {law, std::move(counted)};
}

/// A lone reading shown in coarse steps has so few scores that a sum jumps over its limit: by how much
/// further off the limit of the exact chain lies than the formula's, nothing else being uncertain.
double jumps(const Counted& counted, double k, double arl) {
    const auto moments = momentsUnder(counted.p, counted.score);
    auto z = counted.score;
    for (double& score : z) score = (score - moments.mean) / moments.sd;
    const auto exact = discreteCusumLimit(z, counted.p, k, arl, {chainStep});
    if (!exact) return 1;
    ScoreLaw law;
    law.tail = tailsOf({counted.p, z, 0, 1, 1}, k, 0);
    return std::clamp(*exact / cusumLimit(arl, k, law), 1.0, furthestJump);
}

}  // namespace

double chartLimit(Statistic statistic, int index, double k, double arl, const Model& model) {
    const auto [law, counted] = lawOf(statistic, index, k, model);
    const double limit = cusumLimit(arl, k, law);
    const bool fewScores = statistic == Statistic::Shift && counted.count == 1;
    return fewScores ? limit * jumps(counted, k, arl) : limit;
}

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
            if (model.tables.angle.empty() || (row.raw.leftMask | row.raw.rightMask) == 0)
                return std::nullopt;
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
            return ((row.raw.redone > 0 ? 1.0 : 0.0) - model.redone.mean) / model.redone.sd;
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
        const double k = plan.k > 0 ? plan.k : ownDrift(model.shift[static_cast<std::size_t>(plan.index)]);
        const double limit = chartLimit(plan.statistic, plan.index, k,
                                        budgetArcs * members * used * together / plan.share, model);
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
