// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/change_point.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <string>
#include <vector>

namespace arc::stats {
namespace {

Result<void> check(std::span<const double> values, std::size_t needed) {
    if (values.size() < needed)
        return fail(ProblemCode::BadInput, "too few readings to look for a change",
                    std::to_string(values.size()) + " of " + std::to_string(needed));
    if (std::any_of(values.begin(), values.end(), [](double x) { return !std::isfinite(x); }))
        return fail(ProblemCode::BadInput, "a reading in the series is not a number");
    return {};
}

/// Of a normal series with `means` levels, one variance and the places of the steps.
double bic(double squares, double n, int means) {
    return n * (std::log(squares / n) + 1 + std::log(2 * std::numbers::pi)) + std::log(n) * 2 * means;
}

}  // namespace

Result<ChangePoint> changePoint(std::span<const double> values, int shortest, double units) {
    if (shortest < 1) return fail(ProblemCode::BadInput, "a level needs at least one reading");
    if (auto ok = check(values, 2 * static_cast<std::size_t>(shortest)); !ok)
        return tl::unexpected(ok.error());
    const auto n = static_cast<int>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
    ChangePoint best;
    for (const double x : values) best.squaresWithout += (x - mean) * (x - mean);
    // A step after k readings saves s^2 (1 / k + 1 / (n - k)), s the sum of the first k about the mean.
    std::vector<double> saved(static_cast<std::size_t>(n) + 1, 0.0);
    double sum = 0, most = -1;
    for (int k = 1; k < n; ++k) {
        sum += values[static_cast<std::size_t>(k - 1)] - mean;
        if (k < shortest || n - k < shortest) continue;
        const double saves = sum * sum * (1.0 / k + 1.0 / (n - k));
        saved[static_cast<std::size_t>(k)] = saves;
        if (saves <= most) continue;
        most = saves;
        best.lastBefore = k;
        best.meanBefore = mean + sum / k;
        best.meanAfter = mean - sum / (n - k);
    }
    best.squaresWith = std::max(0.0, best.squaresWithout - most);
    best.bicWithout = bic(best.squaresWithout, n, 1);
    best.bicWith = bic(best.squaresWith, n, 2);
    // The log-likelihood is -n/2 log(squares).
    const double within = best.squaresWith * std::exp(2 * units / n);
    best.low = best.high = best.lastBefore;
    for (int k = shortest; k <= n - shortest; ++k) {
        if (best.squaresWithout - saved[static_cast<std::size_t>(k)] > within) continue;
        best.low = std::min(best.low, k);
        best.high = std::max(best.high, k);
    }
    return best;
}

Result<Pettitt> pettitt(std::span<const double> values) {
    if (auto ok = check(values, 2); !ok) return tl::unexpected(ok.error());
    const std::size_t count = values.size();
    std::vector<double> order(values.begin(), values.end());
    std::sort(order.begin(), order.end());
    const auto n = static_cast<double>(count);
    Pettitt test;
    double u = 0;
    for (std::size_t i = 0; i + 1 < count; ++i) {
        const auto [from, to] = std::equal_range(order.begin(), order.end(), values[i]);
        const double rank = 0.5 * static_cast<double>((from - order.begin()) + (to - order.begin()) + 1);
        u += 2 * rank - (n + 1);
        if (std::abs(u) <= test.k) continue;
        test.k = std::abs(u);
        test.lastBefore = static_cast<int>(i) + 1;
    }
    test.p = std::min(1.0, 2 * std::exp(-6 * test.k * test.k / (n * n * n + n * n)));
    return test;
}

}  // namespace arc::stats
