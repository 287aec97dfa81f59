// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/model.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace arc::drift {

namespace {

constexpr std::size_t parts = 5;  ///< of the baseline, for cross-validation
constexpr double readingWander =
    0.012;  ///< share of one reading's variance that set-ups are expected to have
constexpr double wanderPriorArcs = 100;  ///< arcs' worth of that expectation
constexpr int wanderLags = 12;           ///< arcs; half of a usual set-up of about 24 arcs
constexpr double wanderLagMean = 0.73;   ///< mean of 1 - lag / 24 over those lags

constexpr double expectedRedone = 0.05, redonePriorArcs = 20;

/// The statistics of the baseline's arcs, one column each.
struct Columns {
    std::vector<double> common, spread, angle;
    std::array<std::vector<double>, shiftCells.size()> shift;
    std::array<std::vector<double>, maxGrooves> apart;
};

double spreadOf(const ArcSums& sums) {
    const double mean = sums.rank / sums.readings;
    const double variance = std::max(0.0, sums.rankSquare / sums.readings - mean * mean);
    return sums.readings > 1 ? std::log(variance + 0.1) : std::log(mean * mean + 0.1);
}

void append(Columns& columns, const RawArc& arc, const ScoreTables& tables) {
    const auto sums = sumsOf(arc, tables);
    if (sums.readings == 0) return;
    const double mean = sums.rank / sums.readings;
    columns.common.push_back(mean);
    columns.spread.push_back(spreadOf(sums));
    for (std::size_t s = 0; s < shiftCells.size(); ++s)
        columns.shift[s].push_back(sums.shift[s] / sums.readings);
    for (int c = 0; c < tables.grooves; ++c)
        if (arc.has(c)) columns.apart[c].push_back(sums.z[c] - mean);
    if (sums.angles > 0) columns.angle.push_back(sums.angle / sums.angles);
}

/// Share of the variance that arcs of one set-up have in common, from the mean autocorrelation at lags of
/// less than half a set-up; drawn towards what is usual, because a short baseline holds few set-ups.
double wanderOf(std::span<const double> values, double mean, double sd, double expected) {
    const auto n = values.size();
    double sum = 0;
    int lags = 0;
    for (std::size_t lag = 1; lag <= wanderLags && lag + 10 < n; ++lag, ++lags) {
        double product = 0;
        for (std::size_t i = lag; i < n; ++i) product += (values[i] - mean) * (values[i - lag] - mean);
        sum += product / static_cast<double>(n - lag) / (sd * sd);
    }
    const double found = lags > 0 ? std::max(0.0, sum / lags / wanderLagMean) : expected;
    const auto arcs = static_cast<double>(n);
    return std::min(0.9, (arcs * found + wanderPriorArcs * expected) / (arcs + wanderPriorArcs));
}

Learned learned(std::span<const double> values, double expectedWander) {
    Learned result;
    if (values.empty()) return result;
    const auto n = static_cast<double>(values.size());
    double square = 0;
    for (const double v : values) result.mean += v / n;
    for (const double v : values) square += (v - result.mean) * (v - result.mean);
    result.sd = std::sqrt(std::max(square / std::max(1.0, n - 1), 1e-6));
    result.wander = wanderOf(values, result.mean, result.sd, expectedWander);
    return result;
}

/// What the mean score gains per raw unit when everything moves up, from a move by one cell.
double slopeOf(std::span<const double> p, const ScoreTable& score, const CellGrid& grid) {
    double gain = 0;
    for (std::size_t q = 0; q < p.size(); ++q)
        gain += p[q] * (score[std::min(q + 1, p.size() - 1)] - score[q]);
    return gain / grid.width;
}

/// Scores every part of the baseline by tables learned from the rest.
Columns crossValidated(std::span<const RawArc> baseline, const BaselineCounts& all, const Grids& grids,
                       const Laws& laws, int grooves) {
    Columns columns;
    for (std::size_t part = 0; part < parts; ++part) {
        const auto from = baseline.size() * part / parts, to = baseline.size() * (part + 1) / parts;
        const auto arcs = baseline.subspan(from, to - from);
        const auto tables = makeTables(without(all, countCells(arcs, grooves, grids)), grids, laws);
        for (const auto& arc : arcs) append(columns, arc, tables);
    }
    return columns;
}

void describe(Model& model, std::span<const RawArc> baseline) {
    double sum = 0, n = 0, angleSum = 0, angles = 0;
    std::array<double, maxGrooves> grooveSum{}, grooveN{};
    for (const auto& arc : baseline)
        for (int c = 0; c < model.grooves; ++c) {
            if (arc.has(c)) grooveSum[c] += arc.loss[c] / 1000.0, ++grooveN[c];
            if ((arc.leftMask >> c) & 1U) angleSum += arc.left[c] / 100.0, ++angles;
            if ((arc.rightMask >> c) & 1U) angleSum += arc.right[c] / 100.0, ++angles;
        }
    for (int c = 0; c < model.grooves; ++c) {
        sum += grooveSum[c];
        n += grooveN[c];
        model.grooveMeanDb[c] = grooveN[c] > 0 ? grooveSum[c] / grooveN[c] : 0;
    }
    model.meanDb = n > 0 ? sum / n : 0;
    model.meanAngleDeg = angles > 0 ? angleSum / angles : 0;
}

double expected(std::span<const double> p, const ScoreTable& score) {
    return std::inner_product(p.begin(), p.end(), score.begin(), 0.0);
}

Shapes shapesOf(const Model& model, const Columns& columns) {
    const auto& p = model.tables.lossP;
    const auto direction = [&](const std::vector<double>& after) {
        const auto& rank = model.tables.pooledRank;
        const auto& shift = model.tables.pooledShift[0];
        return Direction{(expected(after, rank) - expected(p, rank)) / model.common.sd,
                         (expected(after, shift) - expected(p, shift)) / model.shift[0].sd};
    };
    constexpr std::array cells{1, 2, 4};
    constexpr std::array factors{1.15, 1.4, 2.0};
    Shapes shapes;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        shapes.up[i] = direction(movedUp(p, cells[i]));
        shapes.larger[i] = direction(stretched(p, factors[i]));
    }
    double product = 0;
    for (std::size_t i = 0; i < columns.common.size(); ++i)
        product += (columns.common[i] - model.common.mean) * (columns.shift[0][i] - model.shift[0].mean);
    product /= static_cast<double>(columns.common.size()) * model.common.sd * model.shift[0].sd;
    shapes.correlation = std::clamp(product, 0.0, 0.95);
    return shapes;
}

}  // namespace

Model learn(std::span<const RawArc> baseline, int grooves, const Model* previous) {
    Model model;
    model.grooves = std::clamp(grooves, 1, maxGrooves);
    model.arcs = static_cast<int>(baseline.size());
    describe(model, baseline);
    const auto grids = chooseGrids(baseline, model.grooves);
    const auto counts = countCells(baseline, model.grooves, grids);
    model.laws = fitLaws(counts, previous ? previous->laws : Laws{});
    model.tables = makeTables(counts, grids, model.laws);
    model.ownWeight = model.arcs / (model.arcs + model.tables.pooledWeight);

    const auto columns = crossValidated(baseline, counts, grids, model.laws, model.grooves);
    const double shared = model.grooves * readingWander;
    const double expected = shared / (1 + shared);
    model.common = learned(columns.common, expected);
    model.common.perMdb = slopeOf(model.tables.lossP, model.tables.pooledRank, grids.loss) / model.common.sd;
    for (std::size_t s = 0; s < shiftCells.size(); ++s) {
        model.shift[s] = learned(columns.shift[s], expected / (model.grooves > 1 ? 2 : 1));
        model.shift[s].perMdb =
            slopeOf(model.tables.lossP, model.tables.pooledShift[s], grids.loss) / model.shift[s].sd;
    }
    model.shapes = shapesOf(model, columns);
    double redone = expectedRedone * redonePriorArcs;
    for (const auto& arc : baseline) redone += arc.redone > 0;
    model.redone.mean = redone / (model.arcs + redonePriorArcs);
    model.redone.sd = std::sqrt(model.redone.mean * (1 - model.redone.mean));
    model.spread = learned(columns.spread, expected / 4);
    model.angle = learned(columns.angle, 0);
    for (int c = 0; c < model.grooves; ++c) {
        model.apart[c] = learned(columns.apart[c], 0);
        // The groove's own mean counts as far as its own cells do.
        model.apart[c].mean *= model.ownWeight;
    }
    return model;
}

Scores scoresOf(const RawArc& arc, const Model& model) {
    Scores scores;
    const auto sums = sumsOf(arc, model.tables);
    if (sums.readings == 0) return scores;
    const double mean = sums.rank / sums.readings;
    // An arc with grooves missing says less: its mean scatters more, so it is weighted down.
    const double weight = std::sqrt(static_cast<double>(sums.readings) / model.grooves);
    const auto standard = [](double value, const Learned& m) {
        return static_cast<float>((value - m.mean) / m.sd);
    };
    scores.common = static_cast<float>(weight * standard(mean, model.common));
    for (std::size_t s = 0; s < shiftCells.size(); ++s)
        scores.shift[s] =
            static_cast<float>(weight * standard(sums.shift[s] / sums.readings, model.shift[s]));
    scores.spread = standard(spreadOf(sums), model.spread);
    if (sums.angles > 0)
        scores.angle = static_cast<float>(std::sqrt(sums.angles / (2.0 * model.grooves)) *
                                          standard(sums.angle / sums.angles, model.angle));
    for (int c = 0; c < model.grooves; ++c)
        if (arc.has(c)) scores.apart[c] = standard(sums.z[c] - mean, model.apart[c]);
    return scores;
}

}  // namespace arc::drift
