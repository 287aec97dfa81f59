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
    ++arcs_;
    if (arc.lossMask == 0) {
        // Only re-splices in this arc: they count with the next first attempts.
        redone_ = std::min(redone_ + arc.redone, 3);
        return;
    }
    if (settings_.baseline && arc.at < settings_.baseline->from) return;
    Row row{arc, {}};
    row.raw.redone = static_cast<std::uint8_t>(std::min(row.raw.redone + redone_, 3));
    redone_ = 0;
    if (model_) row.score = scoresOf(arc, *model_);
    window_.push_back(row);
    if (window_.size() > windowRows) window_.pop_front();
    if (!model_) {
        baseline_.push_back(row.raw);
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
    learnMore(row.raw);
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

void Watcher::setOffsets(const Case& about, Statistic alarmed, std::uint64_t from) {
    for (auto& chart : charts_)
        if (sameFamily(about, chart) && groupOf(chart.statistic) == groupOf(alarmed)) {
            chart.offset = std::max(0.0, meanSince(chart, from));
            chart.sum = 0;
        }
}

void Watcher::settle(Case& about) {
    // What raised a signal was picked for being high; the arcs after it were not.
    measure(about, about.raisedAt + 1);
    for (auto& chart : charts_)
        if (chart.offset > 0 && sameFamily(about, chart))
            chart.offset = std::min(chart.offset, std::max(0.0, meanSince(chart, about.raisedAt + 1)));
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
    const auto why = explainRaise(next, recent(next), *model_);
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
    cases_.push_back(next);
    setOffsets(next, chart.statistic, why.beganAt);
}

Case* Watcher::reopened(const Case& next, const Explanation& why) {
    for (auto& about : cases_)
        if (about.state == SignalState::Recovered && about.statistic == next.statistic &&
            about.index == next.index && about.raisedAt > lastCareAt_ &&
            why.beganAt <= about.raisedAt + afterSignal)
            return &about;
    return nullptr;
}

void Watcher::measure(Case& about, std::uint64_t from) const {
    Chart like;
    like.statistic = about.statistic;
    like.index = about.index;
    double sum = 0, square = 0, n = 0;
    for (const auto& row : window_)
        if (row.raw.number >= from)
            if (const auto x = seen(like, row, *model_)) sum += *x, square += *x * *x, ++n;
    if (n < 1) return;
    about.level = std::max(leastLevel, sum / n);
    about.noise = n < 5 ? 1.0 : std::max(1.0, square / n - (sum / n) * (sum / n));
}

void Watcher::emptyFamily(const Case& about) {
    for (auto& chart : charts_)
        if (sameFamily(about, chart)) chart.sum = 0;
}

bool Watcher::isNew(const Case& known, const Case& next) const {
    if (known.state == SignalState::Answered) return false;
    // Dirt that gathers and a blade that dulls stay one problem until care. Angles that began to rise only
    // after a level signal are another.
    if (grooveChart(next.statistic)) return false;
    if (next.statistic == Statistic::Angle)
        return known.statistic != Statistic::Angle &&
               explainRaise(next, recent(next), *model_).beganAt > known.raisedAt + afterSignal;
    if (next.raisedAt < known.raisedAt + levelGrows) return false;
    // What rose since the known signal: by itself still, or by a step of its own?
    std::vector<double> scores;
    Chart like;
    like.statistic = next.statistic;
    like.index = next.index;
    const std::uint64_t from = std::max(known.raisedAt > beforeSignal ? known.raisedAt - beforeSignal : 0,
                                        next.raisedAt > recentArcs ? next.raisedAt - recentArcs : 0);
    std::size_t after = 1;
    for (const auto& row : window_) {
        if (row.raw.number < from) continue;
        if (row.raw.number <= known.raisedAt + afterSignal) after = scores.size() + 1;
        scores.push_back(seen(like, row, *model_).value_or(0.0));
    }
    if (after + 2 >= scores.size()) return false;
    constexpr std::array growth{40, 100, 200, 400, 800};
    constexpr std::array step{1};
    const auto older = fitChange(scores, 1, after, growth, Noise{});
    const auto newer = fitChange(scores, after, scores.size() - 1, step, Noise{});
    return newer.best > older.best + clearlyNewer;
}

bool Watcher::faded(const Case& known, const Case& next) const {
    Chart like;
    like.statistic = known.statistic;
    like.index = known.index;
    double sum = 0, n = 0;
    for (const auto& row : window_)
        if (row.raw.number > known.raisedAt && row.raw.number <= next.zeroAt)
            if (const auto x = seen(like, row, *model_)) sum += *x, ++n;
    return n >= fadedArcs && sum / n < known.level / 2;
}

std::vector<Row> Watcher::recent(const Case& about) const {
    std::vector<Row> rows;
    const auto from = about.zeroAt > lookBack ? about.zeroAt - lookBack : 0;
    const auto to = about.raisedAt + factsAfter;
    for (const auto& row : window_)
        if (row.raw.number >= from && row.raw.number <= to) rows.push_back(row);
    return rows;
}

void Watcher::followOpenCases(const Row& row) {
    for (auto& about : cases_) {
        if (about.closed || !followed(about)) continue;
        ++about.rowsSince;
        if (about.rowsSince == static_cast<int>(factsAfter)) about.closed = facts(about);
        if (about.state != SignalState::Open) continue;
        Chart like;
        like.statistic = about.statistic;
        like.index = about.index;
        const auto x = seen(like, row, *model_);
        if (!x) continue;
        if (about.rowsSince == settleArcs || about.rowsSince == settleAgain) settle(about);
        about.backToNormal =
            std::max(0.0, about.backToNormal + about.level * (about.level / 2 - *x) / about.noise);
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
    return gatherFacts(about, recent(about), *model_, events_);
}

/// The open signal that such a care is for; a routine care has none.
std::optional<Complaint> Watcher::complaintFor(const ActionKey& action) const {
    const bool forCleaver = action == action::cleaverClean || action == action::bladeClean ||
                            action == action::bladeRotate || action == action::bladeRaise;
    std::optional<Complaint> found;
    for (const auto& about : cases_) {
        if (!followed(about) || !about.closed || grooveChart(about.statistic) != forGrooves(action)) continue;
        if (found && forCleaver && found->statistic == Statistic::Angle) continue;
        found = Complaint{about.statistic, about.index, about.closed->raising.beganAt};
    }
    return found;
}

void Watcher::care(const CareRecord& record) {
    events_.push_back(record);
    if (!changesTheTool(record) || !model_) return;
    if (!window_.empty()) lastCareAt_ = window_.back().raw.number;
    for (auto& about : cases_)
        if (about.state == SignalState::Open) {
            if (!about.closed) about.closed = facts(about);
            about.state = SignalState::Answered;
        }
    restart();
    cares_.push_back({complaintFor(record.action), arcs_, false});
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

/// The next care that could change what the one at `index` is judged by; what was done on one visit, with no
/// arc between, is judged together.
std::optional<Instant> Watcher::nextCare(std::size_t index) const {
    const auto& complaint = cares_[index].complaint;
    for (std::size_t i = index + 1; i < effects_.size(); ++i) {
        if (cares_[i].arcsBefore == cares_[index].arcsBefore) continue;
        if (complaint && forGrooves(effects_[i].action) != grooveChart(complaint->statistic)) continue;
        return effects_[i].at;
    }
    return std::nullopt;
}

std::vector<CareEffect> Watcher::effects() const {
    std::vector<CareEffect> told;
    std::vector<Row> all;
    for (std::size_t i = 0; i < effects_.size(); ++i) {
        if (cares_[i].settled) {
            if (effects_[i].verdict != CareVerdict::TooEarly) told.push_back(effects_[i]);
            continue;
        }
        if (all.empty()) all = lately();
        told.push_back(judged(effects_[i], all, *model_, cares_[i].complaint, nextCare(i)));
    }
    return told;
}

/// As many of the last arcs as a care is judged by.
std::vector<Row> Watcher::lately() const {
    constexpr std::size_t most = arcsBeforeCare + 4 * arcsAfterCare;
    const auto count = static_cast<std::ptrdiff_t>(std::min(most, window_.size()));
    return {window_.end() - count, window_.end()};
}

void Watcher::judgeCare() {
    std::vector<Row> all;
    for (std::size_t i = 0; i < effects_.size(); ++i) {
        auto& effect = effects_[i];
        if (cares_[i].settled) continue;
        const auto until = nextCare(i);
        if (!until && arcs_ - cares_[i].arcsBefore < arcsAfterCare) continue;
        if (all.empty()) all = lately();
        effect = judged(effect, all, *model_, cares_[i].complaint, until);
        cares_[i].settled = effect.verdict != CareVerdict::TooEarly || until.has_value() ||
                            arcs_ - cares_[i].arcsBefore >= 3 * arcsAfterCare;
        if (effect.verdict == CareVerdict::TooEarly) continue;
        for (auto& about : cases_) {
            if (about.state != SignalState::Answered || !about.closed) continue;
            const Complaint complaint{about.statistic, about.index, about.closed->raising.beganAt};
            const auto verdict = verdictOn(complaint, effect.at, all, *model_, until);
            if (verdict == CareVerdict::Recovered) {
                about.state = SignalState::Recovered;
            } else {
                about.state = SignalState::Open;
                setOffsets(about, about.statistic, effect.atArc);
            }
        }
    }
}

}  // namespace arc::drift
