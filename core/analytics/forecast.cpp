// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/forecast.hpp"

#include <algorithm>

namespace arc::drift {

ElectrodeForecast forecastElectrodes(const SplicerHistory& history) {
    ElectrodeForecast forecast;
    const CareRecord* exchange = nullptr;
    for (const auto& event : history.events)
        if (event.action == action::electrodeReplace && event.tool == history.splicer) exchange = &event;
    if (history.arcs.empty()) {
        forecast.plainRuleLeft = plainElectrodeLife;
        return forecast;
    }
    const auto& last = history.arcs.back();
    if (exchange && exchange->counter && last.counter && last.counter->value >= exchange->counter->value) {
        forecast.arcsSince = last.counter->value - exchange->counter->value;
    } else if (exchange) {
        forecast.arcsSince = static_cast<std::uint32_t>(
            std::count_if(history.arcs.begin(), history.arcs.end(),
                          [&](const HistoryArc& a) { return a.at > exchange->at; }));
    } else if (last.counter) {
        forecast.arcsSince = last.counter->value;
    }
    forecast.plainRuleLeft = std::max(0.0, plainElectrodeLife - forecast.arcsSince.value_or(0));
    return forecast;
}

}  // namespace arc::drift
