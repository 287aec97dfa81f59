// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/several_streams.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "core/analytics/integral_equation.hpp"
#include "core/analytics/limit_search.hpp"
#include "core/stats/plain_number.hpp"

namespace arc::drift {
namespace {

constexpr int mostStreams = 64;
constexpr int firstStretch = 256;
constexpr int longestStretch = 1 << 18;

/// Log density of the noncentral chi-square as a Poisson mixture of central ones, summed outward from its
/// largest term.
double noncentralChiSquare(double x, double freedom, double noncentrality) {
    if (x <= 0) return 0;
    const double half = 0.5 * noncentrality;
    // Term j: Poisson(half; j) times the central density with freedom + 2 j.
    const auto ratio = [&](double j) { return half * x / (2 * (j + 1) * (0.5 * freedom + j)); };
    const double a = 0.5 * freedom + 1;
    const double peak =
        std::max(0.0, std::floor(0.5 * (-a + std::sqrt(std::max(0.0, a * a + 2 * (half * x - freedom))))));
    const double shape = 0.5 * freedom + peak;
    const double poisson = half > 0 ? peak * std::log(half) - half - std::lgamma(peak + 1) : 0.0;
    const double central = (shape - 1) * std::log(0.5 * x) - 0.5 * x - std::lgamma(shape) - std::log(2.0);
    double sum = 1, term = 1;
    for (double j = peak; half > 0; j += 1) {
        term *= ratio(j);
        sum += term;
        if (term < 1e-17 * sum) break;
    }
    term = 1;
    for (double j = peak - 1; j >= 0; j -= 1) {
        term /= ratio(j);
        sum += term;
        if (term < 1e-17 * sum) break;
    }
    return sum * std::exp(poisson + central);
}

Result<void> check(const MewmaChart& chart) {
    if (chart.streams < 1 || chart.streams > mostStreams)
        return fail(ProblemCode::BadInput, "the number of streams is out of range",
                    std::to_string(chart.streams), "give 1 to 64");
    if (!(chart.r >= 0.01 && chart.r <= 1))
        return fail(ProblemCode::BadInput, "the weight r is out of range", stats::plainNumber(chart.r),
                    "give a weight from 0.01 to 1");
    if (!(chart.limit > 0 && chart.limit <= 400))
        return fail(ProblemCode::BadInput, "the limit is out of range", stats::plainNumber(chart.limit),
                    "give a limit above 0 and at most 400");
    return {};
}

}  // namespace

Result<double> groupRunLength(const EwmaChart& each, std::span<const double> shifts) {
    if (shifts.empty() || shifts.size() > mostStreams)
        return fail(ProblemCode::BadInput, "the number of streams is out of range",
                    std::to_string(shifts.size()), "give 1 to 64");
    // Streams with one mean share one survival curve.
    std::map<double, int> streamsOf;
    for (const double shift : shifts) ++streamsOf[shift];
    for (int stretch = firstStretch; stretch <= longestStretch; stretch *= 4) {
        std::vector<double> survival(static_cast<std::size_t>(stretch) + 1, 1.0);
        for (const auto& [shift, count] : streamsOf) {
            const auto one = runLengthSurvival(each, shift, stretch);
            if (!one) return tl::unexpected(one.error());
            for (std::size_t n = 0; n < survival.size(); ++n) survival[n] *= std::pow((*one)[n], count);
        }
        // Sum the curve; once its ratio stands still the rest is a geometric tail.
        double sum = 0, ratio = 0;
        for (std::size_t n = 0; n + 1 < survival.size(); ++n) {
            sum += survival[n];
            if (survival[n + 1] < 1e-16) return detail::reportedArl(sum);
            const double next = survival[n + 1] / survival[n];
            if (n > 32 && std::abs(next - ratio) <= 1e-14 * (1 - next))
                return detail::reportedArl(sum + survival[n + 1] / (1 - next));
            ratio = next;
        }
        // Rounding can keep the ratio from standing quite still; a long stretch settles it all the same.
        if (stretch >= 16 * firstStretch) return detail::reportedArl(sum + survival.back() / (1 - ratio));
    }
    return fail(ProblemCode::Internal, "the group's run length did not settle");
}

Result<double> groupLimit(const EwmaChart& each, int streams, double arl) {
    if (streams < 1 || streams > mostStreams)
        return fail(ProblemCode::BadInput, "the number of streams is out of range", std::to_string(streams),
                    "give 1 to 64");
    const std::vector<double> shifts(static_cast<std::size_t>(streams), 0.0);
    EwmaChart tried = each;
    tried.limit = 1;
    if (const auto possible = groupRunLength(tried, shifts); !possible)
        return tl::unexpected(possible.error());
    return detail::limitWithArl(arl, 20, [&](double limit) {
        tried.limit = limit;
        return groupRunLength(tried, shifts);
    });
}

Result<double> averageRunLength(const MewmaChart& chart) {
    if (auto ok = check(chart); !ok) return tl::unexpected(ok.error());
    // In control the law of |z| alone carries the chart: z' = (1 - r) z + r x has |z'|^2 / r^2 noncentral
    // chi-square with ((1 - r) |z| / r)^2.
    const double radius = std::sqrt(chart.limit * chart.r / (2 - chart.r));
    const auto rule = detail::gaussLegendre(0, radius, detail::nodesFor(radius / chart.r));
    const Eigen::Index count = rule.nodes.size();
    const auto density = [&](double from, double to) {
        const double pull = (1 - chart.r) * from / chart.r, x = to / chart.r;
        return noncentralChiSquare(x * x, chart.streams, pull * pull) * 2 * x / chart.r;
    };
    Eigen::MatrixXd system = Eigen::MatrixXd::Identity(count, count);
    for (Eigen::Index i = 0; i < count; ++i)
        for (Eigen::Index j = 0; j < count; ++j)
            system(i, j) -= rule.weights[j] * density(rule.nodes[i], rule.nodes[j]);
    const Eigen::VectorXd fromNodes = system.partialPivLu().solve(Eigen::VectorXd::Ones(count));
    double arl = 1;
    for (Eigen::Index j = 0; j < count; ++j)
        arl += rule.weights[j] * density(0, rule.nodes[j]) * fromNodes[j];
    return detail::reportedArl(arl);
}

Result<double> limitFor(const MewmaChart& chart, double arl) {
    MewmaChart tried = chart;
    tried.limit = 1;
    if (auto ok = check(tried); !ok) return tl::unexpected(ok.error());
    return detail::limitWithArl(arl, 400, [&](double limit) {
        tried.limit = limit;
        return averageRunLength(tried);
    });
}

}  // namespace arc::drift
