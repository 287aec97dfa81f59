// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/rank_tests.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"

namespace arc::stats {
namespace {

constexpr std::size_t exactBelow = 50;
constexpr double mostPairs = 25e6;

Result<void> check(std::span<const double> a, std::span<const double> b) {
    if (a.empty() || b.empty())
        return fail(ProblemCode::BadInput, "a comparison needs readings on both sides",
                    std::to_string(a.size()) + " and " + std::to_string(b.size()));
    for (const auto side : {a, b})
        if (std::any_of(side.begin(), side.end(), [](double x) { return !std::isfinite(x); }))
            return fail(ProblemCode::BadInput, "a reading to compare is not a number");
    return {};
}

/// Sum of t^3 - t over groups of t equal values; the values must be sorted.
double tieSum(const std::vector<double>& sorted) {
    double sum = 0;
    for (std::size_t from = 0; from < sorted.size();) {
        std::size_t to = from;
        while (to < sorted.size() && sorted[to] == sorted[from]) ++to;
        const auto t = static_cast<double>(to - from);
        sum += t * t * t - t;
        from = to;
    }
    return sum;
}

std::vector<double> sorted(std::span<const double> values) {
    std::vector<double> copy(values.begin(), values.end());
    std::sort(copy.begin(), copy.end());
    return copy;
}

double deviationOfU(double m, double n, double ties) {
    const double all = m + n;
    return std::sqrt(std::max(0.0, m * n / 12 * (all + 1 - ties / (all * (all - 1)))));
}

}  // namespace

std::vector<double> mannWhitneyNull(int m, int n) {
    // Coefficients of the Gaussian binomial (m + n choose m), built up factor by factor, as counts.
    std::vector<double> count(static_cast<std::size_t>(m * n) + 1, 0.0);
    count[0] = 1;
    const auto top = static_cast<int>(count.size()) - 1;
    for (int i = 1; i <= m; ++i) {
        // Times (1 - q^(n + i)), then divided by (1 - q^i).
        for (int u = top; u >= n + i; --u)
            count[static_cast<std::size_t>(u)] -= count[static_cast<std::size_t>(u - n - i)];
        for (int u = i; u <= top; ++u)
            count[static_cast<std::size_t>(u)] += count[static_cast<std::size_t>(u - i)];
    }
    double total = 0;
    for (double& c : count) {
        total += c;
        c = total;
    }
    for (double& c : count) c /= total;
    return count;
}

Result<MannWhitney> mannWhitney(std::span<const double> a, std::span<const double> b) {
    if (auto ok = check(a, b); !ok) return tl::unexpected(ok.error());
    const std::vector<double> order = sorted(b);
    MannWhitney test;
    for (const double x : a) {
        const auto [from, to] = std::equal_range(order.begin(), order.end(), x);
        test.u += static_cast<double>(from - order.begin()) + 0.5 * static_cast<double>(to - from);
    }
    std::vector<double> all(a.begin(), a.end());
    all.insert(all.end(), b.begin(), b.end());
    std::sort(all.begin(), all.end());
    const double ties = tieSum(all);
    const auto m = static_cast<double>(a.size()), n = static_cast<double>(b.size());
    if (ties == 0 && a.size() < exactBelow && b.size() < exactBelow) {
        test.method = RankMethod::Exact;
        const auto below = mannWhitneyNull(static_cast<int>(a.size()), static_cast<int>(b.size()));
        const double smaller = std::min(test.u, m * n - test.u);
        test.p = std::min(1.0, 2 * below[static_cast<std::size_t>(smaller)]);
        return test;
    }
    const double deviation = deviationOfU(m, n, ties);
    if (deviation == 0) return test;  // every value is the same: nothing speaks for a difference
    const double away = std::max(0.0, std::abs(test.u - m * n / 2) - 0.5);
    test.p = std::min(1.0, 2 * normalUpperTail(away / deviation));
    return test;
}

Result<Shift> hodgesLehmann(std::span<const double> a, std::span<const double> b, double confidence) {
    if (auto ok = check(a, b); !ok) return tl::unexpected(ok.error());
    if (!(confidence > 0 && confidence < 1))
        return fail(ProblemCode::BadInput, "a confidence lies between 0 and 1",
                    stats::plainNumber(confidence));
    const auto m = static_cast<double>(a.size()), n = static_cast<double>(b.size());
    if (m * n > mostPairs)
        return fail(ProblemCode::BadInput, "too many readings to compare pair by pair", "",
                    "compare a shorter stretch");
    std::vector<double> difference;
    difference.reserve(a.size() * b.size());
    for (const double x : a)
        for (const double y : b) difference.push_back(x - y);
    std::sort(difference.begin(), difference.end());
    const std::size_t pairs = difference.size();
    Shift shift;
    shift.estimate = 0.5 * (difference[(pairs - 1) / 2] + difference[pairs / 2]);
    std::vector<double> all(a.begin(), a.end());
    all.insert(all.end(), b.begin(), b.end());
    std::sort(all.begin(), all.end());
    const double tail = 0.5 * (1 - confidence);
    // The interval runs from the low-th difference to the low-th from the top.
    double low = 0;
    if (tieSum(all) == 0 && a.size() < exactBelow && b.size() < exactBelow) {
        shift.method = RankMethod::Exact;
        const auto below = mannWhitneyNull(static_cast<int>(a.size()), static_cast<int>(b.size()));
        const auto within = std::upper_bound(below.begin(), below.end(), tail) - below.begin();
        low = static_cast<double>(within);
    } else {
        // A shift moves the samples apart, so only the ties within each sample thin the variance.
        const double deviation = deviationOfU(m, n, tieSum(sorted(a)) + tieSum(sorted(b)));
        low = std::ceil(m * n / 2 - 0.5 - normalUpperQuantile(tail) * deviation);
    }
    if (low >= 1) {
        const auto at = static_cast<std::size_t>(low) - 1;
        shift.interval = Interval{difference[at], difference[pairs - 1 - at]};
    }
    return shift;
}

}  // namespace arc::stats
