// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drift_report.hpp"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <ostream>

namespace arc::app {

namespace {

using Json = nlohmann::ordered_json;

Json causesJson(const drift::Signal& signal) {
    Json causes = Json::array();
    for (const auto& cause : signal.causes)
        causes.push_back(
            {{"cause", drift::word(cause.cause)}, {"weight", cause.weight}, {"evidence", cause.evidence}});
    return causes;
}

Json signalJson(const drift::SplicerReport& splicer, const drift::Signal& signal) {
    return {{"splicer", splicer.label},
            {"stratum", signal.stratum},
            {"chart", drift::word(signal.chart)},
            {"channel", signal.channel ? Json(*signal.channel) : Json(nullptr)},
            {"channels", signal.channels},
            {"raised_at_arc", signal.raisedAtArc},
            {"raised_at_time", toIso(signal.raisedAt)},
            {"began_at_arc", signal.beganAtArc},
            {"began_low", signal.beganLow},
            {"began_high", signal.beganHigh},
            {"began_at_time", toIso(signal.beganAt)},
            {"size_db", signal.sizeDb},
            {"cause", drift::word(signal.cause)},
            {"causes", causesJson(signal)},
            {"state", drift::word(signal.state)},
            {"action", signal.action},
            {"headline", signal.headline},
            {"advice", signal.advice},
            {"key", signal.key}};
}

Json effectJson(const drift::CareEffect& effect) {
    return {
        {"action", effect.action},      {"time", toIso(effect.at)},  {"verdict", drift::word(effect.verdict)},
        {"shift_db", effect.shiftDb},   {"low_db", effect.low},      {"high_db", effect.high},
        {"arcs_before", effect.before}, {"arcs_after", effect.after}};
}

Json splicerJson(const drift::SplicerReport& splicer) {
    Json strata = Json::array();
    for (const auto& stratum : splicer.strata) {
        Json effects = Json::array();
        for (const auto& effect : stratum.effects) effects.push_back(effectJson(effect));
        strata.push_back({{"stratum", stratum.stratum},
                          {"arcs", stratum.arcs},
                          {"standing", drift::word(stratum.standing)},
                          {"baseline_from_arc", stratum.baselineFrom},
                          {"baseline_to_arc", stratum.baselineTo},
                          {"baseline_mean_db", stratum.baselineMeanDb},
                          {"recent_mean_db", stratum.recentMeanDb},
                          {"care_effects", effects}});
    }
    const auto& electrodes = splicer.electrodes;
    const auto number = [](const auto& value) { return value ? Json(*value) : Json(nullptr); };
    return {{"splicer", splicer.label},
            {"standing", drift::word(splicer.standing)},
            {"strata", strata},
            {"electrodes",
             {{"arcs_since", number(electrodes.arcsSince)},
              {"arcs_left", number(electrodes.arcsLeft)},
              {"arcs_left_low", number(electrodes.arcsLeftLow)},
              {"arcs_left_high", number(electrodes.arcsLeftHigh)},
              {"plain_rule_left", electrodes.plainRuleLeft}}}};
}

void writeSignal(std::ostream& out, const drift::Signal& signal) {
    out << fmt::format("    {} ({}).\n", signal.headline, drift::word(signal.state));
    out << fmt::format("      Since arc {} (between {} and {}), {}; signalled at arc {}; {:+.3f} dB.\n",
                       signal.beganAtArc, signal.beganLow, signal.beganHigh, toIso(signal.beganAt),
                       signal.raisedAtArc, signal.sizeDb);
    for (const auto& cause : signal.causes) {
        if (cause.weight < 0.05) continue;
        // Never "100 %": a cause is likely.
        out << fmt::format("      {:.0f} % {}\n", std::min(99.0, 100 * cause.weight),
                           drift::word(cause.cause));
        for (const auto& line : cause.evidence) out << fmt::format("           - {}\n", line);
    }
    if (signal.state == drift::SignalState::Open) out << fmt::format("      Do this: {}\n", signal.advice);
    if (!signal.answerReason.empty()) out << fmt::format("      Answered: {}\n", signal.answerReason);
}

void writeStratum(std::ostream& out, const drift::StratumReport& stratum) {
    out << fmt::format("  {}: {}, {} arcs; now {:.3f} dB, baseline {:.3f} dB", stratum.stratum,
                       drift::word(stratum.standing), stratum.arcs, stratum.recentMeanDb,
                       stratum.baselineMeanDb);
    if (stratum.baselineTo > 0)
        out << fmt::format(" (arcs {} to {})", stratum.baselineFrom, stratum.baselineTo);
    out << ".\n";
    for (const auto& signal : stratum.signals) writeSignal(out, signal);
    int uneventful = 0;
    for (const auto& effect : stratum.effects) {
        if (effect.verdict == drift::CareVerdict::NoChange ||
            effect.verdict == drift::CareVerdict::TooEarly) {
            ++uneventful;
            continue;
        }
        out << fmt::format(
            "    {} at {}: {} ({:+.3f} dB, 95 % {:+.3f} to {:+.3f}; {} arcs before, {} after).\n",
            effect.action, toIso(effect.at), drift::word(effect.verdict), effect.shiftDb, effect.low,
            effect.high, effect.before, effect.after);
    }
    if (uneventful > 0)
        out << fmt::format(
            "    {} other care action{} changed nothing that shows, or it is too early to say.\n", uneventful,
            uneventful == 1 ? "" : "s");
}

}  // namespace

std::string driftJson(const std::vector<drift::SplicerReport>& reports, double budgetArcs) {
    Json signals = Json::array(), splicers = Json::array();
    for (const auto& splicer : reports) {
        for (const auto& stratum : splicer.strata)
            for (const auto& signal : stratum.signals) signals.push_back(signalJson(splicer, signal));
        splicers.push_back(splicerJson(splicer));
    }
    return Json{{"signals", signals}, {"splicers", splicers}, {"budget_arcs", budgetArcs}}.dump(1) + "\n";
}

void writeDriftText(std::ostream& out, const std::vector<drift::SplicerReport>& reports, double budgetArcs) {
    if (reports.empty()) {
        out << "No splices yet. Import a splice log, or type some in, and ask again.\n";
        return;
    }
    for (const auto& splicer : reports) {
        out << fmt::format("{}: {}\n", splicer.label, drift::word(splicer.standing));
        for (const auto& stratum : splicer.strata) writeStratum(out, stratum);
        const auto& electrodes = splicer.electrodes;
        if (electrodes.arcsSince) {
            out << fmt::format(
                "  Electrodes: {} arcs; plain rule (about 5,000, common practice): {:.0f} left",
                *electrodes.arcsSince, electrodes.plainRuleLeft);
            if (electrodes.arcsLeftLow && electrodes.arcsLeftHigh)
                out << fmt::format("; by its own losses {:.0f} to {:.0f} left (80 %)",
                                   *electrodes.arcsLeftLow, *electrodes.arcsLeftHigh);
            out << ".\n";
        }
    }
    out << fmt::format(
        "Limits: one false signal per {:.0f} arcs of a splicer, all charts together. A cause is likely, "
        "never certain.\n",
        budgetArcs);
}

}  // namespace arc::app
