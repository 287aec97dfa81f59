// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/classical_charts.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace arc::drift {

std::vector<double> ewmaSeries(std::span<const double> readings, double start, double lambda) {
    std::vector<double> series;
    series.reserve(readings.size());
    double z = start;
    for (const double x : readings) {
        z = (1 - lambda) * z + lambda * x;
        series.push_back(z);
    }
    return series;
}

CusumSeries cusumSeries(std::span<const double> readings, double target, double k, double headStart) {
    CusumSeries series;
    series.up.reserve(readings.size());
    series.down.reserve(readings.size());
    double up = headStart, down = headStart;
    for (const double x : readings) {
        up = std::max(0.0, up + (x - target) - k);
        down = std::max(0.0, down - (x - target) - k);
        series.up.push_back(up);
        series.down.push_back(down);
    }
    return series;
}

std::optional<std::size_t> firstBeyond(std::span<const double> values, double limit) {
    const auto found = std::find_if(values.begin(), values.end(), [limit](double v) { return v > limit; });
    if (found == values.end()) return std::nullopt;
    return static_cast<std::size_t>(found - values.begin());
}

Result<IndividualsLimits> individualsLimits(std::span<const double> readings, double d2) {
    if (readings.size() < 2)
        return fail(ProblemCode::BadInput, "an individuals chart needs at least two readings");
    if (!(d2 > 0)) return fail(ProblemCode::BadInput, "the range factor d2 must be above 0");
    const auto n = static_cast<double>(readings.size());
    IndividualsLimits limits;
    limits.mean = std::accumulate(readings.begin(), readings.end(), 0.0) / n;
    for (std::size_t i = 1; i < readings.size(); ++i)
        limits.meanMovingRange += std::abs(readings[i] - readings[i - 1]);
    limits.meanMovingRange /= n - 1;
    limits.lower = limits.mean - 3 * limits.meanMovingRange / d2;
    limits.upper = limits.mean + 3 * limits.meanMovingRange / d2;
    return limits;
}

}  // namespace arc::drift
