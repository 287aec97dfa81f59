// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/student.hpp"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <exception>
#include <limits>

#include "core/stats/policy.hpp"

namespace arc::stats {
namespace {

using Law = boost::math::students_t_distribution<double, MathPolicy>;
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

}  // namespace

double studentCdf(double t, double freedom) noexcept {
    if (!(freedom > 0) || std::isinf(freedom) || std::isnan(t)) return notANumber;
    if (std::isinf(t)) return t > 0 ? 1 : 0;
    try {
        return boost::math::cdf(Law(freedom), t);
    } catch (const std::exception&) {
        return notANumber;
    }
}

double studentQuantile(double p, double freedom) noexcept {
    if (!(freedom > 0) || std::isinf(freedom) || !(p >= 0 && p <= 1)) return notANumber;
    if (p == 0) return -infinity;
    if (p == 1) return infinity;
    try {
        return boost::math::quantile(Law(freedom), p);
    } catch (const std::exception&) {
        return notANumber;
    }
}

}  // namespace arc::stats
