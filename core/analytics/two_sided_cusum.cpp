// SPDX-License-Identifier: GPL-3.0-or-later
// Both sums start at 0 and at each reading one goes up by at least as much as the other goes down, less 2 k.
// So the pair is at (0, 0), or on an axis, or has both sums up; then their total falls by exactly 2 k a
// reading. Cutting the axis into periods of 2 k (counted from both ends, where the law has kinks) lets
// quadrature nodes fall on quadrature nodes, and the two-dimensional law becomes a few curves. The standing
// law is found by power iteration.
#include "core/analytics/two_sided_cusum.hpp"

#include <Eigen/Core>
#include <cmath>
#include <string>
#include <utility>

#include "core/analytics/integral_equation.hpp"
#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"

namespace arc::drift::detail {
namespace {

using stats::normalCdf;
using stats::normalDensity;

constexpr double mostPeriods = 60, highestLimit = 15;
constexpr int mostRounds = 20000;

struct Segment {
    Eigen::Index first = 0;  ///< of its nodes
    Eigen::Index count = 0;
    double from = 0, to = 0;
};

/// Nodes on (0, h], segment by segment; node i + perPeriod lies exactly 2 k above node i.
struct Axis {
    double period = 0, h = 0;
    std::vector<Segment> segments;
    Eigen::ArrayXd at, weight;
    std::vector<std::size_t> segmentOf;
    Eigen::Index perPeriod = 0;

    [[nodiscard]] Eigen::Index size() const { return at.size(); }
    /// Both sums can be up only with a total below h - 2 k: the first nodes.
    [[nodiscard]] Eigen::Index totals() const { return std::max<Eigen::Index>(0, size() - perPeriod); }
};

Axis axisOf(double k, double h, int refined) {
    Axis axis;
    axis.period = 2 * k;
    axis.h = h;
    auto whole = static_cast<int>(std::floor(h / axis.period));
    double rest = h - whole * axis.period;
    if (rest > axis.period * (1 - 1e-9)) {
        ++whole;
        rest = 0;
    }
    if (rest < axis.period * 1e-9) rest = 0;
    const auto nodesOn = [&](double length) {
        return refined * (8 + static_cast<int>(std::ceil(3 * length)));
    };
    std::vector<double> nodes, weights;
    const auto add = [&](double from, double to) {
        const Quadrature rule = gaussLegendre(from, to, nodesOn(to - from));
        axis.segments.push_back({static_cast<Eigen::Index>(nodes.size()), rule.nodes.size(), from, to});
        for (Eigen::Index i = 0; i < rule.nodes.size(); ++i) {
            nodes.push_back(rule.nodes[i]);
            weights.push_back(rule.weights[i]);
            axis.segmentOf.push_back(axis.segments.size() - 1);
        }
    };
    for (int j = 0; j <= whole; ++j) {
        const double start = j * axis.period;
        if (rest > 0) add(start, start + rest);
        if (j < whole) add(start + rest, start + axis.period);
        if (j == 0) axis.perPeriod = static_cast<Eigen::Index>(nodes.size());
    }
    axis.at = Eigen::Map<Eigen::ArrayXd>(nodes.data(), static_cast<Eigen::Index>(nodes.size()));
    axis.weight = Eigen::Map<Eigen::ArrayXd>(weights.data(), static_cast<Eigen::Index>(weights.size()));
    return axis;
}

/// Weights that turn values at the nodes into the integral of (values x kernel) from 0 to `limit`, where
/// `limit` lies at node `end`, or over the first `all` nodes when end is not among them.
template <class Kernel>
Eigen::ArrayXd weightsUpTo(const Axis& axis, Eigen::Index end, Eigen::Index all, const Kernel& kernel) {
    Eigen::ArrayXd weights = Eigen::ArrayXd::Zero(all);
    const bool whole = end >= all;
    const Segment* last = whole ? nullptr : &axis.segments[axis.segmentOf[static_cast<std::size_t>(end)]];
    const Eigen::Index full = whole ? all : last->first;
    for (Eigen::Index i = 0; i < full; ++i) weights[i] = axis.weight[i] * kernel(axis.at[i]);
    if (whole) return weights;
    // Part of a segment: integrate its interpolating polynomial.
    const Quadrature part = gaussLegendre(last->from, axis.at[end], static_cast<int>(last->count));
    for (Eigen::Index q = 0; q < part.nodes.size(); ++q) {
        const double y = part.nodes[q], value = part.weights[q] * kernel(y);
        for (Eigen::Index j = 0; j < last->count; ++j) {
            double lagrange = 1;
            for (Eigen::Index other = 0; other < last->count; ++other) {
                if (other == j) continue;
                const double x = axis.at[last->first + other];
                lagrange *= (y - x) / (axis.at[last->first + j] - x);
            }
            weights[last->first + j] += value * lagrange;
        }
    }
    return weights;
}

/// Unnormalised: mass at (0, 0), density on either axis, density of both up by total and upper sum (for each
/// total in turn, at its own nodes on (0, total)).
struct Law {
    double origin = 1;
    Eigen::VectorXd axis;
    Eigen::VectorXd both;
};

Eigen::ArrayXd densities(const Eigen::ArrayXd& z) {
    return 0.3989422804014326779399460599 * (-0.5 * z.square()).exp();
}

/// Everything one reading does to a Law, as matrices.
class TwoSums {
  public:
    TwoSums(double k, double h, int refined) : k_(k), axis_(axisOf(k, h, refined)) {
        placeSplits(refined);
        fromAxis();
        fromBoth();
    }

    /// One reading; the result's mass against the old one's is the chance of no signal.
    [[nodiscard]] Law next(const Law& now) const {
        Law law;
        law.origin = now.origin * (normalCdf(k_) - normalCdf(-k_)) + axisToOrigin_.dot(now.axis) +
                     bothToOrigin_.dot(now.both);
        law.axis = now.origin * originToAxis_ + axisToAxis_ * now.axis + bothToAxis_ * now.both;
        law.both.resize(now.both.size());
        for (Eigen::Index s = 0; s < axis_.totals(); ++s) {
            const Eigen::Index above = s + axis_.perPeriod;
            auto to = law.both.segment(first_[s], splits_[s].nodes.size());
            to = now.axis[above] * axisToBoth_.segment(first_[s], splits_[s].nodes.size());
            if (above < axis_.totals())
                to += bothToBoth_[static_cast<std::size_t>(s)] *
                      now.both.segment(first_[above], splits_[above].nodes.size());
        }
        return law;
    }

    [[nodiscard]] Law start() const {
        return {1, Eigen::VectorXd::Zero(axis_.size()), Eigen::VectorXd::Zero(bothWeight_.size())};
    }

    [[nodiscard]] double mass(const Law& law) const {
        return law.origin + 2 * law.axis.dot(axis_.weight.matrix()) + law.both.dot(bothWeight_);
    }

    [[nodiscard]] SumLaw upperSum(const Law& law) const {
        SumLaw upper;
        const double whole = mass(law);
        const auto put = [&](double at, double share) {
            upper.at.push_back(at);
            upper.mass.push_back(share / whole);
        };
        put(0, law.origin + law.axis.dot(axis_.weight.matrix()));
        for (Eigen::Index i = 0; i < axis_.size(); ++i) put(axis_.at[i], axis_.weight[i] * law.axis[i]);
        for (Eigen::Index i = 0; i < bothAt_.size(); ++i) put(bothAt_[i], bothWeight_[i] * law.both[i]);
        return upper;
    }

  private:
    /// Nodes that split each total into its two sums.
    void placeSplits(int refined) {
        Eigen::Index all = 0;
        for (Eigen::Index s = 0; s < axis_.totals(); ++s) {
            const int count = refined * (10 + static_cast<int>(std::ceil(2.5 * axis_.at[s])));
            splits_.push_back(gaussLegendre(0, axis_.at[s], count));
            first_.push_back(all);
            all += count;
        }
        bothAt_.resize(all);
        bothWeight_.resize(all);
        for (Eigen::Index s = 0; s < axis_.totals(); ++s) {
            const Eigen::Index count = splits_[s].nodes.size();
            bothAt_.segment(first_[s], count) = splits_[s].nodes.matrix();
            bothWeight_.segment(first_[s], count) = (axis_.weight[s] * splits_[s].weights).matrix();
        }
    }

    void fromAxis() {
        const Eigen::Index n = axis_.size();
        originToAxis_ = densities(axis_.at + k_).matrix();
        axisToAxis_.resize(n, n);
        axisToOrigin_ = Eigen::VectorXd::Zero(n);
        for (Eigen::Index i = 0; i < n; ++i) {
            const double to = axis_.at[i];
            // Along the axis, or across the corner from the other one.
            axisToAxis_.row(i) = weightsUpTo(axis_, i + axis_.perPeriod, n, [&](double u) {
                return normalDensity(to - u + k_) + normalDensity(to + k_);
            });
            if (i < axis_.perPeriod)
                axisToOrigin_[i] = 2 * axis_.weight[i] * (normalCdf(k_ - to) - normalCdf(-k_));
        }
        axisToBoth_.resize(bothAt_.size());
        for (Eigen::Index s = 0; s < axis_.totals(); ++s) {
            const Eigen::ArrayXd& v = splits_[s].nodes;
            axisToBoth_.segment(first_[s], v.size()) =
                (densities(v - axis_.at[s] - k_) + densities(v + k_)).matrix();
        }
    }

    void fromBoth() {
        const Eigen::Index n = axis_.size(), totals = axis_.totals();
        Eigen::MatrixXd upTo(n, totals);
        for (Eigen::Index i = 0; i < n; ++i)
            upTo.row(i) = weightsUpTo(axis_, i + axis_.perPeriod, totals, [](double) { return 1.0; });
        bothToAxis_.resize(n, bothAt_.size());
        bothToOrigin_ = Eigen::VectorXd::Zero(bothAt_.size());
        for (Eigen::Index s = 0; s < totals; ++s)
            for (Eigen::Index q = 0; q < splits_[s].nodes.size(); ++q) {
                const double v = splits_[s].nodes[q];
                bothToAxis_.col(first_[s] + q) =
                    (upTo.col(s).array() * splits_[s].weights[q] * densities(axis_.at + k_ - v)).matrix();
                if (s < axis_.perPeriod)
                    bothToOrigin_[first_[s] + q] = axis_.weight[s] * splits_[s].weights[q] *
                                                   (normalCdf(k_ - v) - normalCdf(axis_.at[s] - v - k_));
            }
        for (Eigen::Index s = 0; s + axis_.perPeriod < totals; ++s) {
            const Quadrature& from = splits_[s + axis_.perPeriod];
            Eigen::MatrixXd step(splits_[s].nodes.size(), from.nodes.size());
            for (Eigen::Index q = 0; q < from.nodes.size(); ++q)
                step.col(q) = (from.weights[q] * densities(splits_[s].nodes - from.nodes[q] + k_)).matrix();
            bothToBoth_.push_back(std::move(step));
        }
    }

    double k_;
    Axis axis_;
    std::vector<Quadrature> splits_;   ///< per total
    std::vector<Eigen::Index> first_;  ///< where a total's nodes begin in Law::both
    Eigen::VectorXd bothAt_, bothWeight_;
    Eigen::VectorXd originToAxis_, axisToOrigin_, axisToBoth_, bothToOrigin_;
    Eigen::MatrixXd axisToAxis_, bothToAxis_;
    std::vector<Eigen::MatrixXd> bothToBoth_;  ///< per total, from the total 2 k above
};

}  // namespace

Result<SumLaw> longRunOfTwoSums(double k, double h, int refined) {
    if (!(h <= highestLimit))
        return fail(ProblemCode::BadInput, "h is too large for the steady state of a two-sided CUSUM",
                    "h = " + stats::plainNumber(h), "give at most 15, or ask for one side");
    if (!(k > 0) || h / (2 * k) > mostPeriods)
        return fail(ProblemCode::BadInput, "k is too small for the steady state of a two-sided CUSUM",
                    "k = " + stats::plainNumber(k), "give at least a hundredth of h, or ask for one side");
    const TwoSums chart(k, h, refined);
    Law law = chart.start();
    double survival = 0;
    for (int round = 0; round < mostRounds; ++round) {
        Law following = chart.next(law);
        const double left = chart.mass(following);
        following.origin /= left;
        following.axis /= left;
        following.both /= left;
        const double change =
            std::abs(left - survival) + (following.axis - law.axis).lpNorm<Eigen::Infinity>();
        law = std::move(following);
        survival = left;
        if (change < 1e-12) return chart.upperSum(law);
    }
    return fail(ProblemCode::Internal, "the steady state did not settle");
}

}  // namespace arc::drift::detail
