// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/care_diary.hpp"

#include <algorithm>
#include <utility>

#include "core/scenario/surroundings.hpp"

namespace arc::scenario {

CareDiary::CareDiary(const Scenario& scenario)
    : scenario_(scenario), done_(scenario.care.size(), false), habits_(scenario.routine.size()) {
    for (const auto& cleaver : scenario.cleavers) blades_[cleaver.label] = cleaver.blade;
}

std::vector<SimulatedCare> CareDiary::beforeTheLog() const {
    std::vector<SimulatedCare> done;
    for (const auto& m : scenario_.splicers) {
        const auto at = parseInstant(m.lastElectrodes);
        if (!at) continue;
        CareSetting care;
        care.tool = m.label;
        care.action = std::string(action::electrodeReplace);
        care.detail = "from the paper log";
        const std::uint32_t counter = m.counterStart - std::min(m.counterStart, m.electrodeArcs);
        done.push_back({*at, care, counter});
        care.action = std::string(action::stabilise);
        done.push_back({later(*at, 15), care, counter});
        care.action = std::string(action::arcCalibration);
        care.calibration =
            CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", m.traits.grooves, 1};
        done.push_back({later(*at, 30), care, counter});
    }
    for (const auto& c : scenario_.cleavers) {
        CareSetting care;
        care.tool = c.label;
        care.action = std::string(action::bladeRotate);
        care.blade = c.blade;
        care.detail = "blade at height " + std::to_string(c.blade.height) + ", position " +
                      std::to_string(c.blade.position) + " when the log begins";
        done.push_back({later(scenario_.start, -60), care, 0});
    }
    return done;
}

std::vector<DueCare> CareDiary::upTo(Instant at, const Uses& uses) {
    std::vector<DueCare> due;
    for (std::size_t i = 0; i < scenario_.care.size(); ++i) {
        const auto& care = scenario_.care[i];
        if (done_[i] || !care.at.at || *care.at.at > at) continue;
        done_[i] = true;
        due.push_back(handOut(care, *care.at.at));
    }
    for (std::size_t i = 0; i < scenario_.routine.size(); ++i)
        for (auto& day = habits_[i].nextDay; atHour(scenario_, day, scenario_.routine[i].hour) <= at; ++day)
            if (isWorkday(scenario_, day))
                if (auto care = byHabit(i, day, uses)) due.push_back(std::move(*care));
    return due;
}

std::vector<DueCare> CareDiary::after(const SimulatedArc& arc, const Uses& uses) {
    std::vector<DueCare> due;
    for (std::size_t i = 0; i < scenario_.care.size(); ++i) {
        const auto& care = scenario_.care[i];
        if (done_[i] || !care.at.arc || (care.tool != arc.splicer && care.tool != arc.cleaver)) continue;
        const auto used = uses.find(care.tool);
        if (used == uses.end() || used->second < *care.at.arc) continue;
        done_[i] = true;
        due.push_back(handOut(care, later(arc.at, 2)));
    }
    return due;
}

std::optional<DueCare> CareDiary::byHabit(std::size_t index, int day, const Uses& uses) {
    const auto& routine = scenario_.routine[index];
    auto& habit = habits_[index];
    if (day < routine.fromDay || day > routine.toDay) return std::nullopt;
    const auto used = uses.find(routine.tool);
    const std::uint64_t count = used == uses.end() ? 0 : used->second;
    const bool byDays =
        routine.everyDays > 0 && (!habit.lastDay || day - *habit.lastDay >= routine.everyDays);
    const bool byUses = routine.everyUses > 0 && count - habit.lastUses >= routine.everyUses;
    if (!byDays && !byUses) return std::nullopt;
    habit.lastDay = day;
    habit.lastUses = count;
    CareSetting care;
    care.tool = routine.tool;
    care.action = routine.action;
    care.effect = routine.effect;
    care.detail = routine.detail;
    care.by = routine.by;
    if (care.action == action::bladeRotate) care.blade = nextPlace(care.tool);
    return handOut(care, atHour(scenario_, day, routine.hour));
}

DueCare CareDiary::handOut(const CareSetting& care, Instant at) {
    if (care.blade) blades_[care.tool] = *care.blade;
    return {at, care};
}

/// The next position; after the last one of a height the first of the next.
BladePlace CareDiary::nextPlace(const std::string& cleaver) const {
    const auto& traits =
        std::find_if(scenario_.cleavers.begin(), scenario_.cleavers.end(), [&](const auto& c) {
            return c.label == cleaver;
        })->traits;
    const BladePlace place = blades_.at(cleaver);
    if (place.position < traits.positions) return {place.height, place.position + 1};
    return {std::min(place.height + 1, traits.heights), 1};
}

}  // namespace arc::scenario
