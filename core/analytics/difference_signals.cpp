// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/difference_signals.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <optional>

#include "core/analytics/since.hpp"

namespace arc::drift {
namespace {

const SplicerAgreement* mostMeasured(const AgreementReport& found, ToolId splicer) {
    const SplicerAgreement* most = nullptr;
    for (const SplicerAgreement& one : found.splicers)
        if (one.splicer == splicer && (!most || one.splices.size() > most->splices.size())) most = &one;
    return most;
}

/// Number of the arc made at that instant, from 1.
std::optional<std::uint64_t> arcAt(const SplicerHistory& history, Instant at) {
    const auto arc = std::lower_bound(history.arcs.begin(), history.arcs.end(), at.ms,
                                      [](const HistoryArc& a, std::int64_t ms) { return a.at.ms < ms; });
    if (arc == history.arcs.end() || arc->at.ms != at.ms) return std::nullopt;
    return static_cast<std::uint64_t>(arc - history.arcs.begin()) + 1;
}

Trace traceOf(const SplicerAgreement& one, const SplicerHistory& history) {
    Trace trace;
    trace.chart = ChartKind::Difference;
    trace.title = "measured against estimated";
    trace.limit = one.chart.limit;
    for (std::size_t i = 0; i < one.chart.up.size(); ++i) {
        const auto number = arcAt(history, one.splices[one.chartFrom + i].at);
        if (!number) continue;
        const auto value = static_cast<float>(std::max(one.chart.up[i], one.chart.down[i]));
        // Several fibres of one arc: the point after the last of them.
        if (!trace.arc.empty() && trace.arc.back() == *number) {
            trace.value.back() = value;
            continue;
        }
        trace.arc.push_back(*number);
        trace.value.push_back(value);
    }
    return trace;
}

double meanDifference(std::span<const MeasuredSplice> splices) {
    double sum = 0;
    for (const MeasuredSplice& splice : splices) sum += splice.differenceDb();
    return splices.empty() ? 0 : sum / static_cast<double>(splices.size());
}

template <class... Values>
std::string format(const char* pattern, Values... values) {
    std::array<char, 240> text{};
    std::snprintf(text.data(), text.size(), pattern, values...);
    return text.data();
}

/// Since when, among the splices up to the signal: the begin of the step that fits the scores best.
void date(Signal& signal, const SplicerAgreement& one, const SplicerHistory& history) {
    const std::span splices = std::span(one.splices).subspan(one.chartFrom);
    std::vector<double> scores(one.chart.score.begin(),
                               one.chart.score.begin() + static_cast<std::ptrdiff_t>(*one.chart.signal) + 1);
    const bool below = one.chart.down[*one.chart.signal] > one.chart.limit;
    if (below)
        for (double& score : scores) score = -score;
    constexpr std::array steps{1};
    const auto fit = fitChange(scores, 1, scores.size() - 1, steps, Noise{});
    const auto raised = arcAt(history, splices[*one.chart.signal].at);
    signal.raisedAtArc = raised.value_or(0);
    signal.raisedAt = splices[*one.chart.signal].at;
    signal.beganAt = splices[fit.begin].at;
    signal.beganAtArc = arcAt(history, splices[fit.begin].at).value_or(signal.raisedAtArc);
    signal.beganLow = arcAt(history, splices[fit.low].at).value_or(signal.beganAtArc);
    signal.beganHigh = arcAt(history, splices[fit.high].at).value_or(signal.beganAtArc);
    signal.sizeDb = meanDifference(splices.subspan(fit.begin)) - meanDifference(splices.first(fit.begin));
    const auto line = format(
        "measured minus estimated: %+.3f -> %+.3f dB (n = %d) since arc %llu",
        meanDifference(splices.first(fit.begin)), meanDifference(splices.subspan(fit.begin)),
        static_cast<int>(splices.size() - fit.begin), static_cast<unsigned long long>(signal.beganAtArc));
    // What is wrong with the estimate the losses cannot tell.
    signal.causes = {{Cause::Unknown, 1.0, {line}}};
}

Signal signalOf(const SplicerAgreement& one, const SplicerHistory& history, const std::string& stratum) {
    Signal signal;
    signal.stratum = stratum;
    signal.chart = ChartKind::Difference;
    date(signal, one, history);
    signal.key = stratum + "|" + std::string(word(signal.chart)) + "|" + std::to_string(one.wavelengthNm) +
                 "|" + toIso(Instant{signal.raisedAt.ms, 0});
    signal.headline = signal.sizeDb > 0 ? "The splicer shows less than is measured, likely"
                                        : "The splicer shows more than is measured, likely";
    signal.action = ActionKey(action::lensClean);
    signal.actionTool = one.splicer;
    signal.advice =
        "Check with a measured splice from both ends; if it bears this out, clean the camera lenses by their "
        "card. Until then trust the measured losses.";
    return signal;
}

}  // namespace

Result<void> addDifferences(Logbook& book, std::span<const SplicerHistory> crew,
                            std::vector<SplicerReport>& reports, std::span<const SignalAnswer> answers,
                            double budget) {
    const auto found = agreementReport(book, budget);
    if (!found) return tl::unexpected(found.error());
    for (SplicerReport& report : reports) {
        const auto history = std::find_if(
            crew.begin(), crew.end(), [&](const SplicerHistory& h) { return h.splicer == report.splicer; });
        const SplicerAgreement* most = mostMeasured(*found, report.splicer);
        if (history == crew.end() || !most) continue;
        const Trace trace = traceOf(*most, *history);
        if (trace.arc.empty()) continue;
        const HistoryArc& last = history->arcs[trace.arc.back() - 1];
        const std::string key = stratumKey(history->modes[last.mode], last.channels);
        for (StratumReport& stratum : report.strata) {
            if (stratum.stratum != key) continue;
            stratum.traces.push_back(trace);
            if (!most->chart.signal) continue;
            Signal signal = signalOf(*most, *history, key);
            for (const SignalAnswer& answer : answers) {
                if (!(answer.splicer == report.splicer) || answer.signalKey != signal.key) continue;
                signal.state =
                    answer.kind == SignalAnswerKind::Dismissed ? SignalState::Dismissed : SignalState::Open;
                signal.answerReason = answer.reason;
            }
            if (signal.state == SignalState::Open) stratum.standing = report.standing = Standing::Drifting;
            stratum.signals.push_back(std::move(signal));
        }
    }
    return {};
}

}  // namespace arc::drift
