// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/discrete_cusum.hpp"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "core/stats/plain_number.hpp"

namespace arc::drift {
namespace {

constexpr double longestArl = 1e12;
constexpr int mostStates = 1500;
constexpr double latticeTolerance = 1e-7;  // of a step

enum class Fit { Lattice, Shared };

/// The law of one increment in whole states.
struct Increments {
    double step = 0;
    Fit fit = Fit::Shared;
    int lowest = 0;                   ///< of `probability`
    std::vector<double> probability;  ///< [i]: of moving by lowest + i states
    std::vector<double> atMostBelow;  ///< [i]: of moving by less than lowest + i states
    double of(int states) const {
        const int i = states - lowest;
        return i < 0 || i >= static_cast<int>(probability.size()) ? 0.0
                                                                  : probability[static_cast<std::size_t>(i)];
    }
    /// P(increment <= states).
    double atMost(int states) const {
        const int i = std::clamp(states - lowest + 1, 0, static_cast<int>(probability.size()));
        return atMostBelow[static_cast<std::size_t>(i)];
    }
};

Result<void> checkLaw(std::span<const double> scores, std::span<const double> probabilities, double k) {
    if (scores.empty() || scores.size() != probabilities.size())
        return fail(ProblemCode::BadInput, "scores and probabilities must come in pairs",
                    std::to_string(scores.size()) + " and " + std::to_string(probabilities.size()));
    if (!std::isfinite(k)) return fail(ProblemCode::BadInput, "the CUSUM reference value k is not a number");
    double sum = 0;
    for (std::size_t i = 0; i < scores.size(); ++i) {
        if (!std::isfinite(scores[i]) || !(probabilities[i] >= 0))
            return fail(ProblemCode::BadInput, "a score is not a number or its probability is below 0",
                        "entry " + std::to_string(i + 1));
        sum += probabilities[i];
    }
    if (std::abs(sum - 1) > 1e-6)
        return fail(ProblemCode::BadInput, "the probabilities of the scores do not add up to 1",
                    "sum " + stats::plainNumber(sum));
    return {};
}

Result<Increments> increments(std::span<const double> scores, std::span<const double> probabilities, double k,
                              const ChainGrid& grid) {
    if (auto ok = checkLaw(scores, probabilities, k); !ok) return tl::unexpected(ok.error());
    double mass = 0, mean = 0, square = 0;
    for (std::size_t i = 0; i < scores.size(); ++i) {
        mass += probabilities[i];
        mean += probabilities[i] * scores[i];
        square += probabilities[i] * scores[i] * scores[i];
    }
    mean /= mass;
    const double deviation = std::sqrt(std::max(0.0, square / mass - mean * mean));
    Increments law;
    law.step = grid.step.value_or(deviation / 30);
    if (!(law.step > 0) || !std::isfinite(law.step))
        return fail(ProblemCode::BadInput, "the scores do not vary, or the chain's step is not above 0", "",
                    "give a step above 0");
    const auto [low, high] = std::minmax_element(scores.begin(), scores.end());
    if ((*high - *low) / law.step > mostStates || std::abs(*low - k) / law.step > 1e6 ||
        std::abs(*high - k) / law.step > 1e6)
        return fail(ProblemCode::BadInput, "the chain's step is too fine for scores so far apart", "",
                    "give a wider step");
    law.lowest = static_cast<int>(std::floor((*low - k) / law.step)) - 1;
    const int highest = static_cast<int>(std::ceil((*high - k) / law.step)) + 1;
    law.probability.assign(static_cast<std::size_t>(highest - law.lowest + 1), 0.0);
    law.fit = Fit::Lattice;
    for (std::size_t i = 0; i < scores.size(); ++i) {
        const double exact = (scores[i] - k) / law.step;
        const double nearest = std::round(exact);
        const bool whole = std::abs(exact - nearest) <= latticeTolerance;
        const double below = whole ? nearest : std::floor(exact);
        const double shareAbove = whole ? 0.0 : exact - below;
        if (!whole && probabilities[i] > 0) law.fit = Fit::Shared;
        const auto at = static_cast<std::size_t>(static_cast<int>(below) - law.lowest);
        law.probability[at] += probabilities[i] / mass * (1 - shareAbove);
        if (shareAbove > 0) law.probability[at + 1] += probabilities[i] / mass * shareAbove;
    }
    law.atMostBelow.assign(law.probability.size() + 1, 0.0);
    for (std::size_t i = 0; i < law.probability.size(); ++i)
        law.atMostBelow[i + 1] = law.atMostBelow[i] + law.probability[i];
    return law;
}

/// Grows I - R = L U state by state. R of a lower limit is the leading block of R of a higher one, so the
/// factors of all limits are leading blocks of one factorisation, and the run length from 0,
/// e0' U^-1 L^-1 1, is a running sum over states. Diagonal dominance makes pivoting needless.
class GrowingChain {
  public:
    explicit GrowingChain(const Increments& increments) : law(increments) {}

    /// Run length when states 0 … states() - 1 are short of a signal; infinite when nothing ever leaves.
    double arl() const { return sum; }
    int states() const { return static_cast<int>(diagonal.size()); }

    void grow() {
        const int n = states();
        // Column n of U above the diagonal, row n of L (its unit diagonal kept implicit).
        Eigen::VectorXd column(n), row(n);
        for (int i = 0; i < n; ++i)
            column[i] = entry(i, n) - lower[static_cast<std::size_t>(i)].dot(column.head(i));
        for (int j = 0; j < n; ++j)
            row[j] = (entry(n, j) - upper[static_cast<std::size_t>(j)].dot(row.head(j))) /
                     diagonal[static_cast<std::size_t>(j)];
        const Eigen::Map<const Eigen::VectorXd> solved(forward.data(), n), first(start.data(), n);
        const double pivot = entry(n, n) - row.dot(column);
        const double right = 1 - row.dot(solved);
        const double left = (n == 0 ? 1.0 : 0.0) - first.dot(column);
        diagonal.push_back(pivot);
        forward.push_back(right);
        start.push_back(left / pivot);
        sum += start.back() * right;
        lower.push_back(std::move(row));
        upper.push_back(std::move(column));
    }

  private:
    /// Of I - R.
    double entry(int from, int to) const {
        const double moves = to == 0 ? law.atMost(-from) : law.of(to - from);
        return (from == to ? 1.0 : 0.0) - moves;
    }

    const Increments& law;
    std::vector<Eigen::VectorXd> lower;  ///< row i of L left of the diagonal
    std::vector<Eigen::VectorXd> upper;  ///< column i of U above the diagonal
    std::vector<double> diagonal, forward, start;
    double sum = 0;
};

tl::unexpected<Problem> tooLong() {
    return fail(ProblemCode::BadInput, "the CUSUM would practically never signal (run length above 1e12)", "",
                "lower the limit h or the reference value k");
}

tl::unexpected<Problem> noLimit(double k) {
    return fail(ProblemCode::BadInput,
                "no CUSUM limit within reach has the wanted run length: the scores hardly fall behind k",
                "k = " + stats::plainNumber(k), "raise the reference value k above the mean score");
}

bool isTooLong(double arl) {
    return !(arl >= 1 - 1e-9) || arl > longestArl;
}

/// Where h lies in states: the chain with states 0 … m ends half a step above m unless the lattice is exact.
double lastState(const Increments& law, double h) {
    const double exact = h / law.step;
    return law.fit == Fit::Lattice ? std::floor(exact + latticeTolerance) : std::max(0.0, exact - 0.5);
}

}  // namespace

Result<std::vector<double>> discreteCusumArls(std::span<const double> scores,
                                              std::span<const double> probabilities, double k,
                                              std::span<const double> limits, ChainGrid grid) {
    const auto law = increments(scores, probabilities, k, grid);
    if (!law) return tl::unexpected(law.error());
    int needed = 0;
    for (const double h : limits) {
        if (!(h >= 0) || !(h / law->step < mostStates))
            return fail(ProblemCode::BadInput, "the CUSUM limit h is below 0 or too far for the chain's step",
                        "h = " + stats::plainNumber(h), "give a limit of at least 0 or a wider step");
        needed = std::max(needed, static_cast<int>(std::ceil(lastState(*law, h))) + 1);
    }
    GrowingChain chain(*law);
    std::vector<double> upTo;
    while (chain.states() < needed) {
        chain.grow();
        upTo.push_back(chain.arl());
    }
    std::vector<double> arls;
    for (const double h : limits) {
        const double last = lastState(*law, h);
        const auto below = static_cast<std::size_t>(std::floor(last));
        const auto above = static_cast<std::size_t>(std::ceil(last));
        if (isTooLong(upTo[below]) || isTooLong(upTo[above])) return tooLong();
        const double share = last - std::floor(last);
        arls.push_back(std::exp((1 - share) * std::log(upTo[below]) + share * std::log(upTo[above])));
    }
    return arls;
}

Result<double> discreteCusumArl(std::span<const double> scores, std::span<const double> probabilities,
                                double k, double h, ChainGrid grid) {
    const auto arls = discreteCusumArls(scores, probabilities, k, std::span(&h, 1), grid);
    if (!arls) return tl::unexpected(arls.error());
    return arls->front();
}

Result<double> discreteCusumLimit(std::span<const double> scores, std::span<const double> probabilities,
                                  double k, double arl, ChainGrid grid) {
    if (!(arl > 1 && arl <= 1e9))
        return fail(ProblemCode::BadInput, "the wanted run length must lie above 1 and at most at 1e9",
                    stats::plainNumber(arl));
    const auto law = increments(scores, probabilities, k, grid);
    if (!law) return tl::unexpected(law.error());
    double drift = 0;
    for (std::size_t i = 0; i < law->probability.size(); ++i)
        drift += law->probability[i] * (law->lowest + static_cast<int>(i));
    // Upward drift: the run length grows only in proportion to the limit.
    if (drift * arl > mostStates) return noLimit(k);
    GrowingChain chain(*law);
    double previous = 0;
    while (chain.states() < mostStates) {
        chain.grow();
        if (isTooLong(chain.arl())) return tooLong();
        if (chain.arl() >= arl) {
            const double last = chain.states() - 1;
            if (law->fit == Fit::Lattice || chain.states() == 1) return last * law->step;
            const double share =
                (std::log(arl) - std::log(previous)) / (std::log(chain.arl()) - std::log(previous));
            return (last - 1 + share + 0.5) * law->step;
        }
        previous = chain.arl();
    }
    return noLimit(k);
}

}  // namespace arc::drift
