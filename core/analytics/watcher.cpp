// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/watcher.hpp"

#include <algorithm>
#include <cmath>

#include "core/analytics/facts.hpp"
#include "core/analytics/recovery.hpp"

namespace arc::drift {

namespace {

constexpr std::size_t foldBlock = 25;  ///< arcs that join the baseline together
constexpr double calm = 0.5;           ///< share of its limit below which a chart lets arcs join
constexpr int renewAfter = 100;        ///< arcs before a new baseline replaces the old one
constexpr int lookBack = 320;          ///< arcs before a signal that are searched for its begin
constexpr int factsAfter = 200;        ///< arcs after a signal that are used to judge it
constexpr double backLimit = 6;        ///< log-likelihood at which a level counts as gone
constexpr int settleArcs = 30;

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

bool followed(const Case& about) {
    return about.state == SignalState::Open || about.state == SignalState::Answered;
}

bool changesTheTool(const CareRecord& record) {
    return record.action != action::note && record.action != action::environmentChange &&
           record.action != action::stripperClean;
}

}  // namespace

Watcher::Watcher(WatchSettings settings) : settings_(std::move(settings)) {}

void Watcher::step(const RawArc& arc) {
    ++arcs_;
    if (arc.lossMask == 0) return;
    if (settings_.baseline && arc.at < settings_.baseline->from) return;
    Row row{arc, {}};
    if (model_) row.score = scoresOf(arc, *model_);
    window_.push_back(row);
    if (window_.size() > windowRows) window_.pop_front();
    if (!model_) {
        baseline_.push_back(arc);
        const bool enough = settings_.baseline
                                ? arc.at >= settings_.baseline->to && baseline_.size() >= selfStart
                                : baseline_.size() >= selfStart;
        if (enough) relearn();
        return;
    }
    if (arc.job) {
        auto& job = jobs_[*arc.job];
        ++job.arcs;
        job.common += row.score.common;
        job.shift += row.score.shift[0];
        double db = 0, n = 0;
        for (int c = 0; c < settings_.grooves; ++c)
            if (arc.has(c)) db += arc.loss[c] / 1000.0, ++n;
        job.db += db / n;
    }
    for (auto& chart : charts_)
        if (const auto x = seen(chart, row, *model_)) advance(chart, *x, arc.number);
    followOpenCases(row);
    std::size_t fullest = 0;
    for (std::size_t i = 1; i < charts_.size(); ++i)
        if (fullness(charts_[i]) > fullness(charts_[fullest])) fullest = i;
    if (!charts_.empty() && fullness(charts_[fullest]) >= 1) raise(fullest);
    learnMore(arc);
    judgeCare();
}

void Watcher::relearn() {
    const Model* previous = model_ ? &*model_ : nullptr;
    Model next = learn(baseline_, settings_.grooves, previous);
    if (model_) {
        refit(charts_, next, settings_.budgetArcs);
        model_ = std::move(next);
    } else {
        model_ = std::move(next);
        charts_ = makeCharts(*model_, settings_.budgetArcs);
        for (auto& row : window_) row.score = scoresOf(row.raw, *model_);
    }
    baselineFrom_ = baseline_.front().number;
    baselineTo_ = baseline_.back().number;
}

void Watcher::learnMore(const RawArc& arc) {
    if (settings_.baseline && !renewing_) return;
    const bool open = std::any_of(cases_.begin(), cases_.end(), followed);
    if (open) {
        candidate_.clear();
        renewing_ = false;
        return;
    }
    candidate_.push_back(arc);
    if (renewing_) {
        if (candidate_.size() >= static_cast<std::size_t>(renewAfter)) {
            baseline_ = std::move(candidate_);
            candidate_.clear();
            renewing_ = false;
            relearn();
            restart();
        }
        return;
    }
    if (candidate_.size() < foldBlock) return;
    const bool quiet =
        std::all_of(charts_.begin(), charts_.end(), [](const Chart& c) { return fullness(c) < calm; });
    if (quiet && baseline_.size() + candidate_.size() <= static_cast<std::size_t>(baselineGoal)) {
        baseline_.insert(baseline_.end(), candidate_.begin(), candidate_.end());
        relearn();
    }
    candidate_.clear();
}

Case* Watcher::covering(const Chart& chart) {
    for (auto& about : cases_)
        if (followed(about) && sameFamily(about, chart)) return &about;
    return nullptr;
}

double Watcher::meanSince(const Chart& chart, std::uint64_t from) const {
    double sum = 0, n = 0;
    for (auto row = window_.rbegin(); row != window_.rend() && row->raw.number >= from; ++row)
        if (const auto x = seen(chart, *row, *model_)) sum += *x, ++n;
    return n > 0 ? sum / n : 0;
}

void Watcher::setOffsets(const Case& about, std::uint64_t from) {
    for (auto& chart : charts_)
        if (sameFamily(about, chart)) {
            chart.offset = std::max(0.0, meanSince(chart, from));
            chart.sum = 0;
        }
}

void Watcher::clearOffsets(const Case& about) {
    for (auto& chart : charts_)
        if (sameFamily(about, chart)) {
            chart.offset = 0;
            chart.sum = 0;
        }
}

void Watcher::restart() {
    for (auto& chart : charts_) {
        chart.offset = 0;
        chart.sum = 0;
    }
}

void Watcher::raise(std::size_t which) {
    const Chart chart = charts_[which];
    const auto& arc = window_.back().raw;
    Case next;
    next.chart = kindOf(chart);
    next.statistic = chart.statistic;
    next.index = chart.index;
    if (grooveChart(chart.statistic)) next.channel = chart.index + 1;
    next.raisedAt = arc.number;
    next.raisedTime = arc.at;
    const auto all = rows();
    const auto from = beginOf(next, all, *model_);
    const auto began = all[from].raw.number;
    if (auto* known = covering(chart)) {
        // The same problem again, or still there after care: one signal, its level brought up to date.
        known->state = SignalState::Open;
        known->level = std::max(known->level, meanSince(chart, std::max(began, known->raisedAt)));
        known->backToNormal = 0;
        setOffsets(*known, std::max(began, known->raisedAt));
        return;
    }
    next.level = meanSince(chart, began);
    next.key = settings_.stratum + "|" + std::string(word(next.chart)) + "|" +
               (next.channel ? std::to_string(*next.channel) : std::string("all")) + "|" +
               toIso(Instant{arc.at.ms, 0});
    cases_.push_back(next);
    setOffsets(next, began);
}

void Watcher::followOpenCases(const Row& row) {
    for (auto& about : cases_) {
        if (about.closed || !followed(about)) continue;
        ++about.rowsSince;
        if (about.rowsSince == factsAfter) about.closed = facts(about);
        if (about.state != SignalState::Open) continue;
        Chart like;
        like.statistic = about.statistic;
        like.index = about.index;
        const auto x = seen(like, row, *model_);
        if (!x) continue;
        if (about.rowsSince == settleArcs) about.level = std::max(0.3, meanSince(like, about.raisedAt + 1));
        about.backToNormal = std::max(0.0, about.backToNormal + about.level * (about.level / 2 - *x));
        const double limit =
            grooveChart(about.statistic) ? backLimit : backLimit * (1 + 10 * model_->common.wander) / 2;
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
    auto all = rows();
    std::size_t last = all.size(), raised = 0;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (all[i].raw.number <= about.raisedAt) raised = i;
    last = std::min(last, raised + factsAfter);
    const std::size_t first = raised > lookBack ? raised - lookBack : 0;
    return gatherFacts(about, std::span(all).subspan(first, last - first), *model_, events_);
}

void Watcher::care(const CareRecord& record) {
    events_.push_back(record);
    if (!changesTheTool(record) || !model_) return;
    for (auto& about : cases_)
        if (about.state == SignalState::Open) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Answered;
        }
    restart();
    CareEffect effect;
    effect.care = record.id;
    effect.action = record.action;
    effect.at = record.at;
    effects_.push_back(effect);
    candidate_.clear();
    renewing_ = record.action != action::grooveClean && record.action != action::clampClean;
}

void Watcher::answer(const SignalAnswer& answer) {
    for (auto& about : cases_) {
        if (about.key != answer.signalKey) continue;
        about.answerReason = answer.reason;
        if (answer.kind == SignalAnswerKind::Dismissed) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Dismissed;
            renewing_ = true;
            candidate_.clear();
        } else {
            about.state = SignalState::Open;
        }
    }
}

void Watcher::judgeCare() {
    for (auto& effect : effects_) {
        if (effect.verdict != CareVerdict::TooEarly) continue;
        const auto all = rows();
        effect = judged(effect, all, *model_);
        if (effect.verdict == CareVerdict::TooEarly) continue;
        for (auto& about : cases_) {
            if (about.state != SignalState::Answered) continue;
            if (effect.verdict == CareVerdict::Recovered)
                about.state = SignalState::Recovered;
            else {
                about.state = SignalState::Open;
                setOffsets(about, effect.atArc);
            }
        }
    }
}

}  // namespace arc::drift
