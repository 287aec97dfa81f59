// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/binomial.hpp"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>
#include <exception>
#include <string>

#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"
#include "core/stats/policy.hpp"

namespace arc::stats {
namespace {

Result<void> check(int x, int n, double confidence) {
    if (n < 1 || x < 0 || x > n)
        return fail(ProblemCode::BadInput, "a share needs at least one trial and no more hits than trials",
                    std::to_string(x) + " of " + std::to_string(n));
    if (!(confidence > 0 && confidence < 1))
        return fail(ProblemCode::BadInput, "a confidence lies between 0 and 1",
                    stats::plainNumber(confidence));
    return {};
}

}  // namespace

Result<Interval> wilson(int x, int n, double confidence) {
    if (auto ok = check(x, n, confidence); !ok) return tl::unexpected(ok.error());
    const double z = normalUpperQuantile(0.5 * (1 - confidence));
    const double share = static_cast<double>(x) / n, square = z * z / n;
    const double centre = (share + square / 2) / (1 + square);
    const double half = std::sqrt(square * (share * (1 - share) + square / 4)) / (1 + square);
    return Interval{x == 0 ? 0.0 : std::max(0.0, centre - half), x == n ? 1.0 : std::min(1.0, centre + half)};
}

Result<Interval> clopperPearson(int x, int n, double confidence) {
    if (auto ok = check(x, n, confidence); !ok) return tl::unexpected(ok.error());
    const double tail = 0.5 * (1 - confidence);
    try {
        const double low = x == 0 ? 0.0 : boost::math::ibeta_inv(double(x), n - x + 1.0, tail, MathPolicy());
        const double high =
            x == n ? 1.0 : boost::math::ibetac_inv(x + 1.0, double(n - x), tail, MathPolicy());
        return Interval{low, high};
    } catch (const std::exception& error) {
        return fail(ProblemCode::Internal, "the exact interval of a share could not be computed",
                    error.what());
    }
}

}  // namespace arc::stats
