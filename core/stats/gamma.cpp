// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/gamma.hpp"

#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <exception>
#include <limits>

#include "core/stats/policy.hpp"

namespace arc::stats {
namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

bool fits(double shape, double scale) {
    return shape > 0 && scale > 0 && std::isfinite(shape) && std::isfinite(scale);
}

}  // namespace

double gammaCdf(double x, double shape, double scale) noexcept {
    if (!fits(shape, scale) || std::isnan(x)) return notANumber;
    if (x <= 0) return 0;
    if (std::isinf(x)) return 1;
    try {
        return boost::math::gamma_p(shape, x / scale, MathPolicy());
    } catch (const std::exception&) {
        return notANumber;
    }
}

double gammaUpperTail(double x, double shape, double scale) noexcept {
    if (!fits(shape, scale) || std::isnan(x)) return notANumber;
    if (x <= 0) return 1;
    if (std::isinf(x)) return 0;
    try {
        return boost::math::gamma_q(shape, x / scale, MathPolicy());
    } catch (const std::exception&) {
        return notANumber;
    }
}

double gammaQuantile(double p, double shape, double scale) noexcept {
    if (!fits(shape, scale) || !(p >= 0 && p <= 1)) return notANumber;
    if (p == 0) return 0;
    if (p == 1) return std::numeric_limits<double>::infinity();
    try {
        return scale * boost::math::gamma_p_inv(shape, p, MathPolicy());
    } catch (const std::exception&) {
        return notANumber;
    }
}

}  // namespace arc::stats
