// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/scores.hpp"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>

namespace arc::drift {

namespace {

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
constexpr double floorShare = 0.02;
constexpr double rankCut = 3.0;
constexpr double likelihoodCut = 2.5;

double normalQuantile(double p) {
    return -std::numbers::sqrt2 * boost::math::erfc_inv(2.0 * p, Policy{});
}
double normalDensity(double x) {
    return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
}

ScoreTable likelihoodRatio(std::span<const double> after, std::span<const double> before) {
    const double flat = floorShare / static_cast<double>(before.size());
    ScoreTable score(before.size());
    for (std::size_t q = 0; q < score.size(); ++q) {
        const double ratio = ((1 - floorShare) * after[q] + flat) / ((1 - floorShare) * before[q] + flat);
        score[q] = std::clamp(std::log(ratio), -likelihoodCut, likelihoodCut);
    }
    return score;
}

}  // namespace

Moments momentsUnder(std::span<const double> p, const ScoreTable& score) {
    double mean = 0, square = 0;
    for (std::size_t q = 0; q < p.size(); ++q) mean += p[q] * score[q];
    for (std::size_t q = 0; q < p.size(); ++q) square += p[q] * (score[q] - mean) * (score[q] - mean);
    return {mean, std::sqrt(std::max(square, 1e-12))};
}

ScoreTable rankScores(std::span<const double> p) {
    ScoreTable score(p.size());
    double below = 0, densityBelow = 0;
    for (std::size_t q = 0; q < p.size(); ++q) {
        const double upTo = std::min(below + p[q], 1.0);
        const bool last = q + 1 == p.size() || upTo >= 1 - 1e-12;
        const double density = last ? 0.0 : normalDensity(normalQuantile(upTo));
        score[q] = std::clamp((densityBelow - density) / std::max(p[q], 1e-12), -rankCut, rankCut);
        below = upTo;
        densityBelow = density;
    }
    const auto [mean, sd] = momentsUnder(p, score);
    for (auto& s : score) s = (s - mean) / sd;
    return score;
}

std::vector<double> movedUp(std::span<const double> p, int cells) {
    std::vector<double> moved(p.size(), 0.0);
    for (std::size_t q = 0; q < p.size(); ++q)
        moved[std::min(q + static_cast<std::size_t>(cells), p.size() - 1)] += p[q];
    return moved;
}

std::vector<double> stretched(std::span<const double> p, double factor) {
    const auto size = static_cast<double>(p.size());
    std::vector<double> cumulative(p.size() + 1, 0.0);
    for (std::size_t q = 0; q < p.size(); ++q) cumulative[q + 1] = cumulative[q] + p[q];
    // Cell q spans [q - 1/2, q + 1/2) cut at 0; the distribution function is straight within a cell.
    const auto distribution = [&](double x) {
        if (x <= 0) return 0.0;
        const double at = x + 0.5;
        if (at >= size) return cumulative.back();
        const auto q = static_cast<std::size_t>(at);
        const double within = q == 0 ? x / 0.5 : at - static_cast<double>(q);
        return cumulative[q] + std::min(within, 1.0) * p[q];
    };
    std::vector<double> moved(p.size());
    double below = 0;
    for (std::size_t q = 0; q + 1 < p.size(); ++q) {
        const double upTo = distribution((static_cast<double>(q) + 0.5) / factor);
        moved[q] = upTo - below;
        below = upTo;
    }
    moved.back() = 1.0 - below;
    return moved;
}

ScoreTable shiftScores(std::span<const double> p, int cells) {
    return likelihoodRatio(movedUp(p, cells), p);
}

ScoreTable stretchScores(std::span<const double> p, double factor) {
    return likelihoodRatio(stretched(p, factor), p);
}

}  // namespace arc::drift
