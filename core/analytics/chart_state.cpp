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

/// Charts that see the same arcs alarm together more often than apart, the more the more grooves there are
/// and the sooner they alarm: what the whole program loses in alarms, found on simulated logs of 1, 4 and 12
/// grooves and budgets of 500 to 5,000 arcs.
double together(int grooves, double budgetArcs) {
    const double ofThousand = std::pow(std::clamp(budgetArcs / 1000, 0.1, 10.0), 0.12);
    return ofThousand * (grooves == 1 ? 0.55 : 0.495 - 0.0083 * grooves);
}

/// Long-run variance of scores that share set-ups of about 24 arcs, per share of the variance.
constexpr double longRunWander = 20;
constexpr double loneWander = 5;
constexpr double setUpArcs = 24;
constexpr double spreadTail = 1.5;  ///< the log variance is a little skewed, more so with outliers

constexpr double shortBaseline = 200, longBaseline = 360;  ///< arcs
constexpr double shortDoubt = 0.95;     ///< more error of the mean to count on, up to half of that
constexpr double chainStep = 1.0 / 24;  ///< standard deviations
constexpr double leastMass = 1e-9;      ///< of a lattice point that counts
constexpr double widestLaw = 60;        ///< standard deviations between the lowest and highest score
constexpr double farLimit = 12;         ///< standard deviations
constexpr double furthestJump = 1.6;
constexpr double unseenAbove = 0.1;  ///< share of the readings among which unseen ones are counted on

// A lone fibre's level and angles know no arc mean to average; what hits one groove of many is seen apart
// from the others, so there the level keeps most of the budget. Shares were set so that every fault of the
// benches comes near what is possible, none at the cost of all.
constexpr std::array lone{
    Plan{Statistic::Common, 0, 0.2, 0.22}, Plan{Statistic::Shift, 0, 0.0, 0.45},
    Plan{Statistic::Shift, 1, 0.0, 0.05},  Plan{Statistic::Angle, 0, 0.35, 0.25},
    Plan{Statistic::Spread, 0, 0.5, 0.01}, Plan{Statistic::Respliced, 0, 0.5, 0.01},
};
constexpr std::array several{
    Plan{Statistic::Common, 0, 0.25, 0.22}, Plan{Statistic::Shift, 0, 0.0, 0.48},
    Plan{Statistic::Shift, 1, 0.0, 0.10},   Plan{Statistic::Angle, 0, 0.35, 0.10},
    Plan{Statistic::Spread, 0, 0.5, 0.01},  Plan{Statistic::Respliced, 0, 0.5, 0.01},
    Plan{Statistic::Apart, 0, 0.25, 0.09},  Plan{Statistic::Apart, 0, 0.5, 0.04},
    Plan{Statistic::Pair, 0, 0.3, 0.02},
};

std::span<const Plan> plansFor(const Model& model) {
    if (model.grooves == 1) return lone;
    return several;
}

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
    // Lone readings have no neighbours to average the set-up with: strong wandering fattens the tail as well.
    if (statistic == Statistic::Shift && model.grooves == 1) law.wander *= 1 + loneWander * law.wander;
    // Nine baselines in ten are to keep the budget, not the mean of all: a short one is trusted less.
    const double shortness = std::clamp((longBaseline - arcs) / (longBaseline - shortBaseline), 0.0, 1.0);
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

/// A law on a lattice: probability[i] is that of (lowest + i) steps.
struct Lattice {
    int lowest = 0;
    std::vector<double> probability;
};

Lattice sumOf(const Lattice& a, const Lattice& b) {
    Lattice sum{a.lowest + b.lowest, std::vector<double>(a.probability.size() + b.probability.size() - 1)};
    for (std::size_t i = 0; i < a.probability.size(); ++i)
        for (std::size_t j = 0; j < b.probability.size(); ++j)
            sum.probability[i + j] += a.probability[i] * b.probability[j];
    return sum;
}

/// The law of an average of scores in its own standard deviations; each score is shared between the two
/// nearest lattice points.
Lattice averaged(const Counted& counted, double step) {
    const auto moments = momentsUnder(counted.p, counted.score);
    const double scale = 1 / (moments.sd * std::sqrt(counted.count) * step);
    const auto [low, high] = std::minmax_element(counted.score.begin(), counted.score.end());
    Lattice one{static_cast<int>(std::floor((*low - moments.mean) * scale)), {}};
    one.probability.resize(static_cast<std::size_t>(
        static_cast<int>(std::ceil((*high - moments.mean) * scale)) - one.lowest + 2));
    for (std::size_t q = 0; q < counted.p.size(); ++q) {
        const double at = (counted.score[q] - moments.mean) * scale - one.lowest;
        const auto below = static_cast<std::size_t>(at);
        const double share = at - std::floor(at);
        one.probability[below] += counted.p[q] * (1 - share);
        one.probability[below + 1] += counted.p[q] * share;
    }
    Lattice sum{0, {1.0}};
    for (int i = 0; i < counted.count; ++i) sum = sumOf(sum, one);
    return sum;
}

/// Likelihood ratios are bounded on one side and, of coarse readings, few: a sum then jumps over its limit in
/// another way than a normal one. By how much further off the limit of the exact chain lies than the
/// formula's, nothing else being uncertain.
double jumps(const Counted& counted, double k, double arl) {
    const auto moments = momentsUnder(counted.p, counted.score);
    const auto [low, high] = std::minmax_element(counted.score.begin(), counted.score.end());
    ScoreLaw law;
    law.tail = tailsOf({counted.p, counted.score, moments.mean, moments.sd, counted.count}, k, 0);
    const double formula = cusumLimit(arl, k, law);
    // Readings that never vary say nothing of how a sum jumps, and against far limits a jump is small.
    if (*high - *low > widestLaw * moments.sd * std::sqrt(counted.count) || formula > farLimit) return 1;
    const auto lattice = averaged(counted, chainStep);
    std::vector<double> scores, p;
    for (std::size_t i = 0; i < lattice.probability.size(); ++i) {
        if (lattice.probability[i] < leastMass) continue;
        scores.push_back((lattice.lowest + static_cast<int>(i)) * chainStep);
        p.push_back(lattice.probability[i]);
    }
    const auto exact = discreteCusumLimit(scores, p, k, arl, {chainStep});
    if (!exact) return 1;
    const double ratio = *exact / formula;
    // Of lone readings the few scores are themselves learned: measured, that costs as much again.
    return std::clamp(counted.count > 1 ? ratio : ratio * ratio, 1.0, furthestJump);
}

}  // namespace

double chartLimit(Statistic statistic, int index, double k, double arl, const Model& model) {
    const auto [law, counted] = lawOf(statistic, index, k, model);
    const double limit = cusumLimit(arl, k, law);
    return statistic == Statistic::Shift ? limit * jumps(counted, k, arl) : limit;
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

std::optional<double> seen(Statistic statistic, int index, const Row& row, const Model& model) {
    const auto c = static_cast<std::size_t>(index);
    switch (statistic) {
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
            if (!row.raw.has(index)) return std::nullopt;
            return row.score.apart[c];
        case Statistic::Pair: {
            if (!row.raw.has(index) || !row.raw.has(index + 1)) return std::nullopt;
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
    for (const auto& plan : plansFor(model))
        if (applies(plan, model)) used += plan.share;
    std::vector<Chart> charts;
    for (const auto& plan : plansFor(model)) {
        if (!applies(plan, model)) continue;
        const int members = family(plan, model);
        const double k = plan.k > 0 ? plan.k : ownDrift(model.shift[static_cast<std::size_t>(plan.index)]);
        const double limit =
            chartLimit(plan.statistic, plan.index, k,
                       budgetArcs * members * used * together(model.grooves, budgetArcs) / plan.share, model);
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
