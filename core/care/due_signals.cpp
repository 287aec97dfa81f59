// SPDX-License-Identifier: GPL-3.0-or-later
// Due by signal, through the ladder (see due_parts.hpp).
#include <algorithm>
#include <utility>

#include "core/care/due_parts.hpp"
#include "core/care/ladder.hpp"
#include "core/care/words.hpp"

namespace arc::care::parts {
namespace {

using drift::Cause;

/// What is quick and stops bad splices comes before the next splice; what needs parts or time waits for a
/// moment that has both.
Queue queueOf(const drift::Signal& signal, const ActionKey& action) {
    if (action == action::electrodeReplace || action == action::lensClean || action == action::bladeRotate ||
        action == action::bladeRaise)
        return Queue::ShiftEnd;
    if (action == action::note || signal.chart == drift::ChartKind::LoneSplice) return Queue::NextGap;
    if (signal.cause == Cause::Groove || signal.cause == Cause::Calibration ||
        action == action::arcCalibration || action == action::diagnostic)
        return Queue::Hold;
    return Queue::NextGap;
}

std::vector<Tried> triedSince(const Situation& situation, const drift::StratumReport& stratum,
                              const drift::Signal& signal, std::span<const ToolId> tools) {
    std::vector<Tried> tried;
    for (const CareRecord& record : situation.records) {
        if (std::ranges::find(tools, record.tool) == tools.end() || record.at < signal.beganAt) continue;
        const auto effect = std::ranges::find(stratum.effects, record.id, &drift::CareEffect::care);
        Tried one{record.action, record.at, drift::CareVerdict::TooEarly, record.cardVersion};
        if (effect != stratum.effects.end())
            one.verdict = effect->verdict;
        else if (record.at < signal.raisedAt)
            // The chart raised its signal after this care: whatever it did, it was not enough.
            one.verdict = drift::CareVerdict::NoChange;
        tried.push_back(std::move(one));
    }
    std::ranges::stable_sort(tried, {}, &Tried::at);
    return tried;
}

const kit::ToolLife* lifeIn(std::span<const kit::ToolLife> lives, ToolId tool) {
    const auto found =
        std::ranges::find_if(lives, [&](const kit::ToolLife& life) { return life.tool.id == tool; });
    return found == lives.end() ? nullptr : &*found;
}

Wear wearOf(const kit::ToolLife& splicer, const drift::SplicerReport& report) {
    Wear wear;
    const auto bar = std::ranges::find(splicer.bars, "electrodes", &kit::LifeBar::counter);
    if (bar == splicer.bars.end()) return wear;
    wear.electrodeLife = bar->limit.value_or(wear.electrodeLife);
    if (bar->certainty == kit::Certainty::Exact)
        wear.electrodeArcs = bar->used;
    else
        wear.electrodeArcs = report.electrodes.arcsSince;
    return wear;
}

std::string otherwiseOf(Cause cause) {
    switch (cause) {
        case Cause::Groove:
            return "Splices through this groove stay high, and some will have to be made again.";
        case Cause::Electrode:
            return "Losses keep rising and scattering until the arc fails.";
        case Cause::Calibration:
            return "All grooves stay high until the arc fits the place again.";
        case Cause::Cleaver:
            return "Poor cleaves keep coming, on every splicer this cleaver serves.";
        case Cause::Fibre:
            return "The fault travels with the fibre; care of the tools only costs time.";
        case Cause::Unknown:
            break;
    }
    return "The charts cannot tell luck from drift while the cause is open.";
}

/// The item for one open signal; none while a verdict is waited for.
std::optional<DueItem> itemFor(const Situation& situation, std::span<const kit::ToolLife> lives,
                               const drift::SplicerReport& report, const drift::StratumReport& stratum,
                               const drift::Signal& signal) {
    const kit::ToolLife* splicer = lifeIn(lives, report.splicer);
    if (!splicer || splicer->tool.service == Service::OutOfService) return std::nullopt;
    std::optional<ToolId> cleaver = splicer->pairedWith;
    if (const kit::ToolLife* named = lifeIn(lives, signal.actionTool); named && asCleaver(named->tool))
        cleaver = signal.actionTool;
    const ToolId both[] = {report.splicer, cleaver.value_or(report.splicer)};
    const auto tried = triedSince(situation, stratum, signal, both);
    // A difference from the measured losses says nothing about grooves or cleaves: its own advice stands.
    Advice advice = signal.chart == drift::ChartKind::Difference
                        ? Advice{signal.action, Wait::No, signal.advice, {}}
                        : nextCare(signal, tried, wearOf(*splicer, report));
    if (advice.wait == Wait::ForVerdict) return std::nullopt;
    const kit::ToolLife* target = splicer;
    if (advice.action.empty()) advice.action = action::note;
    const Card* card = situation.deck.find(advice.action);
    if (card && card->tool == ToolKind::Cleaver && cleaver)
        if (const kit::ToolLife* found = lifeIn(lives, *cleaver)) target = found;
    if (card && card->tool != kindOf(target->tool)) {
        // The crew did not say which cleaver prepares for this splicer: the work cannot be put on a tool.
        advice.why += "; pair a cleaver with " + splicer->tool.label + " in the kit to put it on its list";
        advice.action = action::note;
    }
    if (target->blade && advice.action == action::bladeRotate) {
        const Cleaver& traits = *asCleaver(target->tool);
        if (const auto next = kit::nextPlace(traits, target->blade->now); !next)
            advice.why += "; the blade is used up, fit a new one";
        else if (next->height != target->blade->now.height)
            advice.action = action::bladeRaise;
    }
    DueItem item = parts::itemFor(situation, target->tool, advice.action, queueOf(signal, advice.action),
                                  Basis::Signal, signal.key);
    item.since = signal.raisedAt;
    item.why = advice.why.empty() ? signal.advice : advice.why;
    const std::string chart = spaced(std::string(drift::word(signal.chart)));
    item.basedOn = splicer->tool.label + ", " + signal.stratum + ": " + chart + " signal at arc " +
                   grouped(signal.raisedAtArc) + ", began about arc " + grouped(signal.beganAtArc) + " (" +
                   grouped(signal.beganLow) + "-" + grouped(signal.beganHigh) + ")";
    for (const drift::CauseWeight& cause : signal.causes)
        if (cause.cause == signal.cause && !cause.evidence.empty())
            item.basedOn += "; " + cause.evidence.front();
    item.otherwise = signal.chart == drift::ChartKind::Difference
                         ? "Splices are passed or made again by an estimate that does not hold."
                         : otherwiseOf(signal.cause);
    return item;
}

}  // namespace

std::vector<DueItem> bySignal(const Situation& situation, std::span<const kit::ToolLife> lives,
                              std::span<const drift::SplicerReport> reports) {
    std::vector<DueItem> items;
    for (const drift::SplicerReport& report : reports)
        for (const drift::StratumReport& stratum : report.strata)
            for (const drift::Signal& signal : stratum.signals) {
                if (signal.state != drift::SignalState::Open || signal.raisedAt > situation.now) continue;
                if (auto item = itemFor(situation, lives, report, stratum, signal))
                    items.push_back(std::move(*item));
            }
    return items;
}

}  // namespace arc::care::parts
