// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/cells.hpp"

#include <algorithm>
#include <array>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <numeric>

namespace arc::drift {

namespace {

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

double total(const RawCounts& counts) {
    return std::accumulate(counts.begin(), counts.end(), 0.0);
}

double logLikelihood(std::span<const double> counts, const GammaFit& fit) {
    const auto p = gammaCells(fit, static_cast<int>(counts.size()));
    double sum = 0;
    for (std::size_t q = 0; q < counts.size(); ++q)
        if (counts[q] > 0) sum += counts[q] * std::log(std::max(p[q], 1e-300));
    return sum;
}

}  // namespace

int displayStep(const RawCounts& counts) {
    const double all = total(counts);
    for (const int step : {50, 20, 10, 5, 2}) {
        double on = 0;
        for (std::size_t v = 0; v < counts.size(); v += static_cast<std::size_t>(step)) on += counts[v];
        if (all > 0 && on >= 0.98 * all) return step;
    }
    return 1;
}

CellGrid makeGrid(const RawCounts& counts) {
    const double all = std::max(1.0, total(counts));
    double sum = 0, below = 0;
    std::size_t upper = 0;
    for (std::size_t v = 0; v < counts.size(); ++v) {
        if (below < 0.975 * all) upper = v;
        below += counts[v];
    }
    // Spread of the readings below the 99 % point: outliers must not widen the cells.
    double square = 0, n = 0;
    for (std::size_t v = 0; v <= upper && v < counts.size(); ++v) {
        n += counts[v];
        sum += counts[v] * static_cast<double>(v);
        square += counts[v] * static_cast<double>(v) * static_cast<double>(v);
    }
    n = std::max(1.0, n);
    const double sd = std::sqrt(std::max(0.0, square / n - (sum / n) * (sum / n)));
    const int step = displayStep(counts);
    CellGrid grid;
    grid.width = step * std::max(1, static_cast<int>(std::lround(sd / 4.0 / step)));
    grid.cells = std::clamp(static_cast<int>(upper) * 3 / 2 / grid.width + 2, 8, 64);
    return grid;
}

std::vector<double> cellCounts(const RawCounts& counts, const CellGrid& grid) {
    std::vector<double> cells(static_cast<std::size_t>(grid.cells), 0.0);
    for (std::size_t v = 0; v < counts.size(); ++v)
        cells[static_cast<std::size_t>(grid.cell(static_cast<int>(v)))] += counts[v];
    return cells;
}

std::vector<double> gammaCells(const GammaFit& fit, int cells) {
    std::vector<double> p(static_cast<std::size_t>(cells));
    double below = 0;
    for (int q = 0; q + 1 < cells; ++q) {
        const double upTo = boost::math::gamma_p(fit.shape, (q + 0.5) * fit.shape / fit.mean, Policy{});
        p[static_cast<std::size_t>(q)] = std::max(upTo - below, 1e-12);
        below = upTo;
    }
    p.back() = std::max(1.0 - below, 1e-12);
    return p;
}

GammaFit fitGamma(std::span<const double> counts, GammaFit start) {
    // Pattern search on (log shape, log mean): 2 parameters, smooth and unimodal here, no derivatives needed.
    double a = std::log(start.shape), m = std::log(start.mean);
    double best = logLikelihood(counts, start);
    for (double step = 0.4; step > 0.01;) {
        bool moved = false;
        for (const auto& d :
             {std::array{1.0, 0.0}, std::array{-1.0, 0.0}, std::array{0.0, 1.0}, std::array{0.0, -1.0}}) {
            const double tryA = std::clamp(a + step * d[0], -3.0, 5.0), tryM = m + step * d[1];
            const double value = logLikelihood(counts, {std::exp(tryA), std::exp(tryM)});
            if (value > best + 1e-9) {
                best = value, a = tryA, m = tryM, moved = true;
                break;
            }
        }
        if (!moved) step /= 2;
    }
    return {std::exp(a), std::exp(m)};
}

std::vector<double> smoothed(std::span<const double> counts, std::span<const double> towards, double weight) {
    const double n = std::accumulate(counts.begin(), counts.end(), 0.0);
    std::vector<double> p(counts.size());
    for (std::size_t q = 0; q < p.size(); ++q) p[q] = (counts[q] + weight * towards[q]) / (n + weight);
    return p;
}

}  // namespace arc::drift
