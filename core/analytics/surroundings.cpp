// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/surroundings.hpp"

#include <algorithm>
#include <cmath>

namespace arc::drift {

namespace {

constexpr double jumpKelvin = 8;     ///< between neighbouring stretches of arcs
constexpr std::size_t jumpRows = 5;  ///< arcs averaged on either side
constexpr double longPauseHours = 72;

std::optional<double> meanCelsius(std::span<const Row> rows) {
    double sum = 0, n = 0;
    for (const auto& row : rows)
        if (row.raw.celsius) sum += *row.raw.celsius, ++n;
    return n > 0 ? std::optional(sum / n) : std::nullopt;
}

}  // namespace

std::vector<Stretch> jobStretches(std::span<const Row> window) {
    std::vector<Stretch> stretches;
    for (std::size_t i = 1; i < window.size(); ++i) {
        if (window[i].raw.job == window[i - 1].raw.job) continue;
        if (!stretches.empty()) stretches.back().to = i;
        stretches.push_back({i, window.size()});
    }
    return stretches;
}

std::vector<PlacedTrigger> triggersIn(std::span<const Row> window, std::span<const CareRecord> events) {
    std::vector<PlacedTrigger> found;
    std::size_t lastJump = 0;
    for (std::size_t i = 1; i < window.size(); ++i) {
        const auto& before = window[i - 1].raw;
        const auto& after = window[i].raw;
        Trigger trigger;
        trigger.at = after.at;
        trigger.idleHours = static_cast<double>(after.at.ms - before.at.ms) / msPerHour;
        const bool pause = trigger.idleHours >= longPauseHours;
        bool jump = false;
        if (before.celsius && after.celsius && std::abs(*after.celsius - *before.celsius) >= jumpKelvin / 2) {
            const auto first = i >= jumpRows ? i - jumpRows : 0;
            trigger.celsiusBefore = meanCelsius(window.subspan(first, i - first));
            trigger.celsiusAfter = meanCelsius(window.subspan(i, std::min(jumpRows, window.size() - i)));
            jump = trigger.celsiusBefore && trigger.celsiusAfter && i > lastJump + jumpRows &&
                   std::abs(*trigger.celsiusAfter - *trigger.celsiusBefore) >= jumpKelvin;
        }
        if (jump) lastJump = i;
        if (pause || jump) found.push_back({trigger, i});
    }
    for (const auto& event : events) {
        if (event.action == action::note || event.action == action::stripperClean) continue;
        const auto row = std::lower_bound(window.begin(), window.end(), event.at,
                                          [](const Row& r, const Instant& t) { return r.raw.at < t; });
        if (row == window.begin() || row == window.end()) continue;
        Trigger trigger;
        trigger.action = event.action;
        trigger.at = event.at;
        found.push_back({trigger, static_cast<std::size_t>(row - window.begin())});
    }
    return found;
}

std::optional<std::uint32_t> electrodeArcs(std::span<const CareRecord> events, const RawArc& arc) {
    std::optional<std::uint32_t> arcs;
    for (const auto& event : events)
        if (event.action == action::electrodeReplace && event.at <= arc.at && event.counter && arc.counter &&
            *arc.counter >= event.counter->value)
            arcs = *arc.counter - event.counter->value;
    return arcs;
}

}  // namespace arc::drift
