// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/limit_search.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <exception>
#include <string>

#include "core/stats/plain_number.hpp"
#include "core/stats/policy.hpp"

namespace arc::drift::detail {

Result<double> reportedArl(double arl) {
    if (!(arl >= 1 - 1e-9) || arl > longestArl)
        return fail(ProblemCode::BadInput, "the chart would practically never signal (run length above 1e12)",
                    "", "lower the limit");
    return arl;
}

Result<double> limitWithArl(double arl, double highest,
                            const std::function<Result<double>(double)>& runLength) {
    if (!(arl > 1 && arl <= 1e9))
        return fail(ProblemCode::BadInput, "the wanted run length must lie above 1 and at most at 1e9",
                    stats::plainNumber(arl), "give a budget of more than one reading");
    const auto excess = [&](double limit) {
        const Result<double> found = runLength(limit);
        return std::log(found.value_or(longestArl)) - std::log(arl);
    };
    const double lowest = 1e-6;
    if (excess(lowest) >= 0)
        return fail(ProblemCode::BadInput, "the wanted run length is too short for any limit above 0",
                    stats::plainNumber(arl), "give a longer run length");
    double low = lowest, high = 1;
    while (excess(high) < 0) {
        low = high;
        if (high >= highest)
            return fail(ProblemCode::BadInput, "no limit within reach has the wanted run length",
                        stats::plainNumber(arl), "give a shorter run length or a larger k");
        high = std::min(high + std::max(1.0, high / 2), highest);
    }
    try {
        std::uintmax_t rounds = 100;
        const auto close = [](double a, double b) { return std::abs(a - b) <= 1e-12 * std::max(a, b); };
        const auto [from, to] =
            boost::math::tools::toms748_solve(excess, low, high, close, rounds, stats::MathPolicy());
        return 0.5 * (from + to);
    } catch (const std::exception& error) {
        return fail(ProblemCode::Internal, "the limit could not be solved for", error.what());
    }
}

}  // namespace arc::drift::detail
