// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/score_tables.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace arc::drift {

namespace {

constexpr std::size_t rawRange = 1001;    ///< losses up to 1 dB by 0.001, angles up to 10 degrees by 0.01
constexpr double gammaWeight = 50;        ///< readings' worth of the fitted gamma
constexpr double angleGammaWeight = 200;  ///< the same of the angles: their law is smoother
constexpr double fewestAngles = 40;       ///< below this no angle scores
constexpr double angleStretch = 1.4;      ///< growth of cleave angles the angle score asks about
constexpr double alikePrior = 0.005;      ///< variance of the grooves' mean scores expected beforehand
constexpr double alikePriorWeight = 4;    ///< grooves' worth of that expectation

bool bit(std::uint16_t mask, int groove) {
    return (mask >> groove) & 1U;
}

void addTo(std::vector<double>& sum, std::span<const double> more, double sign) {
    for (std::size_t q = 0; q < sum.size(); ++q) sum[q] += sign * more[q];
}

std::vector<double> pooledOf(const BaselineCounts& counts) {
    std::vector<double> sum(counts.loss.front().size(), 0.0);
    for (const auto& own : counts.loss) addTo(sum, own, 1);
    return sum;
}

double totalOf(std::span<const double> counts) {
    return std::accumulate(counts.begin(), counts.end(), 0.0);
}

double pooledWeightOf(const BaselineCounts& counts, std::span<const double> pooledP) {
    const auto score = rankScores(pooledP);
    double sum = 0, square = 0, error = 0, grooves = 0;
    for (const auto& own : counts.loss) {
        const double n = totalOf(own);
        if (n < 1) continue;
        const double mean = std::inner_product(own.begin(), own.end(), score.begin(), 0.0) / n;
        sum += mean;
        square += mean * mean;
        error += 1 / n;
        ++grooves;
    }
    if (grooves < 2) return 1 / alikePrior;
    const double variance = (square - sum * sum / grooves) / (grooves - 1);
    const double between = std::max(0.0, variance - error / grooves);
    const double expected =
        (grooves * between + alikePriorWeight * alikePrior) / (grooves + alikePriorWeight);
    return std::clamp(1 / expected, 20.0, 2000.0);
}

}  // namespace

Grids chooseGrids(std::span<const RawArc> baseline, int grooves) {
    RawCounts losses(rawRange, 0), angles(rawRange, 0);
    for (const auto& arc : baseline)
        for (int c = 0; c < grooves; ++c) {
            if (arc.has(c)) ++losses[std::min<std::size_t>(arc.loss[c], rawRange - 1)];
            if (bit(arc.leftMask, c)) ++angles[std::min<std::size_t>(arc.left[c], rawRange - 1)];
            if (bit(arc.rightMask, c)) ++angles[std::min<std::size_t>(arc.right[c], rawRange - 1)];
        }
    return {makeGrid(losses), makeGrid(angles)};
}

BaselineCounts countCells(std::span<const RawArc> arcs, int grooves, const Grids& grids) {
    BaselineCounts counts;
    counts.arcs = static_cast<double>(arcs.size());
    counts.loss.assign(static_cast<std::size_t>(grooves),
                       std::vector<double>(static_cast<std::size_t>(grids.loss.cells), 0.0));
    counts.angle.assign(static_cast<std::size_t>(grids.angle.cells), 0.0);
    for (const auto& arc : arcs)
        for (int c = 0; c < grooves; ++c) {
            if (arc.has(c)) ++counts.loss[c][static_cast<std::size_t>(grids.loss.cell(arc.loss[c]))];
            if (bit(arc.leftMask, c)) ++counts.angle[static_cast<std::size_t>(grids.angle.cell(arc.left[c]))];
            if (bit(arc.rightMask, c))
                ++counts.angle[static_cast<std::size_t>(grids.angle.cell(arc.right[c]))];
        }
    return counts;
}

BaselineCounts without(const BaselineCounts& all, const BaselineCounts& part) {
    BaselineCounts rest = all;
    for (std::size_t c = 0; c < rest.loss.size(); ++c) addTo(rest.loss[c], part.loss[c], -1);
    addTo(rest.angle, part.angle, -1);
    rest.arcs -= part.arcs;
    return rest;
}

Laws fitLaws(const BaselineCounts& counts, const Laws& start) {
    Laws laws;
    laws.loss = fitGamma(pooledOf(counts), start.loss);
    if (totalOf(counts.angle) >= fewestAngles) laws.angle = fitGamma(counts.angle, start.angle);
    return laws;
}

ScoreTables makeTables(const BaselineCounts& counts, const Grids& grids, const Laws& laws) {
    ScoreTables tables;
    tables.grooves = static_cast<int>(counts.loss.size());
    tables.grids = grids;
    tables.lossP = smoothed(pooledOf(counts), gammaCells(laws.loss, grids.loss.cells), gammaWeight);
    tables.pooledRank = rankScores(tables.lossP);
    for (std::size_t s = 0; s < shiftCells.size(); ++s)
        tables.pooledShift[s] = shiftScores(tables.lossP, shiftCells[s]);
    tables.pooledWeight = pooledWeightOf(counts, tables.lossP);
    for (const auto& own : counts.loss) {
        const auto p = tables.grooves == 1 ? tables.lossP : smoothed(own, tables.lossP, tables.pooledWeight);
        tables.rank.push_back(rankScores(p));
        for (std::size_t s = 0; s < shiftCells.size(); ++s)
            tables.shift[s].push_back(shiftScores(p, shiftCells[s]));
    }
    if (totalOf(counts.angle) >= fewestAngles) {
        tables.angleP = smoothed(counts.angle, gammaCells(laws.angle, grids.angle.cells), angleGammaWeight);
        tables.angle = stretchScores(tables.angleP, angleStretch);
    }
    return tables;
}

ArcSums sumsOf(const RawArc& arc, const ScoreTables& tables) {
    ArcSums sums;
    for (int c = 0; c < tables.grooves; ++c) {
        if (!arc.has(c)) continue;
        const auto q = static_cast<std::size_t>(tables.grids.loss.cell(arc.loss[c]));
        const double z = tables.rank[c][q];
        ++sums.readings;
        sums.z[c] = z;
        sums.rank += z;
        sums.rankSquare += z * z;
        for (std::size_t s = 0; s < shiftCells.size(); ++s) sums.shift[s] += tables.shift[s][c][q];
    }
    if (tables.angle.empty()) return sums;
    const auto add = [&](int raw) {
        sums.angle += tables.angle[static_cast<std::size_t>(tables.grids.angle.cell(raw))];
        ++sums.angles;
    };
    for (int c = 0; c < tables.grooves; ++c) {
        if (bit(arc.leftMask, c)) add(arc.left[c]);
        if (bit(arc.rightMask, c)) add(arc.right[c]);
    }
    return sums;
}

}  // namespace arc::drift
