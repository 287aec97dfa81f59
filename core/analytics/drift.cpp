// SPDX-License-Identifier: GPL-3.0-or-later
// The facade: histories → strata → watchers → report.
#include "core/analytics/drift.hpp"

#include <algorithm>
#include <map>
#include <memory>

#include "core/analytics/causes.hpp"
#include "core/analytics/forecast.hpp"
#include "core/analytics/peers.hpp"
#include "core/analytics/traces.hpp"
#include "core/analytics/watcher.hpp"

namespace arc::drift {

namespace {

struct Stratum {
    std::string key, mode;
    int channels = 1;
    std::unique_ptr<Watcher> watcher;
    std::unique_ptr<TraceRecorder> traces;
};

std::optional<BaselineChoice> chosenBaseline(const Settings& settings, const SplicerHistory& history,
                                             const std::string& key) {
    std::optional<BaselineChoice> chosen;
    for (const auto& choice : settings.baselines)
        if (choice.splicer == history.splicer && choice.stratum == key) chosen = choice;
    return chosen;
}

/// Care and answers in time order, to be told to the watchers between the arcs.
struct Happening {
    Instant at;
    const CareRecord* care = nullptr;
    const SignalAnswer* answer = nullptr;
};

std::vector<Happening> happenings(const SplicerHistory& history, const Settings& settings) {
    std::vector<Happening> all;
    for (const auto& record : history.events) all.push_back({record.at, &record, nullptr});
    for (const auto& answer : settings.answers)
        if (answer.splicer == history.splicer) all.push_back({answer.at, nullptr, &answer});
    std::stable_sort(all.begin(), all.end(),
                     [](const Happening& a, const Happening& b) { return a.at < b.at; });
    return all;
}

void tell(const Happening& happening, std::vector<Stratum>& strata) {
    for (auto& stratum : strata) {
        if (happening.care) stratum.watcher->care(*happening.care);
        if (happening.answer) stratum.watcher->answer(*happening.answer);
    }
}

std::vector<Stratum> watch(const SplicerHistory& history, const Settings& settings, Detail detail) {
    std::vector<Stratum> strata;
    std::map<std::pair<std::uint32_t, int>, std::size_t> index;
    const auto events = happenings(history, settings);
    std::size_t told = 0;
    for (std::size_t i = 0; i < history.arcs.size(); ++i) {
        const auto& arc = history.arcs[i];
        for (; told < events.size() && events[told].at <= arc.at; ++told) tell(events[told], strata);
        const auto [place, isNew] = index.try_emplace({arc.mode, arc.channels}, strata.size());
        if (isNew) {
            Stratum stratum;
            stratum.mode = arc.mode < history.modes.size() ? history.modes[arc.mode] : std::string();
            stratum.channels = arc.channels;
            stratum.key = stratumKey(stratum.mode, arc.channels);
            stratum.watcher =
                std::make_unique<Watcher>(WatchSettings{stratum.key, arc.channels, settings.budgetArcs,
                                                        chosenBaseline(settings, history, stratum.key)});
            if (detail == Detail::WithTraces) stratum.traces = std::make_unique<TraceRecorder>();
            for (std::size_t e = 0; e < told; ++e)
                if (events[e].care) stratum.watcher->care(*events[e].care);
            strata.push_back(std::move(stratum));
        }
        auto& stratum = strata[place->second];
        stratum.watcher->step(
            rawArc(arc, std::span(history.readings).subspan(arc.firstReading, arc.readingCount), i + 1));
        if (stratum.traces) stratum.traces->note(*stratum.watcher, i + 1);
    }
    for (; told < events.size(); ++told) tell(events[told], strata);
    return strata;
}

Signal signalOf(const Case& about, const Watcher& watcher, const SplicerHistory& history,
                std::span<const Watched> crew, const std::string& stratum, int channels) {
    const auto facts = watcher.facts(about);
    const auto verdict = decide(about, facts, askPeers(facts, history, crew), channels);
    Signal signal;
    signal.key = about.key;
    signal.stratum = stratum;
    signal.chart = about.chart;
    signal.channel = about.channel;
    signal.channels = verdict.grooves;
    signal.raisedAtArc = about.raisedAt;
    signal.raisedAt = about.raisedTime;
    signal.beganAtArc = verdict.since.beganAt;
    signal.beganLow = verdict.since.low;
    signal.beganHigh = verdict.since.high;
    signal.beganAt = verdict.since.beganTime;
    signal.sizeDb = verdict.since.afterDb - verdict.since.beforeDb;
    if (verdict.cause == Cause::Groove && !facts.grooves.empty())
        signal.sizeDb = facts.grooves.front().afterDb - facts.grooves.front().beforeDb;
    signal.cause = verdict.cause;
    signal.causes = verdict.causes;
    signal.state = about.state;
    signal.action = verdict.action;
    signal.actionTool = history.splicer;
    if (verdict.cause == Cause::Cleaver && facts.cleaverAtRaise &&
        *facts.cleaverAtRaise < history.cleavers.size())
        signal.actionTool = history.cleavers[*facts.cleaverAtRaise];
    signal.headline = verdict.headline;
    signal.advice = verdict.advice;
    signal.answerReason = about.answerReason;
    return signal;
}

Standing standingOf(const Watcher& watcher, const std::vector<Signal>& signals) {
    if (watcher.learning()) return Standing::Learning;
    for (const auto& signal : signals)
        if (signal.state == SignalState::Open) return Standing::Drifting;
    for (const auto& signal : signals)
        if (signal.state == SignalState::Answered) return Standing::Watch;
    for (const auto& chart : watcher.charts())
        if (fullness(chart) > 0.7) return Standing::Watch;
    if (!signals.empty() && signals.back().state == SignalState::Recovered && !watcher.effects().empty() &&
        watcher.effects().back().verdict == CareVerdict::Recovered)
        return Standing::Recovered;
    return Standing::Steady;
}

std::vector<GrooveNow> groovesNow(const Watcher& watcher, int channels) {
    std::vector<GrooveNow> grooves;
    const auto* model = watcher.model();
    constexpr std::size_t recentArcs = 25;
    const auto& window = watcher.window();
    const std::size_t first = window.size() > recentArcs ? window.size() - recentArcs : 0;
    double allBase = 0, allRecent = 0, all = 0;
    for (int c = 0; c < std::min(channels, maxGrooves); ++c) {
        GrooveNow groove;
        groove.channel = c + 1;
        double sum = 0;
        for (std::size_t i = first; i < window.size(); ++i)
            if (window[i].raw.has(c)) sum += window[i].raw.loss[c] / 1000.0, ++groove.recent;
        if (groove.recent > 0) groove.recentDb = sum / groove.recent;
        if (model) groove.baselineDb = model->grooveMeanDb[c];
        if (groove.recent > 0 && model) allBase += groove.baselineDb, allRecent += groove.recentDb, ++all;
        grooves.push_back(groove);
    }
    for (auto& groove : grooves)
        if (model && groove.recent > 0 && all > 1) {
            const double rise = groove.recentDb - groove.baselineDb;
            groove.aloneDb = rise - (allRecent - allBase - rise) / (all - 1);
        }
    return grooves;
}

/// What care has done about a fault of the fibre cannot be told: it goes with the job, cured or not.
void leaveOutFibre(std::vector<CareEffect>& effects, const std::vector<Signal>& signals) {
    std::erase_if(effects, [&](const CareEffect& effect) {
        return std::any_of(signals.begin(), signals.end(), [&](const Signal& signal) {
            return signal.key == effect.signalKey && signal.cause == Cause::Fibre;
        });
    });
}

StratumReport reportOf(const Stratum& stratum, const SplicerHistory& history, std::span<const Watched> crew) {
    const auto& watcher = *stratum.watcher;
    StratumReport report;
    report.stratum = stratum.key;
    report.mode = stratum.mode;
    report.channels = stratum.channels;
    report.arcs = watcher.arcs();
    report.baselineFrom = watcher.baselineFrom();
    report.baselineTo = watcher.baselineTo();
    for (const auto& about : watcher.cases())
        report.signals.push_back(signalOf(about, watcher, history, crew, stratum.key, stratum.channels));
    report.standing = standingOf(watcher, report.signals);
    report.effects = watcher.effects();
    leaveOutFibre(report.effects, report.signals);
    report.grooves = groovesNow(watcher, stratum.channels);
    if (watcher.model()) report.baselineMeanDb = watcher.model()->meanDb;
    double sum = 0, n = 0;
    for (const auto& groove : report.grooves) sum += groove.recentDb * groove.recent, n += groove.recent;
    report.recentMeanDb = n > 0 ? sum / n : 0;
    if (stratum.traces) report.traces = stratum.traces->traces();
    return report;
}

int urgency(Standing standing) {
    switch (standing) {
        case Standing::Drifting:
            return 4;
        case Standing::Watch:
            return 3;
        case Standing::Recovered:
            return 2;
        case Standing::Steady:
            return 1;
        case Standing::Learning:
            return 0;
    }
    return 0;
}

}  // namespace

std::vector<SplicerReport> analyse(std::span<const SplicerHistory> crew, const Settings& settings,
                                   Detail detail) {
    std::vector<std::vector<Stratum>> watched;
    for (const auto& history : crew) watched.push_back(watch(history, settings, detail));
    std::vector<Watched> all;
    for (std::size_t i = 0; i < crew.size(); ++i)
        for (const auto& stratum : watched[i]) all.push_back({&crew[i], stratum.watcher.get()});
    std::vector<SplicerReport> reports;
    for (std::size_t i = 0; i < crew.size(); ++i) {
        SplicerReport report;
        report.splicer = crew[i].splicer;
        report.label = crew[i].label;
        for (const auto& stratum : watched[i]) {
            report.strata.push_back(reportOf(stratum, crew[i], all));
            if (urgency(report.strata.back().standing) > urgency(report.standing))
                report.standing = report.strata.back().standing;
        }
        report.electrodes = forecastElectrodes(crew[i]);
        reports.push_back(std::move(report));
    }
    return reports;
}

}  // namespace arc::drift
