// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/order.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace arc::stats {
namespace {

std::vector<double> sorted(std::span<const double> values) {
    std::vector<double> copy(values.begin(), values.end());
    std::sort(copy.begin(), copy.end());
    return copy;
}

/// P(B <= k) of n fair coins.
double fairCoins(int k, int n) {
    if (k < 0) return 0;
    double sum = 0;
    for (int i = 0; i <= std::min(k, n); ++i)
        sum += std::exp(std::lgamma(n + 1.0) - std::lgamma(i + 1.0) - std::lgamma(n - i + 1.0) -
                        n * std::log(2.0));
    return std::min(sum, 1.0);
}

}  // namespace

std::optional<double> quantile(std::span<const double> values, double p) {
    if (values.empty() || !(p >= 0 && p <= 1)) return std::nullopt;
    const std::vector<double> order = sorted(values);
    const double position = p * static_cast<double>(order.size() - 1);
    const auto below = static_cast<std::size_t>(position);
    const std::size_t above = std::min(below + 1, order.size() - 1);
    return order[below] + (position - static_cast<double>(below)) * (order[above] - order[below]);
}

std::optional<double> median(std::span<const double> values) {
    return quantile(values, 0.5);
}

std::optional<double> medianDeviation(std::span<const double> values) {
    const auto centre = median(values);
    if (!centre) return std::nullopt;
    std::vector<double> away;
    away.reserve(values.size());
    for (const double value : values) away.push_back(std::abs(value - *centre));
    return 1.482602218505602 * *median(away);
}

std::optional<Interval> medianInterval(std::span<const double> values, double confidence) {
    const auto n = static_cast<int>(values.size());
    const double tail = 0.5 * (1 - confidence);
    // The largest r for which fewer than r values below the median stay within the tail.
    int r = 0;
    while (r < (n + 1) / 2 && fairCoins(r, n) <= tail) ++r;
    if (r == 0) return std::nullopt;
    const std::vector<double> order = sorted(values);
    return Interval{order[static_cast<std::size_t>(r - 1)], order[static_cast<std::size_t>(n - r)]};
}

double signTest(std::span<const double> values, double centre) {
    int above = 0, below = 0;
    for (const double value : values) {
        if (value > centre) ++above;
        if (value < centre) ++below;
    }
    if (above + below == 0) return 1;
    return std::min(1.0, 2 * fairCoins(std::min(above, below), above + below));
}

}  // namespace arc::stats
