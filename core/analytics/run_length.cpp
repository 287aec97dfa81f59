// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/run_length.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <utility>

#include "core/analytics/integral_equation.hpp"
#include "core/analytics/limit_search.hpp"
#include "core/analytics/two_sided_cusum.hpp"
#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"

namespace arc::drift {
namespace {

using detail::gaussLegendre;
using detail::limitWithArl;
using detail::LowerEnd;
using detail::nodesFor;
using detail::QuadratureChain;
using detail::reportedArl;
using detail::Step;

constexpr double widestShift = 50;
constexpr double negligible = 1e-15;  // of the runs still going on
constexpr int mostSteps = 1'000'000;

std::string show(const char* name, double value) {
    return std::string(name) + " = " + stats::plainNumber(value);
}

tl::unexpected<Problem> outOfRange(const char* name, double value, const char* next) {
    return fail(ProblemCode::BadInput, std::string("the ") + name + " is out of range", show(name, value),
                next);
}

Result<void> check(const EwmaChart& chart) {
    if (!(chart.lambda > 0 && chart.lambda <= 1))
        return outOfRange("lambda", chart.lambda, "give a weight above 0 and at most 1");
    // Below that the kernel is so narrow that the node count explodes; nobody charts that slowly.
    if (chart.lambda < 1e-3) return outOfRange("lambda", chart.lambda, "give a weight of at least 0.001");
    if (!(chart.limit > 0 && chart.limit <= 20))
        return outOfRange("limit", chart.limit, "give a limit above 0 and at most 20");
    if (!(chart.headStart >= 0 && chart.headStart < chart.limit))
        return outOfRange("head start", chart.headStart, "give a head start from 0 to below the limit");
    if (chart.headStart > 0 && chart.limits == EwmaLimits::ExactVariance)
        return fail(ProblemCode::BadInput, "a head start is not offered with exact-variance limits", "",
                    "leave one of the two out");
    return {};
}

Result<void> check(const CusumChart& chart) {
    if (!(chart.k >= 0 && chart.k <= 20))
        return outOfRange("k", chart.k, "give a reference value from 0 to 20");
    if (!(chart.h > 0 && chart.h <= 200))
        return outOfRange("h", chart.h, "give a limit above 0 and at most 200");
    if (!(chart.headStart >= 0 && chart.headStart < chart.h))
        return outOfRange("head start", chart.headStart, "give a head start from 0 to below h");
    // Beyond that both sums can be up when one signals, and the two-sided run length no longer follows from
    // the one-sided ones.
    if (chart.sides == Sides::Both && chart.headStart > chart.h / 2 + chart.k)
        return outOfRange("head start", chart.headStart, "give at most h / 2 + k to a two-sided chart");
    return {};
}

Result<void> checkMean(const char* name, double value) {
    if (!(std::abs(value) <= widestShift)) return outOfRange(name, value, "give a number from -50 to 50");
    return {};
}

template <class Chart>
Result<void> check(const Chart& chart, const char* name, double value) {
    if (auto ok = check(chart); !ok) return ok;
    return checkMean(name, value);
}

int withEffort(int nodes, Nodes effort) {
    return effort == Nodes::Twice ? 2 * nodes : nodes;
}

Eigen::ArrayXd normalDensities(const Eigen::ArrayXd& z) {
    constexpr double inverseSqrtTwoPi = 0.3989422804014326779399460599;
    return inverseSqrtTwoPi * (-0.5 * z.square()).exp();
}

double longRunDeviation(double lambda) {
    return std::sqrt(lambda / (2 - lambda));
}

LowerEnd lowerEnd(const EwmaChart& chart) {
    return chart.sides == Sides::Upper ? LowerEnd::Reflects : LowerEnd::Leaves;
}

/// One step of the EWMA on [-limit or 0, limit] when the reading has mean `mean`.
Step ewmaStep(double lambda, LowerEnd end, double limit, double mean, double z, const Eigen::ArrayXd& nodes) {
    const double offset = (1 - lambda) * z / lambda + mean;
    Step step;
    step.leaving = stats::normalUpperTail(limit / lambda - offset);
    if (end == LowerEnd::Reflects)
        step.atom = stats::normalCdf(-offset);
    else
        step.leaving += stats::normalCdf(-limit / lambda - offset);
    step.density = normalDensities(nodes / lambda - offset) / lambda;
    return step;
}

/// One step of the upper CUSUM on [0, h].
Step cusumStep(const CusumChart& chart, double mean, double z, const Eigen::ArrayXd& nodes) {
    const double offset = z - chart.k + mean;
    return {stats::normalCdf(-offset), stats::normalUpperTail(chart.h - offset),
            normalDensities(nodes - offset)};
}

double lowerBound(LowerEnd end, double limit) {
    return end == LowerEnd::Reflects ? 0.0 : -limit;
}

int ewmaNodes(const EwmaChart& chart, Nodes effort) {
    const double limit = chart.limit * longRunDeviation(chart.lambda);
    return withEffort(nodesFor((limit - lowerBound(lowerEnd(chart), limit)) / chart.lambda), effort);
}

QuadratureChain chainOf(const EwmaChart& chart, double shift, Nodes effort) {
    const double limit = chart.limit * longRunDeviation(chart.lambda);
    const LowerEnd end = lowerEnd(chart);
    return {gaussLegendre(lowerBound(end, limit), limit, ewmaNodes(chart, effort)), end,
            [lambda = chart.lambda, end, limit, shift](double z, const Eigen::ArrayXd& nodes) {
                return ewmaStep(lambda, end, limit, shift, z, nodes);
            }};
}

QuadratureChain chainOf(const CusumChart& chart, double shift, Nodes effort) {
    return {
        gaussLegendre(0, chart.h, withEffort(nodesFor(chart.h), effort)), LowerEnd::Reflects,
        [chart, shift](double z, const Eigen::ArrayXd& nodes) { return cusumStep(chart, shift, z, nodes); }};
}

/// Walking reading by reading costs seconds below that.
Result<void> checkWalk(const EwmaChart& chart) {
    if (chart.lambda < 0.005)
        return outOfRange("lambda", chart.lambda,
                          "give at least 0.005 with drift, a head start or exact-variance limits");
    return {};
}

/// Follows the law of the statistic reading by reading while limits or mean change.
class Walk {
  public:
    explicit Walk(double start) : at(Eigen::ArrayXd::Constant(1, start)), mass(Eigen::VectorXd::Ones(1)) {}

    /// Takes one reading. `step` gives the chances on the new quadrature.
    void advance(const detail::Quadrature& next, LowerEnd end, const detail::StepFrom& step) {
        const Eigen::Index first = end == LowerEnd::Reflects ? 1 : 0;
        Eigen::ArrayXd density = Eigen::ArrayXd::Zero(next.nodes.size());
        double atom = 0;
        for (Eigen::Index i = 0; i < at.size(); ++i) {
            if (mass[i] == 0) continue;
            const Step chances = step(at[i], next.nodes);
            density += mass[i] * chances.density;
            atom += mass[i] * chances.atom;
        }
        at.resize(next.nodes.size() + first);
        mass.resize(at.size());
        if (first == 1) {
            at[0] = 0;
            mass[0] = atom;
        }
        at.tail(next.nodes.size()) = next.nodes;
        mass.tail(next.nodes.size()) = (density * next.weights).matrix();
    }

    [[nodiscard]] double remaining() const { return mass.sum(); }

    /// Mean of further readings, from the stationary chain.
    [[nodiscard]] double further(const QuadratureChain& chain) const {
        const Eigen::VectorXd fromStates = chain.stepsToLeave();
        double sum = 0;
        for (Eigen::Index i = 0; i < at.size(); ++i)
            if (mass[i] != 0) sum += mass[i] * chain.stepsToLeaveFrom(at[i], fromStates);
        return sum;
    }

  private:
    Eigen::ArrayXd at;
    Eigen::VectorXd mass;
};

/// Run length while the limits still move: exact variance, or two charts started off centre. Two EWMAs of the
/// same readings started at +-d differ from one started at 0 by +-d (1 - lambda)^n: one chart whose limits
/// open.
Result<double> openingLimitsRunLength(const EwmaChart& chart, double shift, Nodes effort) {
    if (auto ok = checkWalk(chart); !ok) return tl::unexpected(ok.error());
    const double deviation = longRunDeviation(chart.lambda);
    const double limit = chart.limit * deviation;
    const LowerEnd end = lowerEnd(chart);
    const double keep = 1 - chart.lambda;
    Walk walk(end == LowerEnd::Reflects ? chart.headStart * deviation : 0.0);
    const double offset = end == LowerEnd::Reflects ? 0.0 : chart.headStart * deviation;
    const detail::Quadrature unit = gaussLegendre(0, 1, ewmaNodes(chart, effort));
    double sum = 0;
    for (int n = 1; n <= mostSteps; ++n) {
        const double share = std::pow(keep, n);
        const double now = chart.limits == EwmaLimits::ExactVariance ? limit * std::sqrt(1 - share * share)
                                                                     : limit - offset * share;
        sum += walk.remaining();
        const double low = lowerBound(end, now);
        walk.advance({low + (now - low) * unit.nodes, (now - low) * unit.weights}, end,
                     [&](double z, const Eigen::ArrayXd& to) {
                         return ewmaStep(chart.lambda, end, now, shift, z, to);
                     });
        if (walk.remaining() < negligible) return reportedArl(sum);
        if (limit - now < 1e-12 * limit) break;
    }
    return reportedArl(sum + walk.further(chainOf(chart, shift, effort)));
}

/// Sum of the chances that the run is still on, while the mean climbs.
Result<double> climbingRunLength(
    double start, const detail::Quadrature& quadrature, LowerEnd end, double slope,
    const std::function<Step(double mean, double z, const Eigen::ArrayXd&)>& step) {
    Walk walk(start);
    double sum = 0;
    for (int n = 1; n <= mostSteps; ++n) {
        sum += walk.remaining();
        walk.advance(quadrature, end,
                     [&](double z, const Eigen::ArrayXd& nodes) { return step(n * slope, z, nodes); });
        if (walk.remaining() < negligible) return reportedArl(sum);
        // At 20,000 readings a slope that has not come to bear is none.
        if (n == 20'000 && std::abs(slope) * n < 0.02) break;
    }
    return fail(ProblemCode::BadInput, "the slope is too small to be told from none", show("slope", slope),
                "ask for the run length without drift");
}

/// One sum of a CUSUM.
struct Side {
    QuadratureChain chain;
    Eigen::VectorXd from;  ///< run lengths from its states, the first from 0
};

Side sideOf(const CusumChart& chart, double shift, Nodes nodes) {
    QuadratureChain chain = chainOf(chart, shift, nodes);
    Eigen::VectorXd from = chain.stepsToLeave();
    return {std::move(chain), std::move(from)};
}

/// Run lengths of one sum alone: from where it stands and from 0.
struct Alone {
    double started = 0;
    double fromZero = 0;
};

/// When one sum signals the other is back at 0, so the run lengths add like rates (J. M. Lucas & R. B.
/// Crosier, Technometrics 24, 1982). One of them may be astronomical or infinite: divided through by it.
double bothSides(Alone one, Alone other) {
    if (!(one.fromZero <= other.fromZero)) std::swap(one, other);
    if (!std::isfinite(other.fromZero)) return one.started;
    return (one.started + one.fromZero * (other.started / other.fromZero - 1)) /
           (1 + one.fromZero / other.fromZero);
}

/// The run length is linear in that of each sum, so it may be averaged over where they stand.
Result<double> twoSidedSteadyState(const CusumChart& chart, double shift, Nodes nodes) {
    const auto before = detail::longRunOfTwoSums(chart.k, chart.h, withEffort(1, nodes));
    if (!before) return tl::unexpected(before.error());
    const auto mean = [&](const Side& side) {
        double sum = 0;
        for (std::size_t i = 0; i < before->at.size(); ++i)
            sum += before->mass[i] * side.chain.stepsToLeaveFrom(before->at[i], side.from);
        return Alone{sum, side.from[0]};
    };
    return reportedArl(bothSides(mean(sideOf(chart, shift, nodes)), mean(sideOf(chart, -shift, nodes))));
}

}  // namespace

Result<double> averageRunLength(const EwmaChart& chart, double shift, Nodes nodes) {
    if (auto ok = check(chart, "shift", shift); !ok) return tl::unexpected(ok.error());
    const bool opening =
        chart.limits == EwmaLimits::ExactVariance || (chart.headStart > 0 && chart.sides == Sides::Both);
    if (opening) return openingLimitsRunLength(chart, shift, nodes);
    const QuadratureChain chain = chainOf(chart, shift, nodes);
    return reportedArl(
        chain.stepsToLeaveFrom(chart.headStart * longRunDeviation(chart.lambda), chain.stepsToLeave()));
}

Result<double> averageRunLength(const CusumChart& chart, double shift, Nodes nodes) {
    if (auto ok = check(chart, "shift", shift); !ok) return tl::unexpected(ok.error());
    const Side up = sideOf(chart, shift, nodes);
    const double started = up.chain.stepsToLeaveFrom(chart.headStart, up.from);
    if (chart.sides == Sides::Upper) return reportedArl(started);
    const Side down = sideOf(chart, -shift, nodes);
    return reportedArl(bothSides({started, up.from[0]},
                                 {down.chain.stepsToLeaveFrom(chart.headStart, down.from), down.from[0]}));
}

Result<double> steadyStateRunLength(const EwmaChart& chart, double shift, Nodes nodes) {
    if (auto ok = check(chart, "shift", shift); !ok) return tl::unexpected(ok.error());
    const Eigen::VectorXd before = chainOf(chart, 0, nodes).longRun();
    return reportedArl(before.dot(chainOf(chart, shift, nodes).stepsToLeave()));
}

Result<double> steadyStateRunLength(const CusumChart& chart, double shift, Nodes nodes) {
    if (auto ok = check(chart, "shift", shift); !ok) return tl::unexpected(ok.error());
    if (chart.sides == Sides::Both) return twoSidedSteadyState(chart, shift, nodes);
    const Eigen::VectorXd before = chainOf(chart, 0, nodes).longRun();
    return reportedArl(before.dot(chainOf(chart, shift, nodes).stepsToLeave()));
}

Result<double> driftRunLength(const EwmaChart& chart, double slope, Nodes nodes) {
    if (auto ok = check(chart, "slope", slope); !ok) return tl::unexpected(ok.error());
    if (slope == 0) return averageRunLength(chart, 0, nodes);
    if (chart.limits == EwmaLimits::ExactVariance || (chart.headStart > 0 && chart.sides == Sides::Both))
        return fail(ProblemCode::BadInput, "drift is offered with fixed limits and no head start", "",
                    "leave the head start out");
    if (chart.sides == Sides::Upper && slope < 0)
        return outOfRange("slope", slope, "an upper chart never sees a falling mean; give a slope above 0");
    if (auto ok = checkWalk(chart); !ok) return tl::unexpected(ok.error());
    const double limit = chart.limit * longRunDeviation(chart.lambda);
    const LowerEnd end = lowerEnd(chart);
    return climbingRunLength(chart.headStart * longRunDeviation(chart.lambda),
                             gaussLegendre(lowerBound(end, limit), limit, ewmaNodes(chart, nodes)), end,
                             slope, [&](double mean, double z, const Eigen::ArrayXd& to) {
                                 return ewmaStep(chart.lambda, end, limit, mean, z, to);
                             });
}

Result<double> driftRunLength(const CusumChart& chart, double slope, Nodes nodes) {
    if (auto ok = check(chart, "slope", slope); !ok) return tl::unexpected(ok.error());
    if (chart.sides == Sides::Both)
        return fail(ProblemCode::BadInput, "drift is offered for a one-sided CUSUM only", "",
                    "ask for one side");
    if (slope == 0) return averageRunLength(chart, 0, nodes);
    if (slope < 0)
        return outOfRange("slope", slope, "an upper chart never sees a falling mean; give a slope above 0");
    return climbingRunLength(chart.headStart, gaussLegendre(0, chart.h, withEffort(nodesFor(chart.h), nodes)),
                             LowerEnd::Reflects, slope, [&](double mean, double z, const Eigen::ArrayXd& to) {
                                 return cusumStep(chart, mean, z, to);
                             });
}

Result<std::vector<double>> runLengthSurvival(const EwmaChart& chart, double shift, int readings,
                                              Nodes nodes) {
    if (auto ok = check(chart, "shift", shift); !ok) return tl::unexpected(ok.error());
    if (readings < 0 || readings > mostSteps)
        return outOfRange("number of readings", readings, "give 0 to 1,000,000");
    if (chart.limits != EwmaLimits::Fixed || chart.headStart != 0)
        return fail(ProblemCode::BadInput, "survival is offered with fixed limits and no head start", "",
                    "leave the head start out");
    const QuadratureChain chain = chainOf(chart, shift, nodes);
    std::vector<double> survival = {1.0};
    survival.reserve(static_cast<std::size_t>(readings) + 1);
    // Row vectors: masses after n readings.
    Eigen::RowVectorXd mass = chain.oneStepFrom(0).transpose();
    Eigen::RowVectorXd next(mass.size());
    for (int n = 1; n <= readings; ++n) {
        survival.push_back(mass.sum());
        next.noalias() = mass * chain.transitions();
        mass.swap(next);
    }
    return survival;
}

Result<double> limitFor(const EwmaChart& chart, double arl) {
    EwmaChart tried = chart;
    tried.limit = 1;
    tried.headStart = 0;
    if (auto ok = check(tried); !ok) return tl::unexpected(ok.error());
    return limitWithArl(arl, 20, [&](double limit) {
        tried.limit = limit;
        return averageRunLength(tried, 0);
    });
}

Result<double> limitFor(const CusumChart& chart, double arl) {
    CusumChart tried = chart;
    tried.h = 1;
    tried.headStart = 0;
    if (auto ok = check(tried); !ok) return tl::unexpected(ok.error());
    return limitWithArl(arl, 200, [&](double h) {
        tried.h = h;
        return averageRunLength(tried, 0);
    });
}

}  // namespace arc::drift
