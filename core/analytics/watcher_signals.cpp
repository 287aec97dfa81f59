// SPDX-License-Identifier: GPL-3.0-or-later
// How a watcher raises signals, tells a new problem from a known one, and sees that one is over.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/facts.hpp"
#include "core/analytics/since.hpp"
#include "core/analytics/watcher.hpp"
#include "core/analytics/watcher_families.hpp"

namespace arc::drift {

namespace {

constexpr std::uint64_t afterSignal = 5;    ///< arcs after a signal in which an alarm is the same one
constexpr std::uint64_t beforeSignal = 20;  ///< arcs before it that show its level
constexpr std::uint64_t levelGrows = 3;     ///< arcs a level signal may still grow
constexpr double shortWander = 5;           ///< of the set-ups' share that some tens of arcs collect
constexpr double clearlyNewer = 3;          ///< log-likelihood by which a newer step must fit better
constexpr double backLimit = 6;             ///< log-likelihood at which a level counts as gone
constexpr double grooveBackLimit = 9;       ///< the same of a groove: dirt stays until it is cleaned
constexpr double standing = 3;              ///< times that of a signal which has stood for long
constexpr int settleEvery = 100;
constexpr int settleArcs = 30;      ///< arcs after which the level of a signal is measured again
constexpr double leastLevel = 0.3;  ///< standard deviations
constexpr int refiresToRise = 12;
constexpr std::uint64_t recentArcs = 120;  ///< arcs before an alarm in which a step of its own is looked for
constexpr double weakArcs = 60;            ///< arcs after which a signal that stayed this weak was luck
constexpr double weakLevel = 0.4;          ///< standard deviations
constexpr double cautious = 1;             ///< standard errors by which a level may be luck
constexpr double fadedArcs = 15;           ///< arcs without the level before a signal counts as faded

}  // namespace

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

double Watcher::levelSince(const Chart& chart, std::uint64_t from) const {
    double sum = 0, n = 0;
    for (auto row = state_.window.rbegin(); row != state_.window.rend() && row->raw.number >= from; ++row)
        if (const auto x = seen(chart, *row, *state_.model)) sum += *x, ++n;
    return n > 0 ? std::max(0.0, sum / n - cautious / std::sqrt(n)) : 0;
}

void Watcher::setOffsets(const Case& about, Statistic alarmed, std::uint64_t from) {
    for (auto& chart : state_.charts)
        if (sameFamily(about, chart) && groupOf(chart.statistic) == groupOf(alarmed)) {
            chart.offset = levelSince(chart, from);
            chart.sum = 0;
        }
}

void Watcher::settle(Case& about) {
    // What raised a signal was picked for being high; the arcs after it were not. Later it may sink back,
    // which must not hide the next rise.
    const auto& last = state_.window.back().raw.number;
    const auto lately = std::max(about.raisedAt + 1, last > settleEvery ? last - settleEvery : 1);
    if (about.rowsSince <= settleEvery) measure(about, lately);
    for (auto& chart : state_.charts)
        if (chart.offset > 0 && sameFamily(about, chart))
            chart.offset = std::min(chart.offset, levelSince(chart, lately));
}

void Watcher::clearOffsets(const Case& about) {
    for (auto& chart : state_.charts)
        if (sameFamily(about, chart)) {
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
    double sum = 0, square = 0, n = 0;
    for (const auto& row : state_.window)
        if (row.raw.number >= from)
            if (const auto x = seen(about, row, *state_.model)) sum += *x, square += *x * *x, ++n;
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
    const std::uint64_t from = std::max(known.raisedAt > beforeSignal ? known.raisedAt - beforeSignal : 0,
                                        next.raisedAt > recentArcs ? next.raisedAt - recentArcs : 0);
    std::size_t after = 1;
    for (const auto& row : state_.window) {
        if (row.raw.number < from) continue;
        if (row.raw.number <= known.raisedAt) after = scores.size() + 1;
        scores.push_back(seen(next, row, *state_.model).value_or(0.0));
    }
    if (after + 2 >= scores.size()) return false;
    const double wander = next.statistic == Statistic::Shift
                              ? state_.model->shift[static_cast<std::size_t>(next.index)].wander
                              : state_.model->common.wander;
    const Noise noise{1 + shortWander * wander, 0};
    // Bad cleaves make the losses scatter more: a step must then be clearer.
    const double needed = known.statistic == Statistic::Angle ? 2 * clearlyNewer : clearlyNewer;
    constexpr std::array step{1};
    constexpr std::array growth{40, 100, 200, 400, 800};
    auto older = fitChange(scores, 1, after, growth, noise);
    // Wider scatter and wider angles are no step of the level.
    if (known.statistic == Statistic::Common || known.statistic == Statistic::Shift)
        older.best = std::max(older.best, fitChange(scores, 1, after, step, noise).best);
    const auto newer = fitChange(scores, after, scores.size() - 1, step, noise);
    return newer.best > older.best + needed;
}

bool Watcher::faded(const Case& known, const Case& next) const {
    double sum = 0, n = 0;
    for (const auto& row : state_.window)
        if (row.raw.number > known.raisedAt && row.raw.number <= next.zeroAt)
            if (const auto x = seen(known, row, *state_.model)) sum += *x, ++n;
    if (n < fadedArcs) return false;
    return sum / n < known.level / 2 ||
           (n >= weakArcs && sum / n < weakLevel && !grooveChart(known.statistic));
}

void Watcher::followOpenCases(const Row& row) {
    for (auto& about : state_.cases) {
        if (!followed(about)) continue;
        ++about.rowsSince;
        if (!about.closed && about.rowsSince == static_cast<int>(factsAfter)) about.closed = facts(about);
        if (about.state != SignalState::Open) continue;
        const auto x = seen(about, row, *state_.model);
        if (!x) continue;
        if (about.rowsSince == settleArcs || about.rowsSince % settleEvery == 0) settle(about);
        about.backToNormal =
            std::max(0.0, about.backToNormal + about.level * (about.level / 2 - *x) / about.noise);
        double limit = grooveChart(about.statistic) ? grooveBackLimit
                                                    : backLimit * (1 + 10 * state_.model->common.wander) / 2;
        // The longer it stands, the more chances luck has to look like a cure.
        if (about.rowsSince > static_cast<int>(factsAfter)) limit *= standing;
        if (about.backToNormal > limit) close(about, SignalState::Recovered);
    }
}

void Watcher::close(Case& about, SignalState state) {
    if (!about.closed) about.closed = facts(about);
    about.state = state;
    clearOffsets(about);
}

}  // namespace arc::drift
