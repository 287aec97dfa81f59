// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/completeness.hpp"

#include <map>
#include <optional>

#include "core/work/fibre.hpp"

namespace arc {
namespace {

/// Index of the planned row a chain belongs to.
std::optional<std::size_t> planned(const AttemptChain& chain, const std::vector<PlannedSplice>& plan,
                                   const std::map<int, std::size_t>& byA,
                                   const std::map<int, std::size_t>& byB) {
    const auto a = fibreNumber(chain.fibreA);
    const auto b = fibreNumber(chain.fibreB);
    if ((!chain.fibreA.empty() && !a) || (!chain.fibreB.empty() && !b) || (!a && !b)) return std::nullopt;
    const auto& side = a ? byA : byB;
    const auto found = side.find(a ? *a : *b);
    if (found == side.end()) return std::nullopt;
    if (a && b && plan[found->second].fibreB != *b) return std::nullopt;
    return found->second;
}

}  // namespace

Completeness completeness(const Closure& closure, std::span<const SpliceRow> rows,
                          const AcceptanceRule& rule) {
    std::map<int, std::size_t> byA, byB;
    for (std::size_t i = 0; i < closure.plan.size(); ++i) {
        byA.emplace(closure.plan[i].fibreA, i);
        byB.emplace(closure.plan[i].fibreB, i);
    }
    enum class State { Missing, Open, Accepted };
    std::vector<State> state(closure.plan.size(), State::Missing);

    Completeness answer;
    answer.planned = static_cast<int>(closure.plan.size());
    for (const auto& chain : attemptChains(rows)) {
        const auto ending = outcome(chain, rows, rule);
        if (ending == Outcome::Voided) continue;
        const auto place = planned(chain, closure.plan, byA, byB);
        if (!place) {
            answer.unplanned.push_back({chain.fibreA, chain.fibreB});
            continue;
        }
        const bool good = ending == Outcome::Accepted || ending == Outcome::KeptWithNote;
        state[*place] = good ? State::Accepted : State::Open;
    }
    for (std::size_t i = 0; i < state.size(); ++i) {
        if (state[i] == State::Missing) {
            answer.missing.push_back(closure.plan[i]);
            continue;
        }
        ++answer.spliced;
        if (state[i] == State::Accepted) {
            ++answer.accepted;
        } else {
            answer.open.push_back(closure.plan[i]);
        }
    }
    return answer;
}

}  // namespace arc
