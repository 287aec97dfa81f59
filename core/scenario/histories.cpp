// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/histories.hpp"

#include <algorithm>
#include <variant>

#include "core/scenario/entries.hpp"

namespace arc::scenario {
namespace {

/// Index of `value` in `list`, added when it is new.
template <class Value>
std::uint32_t indexOf(std::vector<Value>& list, const Value& value) {
    const auto found = std::find(list.begin(), list.end(), value);
    if (found != list.end()) return static_cast<std::uint32_t>(found - list.begin());
    list.push_back(value);
    return static_cast<std::uint32_t>(list.size() - 1);
}

HistoryClosure worked(ClosureId id, const std::vector<Closure>& closures, const std::vector<Cable>& cables) {
    HistoryClosure found{id, {}};
    const auto closure =
        std::find_if(closures.begin(), closures.end(), [&](const auto& c) { return c.id == id; });
    if (closure == closures.end()) return found;
    for (const auto& side : {closure->cableA, closure->cableB})
        for (const auto& cable : cables)
            if (side == cable.id) found.cables.push_back(cable);
    return found;
}

void add(SplicerHistory& history, const SpliceArc& arc, const std::string& jobLabel) {
    HistoryArc row;
    row.at = arc.at;
    row.counter = arc.counter;
    if (arc.job) {
        row.job = indexOf(history.jobs, *arc.job);
        if (history.jobLabels.size() < history.jobs.size()) history.jobLabels.push_back(jobLabel);
    }
    if (arc.cleaver) row.cleaver = indexOf(history.cleavers, *arc.cleaver);
    row.mode = indexOf(history.modes, arc.mode);
    row.temperature = arc.ambient.temperature;
    row.pressure = arc.ambient.pressure;
    row.channels = static_cast<std::uint8_t>(arc.channels);
    row.readingCount = static_cast<std::uint8_t>(arc.readings.size());
    row.firstReading = history.readings.size();
    for (const auto& r : arc.readings)
        history.readings.push_back({r.loss, r.cleaveLeft, r.cleaveRight, static_cast<std::uint8_t>(r.channel),
                                    static_cast<std::uint8_t>(r.attempt)});
    history.arcs.push_back(row);
}

}  // namespace

std::vector<SplicerHistory> historiesOf(const Scenario& scenario, const SimulatedLog& log) {
    const auto entries = entriesOf(scenario, log, 0);
    std::vector<SplicerHistory> histories;
    std::vector<Job> jobs;
    std::vector<Cable> cables;
    std::vector<Closure> closures;
    for (const auto& entry : entries) {
        if (const auto* tool = std::get_if<Tool>(&entry); tool && asSplicer(*tool)) {
            SplicerHistory history;
            history.splicer = tool->id;
            history.label = tool->label;
            histories.push_back(std::move(history));
        } else if (const auto* job = std::get_if<Job>(&entry)) {
            jobs.push_back(*job);
        } else if (const auto* cable = std::get_if<Cable>(&entry)) {
            cables.push_back(*cable);
        } else if (const auto* closure = std::get_if<Closure>(&entry)) {
            closures.push_back(*closure);
        } else if (const auto* arc = std::get_if<SpliceArc>(&entry)) {
            const auto history = std::find_if(histories.begin(), histories.end(),
                                              [&](const auto& h) { return h.splicer == arc->splicer; });
            const auto label =
                std::find_if(jobs.begin(), jobs.end(), [&](const auto& j) { return j.id == arc->job; });
            add(*history, *arc, label == jobs.end() ? "" : label->label);
            if (arc->closure)
                history->arcs.back().closure =
                    indexOf(history->closures, worked(*arc->closure, closures, cables));
        }
    }
    for (const auto& entry : entries) {
        const auto* care = std::get_if<CareRecord>(&entry);
        if (!care) continue;
        for (auto& history : histories) {
            const auto& cleavers = history.cleavers;
            if (care->tool == history.splicer || care->action == action::environmentChange ||
                std::find(cleavers.begin(), cleavers.end(), care->tool) != cleavers.end())
                history.events.push_back(*care);
        }
    }
    for (auto& history : histories)
        std::stable_sort(history.events.begin(), history.events.end(),
                         [](const auto& a, const auto& b) { return a.at < b.at; });
    return histories;
}

}  // namespace arc::scenario
