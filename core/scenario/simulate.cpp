// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/scenario/care_diary.hpp"
#include "core/scenario/measure.hpp"
#include "core/scenario/physics.hpp"
#include "core/scenario/shift_work.hpp"
#include "core/scenario/surroundings.hpp"
#include "core/scenario/troubles.hpp"

namespace arc::scenario {
namespace {

int lastDay(const Scenario& s) {
    int day = 0;
    for (const auto& a : s.work) day = std::max(day, a.toDay);
    for (const auto& m : s.measuring) day = std::max(day, m.day);
    return day;
}

/// In steps of 0.1 degree; no end of a fibre is further off than a right angle.
Angle shownAngle(double degrees) {
    return Angle{static_cast<std::int32_t>(std::lround(std::min(degrees, 90.0) * 10.0)) * 10};
}

SimulatedReading read(const Machine& machine, const Conditions& here, const PlannedSplice& fibres,
                      int channel, Randomness& random) {
    const auto spliced = makeSplice(machine, here, random);
    SimulatedReading reading;
    reading.channel = channel;
    reading.fibreA = fibres.fibreA;
    reading.fibreB = fibres.fibreB;
    const double steps = std::round(spliced.shownDb / machine.resolutionDb);
    reading.shown = Loss{static_cast<std::int32_t>(std::lround(steps * machine.resolutionDb * 1000.0))};
    reading.trueDb = spliced.trueDb;
    reading.radiusA = here.radiusA;
    reading.radiusB = here.radiusB;
    reading.cleaveLeft = shownAngle(spliced.angleLeft);
    reading.cleaveRight = shownAngle(spliced.angleRight);
    return reading;
}

/// A new closure, a new day, or the fibres have been in too long.
void setUp(Workplace& place) {
    const bool morning = place.arcsToday == 0 && place.attempt == 1;
    if (place.number > 0 && !morning && place.closureLabel() == place.lastClosure &&
        place.arcsInSetup < place.machine->setupArcs)
        return;
    place.setupGain = std::exp(place.machine->setupSd * place.random.normal());
    place.arcsInSetup = 0;
}

class Simulation {
  public:
    Simulation(const Scenario& s, std::uint64_t seed)
        : s_(s), seed_(seed), sky_(s, seed, lastDay(s) + 1), work_(s), troubles_(s), diary_(s) {
        for (const auto& machine : s.splicers) places_.emplace_back(s, machine, seed);
        for (auto& place : places_) work_.advance(place);
        log_.care = diary_.beforeTheLog();
    }

    SimulatedLog run() {
        while (auto* place = first()) {
            for (const auto& due : diary_.upTo(place->next, uses_)) doCare(due);
            makeArc(*place);
            for (const auto& due : diary_.after(log_.arcs.back(), uses_)) doCare(due);
            work_.advance(*place);
        }
        for (const auto& due : diary_.upTo(atHour(s_, lastDay(s_) + 1, 0), uses_)) doCare(due);
        std::stable_sort(log_.care.begin(), log_.care.end(),
                         [](const auto& a, const auto& b) { return a.at < b.at; });
        log_.truth = std::move(troubles_).truth(uses_);
        log_.measured = measure(s_, log_, seed_);
        return std::move(log_);
    }

  private:
    /// Whose arc is next.
    Workplace* first() {
        Workplace* found = nullptr;
        for (auto& place : places_)
            if (!place.finished && (!found || place.next < found->next)) found = &place;
        return found;
    }

    SimulatedArc begun(const Workplace& place, const JobSetting& job) const {
        SimulatedArc arc;
        arc.at = place.next;
        arc.splicer = place.machine->label;
        arc.cleaver = place.now().cleaver;
        arc.job = job.label;
        arc.closure = place.closureLabel();
        arc.mode = place.machine->mode;
        arc.operatorName = place.now().operatorName;
        arc.channels = place.machine->traits.grooves;
        arc.attempt = place.attempt;
        arc.number = place.number;
        arc.counter = place.counter;
        arc.temperature = sky_.temperature(arc.at);
        arc.humidity = sky_.humidity(arc.at);
        arc.pressure = sky_.pressure(arc.at);
        return arc;
    }

    void makeArc(Workplace& place) {
        const auto& machine = *place.machine;
        const auto& job = work_.jobOf(place.closureLabel());
        setUp(place);
        ++place.number;
        ++place.counter;
        ++place.electrodeArcs;
        ++uses_[place.now().cleaver];
        ++uses_[machine.label];
        SimulatedArc arc = begun(place, job);

        const Wear worn = wear(machine, place.electrodeArcs);
        Burden burden;
        burden.common.offsetSd = machine.offsetUm * place.setupGain * worn.scatter;
        burden.common.extraDb = worn.extraDb;
        burden.common.angleSd = std::find_if(s_.cleavers.begin(), s_.cleavers.end(), [&](const auto& c) {
                                    return c.label == arc.cleaver;
                                })->angleSd;
        burden.pushUm.assign(static_cast<std::size_t>(arc.channels), 0.0);
        troubles_.bear(arc, job, worn, uses_, burden);

        for (std::size_t i = 0; i < place.group.size(); ++i) {
            Conditions here = burden.common;
            here.pushUm = burden.pushUm[i];
            here.radiusA = (job.modeFieldA + job.modeFieldSd * place.random.normal()) / 2.0;
            here.radiusB = (job.modeFieldB + job.modeFieldSd * place.random.normal()) / 2.0;
            arc.readings.push_back(
                read(machine, here, place.group[i], static_cast<int>(i) + 1, place.random));
        }
        ++place.arcsInSetup;
        if (place.attempt == 1) ++place.arcsToday;
        place.lastClosure = arc.closure;
        const bool tooHigh = std::any_of(arc.readings.begin(), arc.readings.end(),
                                         [&](const auto& r) { return r.shown > job.rule.perSplice; });
        if (tooHigh && place.attempt < job.rule.attempts) {
            ++place.attempt;
        } else {
            place.group.clear();
        }
        log_.arcs.push_back(std::move(arc));
    }

    void doCare(const DueCare& due) {
        SimulatedCare done{due.at, due.care, 0};
        for (auto& place : places_) {
            if (place.machine->label != due.care.tool) continue;
            done.counter = place.counter;
            if (due.care.action == action::electrodeReplace) place.electrodeArcs = 0;
        }
        troubles_.care(due.care, due.at);
        log_.care.push_back(std::move(done));
    }

    const Scenario& s_;
    std::uint64_t seed_;
    Sky sky_;
    ShiftWork work_;
    Troubles troubles_;
    CareDiary diary_;
    std::vector<Workplace> places_;
    Uses uses_;
    SimulatedLog log_;
};

}  // namespace

Result<SimulatedLog> simulate(const Scenario& scenario, std::uint64_t seed) {
    if (const auto right = check(scenario); !right) return tl::unexpected(right.error());
    return Simulation(scenario, seed).run();
}

}  // namespace arc::scenario
