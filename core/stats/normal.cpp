// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/normal.hpp"

#include <algorithm>
#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/stats/policy.hpp"

namespace arc::stats {
namespace {

constexpr double inverseSqrtTwoPi = 0.3989422804014326779399460599;
constexpr double infinity = std::numeric_limits<double>::infinity();

}  // namespace

double normalDensity(double z) noexcept {
    return inverseSqrtTwoPi * std::exp(-0.5 * z * z);
}

double normalCdf(double z) noexcept {
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

double normalUpperTail(double z) noexcept {
    return 0.5 * std::erfc(z / std::numbers::sqrt2);
}

double normalBetween(double a, double b) noexcept {
    if (!(a < b)) return std::isnan(a) || std::isnan(b) ? std::numeric_limits<double>::quiet_NaN() : 0.0;
    if (a > 0) return normalUpperTail(a) - normalUpperTail(b);
    return normalCdf(b) - normalCdf(a);
}

double normalUpperQuantile(double q) noexcept {
    if (!(q >= 0 && q <= 1)) return std::numeric_limits<double>::quiet_NaN();
    if (q == 0) return infinity;
    if (q == 1) return -infinity;
    return std::numbers::sqrt2 * boost::math::erfc_inv(2 * q, MathPolicy());
}

double normalQuantile(double p) noexcept {
    return -normalUpperQuantile(p);
}

double normalMeanBetween(double a, double b) noexcept {
    const double mass = normalBetween(a, b);
    if (std::isnan(mass)) return mass;
    // Far out the quotient loses its digits before the mass is gone; the mean is then next to the inner end.
    if (mass < 1e-280) return std::abs(a) < std::abs(b) ? a : b;
    return std::clamp((normalDensity(a) - normalDensity(b)) / mass, std::min(a, b), std::max(a, b));
}

}  // namespace arc::stats
