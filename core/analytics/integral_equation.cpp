// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/integral_equation.hpp"

#include <Eigen/LU>
#include <boost/math/special_functions/legendre.hpp>
#include <cmath>
#include <utility>
#include <vector>

#include "core/stats/policy.hpp"

namespace arc::drift::detail {

Quadrature gaussLegendre(double from, double to, int count) {
    const std::vector<double> zeros = boost::math::legendre_p_zeros<double>(count, stats::MathPolicy());
    Quadrature rule{Eigen::ArrayXd(count), Eigen::ArrayXd(count)};
    const double middle = 0.5 * (from + to), half = 0.5 * (to - from);
    // The library gives the zeros that are not negative, ascending; the others mirror them.
    const int positive = static_cast<int>(zeros.size());
    for (int i = 0; i < positive; ++i) {
        const double x = zeros[static_cast<std::size_t>(i)];
        const double slope = boost::math::legendre_p_prime(count, x, stats::MathPolicy());
        const double weight = half * 2 / ((1 - x * x) * slope * slope);
        const int right = count - positive + i, left = positive - 1 - i;
        rule.nodes[right] = middle + half * x;
        rule.weights[right] = weight;
        rule.nodes[left] = middle - half * x;
        rule.weights[left] = weight;
    }
    return rule;
}

int nodesFor(double widths) {
    return 24 + static_cast<int>(std::ceil(2.5 * widths));
}

QuadratureChain::QuadratureChain(Quadrature rule, LowerEnd end, StepFrom step)
    : quadrature(std::move(rule)), lowerEnd(end), stepFrom(std::move(step)) {
    const Eigen::Index first = lowerEnd == LowerEnd::Reflects ? 1 : 0;
    const Eigen::Index count = quadrature.nodes.size() + first;
    at.resize(count);
    if (first == 1) at[0] = 0;
    at.tail(quadrature.nodes.size()) = quadrature.nodes;
    matrix.resize(count, count);
    leaving.resize(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        const Step chances = stepFrom(at[i], quadrature.nodes);
        matrix.row(i) = states(chances).transpose();
        leaving[i] = chances.leaving;
    }
}

Eigen::VectorXd QuadratureChain::states(const Step& step) const {
    Eigen::VectorXd chances(at.size());
    if (lowerEnd == LowerEnd::Reflects) chances[0] = step.atom;
    chances.tail(quadrature.nodes.size()) = (step.density * quadrature.weights).matrix();
    return chances;
}

Eigen::VectorXd QuadratureChain::stepsToLeave() const {
    const Eigen::Index count = at.size();
    if (lowerEnd == LowerEnd::Leaves)
        return (Eigen::MatrixXd::Identity(count, count) - matrix)
            .partialPivLu()
            .solve(Eigen::VectorXd::Ones(count));
    // By excursions from the lower end: their mean duration over their chance of leaving. Nothing cancels
    // here, however long the run.
    const Eigen::Index inner = count - 1;
    Eigen::MatrixXd ask(inner, 2);
    ask.col(0).setOnes();
    ask.col(1) = leaving.tail(inner);
    const Eigen::MatrixXd away = matrix.bottomRightCorner(inner, inner);
    const Eigen::MatrixXd answer = (Eigen::MatrixXd::Identity(inner, inner) - away).partialPivLu().solve(ask);
    const Eigen::RowVectorXd first = matrix.row(0).tail(inner);
    const double duration = 1 + first.dot(answer.col(0));
    const double chance = leaving[0] + first.dot(answer.col(1));
    Eigen::VectorXd steps(count);
    steps[0] = duration / chance;
    steps.tail(inner) = answer.col(0) + (1 - answer.col(1).array()).matrix() * steps[0];
    return steps;
}

double QuadratureChain::stepsToLeaveFrom(double z, const Eigen::VectorXd& fromStates) const {
    if (lowerEnd == LowerEnd::Reflects && z == at[0]) return fromStates[0];
    return 1 + oneStepFrom(z).dot(fromStates);
}

Eigen::VectorXd QuadratureChain::oneStepFrom(double z) const {
    return states(stepFrom(z, quadrature.nodes));
}

Eigen::VectorXd QuadratureChain::longRun() const {
    const Eigen::Index count = at.size();
    const auto factors = (Eigen::MatrixXd::Identity(count, count) - matrix).transpose().partialPivLu();
    // Inverse iteration: the wanted law belongs to the eigenvalue next to 1.
    Eigen::VectorXd law = Eigen::VectorXd::Constant(count, 1.0 / static_cast<double>(count));
    for (int round = 0; round < 500; ++round) {
        Eigen::VectorXd next = factors.solve(law);
        next /= next.sum();
        const double change = (next - law).lpNorm<1>();
        law = std::move(next);
        if (change < 1e-14) break;
    }
    return law;
}

}  // namespace arc::drift::detail
