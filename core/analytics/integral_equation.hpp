// SPDX-License-Identifier: GPL-3.0-or-later
// What EWMA and CUSUM run lengths have in common: the statistic of a chart as a Markov process on an
// interval, perhaps with an atom at its lower end, made finite by Gauss-Legendre quadrature (Nystroem's
// method; S. V. Crowder, Technometrics 29, 1987; K.-H. Waldmann 1986). For .cpp files only.
#pragma once
#include <Eigen/Core>
#include <functional>

namespace arc::drift::detail {

/// Gauss-Legendre nodes and weights on [from, to].
struct Quadrature {
    Eigen::ArrayXd nodes;
    Eigen::ArrayXd weights;
};
[[nodiscard]] Quadrature gaussLegendre(double from, double to, int count);

/// Nodes that an interval `widths` kernel standard deviations wide needs. Doubling them changes run lengths
/// by less than 1e-9 (checked in the tests).
[[nodiscard]] int nodesFor(double widths);

/// Chances of one step from z.
struct Step {
    double atom = 0;         ///< of coming to rest at the reflecting lower end; 0 without one
    double leaving = 0;      ///< of leaving the interval, computed as a tail so that no digits are lost
    Eigen::ArrayXd density;  ///< at the nodes, without their weights
};
using StepFrom = std::function<Step(double z, const Eigen::ArrayXd& nodes)>;

enum class LowerEnd { Leaves, Reflects };

/// The process at its states: state 0 is the reflecting lower end (only with LowerEnd::Reflects, at z = 0),
/// then the nodes.
class QuadratureChain {
  public:
    QuadratureChain(Quadrature quadrature, LowerEnd lowerEnd, StepFrom stepFrom);

    [[nodiscard]] Eigen::Index states() const { return matrix.rows(); }
    /// Where the states lie.
    [[nodiscard]] const Eigen::ArrayXd& positions() const { return at; }
    /// Average steps until the process leaves, from each state. Infinite, below 1 or not a number when it
    /// practically never leaves.
    [[nodiscard]] Eigen::VectorXd stepsToLeave() const;
    /// The same from any z inside, given the answer of stepsToLeave.
    [[nodiscard]] double stepsToLeaveFrom(double z, const Eigen::VectorXd& fromStates) const;
    /// Where the process is long after its start given that it has not left: masses of the states, sum 1.
    [[nodiscard]] Eigen::VectorXd longRun() const;
    /// Chances of the states one step after z; their sum falls short of 1 by the chance of leaving.
    [[nodiscard]] Eigen::VectorXd oneStepFrom(double z) const;
    /// Chances of the states one step after each state (row i: from state i).
    [[nodiscard]] const Eigen::MatrixXd& transitions() const { return matrix; }

  private:
    [[nodiscard]] Eigen::VectorXd states(const Step& step) const;

    Quadrature quadrature;
    LowerEnd lowerEnd;
    StepFrom stepFrom;
    Eigen::ArrayXd at;
    Eigen::MatrixXd matrix;
    Eigen::VectorXd leaving;
};

}  // namespace arc::drift::detail
