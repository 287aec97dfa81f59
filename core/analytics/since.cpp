// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/since.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace arc::drift {

namespace {

constexpr double nothing = -1e9;   ///< log-likelihood of what cannot be
constexpr double wearPower = 1.6;  ///< wear speeds up; a straight ramp would put its begin too late
constexpr double within = 2.0;     ///< log-likelihood units of the interval

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
    double gain = 0, slope = 0;
};

/// From the sums of the template f, of f squared and of f times the scores.
Gain gainOf(double f, double ff, double fx, double x, double n) {
    const double sxx = ff - f * f / n, sxy = fx - f * x / n;
    if (sxx < 1e-12 || sxy <= 0) return {};
    return {sxy * sxy / sxx / 2, sxy / sxx};
}

/// Least squares on min(1, (i - begin + 1) / ramp) from begin on, 0 before, with intercept.
Gain onRamp(const Sums& sums, std::size_t n, double known, std::size_t begin, int ramp) {
    const std::size_t full = std::min(n, begin + static_cast<std::size_t>(ramp) - 1);
    const double growing = static_cast<double>(full - begin), settled = static_cast<double>(n - full),
                 r = ramp;
    const double f = growing * (growing + 1) / 2 / r + settled;
    const double ff = growing * (growing + 1) * (2 * growing + 1) / 6 / (r * r) + settled;
    const double fx = ((sums.ix[full] - sums.ix[begin]) -
                       (static_cast<double>(begin) - 1) * (sums.x[full] - sums.x[begin])) /
                          r +
                      (sums.x[n] - sums.x[full]);
    return gainOf(f, ff, fx, sums.x[n], static_cast<double>(n) + known);
}

/// Begin, interval and evidence from the likelihood of each begin (log mean over its candidates).
void summarise(ChangeFit& fit, const std::vector<double>& profile, std::size_t earliest) {
    const double top = *std::max_element(profile.begin(), profile.end());
    double sum = 0;
    for (const double p : profile) sum += std::exp(p - top);
    fit.evidence = top + std::log(sum / static_cast<double>(profile.size()));
    double below = 0;
    bool found = false;
    fit.low = fit.high = fit.begin = earliest;
    for (std::size_t i = 0; i < profile.size(); ++i) {
        below += std::exp(profile[i] - top);
        if (!found && below >= sum / 2) {
            fit.begin = earliest + i;
            found = true;
        }
    }
    fit.low = fit.high = fit.begin;
    for (std::size_t i = 0; i < profile.size(); ++i)
        if (profile[i] >= top - within) {
            fit.low = std::min(fit.low, earliest + i);
            fit.high = std::max(fit.high, earliest + i);
        }
}

}  // namespace

ChangeFit fitChange(std::span<const double> scores, std::size_t earliest, std::size_t latest,
                    std::span<const int> ramps, Noise noise) {
    ChangeFit fit;
    const std::size_t n = scores.size();
    if (n < 3) return fit;
    latest = std::clamp<std::size_t>(latest, 1, n - 1);
    earliest = std::clamp<std::size_t>(earliest, 1, latest);
    const auto sums = runningSums(scores);
    std::vector<double> profile;
    for (std::size_t b = earliest; b <= latest; ++b) {
        double likelihood = 0;
        for (const int ramp : ramps) {
            const auto [raw, slope] = onRamp(sums, n, noise.known, b, ramp);
            const double gain = raw / noise.variance;
            likelihood += std::exp(std::min(gain, 600.0));
            if (gain > fit.best) {
                fit.best = gain;
                fit.ramp = ramp;
                fit.size = slope;
            }
        }
        profile.push_back(std::log(likelihood / static_cast<double>(ramps.size())));
    }
    summarise(fit, profile, earliest);
    return fit;
}

ChangeFit fitWear(std::span<const double> scores, std::size_t earliest, std::size_t latest, Noise noise) {
    ChangeFit fit;
    const std::size_t n = scores.size();
    if (n < 3) return fit;
    latest = std::clamp<std::size_t>(latest, 1, n - 1);
    earliest = std::clamp<std::size_t>(earliest, 1, latest);
    std::vector<double> wear(n + 1);
    for (std::size_t age = 0; age <= n; ++age)
        wear[age] = std::pow(static_cast<double>(age) / 1000.0, wearPower);
    double x = 0;
    for (const double score : scores) x += score;
    std::vector<double> profile;
    for (std::size_t b = earliest; b <= latest; ++b) {
        double f = 0, ff = 0, fx = 0;
        for (std::size_t i = b; i < n; ++i) {
            const double w = wear[i - b + 1];
            f += w;
            ff += w * w;
            fx += w * scores[i];
        }
        const auto [raw, slope] = gainOf(f, ff, fx, x, static_cast<double>(n) + noise.known);
        profile.push_back(raw / noise.variance);
        if (profile.back() > fit.best) {
            fit.best = profile.back();
            fit.size = slope * wear[n - b];
            fit.ramp = static_cast<int>(n - b);
        }
    }
    summarise(fit, profile, earliest);
    return fit;
}

ChangeFit fitStretches(std::span<const double> scores, std::span<const Stretch> stretches, Noise noise) {
    ChangeFit fit;
    fit.evidence = nothing;
    const auto sums = runningSums(scores);
    double likelihood = 0;
    std::vector<std::pair<std::size_t, double>> gains;
    for (const auto& stretch : stretches) {
        if (stretch.from < 1 || stretch.to <= stretch.from || stretch.to > scores.size()) continue;
        const auto size = static_cast<double>(stretch.to - stretch.from);
        const auto [raw, slope] = gainOf(size, size, sums.x[stretch.to] - sums.x[stretch.from], sums.x.back(),
                                         static_cast<double>(scores.size()) + noise.known);
        const double gain = raw / noise.variance;
        likelihood += std::exp(std::min(gain, 600.0));
        if (gain >= fit.best) {
            fit.best = gain;
            fit.size = slope;
            fit.begin = stretch.from;
        }
        gains.emplace_back(stretch.from, gain);
    }
    fit.low = fit.high = fit.begin;
    for (const auto& [from, gain] : gains)
        if (gain >= fit.best - within) {
            fit.low = std::min(fit.low, from);
            fit.high = std::max(fit.high, from);
        }
    if (likelihood > 0) fit.evidence = std::log(likelihood / static_cast<double>(stretches.size()));
    return fit;
}

}  // namespace arc::drift
