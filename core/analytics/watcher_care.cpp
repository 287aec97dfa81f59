// SPDX-License-Identifier: GPL-3.0-or-later
// How a watcher takes in care and judges whether it helped.
#include <algorithm>

#include "core/analytics/recovery.hpp"
#include "core/analytics/watcher.hpp"
#include "core/analytics/watcher_families.hpp"

namespace arc::drift {

/// The open signal that such a care is for; a routine care has none.
std::optional<Complaint> Watcher::complaintFor(const ActionKey& action) const {
    const bool forCleaver = action == action::cleaverClean || action == action::bladeClean ||
                            action == action::bladeRotate || action == action::bladeRaise;
    std::optional<Complaint> found;
    for (const auto& about : state_.cases) {
        if (!followed(about) || !about.closed || grooveChart(about.statistic) != forGrooves(action)) continue;
        if (found && forCleaver && found->statistic == Statistic::Angle) continue;
        found = Complaint{about.statistic, about.index, about.closed->raising.beganAt, about.key};
    }
    return found;
}

void Watcher::care(const CareRecord& record) {
    state_.events.push_back(record);
    if (!changesTheTool(record) || !state_.model) return;
    if (!state_.window.empty()) state_.lastCareAt = state_.window.back().raw.number;
    CareEffect effect;
    effect.care = record.id;
    effect.action = record.action;
    effect.at = record.at;
    state_.effects.push_back(effect);
    state_.cares.push_back({std::nullopt, state_.arcs, false});
    // What an earlier care has cured is no complaint of this one.
    judgeCare();
    for (auto& about : state_.cases)
        if (about.state == SignalState::Open) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Answered;
        }
    restart();
    state_.cares.back().complaint = complaintFor(record.action);
    state_.candidate.clear();
    state_.renewing = record.action != action::grooveClean && record.action != action::clampClean;
}

/// The next care that could change what the one at `index` is judged by; what was done on one visit, with no
/// arc between, is judged together.
std::optional<Instant> Watcher::nextCare(std::size_t index) const {
    const auto& complaint = state_.cares[index].complaint;
    for (std::size_t i = index + 1; i < state_.effects.size(); ++i) {
        if (state_.cares[i].arcsBefore == state_.cares[index].arcsBefore) continue;
        if (complaint && forGrooves(state_.effects[i].action) != grooveChart(complaint->statistic)) continue;
        return state_.effects[i].at;
    }
    return std::nullopt;
}

std::vector<CareEffect> Watcher::effects() const {
    std::vector<CareEffect> told;
    std::vector<Row> all;
    for (std::size_t i = 0; i < state_.effects.size(); ++i) {
        if (state_.cares[i].settled) {
            if (state_.effects[i].verdict != CareVerdict::TooEarly) told.push_back(state_.effects[i]);
            continue;
        }
        if (all.empty()) all = lately();
        told.push_back(judged(state_.effects[i], all, *state_.model, state_.cares[i].complaint, nextCare(i)));
    }
    return told;
}

/// As many of the last arcs as a care is judged by.
std::vector<Row> Watcher::lately() const {
    constexpr std::size_t most = arcsOfTrouble + clearBy + arcsAfterCare;
    const auto count = static_cast<std::ptrdiff_t>(std::min(most, state_.window.size()));
    return {state_.window.end() - count, state_.window.end()};
}

void Watcher::judgeCare() {
    std::vector<Row> all;
    for (std::size_t i = 0; i < state_.effects.size(); ++i) {
        auto& effect = state_.effects[i];
        if (state_.cares[i].settled) continue;
        const auto until = nextCare(i);
        if (!until && state_.arcs - state_.cares[i].arcsBefore < arcsAfterCare) continue;
        if (all.empty()) all = lately();
        effect = judged(effect, all, *state_.model, state_.cares[i].complaint, until);
        state_.cares[i].settled = effect.verdict != CareVerdict::TooEarly || until.has_value() ||
                                  state_.arcs - state_.cares[i].arcsBefore >= clearBy;
        if (effect.verdict == CareVerdict::TooEarly) continue;
        for (auto& about : state_.cases) {
            if (about.state != SignalState::Answered || !about.closed) continue;
            const Complaint complaint{about.statistic, about.index, about.closed->raising.beganAt, about.key};
            const auto verdict = verdictOn(complaint, effect.at, all, *state_.model, until);
            if (verdict == CareVerdict::Recovered) {
                about.state = SignalState::Recovered;
                about.curedBy = effect.action;
            } else {
                about.state = SignalState::Open;
                setOffsets(about, about.statistic, effect.atArc);
            }
        }
    }
}

}  // namespace arc::drift
