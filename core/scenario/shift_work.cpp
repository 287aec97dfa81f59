// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/shift_work.hpp"

#include <algorithm>
#include <utility>

#include "core/scenario/surroundings.hpp"

namespace arc::scenario {
namespace {

void beginDay(Workplace& place, int day) {
    place.day = day;
    place.arcsToday = 0;
}

}  // namespace

Workplace::Workplace(const Scenario& scenario, const Machine& splicer, std::uint64_t seed)
    : machine(&splicer),
      random(seed, "splicer/" + splicer.label),
      counter(splicer.counterStart),
      electrodeArcs(splicer.electrodeArcs) {
    for (const auto& a : scenario.work)
        if (a.splicer == splicer.label) work.push_back(&a);
    std::stable_sort(work.begin(), work.end(),
                     [](const auto* a, const auto* b) { return a->fromDay < b->fromDay; });
}

ShiftWork::ShiftWork(const Scenario& scenario) : scenario_(scenario) {
    for (const auto& job : scenario.jobs)
        for (const auto& closure : job.closures) {
            OpenClosure open;
            open.job = &job;
            for (const auto& row : closure.plan)
                if (std::find(closure.leftOut.begin(), closure.leftOut.end(), row.fibreA) ==
                    closure.leftOut.end())
                    open.rows.push_back(row);
            closures_.emplace(closure.label, std::move(open));
        }
}

void ShiftWork::advance(Workplace& place) {
    if (!place.group.empty()) {
        place.next = later(place.next, pause(place));
        return;
    }
    while (place.assignment < place.work.size()) {
        const auto& a = place.now();
        if (place.day < a.fromDay) beginDay(place, a.fromDay);
        if (!takeFibres(place)) {
            place.day = std::max(place.day, a.toDay);
            nextAssignment(place);
            continue;
        }
        while (place.day <= a.toDay && (place.arcsToday >= a.arcsPerDay || !isWorkday(scenario_, place.day)))
            beginDay(place, place.day + 1);
        if (place.day > a.toDay) {
            giveBack(place);
            nextAssignment(place);
            continue;
        }
        if (place.arcsToday == 0) {
            place.next = later(atHour(scenario_, place.day, a.startHour), place.random.uniform(0, 15));
        } else {
            place.next = later(place.next, pause(place));
            if (place.closureLabel() != place.lastClosure) place.next = later(place.next, 20);
        }
        return;
    }
    place.finished = true;
}

double ShiftWork::pause(Workplace& place) const {
    const double minutes = place.machine->minutesPerArc * place.random.uniform(0.7, 1.3);
    const bool noon =
        hourOf(scenario_, place.next) < 12.0 && hourOf(scenario_, later(place.next, minutes)) >= 12.0;
    return minutes + (noon ? 40.0 : 0.0);
}

bool ShiftWork::takeFibres(Workplace& place) {
    for (; place.closure < place.now().closures.size(); ++place.closure) {
        auto& open = closures_.at(place.closureLabel());
        const auto count =
            std::min(open.rows.size() - open.next, static_cast<std::size_t>(place.machine->traits.grooves));
        if (count == 0) continue;
        const auto begin = open.rows.begin() + static_cast<std::ptrdiff_t>(open.next);
        place.group.assign(begin, begin + static_cast<std::ptrdiff_t>(count));
        open.next += count;
        place.attempt = 1;
        return true;
    }
    return false;
}

/// The last day is over before these fibres were begun.
void ShiftWork::giveBack(Workplace& place) {
    closures_.at(place.closureLabel()).next -= place.group.size();
    place.group.clear();
}

void ShiftWork::nextAssignment(Workplace& place) const {
    ++place.assignment;
    place.closure = 0;
}

}  // namespace arc::scenario
