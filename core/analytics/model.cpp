// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/model.hpp"

#include <algorithm>
#include <bit>
#include <cmath>

namespace arc::drift {

namespace {

constexpr std::size_t rawRange = 1001;  ///< losses up to 1 dB by 0.001, angles up to 10 degrees by 0.01
constexpr double gammaWeight = 50;      ///< readings' worth of the fitted gamma
constexpr double pooledWeight = 100;    ///< readings' worth of all grooves together in each groove's cells
constexpr double angleStretch = 1.4;    ///< the growth of cleave angles the angle score asks about
constexpr double wanderPrior = 0.12;    ///< share of set-up wandering expected before it is seen
constexpr double wanderPriorArcs = 100;
constexpr int wanderLags = 12;  ///< arcs; half of a usual set-up of about 24 arcs

RawCounts counted(std::span<const RawArc> baseline, int groove) {
    RawCounts counts(rawRange, 0);
    for (const auto& arc : baseline)
        if (arc.has(groove)) ++counts[std::min<std::size_t>(arc.loss[groove], rawRange - 1)];
    return counts;
}

RawCounts countedAngles(std::span<const RawArc> baseline, int grooves) {
    RawCounts counts(rawRange, 0);
    for (const auto& arc : baseline)
        for (int c = 0; c < grooves; ++c) {
            if ((arc.leftMask >> c) & 1U) ++counts[std::min<std::size_t>(arc.left[c], rawRange - 1)];
            if ((arc.rightMask >> c) & 1U) ++counts[std::min<std::size_t>(arc.right[c], rawRange - 1)];
        }
    return counts;
}

/// Sums of an arc before they are standardised.
struct RawSums {
    int readings = 0, angles = 0;
    double rank = 0, rankSquare = 0, angle = 0;
    std::array<double, shiftCells.size()> shift{};
    std::array<double, maxGrooves> z{};
};

RawSums sumsOf(const RawArc& arc, const Model& model) {
    RawSums sums;
    for (int c = 0; c < model.grooves; ++c) {
        if (!arc.has(c)) continue;
        const auto q = static_cast<std::size_t>(model.lossGrid.cell(arc.loss[c]));
        const double z = model.rank[c][q];
        ++sums.readings;
        sums.z[c] = z;
        sums.rank += z;
        sums.rankSquare += z * z;
        for (std::size_t s = 0; s < shiftCells.size(); ++s) sums.shift[s] += model.shift[s][c][q];
    }
    if (!model.angle.empty()) {
        for (int c = 0; c < model.grooves; ++c) {
            if ((arc.leftMask >> c) & 1U) {
                sums.angle += model.angle[static_cast<std::size_t>(model.angleGrid.cell(arc.left[c]))];
                ++sums.angles;
            }
            if ((arc.rightMask >> c) & 1U) {
                sums.angle += model.angle[static_cast<std::size_t>(model.angleGrid.cell(arc.right[c]))];
                ++sums.angles;
            }
        }
    }
    return sums;
}

double spreadOf(const RawSums& sums) {
    const double mean = sums.rank / sums.readings;
    const double variance = std::max(0.0, sums.rankSquare / sums.readings - mean * mean);
    return sums.readings > 1 ? std::log(variance + 0.1) : std::log(mean * mean + 0.1);
}

Moments momentsOf(std::span<const double> values) {
    double mean = 0, square = 0;
    for (const double v : values) mean += v;
    mean /= std::max<double>(1.0, static_cast<double>(values.size()));
    for (const double v : values) square += (v - mean) * (v - mean);
    const double n = std::max<double>(1.0, static_cast<double>(values.size()) - 1.0);
    return {mean, std::sqrt(std::max(square / n, 1e-6))};
}

/// Share of the variance that arcs of one set-up have in common, from the mean autocorrelation at lags of
/// less than half a set-up; shrunk towards what is usual, because a short baseline holds few set-ups.
double wanderOf(std::span<const double> values, const Moments& moments) {
    const auto n = values.size();
    double sum = 0;
    int lags = 0;
    for (std::size_t lag = 1; lag <= wanderLags && lag + 10 < n; ++lag, ++lags) {
        double product = 0;
        for (std::size_t i = lag; i < n; ++i)
            product += (values[i] - moments.mean) * (values[i - lag] - moments.mean);
        sum += product / static_cast<double>(n - lag) / (moments.sd * moments.sd);
    }
    const double seen = lags > 0 ? std::max(0.0, sum / lags / 0.73) : wanderPrior;
    const auto arcs = static_cast<double>(n);
    return std::min(0.9, (arcs * seen + wanderPriorArcs * wanderPrior) / (arcs + wanderPriorArcs));
}

}  // namespace

Model learn(std::span<const RawArc> baseline, int grooves, const Model* previous) {
    Model model;
    model.grooves = std::clamp(grooves, 1, maxGrooves);
    model.arcs = static_cast<int>(baseline.size());
    std::vector<RawCounts> byGroove;
    RawCounts all(rawRange, 0);
    double sumDb = 0, n = 0;
    for (int c = 0; c < model.grooves; ++c) {
        byGroove.push_back(counted(baseline, c));
        double grooveSum = 0, grooveN = 0;
        for (std::size_t v = 0; v < rawRange; ++v) {
            all[v] += byGroove.back()[v];
            grooveSum += byGroove.back()[v] * static_cast<double>(v) / 1000.0;
            grooveN += byGroove.back()[v];
        }
        model.grooveMeanDb[c] = grooveN > 0 ? grooveSum / grooveN : 0;
        sumDb += grooveSum;
        n += grooveN;
    }
    model.meanDb = n > 0 ? sumDb / n : 0;
    model.lossGrid = makeGrid(all);
    const auto pooled = cellCounts(all, model.lossGrid);
    model.lossGamma = fitGamma(pooled, previous ? previous->lossGamma : GammaFit{1.5, 4.0});
    const auto pooledP = smoothed(pooled, gammaCells(model.lossGamma, model.lossGrid.cells), gammaWeight);
    for (int c = 0; c < model.grooves; ++c) {
        const auto p = model.grooves == 1
                           ? pooledP
                           : smoothed(cellCounts(byGroove[c], model.lossGrid), pooledP, pooledWeight);
        model.rank.push_back(rankScores(p));
        for (std::size_t s = 0; s < shiftCells.size(); ++s)
            model.shift[s].push_back(shiftScores(p, shiftCells[s]));
    }

    const auto angles = countedAngles(baseline, model.grooves);
    double angleN = 0, angleSum = 0;
    for (std::size_t v = 0; v < rawRange; ++v)
        angleN += angles[v], angleSum += angles[v] * static_cast<double>(v) / 100.0;
    if (angleN >= 40) {
        model.meanAngleDeg = angleSum / angleN;
        double below = 0;
        for (std::size_t v = 0; v < rawRange && below < 0.95 * angleN; ++v) {
            below += angles[v];
            model.angle95Deg = static_cast<double>(v) / 100.0;
        }
        model.angleGrid = makeGrid(angles);
        const auto cells = cellCounts(angles, model.angleGrid);
        model.angleGamma =
            fitGamma(cells, previous && !previous->angle.empty() ? previous->angleGamma : GammaFit{1.2, 4.0});
        model.angle = stretchScores(
            smoothed(cells, gammaCells(model.angleGamma, model.angleGrid.cells), gammaWeight), angleStretch);
    }

    std::vector<double> common, spread, angle;
    std::array<std::vector<double>, shiftCells.size()> shift;
    std::array<std::vector<double>, maxGrooves> apart;
    for (const auto& arc : baseline) {
        const auto sums = sumsOf(arc, model);
        if (sums.readings > 0) {
            const double mean = sums.rank / sums.readings;
            common.push_back(mean);
            spread.push_back(spreadOf(sums));
            for (std::size_t s = 0; s < shiftCells.size(); ++s)
                shift[s].push_back(sums.shift[s] / sums.readings);
            for (int c = 0; c < model.grooves; ++c)
                if (arc.has(c)) apart[c].push_back(sums.z[c] - mean);
        }
        if (sums.angles > 0) angle.push_back(sums.angle / sums.angles);
    }
    model.common = momentsOf(common);
    model.wander = wanderOf(common, model.common);
    model.spread = momentsOf(spread);
    model.angleMean = momentsOf(angle);
    for (std::size_t s = 0; s < shiftCells.size(); ++s) model.shiftSum[s] = momentsOf(shift[s]);
    for (int c = 0; c < model.grooves; ++c) model.apart[c] = momentsOf(apart[c]);
    return model;
}

Scores scoresOf(const RawArc& arc, const Model& model) {
    Scores scores;
    const auto sums = sumsOf(arc, model);
    if (sums.readings == 0) return scores;
    const double mean = sums.rank / sums.readings;
    // An arc with grooves missing says less: its mean scatters more, so it is weighted down.
    const double weight = std::sqrt(static_cast<double>(sums.readings) / model.grooves);
    const auto standard = [](double value, const Moments& m) {
        return static_cast<float>((value - m.mean) / m.sd);
    };
    scores.common = static_cast<float>(weight * standard(mean, model.common));
    for (std::size_t s = 0; s < shiftCells.size(); ++s)
        scores.shift[s] =
            static_cast<float>(weight * standard(sums.shift[s] / sums.readings, model.shiftSum[s]));
    scores.spread = standard(spreadOf(sums), model.spread);
    if (sums.angles > 0)
        scores.angle = static_cast<float>(std::sqrt(sums.angles / (2.0 * model.grooves)) *
                                          standard(sums.angle / sums.angles, model.angleMean));
    for (int c = 0; c < model.grooves; ++c)
        if (arc.has(c)) scores.apart[c] = standard(sums.z[c] - mean, model.apart[c]);
    return scores;
}

}  // namespace arc::drift
