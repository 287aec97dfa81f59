// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/watcher.hpp"

#include <algorithm>

#include "core/analytics/facts.hpp"
#include "core/analytics/watcher_families.hpp"

namespace arc::drift {

namespace {

constexpr std::size_t foldBlock = 25;    ///< arcs that join the baseline together
constexpr double calm = 0.5;             ///< share of its limit below which a chart lets arcs join
constexpr int renewAfter = 100;          ///< arcs before a new baseline replaces the old one
constexpr std::uint64_t lookBack = 350;  ///< arcs before the chart's last zero that show the level before

}  // namespace

Watcher::Watcher(WatchSettings settings) : settings_(std::move(settings)) {}

void Watcher::step(const RawArc& arc) {
    ++state_.arcs;
    state_.lastArc = arc.number;
    if (arc.lossMask == 0) {
        // Only re-splices in this arc: they count with the next first attempts.
        state_.redone = std::min(state_.redone + arc.redone, 3);
        return;
    }
    if (settings_.baseline && arc.at < settings_.baseline->from) return;
    Row row{arc, {}};
    row.raw.redone = static_cast<std::uint8_t>(std::min(row.raw.redone + state_.redone, 3));
    state_.redone = 0;
    if (state_.model) row.score = scoresOf(arc, *state_.model);
    state_.window.push_back(row);
    if (state_.window.size() > windowRows) state_.window.pop_front();
    if (!state_.model) {
        state_.baseline.push_back(row.raw);
        const bool enough = settings_.baseline
                                ? arc.at >= settings_.baseline->to && state_.baseline.size() >= selfStart
                                : state_.baseline.size() >= selfStart;
        if (enough) relearn();
        return;
    }
    if (arc.job) {
        auto& job = state_.jobs[*arc.job];
        ++job.arcs;
        job.common += row.score.common;
        job.shift += row.score.shift[0];
        double db = 0, n = 0;
        for (int c = 0; c < settings_.grooves; ++c)
            if (arc.has(c)) db += arc.loss[c] / 1000.0, ++n;
        job.db += db / n;
    }
    for (auto& chart : state_.charts)
        if (const auto x = seen(chart, row, *state_.model)) advance(chart, *x, arc.number);
    followOpenCases(row);
    std::size_t fullest = 0;
    for (std::size_t i = 1; i < state_.charts.size(); ++i)
        if (fullness(state_.charts[i]) > fullness(state_.charts[fullest])) fullest = i;
    if (!state_.charts.empty() && fullness(state_.charts[fullest]) >= 1) raise(fullest);
    learnMore(row.raw);
    judgeCare();
}

void Watcher::relearn() {
    const Model* previous = state_.model ? &*state_.model : nullptr;
    Model next = learn(state_.baseline, settings_.grooves, previous);
    if (state_.model) {
        refit(state_.charts, next, settings_.budgetArcs);
        state_.model = std::move(next);
    } else {
        state_.model = std::move(next);
        state_.charts = makeCharts(*state_.model, settings_.budgetArcs);
        for (auto& row : state_.window) row.score = scoresOf(row.raw, *state_.model);
    }
    state_.baselineFrom = state_.baseline.front().number;
    state_.baselineTo = state_.baseline.back().number;
}

void Watcher::learnMore(const RawArc& arc) {
    if (settings_.baseline && !state_.renewing) return;
    const bool open = std::any_of(state_.cases.begin(), state_.cases.end(), followed);
    if (open) {
        state_.candidate.clear();
        state_.renewing = false;
        return;
    }
    state_.candidate.push_back(arc);
    if (state_.renewing) {
        if (state_.candidate.size() >= static_cast<std::size_t>(renewAfter)) {
            state_.baseline = std::move(state_.candidate);
            state_.candidate.clear();
            state_.renewing = false;
            relearn();
            restart();
        }
        return;
    }
    if (state_.candidate.size() < foldBlock) return;
    const bool quiet = std::all_of(state_.charts.begin(), state_.charts.end(),
                                   [](const Chart& c) { return fullness(c) < calm; });
    if (quiet && state_.baseline.size() + state_.candidate.size() <= static_cast<std::size_t>(baselineGoal)) {
        state_.baseline.insert(state_.baseline.end(), state_.candidate.begin(), state_.candidate.end());
        relearn();
    }
    state_.candidate.clear();
}

void Watcher::restart() {
    for (auto& chart : state_.charts) {
        chart.offset = 0;
        chart.sum = 0;
    }
}

std::vector<Row> Watcher::recent(const Case& about) const {
    std::vector<Row> rows;
    const auto from = about.zeroAt > lookBack ? about.zeroAt - lookBack : 0;
    const auto to = about.raisedAt + factsAfter;
    for (const auto& row : state_.window)
        if (row.raw.number >= from && row.raw.number <= to) rows.push_back(row);
    return rows;
}

CaseFacts Watcher::facts(const Case& about) const {
    if (about.closed) return *about.closed;
    return gatherFacts(about, recent(about), *state_.model, state_.events);
}

void Watcher::answer(const SignalAnswer& answer) {
    for (auto& about : state_.cases) {
        if (about.key != answer.signalKey) continue;
        about.answerReason = answer.reason;
        if (answer.kind == SignalAnswerKind::Dismissed) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Dismissed;
            state_.renewing = true;
            state_.candidate.clear();
        } else {
            about.state = SignalState::Open;
        }
    }
}

}  // namespace arc::drift
