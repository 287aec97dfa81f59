// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/since.hpp"

#include <algorithm>
#include <limits>

namespace arc::drift {

namespace {

struct Sums {
    std::vector<double> x, ix;  ///< running sums of the scores and of index times score
};

Sums runningSums(std::span<const double> scores) {
    Sums sums{std::vector<double>(scores.size() + 1, 0.0), std::vector<double>(scores.size() + 1, 0.0)};
    for (std::size_t i = 0; i < scores.size(); ++i) {
        sums.x[i + 1] = sums.x[i] + scores[i];
        sums.ix[i + 1] = sums.ix[i] + static_cast<double>(i) * scores[i];
    }
    return sums;
}

struct Gain {
    double gain = 0, slope = 0, intercept = 0;
};

/// Least squares of the scores on min(1, (i - begin + 1) / ramp) from begin on, 0 before, with intercept.
Gain regress(const Sums& sums, std::size_t n, std::size_t begin, int ramp) {
    const auto size = static_cast<double>(n);
    const std::size_t full =
        std::min(n, begin + static_cast<std::size_t>(ramp) - 1);  // first index at full size
    const double growing = static_cast<double>(full - begin), settled = static_cast<double>(n - full);
    const double r = ramp;
    const double f = growing * (growing + 1) / 2 / r + settled;
    const double ff = growing * (growing + 1) * (2 * growing + 1) / 6 / (r * r) + settled;
    const double fx = ((sums.ix[full] - sums.ix[begin]) -
                       (static_cast<double>(begin) - 1) * (sums.x[full] - sums.x[begin])) /
                          r +
                      (sums.x[n] - sums.x[full]);
    const double sxx = ff - f * f / size;
    const double sxy = fx - f * sums.x[n] / size;
    if (sxx < 1e-9 || sxy <= 0) return {};
    const double slope = sxy / sxx;
    return {sxy * slope / 2, slope, (sums.x[n] - slope * f) / size};
}

}  // namespace

ChangeFit fitChange(std::span<const double> scores, std::size_t latest, std::span<const int> ramps,
                    double variance) {
    ChangeFit best;
    const std::size_t n = scores.size();
    if (n < 2) return best;
    latest = std::min(latest, n - 1);
    const auto sums = runningSums(scores);
    std::vector<double> profile(latest + 1, 0.0);
    for (std::size_t b = 1; b <= latest; ++b)
        for (const int ramp : ramps) {
            const auto fit = regress(sums, n, b, ramp);
            const double gain = fit.gain / variance;
            profile[b] = std::max(profile[b], gain);
            if (gain > best.gain) {
                best.begin = b;
                best.ramp = ramp;
                best.before = fit.intercept;
                best.after = fit.slope;
                best.gain = gain;
            }
        }
    best.low = best.high = best.begin;
    for (std::size_t b = 1; b <= latest; ++b)
        if (best.gain > 0 && profile[b] >= best.gain - 2) {
            best.low = std::min(best.low, b);
            best.high = std::max(best.high, b);
        }
    return best;
}

}  // namespace arc::drift
