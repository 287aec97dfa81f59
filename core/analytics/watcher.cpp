// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/watcher.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/facts.hpp"
#include "core/analytics/recovery.hpp"
#include "core/analytics/since.hpp"

namespace arc::drift {

namespace {

constexpr std::size_t foldBlock = 25;       ///< arcs that join the baseline together
constexpr double calm = 0.5;                ///< share of its limit below which a chart lets arcs join
constexpr int renewAfter = 100;             ///< arcs before a new baseline replaces the old one
constexpr std::uint64_t lookBack = 350;     ///< arcs before the chart's last zero that show the level before
constexpr std::uint64_t factsAfter = 200;   ///< arcs after a signal that are used to judge it
constexpr std::uint64_t afterSignal = 5;    ///< arcs after a signal in which an alarm is the same one
constexpr std::uint64_t beforeSignal = 20;  ///< arcs before it that show its level
constexpr std::uint64_t levelGrows = 10;    ///< arcs a level signal may still grow
constexpr double shortWander = 5;           ///< of the set-ups' share that some tens of arcs collect
constexpr double clearlyNewer = 3;          ///< log-likelihood by which a newer step must fit better
constexpr double backLimit = 6;             ///< log-likelihood at which a level counts as gone
constexpr int settleAgain = 100;
constexpr int settleArcs = 30;      ///< arcs after which the level of a signal is measured again
constexpr double leastLevel = 0.3;  ///< standard deviations
constexpr int refiresToRise = 12;
constexpr std::uint64_t recentArcs = 120;  ///< arcs before an alarm in which a step of its own is looked for
constexpr double fadedArcs = 15;           ///< arcs without the level before a signal counts as faded

bool grooveChart(Statistic s) {
    return s == Statistic::Apart || s == Statistic::Pair;
}

/// Whether the chart looks at what the case reports: a further alarm there is the same problem.
bool sameFamily(const Case& about, const Chart& chart) {
    if (grooveChart(about.statistic) != grooveChart(chart.statistic)) return false;
    if (!grooveChart(chart.statistic)) return true;
    const int caseLast = about.index + (about.statistic == Statistic::Pair ? 1 : 0);
    const int chartLast = chart.index + (chart.statistic == Statistic::Pair ? 1 : 0);
    return chart.index <= caseLast + 1 && about.index <= chartLast + 1;
}

enum class Group { Level, Angle, Groove, Respliced };
Group groupOf(Statistic s) {
    switch (s) {
        case Statistic::Common:
        case Statistic::Shift:
        case Statistic::Spread:
            return Group::Level;
        case Statistic::Angle:
            return Group::Angle;
        case Statistic::Apart:
        case Statistic::Pair:
            return Group::Groove;
        case Statistic::Respliced:
            return Group::Respliced;
    }
    return Group::Level;
}

bool followed(const Case& about) {
    return about.state == SignalState::Open || about.state == SignalState::Answered;
}

bool forGrooves(const ActionKey& action) {
    return action == action::grooveClean || action == action::clampClean;
}

bool changesTheTool(const CareRecord& record) {
    return record.action != action::note && record.action != action::environmentChange &&
           record.action != action::stripperClean;
}

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

Case* Watcher::covering(const Chart& chart) {
    // The latest open signal of the same kind, else the latest of the family.
    Case* found = nullptr;
    for (auto& about : state_.cases) {
        if (!followed(about) || !sameFamily(about, chart)) continue;
        const bool sameKind = groupOf(about.statistic) == groupOf(chart.statistic);
        if (!found || sameKind || groupOf(found->statistic) != groupOf(chart.statistic)) found = &about;
    }
    return found;
}

double Watcher::meanSince(const Chart& chart, std::uint64_t from) const {
    double sum = 0, n = 0;
    for (auto row = state_.window.rbegin(); row != state_.window.rend() && row->raw.number >= from; ++row)
        if (const auto x = seen(chart, *row, *state_.model)) sum += *x, ++n;
    return n > 0 ? sum / n : 0;
}

void Watcher::setOffsets(const Case& about, Statistic alarmed, std::uint64_t from) {
    for (auto& chart : state_.charts)
        if (sameFamily(about, chart) && groupOf(chart.statistic) == groupOf(alarmed)) {
            chart.offset = std::max(0.0, meanSince(chart, from));
            chart.sum = 0;
        }
}

void Watcher::settle(Case& about) {
    // What raised a signal was picked for being high; the arcs after it were not.
    measure(about, about.raisedAt + 1);
    for (auto& chart : state_.charts)
        if (chart.offset > 0 && sameFamily(about, chart))
            chart.offset = std::min(chart.offset, std::max(0.0, meanSince(chart, about.raisedAt + 1)));
}

void Watcher::clearOffsets(const Case& about) {
    for (auto& chart : state_.charts)
        if (sameFamily(about, chart)) {
            chart.offset = 0;
            chart.sum = 0;
        }
}

void Watcher::restart() {
    for (auto& chart : state_.charts) {
        chart.offset = 0;
        chart.sum = 0;
    }
}

void Watcher::raise(std::size_t which) {
    const Chart chart = state_.charts[which];
    const auto& arc = state_.window.back().raw;
    Case next;
    next.chart = kindOf(chart);
    next.statistic = chart.statistic;
    next.index = chart.index;
    if (grooveChart(chart.statistic)) next.channel = chart.index + 1;
    next.zeroAt = chart.zeroAt;
    next.raisedAt = arc.number;
    next.raisedTime = arc.at;
    auto* known = covering(chart);
    const bool gone = known && known->state == SignalState::Open && faded(*known, next);
    if (known && !gone && !isNew(*known, next)) {
        // The same problem again, or still there after care: one signal. It keeps being asked whether a new
        // step began; only after some alarms does its level count as risen.
        known->state = SignalState::Open;
        known->backToNormal = 0;
        const bool mayBeNew = groupOf(chart.statistic) == Group::Level;
        if (++known->refires % refiresToRise == 0 || !mayBeNew)
            setOffsets(*known, chart.statistic, std::max(known->raisedAt, chart.zeroAt) + 1);
        else
            emptyFamily(*known);
        return;
    }
    if (gone) close(*known, SignalState::Recovered);
    const auto why = explainRaise(next, recent(next), *state_.model);
    if (auto* same = reopened(next, why)) {
        same->state = SignalState::Open;
        same->backToNormal = 0;
        setOffsets(*same, chart.statistic, why.beganAt);
        return;
    }
    measure(next, why.beganAt);
    next.key = settings_.stratum + "|" + std::string(word(next.chart)) + "|" +
               (next.channel ? std::to_string(*next.channel) : std::string("all")) + "|" +
               toIso(Instant{arc.at.ms, 0});
    state_.cases.push_back(next);
    setOffsets(next, chart.statistic, why.beganAt);
}

Case* Watcher::reopened(const Case& next, const Explanation& why) {
    for (auto& about : state_.cases)
        if (about.state == SignalState::Recovered && about.statistic == next.statistic &&
            about.index == next.index && about.raisedAt > state_.lastCareAt &&
            why.beganAt <= about.raisedAt + afterSignal)
            return &about;
    return nullptr;
}

void Watcher::measure(Case& about, std::uint64_t from) const {
    Chart like;
    like.statistic = about.statistic;
    like.index = about.index;
    double sum = 0, square = 0, n = 0;
    for (const auto& row : state_.window)
        if (row.raw.number >= from)
            if (const auto x = seen(like, row, *state_.model)) sum += *x, square += *x * *x, ++n;
    if (n < 1) return;
    about.level = std::max(leastLevel, sum / n);
    about.noise = n < 5 ? 1.0 : std::max(1.0, square / n - (sum / n) * (sum / n));
}

void Watcher::emptyFamily(const Case& about) {
    for (auto& chart : state_.charts)
        if (sameFamily(about, chart)) chart.sum = 0;
}

bool Watcher::isNew(const Case& known, const Case& next) const {
    if (known.state == SignalState::Answered) return false;
    // Dirt that gathers and a blade that dulls stay one problem until care. Angles that began to rise only
    // after a level signal are another.
    if (grooveChart(next.statistic)) return false;
    if (next.statistic == Statistic::Angle)
        return known.statistic != Statistic::Angle &&
               explainRaise(next, recent(next), *state_.model).beganAt > known.raisedAt + afterSignal;
    if (next.raisedAt < known.raisedAt + levelGrows) return false;
    // What rose since the known signal: by itself still, or by a step of its own?
    std::vector<double> scores;
    Chart like;
    like.statistic = next.statistic;
    like.index = next.index;
    const std::uint64_t from = std::max(known.raisedAt > beforeSignal ? known.raisedAt - beforeSignal : 0,
                                        next.raisedAt > recentArcs ? next.raisedAt - recentArcs : 0);
    std::size_t after = 1;
    for (const auto& row : state_.window) {
        if (row.raw.number < from) continue;
        if (row.raw.number <= known.raisedAt + afterSignal) after = scores.size() + 1;
        scores.push_back(seen(like, row, *state_.model).value_or(0.0));
    }
    if (after + 2 >= scores.size()) return false;
    const double wander = next.statistic == Statistic::Shift
                              ? state_.model->shift[static_cast<std::size_t>(next.index)].wander
                              : state_.model->common.wander;
    const Noise noise{1 + shortWander * wander, 0};
    // Bad cleaves make the losses scatter more: a step must then be clearer.
    const double needed = known.statistic == Statistic::Angle ? 2 * clearlyNewer : clearlyNewer;
    constexpr std::array growth{40, 100, 200, 400, 800};
    constexpr std::array step{1};
    const auto older = fitChange(scores, 1, after, growth, noise);
    const auto newer = fitChange(scores, after, scores.size() - 1, step, noise);
    return newer.best > older.best + needed;
}

bool Watcher::faded(const Case& known, const Case& next) const {
    Chart like;
    like.statistic = known.statistic;
    like.index = known.index;
    double sum = 0, n = 0;
    for (const auto& row : state_.window)
        if (row.raw.number > known.raisedAt && row.raw.number <= next.zeroAt)
            if (const auto x = seen(like, row, *state_.model)) sum += *x, ++n;
    return n >= fadedArcs && sum / n < known.level / 2;
}

std::vector<Row> Watcher::recent(const Case& about) const {
    std::vector<Row> rows;
    const auto from = about.zeroAt > lookBack ? about.zeroAt - lookBack : 0;
    const auto to = about.raisedAt + factsAfter;
    for (const auto& row : state_.window)
        if (row.raw.number >= from && row.raw.number <= to) rows.push_back(row);
    return rows;
}

void Watcher::followOpenCases(const Row& row) {
    for (auto& about : state_.cases) {
        if (about.closed || !followed(about)) continue;
        ++about.rowsSince;
        if (about.rowsSince == static_cast<int>(factsAfter)) about.closed = facts(about);
        if (about.state != SignalState::Open) continue;
        Chart like;
        like.statistic = about.statistic;
        like.index = about.index;
        const auto x = seen(like, row, *state_.model);
        if (!x) continue;
        if (about.rowsSince == settleArcs || about.rowsSince == settleAgain) settle(about);
        about.backToNormal =
            std::max(0.0, about.backToNormal + about.level * (about.level / 2 - *x) / about.noise);
        const double limit =
            grooveChart(about.statistic) ? backLimit : backLimit * (1 + 10 * state_.model->common.wander) / 2;
        if (about.backToNormal > limit) close(about, SignalState::Recovered);
    }
}

void Watcher::close(Case& about, SignalState state) {
    if (!about.closed) about.closed = facts(about);
    about.state = state;
    clearOffsets(about);
}

CaseFacts Watcher::facts(const Case& about) const {
    if (about.closed) return *about.closed;
    return gatherFacts(about, recent(about), *state_.model, state_.events);
}

/// The open signal that such a care is for; a routine care has none.
std::optional<Complaint> Watcher::complaintFor(const ActionKey& action) const {
    const bool forCleaver = action == action::cleaverClean || action == action::bladeClean ||
                            action == action::bladeRotate || action == action::bladeRaise;
    std::optional<Complaint> found;
    for (const auto& about : state_.cases) {
        if (!followed(about) || !about.closed || grooveChart(about.statistic) != forGrooves(action)) continue;
        if (found && forCleaver && found->statistic == Statistic::Angle) continue;
        found = Complaint{about.statistic, about.index, about.closed->raising.beganAt};
    }
    return found;
}

void Watcher::care(const CareRecord& record) {
    state_.events.push_back(record);
    if (!changesTheTool(record) || !state_.model) return;
    if (!state_.window.empty()) state_.lastCareAt = state_.window.back().raw.number;
    for (auto& about : state_.cases)
        if (about.state == SignalState::Open) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Answered;
        }
    restart();
    state_.cares.push_back({complaintFor(record.action), state_.arcs, false});
    CareEffect effect;
    effect.care = record.id;
    effect.action = record.action;
    effect.at = record.at;
    state_.effects.push_back(effect);
    state_.candidate.clear();
    state_.renewing = record.action != action::grooveClean && record.action != action::clampClean;
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
    constexpr std::size_t most = arcsBeforeCare + 4 * arcsAfterCare;
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
                                  state_.arcs - state_.cares[i].arcsBefore >= 3 * arcsAfterCare;
        if (effect.verdict == CareVerdict::TooEarly) continue;
        for (auto& about : state_.cases) {
            if (about.state != SignalState::Answered || !about.closed) continue;
            const Complaint complaint{about.statistic, about.index, about.closed->raising.beganAt};
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
