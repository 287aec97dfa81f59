// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/run_rules.hpp"

#include <Eigen/SparseCore>
#include <Eigen/SparseLU>
#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <compare>
#include <map>
#include <optional>
#include <string>
#include <utility>

#include "core/analytics/limit_search.hpp"
#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"

namespace arc::drift {
namespace {

/// What one side must remember; 0 whatever its rules do not ask for.
struct Memory {
    unsigned outer = 0;  ///< the last two points, newest in bit 0: beyond two thirds of the limit
    unsigned inner = 0;  ///< the last four points: beyond one third
    int run = 0;         ///< points in a row on this side
    auto operator<=>(const Memory&) const = default;
};

struct State {
    Memory up, down;
    auto operator<=>(const State&) const = default;
};

/// Where a point lies seen from one side: -1 on the other side of the centre, 0 to 3 by thirds of the limit.
using Third = int;

struct Rules {
    std::array<bool, 5> active{};
    int sameSide = 8;
    [[nodiscard]] bool has(RunRule rule) const { return active[static_cast<std::size_t>(rule)]; }
};

/// The memory after the point, or nothing when it signals.
std::optional<Memory> after(const Memory& before, Third third, const Rules& rules) {
    Memory next;
    if (rules.has(RunRule::BeyondLimit) && third >= 3) return std::nullopt;
    if (rules.has(RunRule::TwoOfThree)) {
        const unsigned beyond = third >= 2 ? 1 : 0;
        if (beyond == 1 && before.outer != 0) return std::nullopt;
        next.outer = ((before.outer << 1) | beyond) & 3u;
    }
    if (rules.has(RunRule::FourOfFive)) {
        const unsigned beyond = third >= 1 ? 1 : 0;
        if (beyond == 1 && std::popcount(before.inner) >= 3) return std::nullopt;
        next.inner = ((before.inner << 1) | beyond) & 15u;
    }
    if (rules.has(RunRule::SameSide)) {
        next.run = third >= 0 ? before.run + 1 : 0;
        if (next.run >= rules.sameSide) return std::nullopt;
    }
    return next;
}

/// Moves between the states that can be reached, by the eight zones from far below to far above.
struct Chain {
    struct Move {
        int from, to;
        int zone;
    };
    int states = 0;
    std::vector<Move> moves;
};

Chain chainOf(const ShewhartChart& chart) {
    Rules rules;
    rules.sameSide = chart.sameSide;
    for (const RunRule rule : chart.rules) rules.active[static_cast<std::size_t>(rule)] = true;
    Chain chain;
    std::map<State, int> number = {{State{}, 0}};
    std::vector<State> open = {State{}};
    for (std::size_t at = 0; at < open.size(); ++at) {
        const State from = open[at];
        for (int zone = 0; zone < 8; ++zone) {
            const Third above = zone >= 4 ? zone - 4 : -1;
            const Third below = zone >= 4 ? -1 : 3 - zone;
            const auto up = after(from.up, above, rules);
            const auto down = chart.sides == Sides::Both ? after(from.down, below, rules) : Memory{};
            if (!up || !down) continue;
            const State to{*up, *down};
            const auto [place, isNew] = number.emplace(to, static_cast<int>(open.size()));
            if (isNew) open.push_back(to);
            chain.moves.push_back({number.at(from), place->second, zone});
        }
    }
    chain.states = static_cast<int>(open.size());
    return chain;
}

std::array<double, 8> zoneChances(double limit, double shift) {
    const double third = limit / 3;
    std::array<double, 8> chance{};
    chance[0] = stats::normalCdf(-limit - shift);
    for (int zone = 1; zone < 7; ++zone)
        chance[static_cast<std::size_t>(zone)] =
            stats::normalBetween((zone - 4) * third - shift, (zone - 3) * third - shift);
    chance[7] = stats::normalUpperTail(limit - shift);
    return chance;
}

Eigen::SparseMatrix<double> identityLess(const Chain& chain, double limit, double shift) {
    const std::array<double, 8> chance = zoneChances(limit, shift);
    std::vector<Eigen::Triplet<double>> entries;
    for (int i = 0; i < chain.states; ++i) entries.emplace_back(i, i, 1.0);
    for (const Chain::Move& move : chain.moves)
        entries.emplace_back(move.from, move.to, -chance[static_cast<std::size_t>(move.zone)]);
    Eigen::SparseMatrix<double> matrix(chain.states, chain.states);
    matrix.setFromTriplets(entries.begin(), entries.end());
    matrix.makeCompressed();
    return matrix;
}

Eigen::VectorXd runLengths(const Chain& chain, double limit, double shift) {
    const Eigen::SparseLU<Eigen::SparseMatrix<double>> factors(identityLess(chain, limit, shift));
    return factors.solve(Eigen::VectorXd::Ones(chain.states));
}

/// Where the chain is in control long after its start, given no signal: inverse iteration.
Eigen::VectorXd longRun(const Chain& chain, double limit) {
    const Eigen::SparseMatrix<double> transposed = identityLess(chain, limit, 0).transpose();
    const Eigen::SparseLU<Eigen::SparseMatrix<double>> factors(transposed);
    Eigen::VectorXd law = Eigen::VectorXd::Constant(chain.states, 1.0 / chain.states);
    for (int round = 0; round < 2000; ++round) {
        Eigen::VectorXd next = factors.solve(law);
        next /= next.sum();
        const double change = (next - law).lpNorm<1>();
        law = std::move(next);
        if (change < 1e-14) break;
    }
    return law;
}

Result<void> check(const ShewhartChart& chart, double shift) {
    if (!(chart.limit > 0 && chart.limit <= 20))
        return fail(ProblemCode::BadInput, "the limit is out of range",
                    "limit = " + stats::plainNumber(chart.limit), "give a limit above 0 and at most 20");
    if (chart.rules.empty())
        return fail(ProblemCode::BadInput, "no run rule was chosen", "", "choose at least one of 1, 2, 3, 4");
    if (chart.sameSide < 2 || chart.sameSide > 20)
        return fail(ProblemCode::BadInput, "the run on one side is out of range",
                    std::to_string(chart.sameSide), "give a length from 2 to 20");
    if (!(std::abs(shift) <= 50))
        return fail(ProblemCode::BadInput, "the shift is out of range",
                    "shift = " + stats::plainNumber(shift), "give a number from -50 to 50");
    return {};
}

}  // namespace

Result<double> averageRunLength(const ShewhartChart& chart, double shift) {
    if (auto ok = check(chart, shift); !ok) return tl::unexpected(ok.error());
    return detail::reportedArl(runLengths(chainOf(chart), chart.limit, shift)[0]);
}

Result<double> steadyStateRunLength(const ShewhartChart& chart, double shift) {
    if (auto ok = check(chart, shift); !ok) return tl::unexpected(ok.error());
    const Chain chain = chainOf(chart);
    return detail::reportedArl(longRun(chain, chart.limit).dot(runLengths(chain, chart.limit, shift)));
}

Result<double> limitFor(const ShewhartChart& chart, double arl) {
    ShewhartChart tried = chart;
    tried.limit = 3;
    if (auto ok = check(tried, 0); !ok) return tl::unexpected(ok.error());
    const Chain chain = chainOf(tried);
    return detail::limitWithArl(
        arl, 20, [&](double limit) { return detail::reportedArl(runLengths(chain, limit, 0)[0]); });
}

}  // namespace arc::drift
