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

namespace arc::drift::detail {
namespace {

using stats::normalCdf;
using stats::normalDensity;

constexpr double mostPeriods = 60;
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

/// Unnormalised: mass at (0, 0), density on either axis, density of both up by total and upper sum.
struct Law {
    double origin = 1;
    Eigen::VectorXd axis;
    std::vector<Eigen::VectorXd> both;  ///< per total, at its own nodes on (0, total)
};

class TwoSums {
  public:
    TwoSums(double k, double h, int refined) : k_(k), axis_(axisOf(k, h, refined)) {
        const Eigen::Index n = axis_.size(), totals = axis_.totals();
        for (Eigen::Index s = 0; s < totals; ++s)
            splits_.push_back(gaussLegendre(0, axis_.at[s],
                                            refined * (10 + static_cast<int>(std::ceil(2.5 * axis_.at[s])))));
        axisToAxis_.resize(n, n);
        totalWeights_.resize(n, totals);
        for (Eigen::Index i = 0; i < n; ++i) {
            const double to = axis_.at[i];
            // From an axis to a place on one: along itself, or across through the origin's corner.
            axisToAxis_.row(i) = weightsUpTo(axis_, i + axis_.perPeriod, n, [&](double u) {
                return normalDensity(to - u + k_) + normalDensity(to + k_);
            });
            if (totals > 0)
                totalWeights_.row(i) =
                    weightsUpTo(axis_, i + axis_.perPeriod, totals, [](double) { return 1.0; });
        }
    }

    /// One reading; the result's mass against the old one's is the chance of no signal.
    [[nodiscard]] Law next(const Law& now) const {
        const Eigen::Index n = axis_.size(), totals = axis_.totals();
        Law law;
        law.origin = now.origin * (normalCdf(k_) - normalCdf(-k_));
        law.axis = axisToAxis_ * now.axis;
        for (Eigen::Index i = 0; i < n; ++i) {
            const double u = axis_.at[i];
            law.axis[i] += now.origin * normalDensity(u + k_);
            if (i < axis_.perPeriod)
                law.origin += 2 * axis_.weight[i] * now.axis[i] * (normalCdf(k_ - u) - normalCdf(-k_));
        }
        for (Eigen::Index s = 0; s < totals; ++s) {
            const Quadrature& split = splits_[static_cast<std::size_t>(s)];
            const Eigen::ArrayXd mass = now.both[static_cast<std::size_t>(s)].array() * split.weights;
            const double total = axis_.at[s];
            for (Eigen::Index i = 0; i < n; ++i)
                if (totalWeights_(i, s) != 0)
                    law.axis[i] +=
                        totalWeights_(i, s) * (mass * densities(axis_.at[i] + k_ - split.nodes)).sum();
            if (s < axis_.perPeriod)
                for (Eigen::Index q = 0; q < mass.size(); ++q)
                    law.origin += axis_.weight[s] * mass[q] *
                                  (normalCdf(k_ - split.nodes[q]) - normalCdf(total - split.nodes[q] - k_));
        }
        for (Eigen::Index s = 0; s < totals; ++s) {
            const Eigen::ArrayXd& v = splits_[static_cast<std::size_t>(s)].nodes;
            const Eigen::Index above = s + axis_.perPeriod;
            Eigen::ArrayXd density = now.axis[above] * (densities(v - axis_.at[s] - k_) + densities(v + k_));
            if (above < totals) {
                const Quadrature& split = splits_[static_cast<std::size_t>(above)];
                const Eigen::ArrayXd mass = now.both[static_cast<std::size_t>(above)].array() * split.weights;
                for (Eigen::Index q = 0; q < mass.size(); ++q)
                    density += mass[q] * densities(v - split.nodes[q] + k_);
            }
            law.both.push_back(density.matrix());
        }
        return law;
    }

    [[nodiscard]] Law start() const {
        Law law;
        law.axis = Eigen::VectorXd::Zero(axis_.size());
        for (const Quadrature& split : splits_) law.both.push_back(Eigen::VectorXd::Zero(split.nodes.size()));
        return law;
    }

    [[nodiscard]] double mass(const Law& law) const {
        double sum = law.origin + 2 * law.axis.dot(axis_.weight.matrix());
        for (std::size_t s = 0; s < splits_.size(); ++s)
            sum += axis_.weight[static_cast<Eigen::Index>(s)] * law.both[s].dot(splits_[s].weights.matrix());
        return sum;
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
        for (std::size_t s = 0; s < splits_.size(); ++s)
            for (Eigen::Index q = 0; q < splits_[s].nodes.size(); ++q)
                put(splits_[s].nodes[q],
                    axis_.weight[static_cast<Eigen::Index>(s)] * splits_[s].weights[q] * law.both[s][q]);
        return upper;
    }

  private:
    static Eigen::ArrayXd densities(const Eigen::ArrayXd& z) {
        return 0.3989422804014326779399460599 * (-0.5 * z.square()).exp();
    }

    double k_;
    Axis axis_;
    std::vector<Quadrature> splits_;  ///< of each total into its two sums
    Eigen::MatrixXd axisToAxis_, totalWeights_;
};

void scale(Law& law, double factor) {
    law.origin *= factor;
    law.axis *= factor;
    for (Eigen::VectorXd& both : law.both) both *= factor;
}

}  // namespace

Result<SumLaw> longRunOfTwoSums(double k, double h, int refined) {
    if (!(k > 0) || h / (2 * k) > mostPeriods)
        return fail(ProblemCode::BadInput, "k is too small for the steady state of a two-sided CUSUM",
                    "k = " + std::to_string(k), "give at least a hundredth of h, or ask for one side");
    const TwoSums chart(k, h, refined);
    Law law = chart.start();
    double survival = 0;
    for (int round = 0; round < mostRounds; ++round) {
        Law following = chart.next(law);
        const double left = chart.mass(following);
        scale(following, 1 / left);
        const double change =
            std::abs(left - survival) + (following.axis - law.axis).lpNorm<Eigen::Infinity>();
        law = std::move(following);
        survival = left;
        if (change < 1e-12) return chart.upperSum(law);
    }
    return fail(ProblemCode::Internal, "the steady state did not settle");
}

}  // namespace arc::drift::detail
