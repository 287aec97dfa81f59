// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/attempts.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

#include "core/work/notes.hpp"

namespace arc {
namespace {

bool isNamed(const Reading& reading) {
    return !reading.fibreA.empty() || !reading.fibreB.empty();
}

void close(AttemptChain& chain, std::span<const SpliceRow> rows) {
    for (const auto index : chain.readings) {
        const auto& reading = rows[index].reading;
        if (reading.state == ReadingState::Voided) continue;
        ++chain.attempts;
        chain.standing = index;
        if (!chain.best || reading.loss < rows[*chain.best].reading.loss) chain.best = index;
    }
}

}  // namespace

std::vector<AttemptChain> attemptChains(std::span<const SpliceRow> rows) {
    std::vector<std::size_t> order(rows.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const auto key = [&](std::size_t i) {
            return std::tuple(rows[i].arc.at.ms, rows[i].reading.attempt, rows[i].row);
        };
        return key(a) < key(b);
    });

    using Named = std::tuple<std::optional<JobId>, std::optional<ClosureId>, std::string, std::string>;
    using Unnamed = std::tuple<std::optional<JobId>, std::optional<ClosureId>, ToolId, int>;
    std::map<Named, std::size_t> named;
    std::map<Unnamed, std::size_t> unnamed;
    std::vector<AttemptChain> chains;
    for (const auto index : order) {
        const auto& arc = rows[index].arc;
        const auto& reading = rows[index].reading;
        std::size_t place = chains.size();
        if (isNamed(reading)) {
            place = named.try_emplace({arc.job, arc.closure, reading.fibreA, reading.fibreB}, place)
                        .first->second;
        } else {
            auto& last = unnamed.try_emplace({arc.job, arc.closure, arc.splicer, reading.channel}, place)
                             .first->second;
            if (reading.attempt <= 1) last = place;
            place = last;
        }
        if (place == chains.size()) {
            AttemptChain chain;
            chain.job = arc.job;
            chain.closure = arc.closure;
            chain.fibreA = reading.fibreA;
            chain.fibreB = reading.fibreB;
            chains.push_back(std::move(chain));
        }
        chains[place].readings.push_back(index);
    }
    for (auto& chain : chains) close(chain, rows);
    return chains;
}

Outcome outcome(const AttemptChain& chain, std::span<const SpliceRow> rows, const AcceptanceRule& rule) {
    if (!chain.standing) return Outcome::Voided;
    const auto& reading = rows[*chain.standing].reading;
    switch (judge(rule, reading.loss, std::max(reading.attempt, chain.attempts))) {
        case Verdict::Accept:
        case Verdict::AcceptHigh:
            return Outcome::Accepted;
        case Verdict::KeepBestWithNote:
            return note::keeps(reading.note) ? Outcome::KeptWithNote : Outcome::NoteMissing;
        case Verdict::OverCeiling:
            return Outcome::OverCeiling;
        case Verdict::Resplice:
            break;
    }
    return Outcome::Resplice;
}

}  // namespace arc
