// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/simulate.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "core/scenario/measure.hpp"
#include "core/scenario/physics.hpp"
#include "core/scenario/surroundings.hpp"

namespace arc::scenario {
namespace {

bool cures(const ActionKey& action, drift::Cause cause) {
    switch (cause) {
        case drift::Cause::Groove:
            return action == action::grooveClean || action == action::clampClean;
        case drift::Cause::Calibration:
            return action == action::arcCalibration;
        case drift::Cause::Cleaver:
            return action == action::cleaverClean || action == action::bladeClean ||
                   action == action::bladeRotate || action == action::bladeRaise;
        case drift::Cause::Electrode:
            return action == action::electrodeReplace;
        case drift::Cause::Fibre:
        case drift::Cause::Unknown:
            break;
    }
    return false;
}

/// A fault from its begin to its cure.
struct ActiveFault {
    FaultSetting setting;
    bool begun = false, ended = false;
    std::uint64_t beganAtUse = 0;  ///< arcs of the tool when it began
    std::size_t truth = 0;         ///< index into the truth, once begun
};

/// What is left to splice in a closure, shared by everybody who works there.
struct OpenClosure {
    const JobSetting* job = nullptr;
    std::vector<PlannedSplice> rows;
    std::size_t next = 0;
};

struct MachineState {
    MachineState(const Machine& m, std::uint64_t seed)
        : machine(&m),
          random(seed, "splicer/" + m.label),
          counter(m.counterStart),
          electrodeArcs(m.electrodeArcs) {}

    const Machine* machine;
    Randomness random;
    std::uint32_t counter, electrodeArcs;
    std::uint64_t number = 0;
    std::optional<std::size_t> electrodeTruth;
    double setupGain = 1;
    int arcsInSetup = 0;
    // Where it stands in its work.
    std::vector<const Assignment*> work;
    std::size_t assignment = 0, closure = 0;
    int day = -1, arcsToday = 0;
    Instant next;
    bool finished = false;
    std::vector<PlannedSplice> group;  ///< fibres under the cover
    int attempt = 1;
    std::string lastClosure;
};

/// When something was last done by habit.
struct Habit {
    int nextDay = 0;  ///< to be looked at
    std::optional<int> lastDay;
    std::uint64_t lastUses = 0;
};

class Simulation {
  public:
    Simulation(const Scenario& s, std::uint64_t seed) : s_(s), seed_(seed), sky_(s, seed, lastDay(s) + 1) {
        for (const auto& job : s.jobs)
            for (const auto& closure : job.closures) {
                OpenClosure open;
                open.job = &job;
                for (const auto& row : closure.plan)
                    if (std::find(closure.leftOut.begin(), closure.leftOut.end(), row.fibreA) ==
                        closure.leftOut.end())
                        open.rows.push_back(row);
                closures_.emplace(closure.label, std::move(open));
            }
        for (const auto& machine : s.splicers) {
            MachineState state(machine, seed);
            for (const auto& a : s.work)
                if (a.splicer == machine.label) state.work.push_back(&a);
            std::stable_sort(state.work.begin(), state.work.end(),
                             [](const auto* a, const auto* b) { return a->fromDay < b->fromDay; });
            machines_.push_back(std::move(state));
        }
        for (const auto& fault : s.faults) faults_.push_back({fault});
        noteCareBefore();
        careDone_.assign(s.care.size(), false);
        habits_.resize(s.routine.size());
        for (auto& state : machines_) advance(state);
    }

    SimulatedLog run() {
        while (true) {
            MachineState* first = nullptr;
            for (auto& state : machines_)
                if (!state.finished && (!first || state.next < first->next)) first = &state;
            if (!first) break;
            careBefore(first->next);
            makeArc(*first);
            careAfterArc(*first);
            advance(*first);
        }
        careBefore(atHour(s_, lastDay(s_) + 1, 0));
        std::stable_sort(log_.care.begin(), log_.care.end(),
                         [](const auto& a, const auto& b) { return a.at < b.at; });
        closeTruth();
        log_.measured = measure(s_, log_, seed_);
        return std::move(log_);
    }

  private:
    static int lastDay(const Scenario& s) {
        int day = 0;
        for (const auto& a : s.work) day = std::max(day, a.toDay);
        for (const auto& m : s.measuring) day = std::max(day, m.day);
        return day;
    }

    // --- the order of the work -------------------------------------------------------------------------

    /// Moves on to the next arc: the same fibres again, the next ones, the next closure, day or assignment.
    void advance(MachineState& state) {
        if (!state.group.empty()) {
            state.next = later(state.next, pause(state));
            return;
        }
        while (state.assignment < state.work.size()) {
            const auto& a = *state.work[state.assignment];
            if (state.day < a.fromDay) beginDay(state, a.fromDay);
            if (!takeFibres(state, a)) {
                ++state.assignment;
                state.closure = 0;
                state.day = std::max(state.day, a.toDay);
                continue;
            }
            while (state.day <= a.toDay && (state.arcsToday >= a.arcsPerDay || !isWorkday(s_, state.day)))
                beginDay(state, state.day + 1);
            if (state.day > a.toDay) {
                giveBack(state, a);
                ++state.assignment;
                state.closure = 0;
                continue;
            }
            if (state.arcsToday == 0) {
                state.next = later(atHour(s_, state.day, a.startHour), state.random.uniform(0, 15));
            } else {
                state.next = later(state.next, pause(state));
                if (a.closures[state.closure] != state.lastClosure) state.next = later(state.next, 20);
            }
            return;
        }
        state.finished = true;
    }

    void beginDay(MachineState& state, int day) const {
        state.day = day;
        state.arcsToday = 0;
    }

    double pause(MachineState& state) {
        const double minutes = state.machine->minutesPerArc * state.random.uniform(0.7, 1.3);
        const bool noon = hourOf(s_, state.next) < 12.0 && hourOf(s_, later(state.next, minutes)) >= 12.0;
        return minutes + (noon ? 40.0 : 0.0);
    }

    bool takeFibres(MachineState& state, const Assignment& a) {
        for (; state.closure < a.closures.size(); ++state.closure) {
            auto& open = closures_.at(a.closures[state.closure]);
            const auto count = std::min(open.rows.size() - open.next,
                                        static_cast<std::size_t>(state.machine->traits.grooves));
            if (count == 0) continue;
            const auto begin = open.rows.begin() + static_cast<std::ptrdiff_t>(open.next);
            state.group.assign(begin, begin + static_cast<std::ptrdiff_t>(count));
            open.next += count;
            state.attempt = 1;
            return true;
        }
        return false;
    }

    /// The last day is over before these fibres were begun.
    void giveBack(MachineState& state, const Assignment& a) {
        closures_.at(a.closures[state.closure]).next -= state.group.size();
        state.group.clear();
    }

    // --- one arc -----------------------------------------------------------------------------------------

    void makeArc(MachineState& state) {
        const auto& machine = *state.machine;
        const auto& a = *state.work[state.assignment];
        const auto& job = *closures_.at(a.closures[state.closure]).job;
        const auto& cleaver = *std::find_if(s_.cleavers.begin(), s_.cleavers.end(),
                                            [&](const auto& c) { return c.label == a.cleaver; });
        setUp(state, a.closures[state.closure]);
        ++state.number;
        ++state.counter;
        ++state.electrodeArcs;
        ++uses_[a.cleaver];
        ++uses_[machine.label];

        SimulatedArc made;
        made.at = state.next;
        made.splicer = machine.label;
        made.cleaver = a.cleaver;
        made.job = job.label;
        made.closure = a.closures[state.closure];
        made.mode = machine.mode;
        made.operatorName = a.operatorName;
        made.channels = machine.traits.grooves;
        made.attempt = state.attempt;
        made.number = state.number;
        made.counter = state.counter;
        made.temperature = sky_.temperature(made.at);
        made.humidity = sky_.humidity(made.at);
        made.pressure = sky_.pressure(made.at);

        const Wear worn = wear(machine, state.electrodeArcs);
        Conditions common;
        common.offsetSd = machine.offsetUm * state.setupGain * worn.scatter;
        common.extraDb = worn.extraDb;
        common.angleSd = cleaver.angleSd;
        std::vector<double> push(static_cast<std::size_t>(made.channels), 0.0);
        beginFaults(made);
        noteElectrodes(state, worn, made);
        if (job.badLot) noteLot(job, made);
        for (auto& fault : faults_) applyFault(fault, made, job, common, push);

        for (std::size_t i = 0; i < state.group.size(); ++i) {
            Conditions here = common;
            here.pushUm = push[i];
            here.radiusA = (job.modeFieldA + job.modeFieldSd * state.random.normal()) / 2.0;
            here.radiusB = (job.modeFieldB + job.modeFieldSd * state.random.normal()) / 2.0;
            made.readings.push_back(read(machine, here, state, i));
        }
        ++state.arcsInSetup;
        if (state.attempt == 1) ++state.arcsToday;
        state.lastClosure = made.closure;
        const bool tooHigh = std::any_of(made.readings.begin(), made.readings.end(),
                                         [&](const auto& r) { return r.shown > job.rule.perSplice; });
        if (tooHigh && state.attempt < job.rule.attempts) {
            ++state.attempt;
        } else {
            state.group.clear();
        }
        log_.arcs.push_back(std::move(made));
    }

    void setUp(MachineState& state, const std::string& closure) {
        const bool morning = state.arcsToday == 0 && state.attempt == 1;
        if (state.number > 0 && !morning && closure == state.lastClosure &&
            state.arcsInSetup < state.machine->setupArcs)
            return;
        state.setupGain = std::exp(state.machine->setupSd * state.random.normal());
        state.arcsInSetup = 0;
    }

    SimulatedReading read(const Machine& machine, const Conditions& here, MachineState& state,
                          std::size_t place) {
        const auto spliced = makeSplice(machine, here, state.random);
        SimulatedReading reading;
        reading.channel = static_cast<int>(place) + 1;
        reading.fibreA = state.group[place].fibreA;
        reading.fibreB = state.group[place].fibreB;
        const double steps = std::round(spliced.shownDb / machine.resolutionDb);
        reading.shown = Loss{static_cast<std::int32_t>(std::lround(steps * machine.resolutionDb * 1000.0))};
        reading.trueDb = spliced.trueDb;
        reading.radiusA = here.radiusA;
        reading.radiusB = here.radiusB;
        reading.cleaveLeft = Angle{static_cast<std::int32_t>(std::lround(spliced.angleLeft * 10.0)) * 10};
        reading.cleaveRight = Angle{static_cast<std::int32_t>(std::lround(spliced.angleRight * 10.0)) * 10};
        return reading;
    }

    // --- faults ------------------------------------------------------------------------------------------

    void beginFaults(const SimulatedArc& arc) {
        for (auto& fault : faults_) {
            if (fault.begun) continue;
            const auto& when = fault.setting.begin;
            const std::uint64_t use = uses_[fault.setting.tool];
            const bool mine = fault.setting.tool == arc.splicer || fault.setting.tool == arc.cleaver;
            if (!mine || (when.at && arc.at < *when.at) || (when.arc && use < *when.arc)) continue;
            fault.begun = true;
            fault.beganAtUse = use;
            fault.truth = log_.truth.size();
            TrueFault truth;
            truth.cause = fault.setting.cause;
            truth.tool = fault.setting.tool;
            truth.channels = fault.setting.channels;
            if (fault.setting.cause != drift::Cause::Cleaver) truth.sizeDb = fault.setting.stepDb;
            log_.truth.push_back(std::move(truth));
        }
    }

    void applyFault(const ActiveFault& fault, const SimulatedArc& arc, const JobSetting& job,
                    Conditions& common, std::vector<double>& push) {
        const auto& f = fault.setting;
        if (!fault.begun || fault.ended || (f.tool != arc.splicer && f.tool != arc.cleaver)) return;
        const auto since = static_cast<double>(uses_[f.tool] - fault.beganAtUse);
        const double grown = f.rampArcs > 0 ? std::min(1.0, since / f.rampArcs) : 1.0;
        touch(fault.truth, arc);
        switch (f.cause) {
            case drift::Cause::Groove: {
                const double w = (job.modeFieldA + job.modeFieldB) / 4.0;
                for (const int channel : f.channels)
                    if (channel >= 1 && channel <= arc.channels)
                        push[static_cast<std::size_t>(channel) - 1] += pushFor(f.stepDb, w) * grown;
                break;
            }
            case drift::Cause::Calibration:
                common.extraDb += f.stepDb * grown;
                break;
            case drift::Cause::Cleaver:
                common.angleSd *= 1.0 + f.angleGain * grown;
                break;
            case drift::Cause::Electrode:
            case drift::Cause::Fibre:
            case drift::Cause::Unknown:
                break;
        }
    }

    void noteElectrodes(MachineState& state, const Wear& worn, const SimulatedArc& arc) {
        if (worn.extraDb <= 0) return;
        if (!state.electrodeTruth) {
            state.electrodeTruth = log_.truth.size();
            TrueFault truth;
            truth.cause = drift::Cause::Electrode;
            truth.tool = arc.splicer;
            log_.truth.push_back(std::move(truth));
        }
        log_.truth[*state.electrodeTruth].sizeDb = worn.extraDb;
        touch(*state.electrodeTruth, arc);
    }

    void noteLot(const JobSetting& job, const SimulatedArc& arc) {
        const auto [place, isNew] = lotTruth_.try_emplace(job.label, log_.truth.size());
        if (isNew) {
            TrueFault truth;
            truth.cause = drift::Cause::Fibre;
            truth.tool = job.label;
            truth.sizeDb = modeLossDb(0, job.modeFieldA / 2.0, job.modeFieldB / 2.0);
            truth.endedBy = "job change";
            log_.truth.push_back(std::move(truth));
        }
        touch(place->second, arc);
    }

    void touch(std::size_t truth, const SimulatedArc& arc) {
        auto& touched = log_.truth[truth].touched;
        auto found = std::find_if(touched.begin(), touched.end(),
                                  [&](const auto& t) { return t.splicer == arc.splicer; });
        if (found == touched.end()) {
            touched.push_back({arc.splicer, arc.number, std::nullopt, arc.at, std::nullopt});
            found = touched.end() - 1;
        }
        found->endArc = arc.number;
        found->end = arc.at;
    }

    /// What still holds at the last arc of a splicer has no end.
    void closeTruth() {
        for (std::size_t i = 0; i < log_.truth.size(); ++i) {
            auto& truth = log_.truth[i];
            const bool cured = !truth.endedBy.empty() && truth.cause != drift::Cause::Fibre;
            bool lasts = false;
            for (auto& t : truth.touched) {
                const auto state = std::find_if(machines_.begin(), machines_.end(),
                                                [&](const auto& m) { return m.machine->label == t.splicer; });
                if (cured || *t.endArc < state->number) continue;
                t.endArc.reset();
                t.end.reset();
                lasts = true;
            }
            if (lasts) truth.endedBy.clear();
        }
    }

    // --- care --------------------------------------------------------------------------------------------

    /// Where electrodes and blades stood when the log begins: care done before it.
    void noteCareBefore() {
        for (const auto& m : s_.splicers) {
            const auto at = parseInstant(m.lastElectrodes);
            if (!at) continue;
            CareSetting care;
            care.tool = m.label;
            care.action = std::string(action::electrodeReplace);
            care.detail = "from the paper log";
            const std::uint32_t counter = m.counterStart - std::min(m.counterStart, m.electrodeArcs);
            log_.care.push_back({*at, care, counter});
            care.action = std::string(action::stabilise);
            log_.care.push_back({later(*at, 15), care, counter});
            care.action = std::string(action::arcCalibration);
            care.calibration =
                CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", m.traits.grooves, 1};
            log_.care.push_back({later(*at, 30), care, counter});
        }
        for (const auto& c : s_.cleavers) {
            CareSetting care;
            care.tool = c.label;
            care.action = std::string(action::bladeRotate);
            care.blade = c.blade;
            care.detail = "blade at height " + std::to_string(c.blade.height) + ", position " +
                          std::to_string(c.blade.position) + " when the log begins";
            log_.care.push_back({later(s_.start, -60), care, 0});
        }
    }

    void careBefore(Instant at) {
        for (std::size_t i = 0; i < s_.care.size(); ++i)
            if (!careDone_[i] && s_.care[i].at.at && *s_.care[i].at.at <= at) {
                careDone_[i] = true;
                doCare(s_.care[i], *s_.care[i].at.at);
            }
        for (std::size_t i = 0; i < s_.routine.size(); ++i)
            for (auto& habit = habits_[i]; atHour(s_, habit.nextDay, s_.routine[i].hour) <= at;
                 ++habit.nextDay)
                if (isWorkday(s_, habit.nextDay)) followHabit(i, habit.nextDay);
    }

    void followHabit(std::size_t index, int day) {
        const auto& routine = s_.routine[index];
        auto& habit = habits_[index];
        if (day < routine.fromDay || day > routine.toDay) return;
        const auto uses = uses_[routine.tool];
        const bool byDays =
            routine.everyDays > 0 && (!habit.lastDay || day - *habit.lastDay >= routine.everyDays);
        const bool byUses = routine.everyUses > 0 && uses - habit.lastUses >= routine.everyUses;
        if (!byDays && !byUses) return;
        CareSetting care;
        care.tool = routine.tool;
        care.action = routine.action;
        care.effect = routine.effect;
        care.detail = routine.detail;
        care.by = routine.by;
        if (care.action == action::bladeRotate) care.blade = nextPlace(care.tool);
        doCare(care, atHour(s_, day, routine.hour));
        habit.lastDay = day;
        habit.lastUses = uses;
    }

    /// The next position; after the last one of a height the first of the next.
    BladePlace nextPlace(const std::string& label) {
        const auto& cleaver = *std::find_if(s_.cleavers.begin(), s_.cleavers.end(),
                                            [&](const auto& c) { return c.label == label; });
        BladePlace place = blades_.try_emplace(label, cleaver.blade).first->second;
        if (place.position < cleaver.traits.positions) return {place.height, place.position + 1};
        return {std::min(place.height + 1, cleaver.traits.heights), 1};
    }

    void careAfterArc(const MachineState& state) {
        const auto& arc = log_.arcs.back();
        for (std::size_t i = 0; i < s_.care.size(); ++i) {
            const auto& care = s_.care[i];
            const bool mine = care.tool == state.machine->label || care.tool == arc.cleaver;
            if (!careDone_[i] && care.at.arc && mine && uses_[care.tool] >= *care.at.arc) {
                careDone_[i] = true;
                doCare(care, later(arc.at, 2));
            }
        }
    }

    void doCare(const CareSetting& care, Instant at) {
        if (care.blade) blades_[care.tool] = *care.blade;
        SimulatedCare done;
        done.at = at;
        done.setting = care;
        for (auto& state : machines_) {
            if (state.machine->label != care.tool) continue;
            done.counter = state.counter;
            if (care.action == action::electrodeReplace) {
                state.electrodeArcs = 0;
                if (state.electrodeTruth) log_.truth[*state.electrodeTruth].endedBy = care.action;
                state.electrodeTruth.reset();
            }
        }
        if (care.effect == Effect::Helps)
            for (auto& fault : faults_)
                if (fault.begun && !fault.ended && fault.setting.tool == care.tool &&
                    cures(care.action, fault.setting.cause)) {
                    fault.ended = true;
                    log_.truth[fault.truth].endedBy = care.action;
                }
        if (care.brings) {
            ActiveFault fault{*care.brings};
            fault.setting.begin = {at, std::nullopt};
            faults_.push_back(std::move(fault));
        }
        log_.care.push_back(std::move(done));
    }

    const Scenario& s_;
    std::uint64_t seed_;
    Sky sky_;
    std::map<std::string, OpenClosure> closures_;
    std::vector<MachineState> machines_;
    std::vector<ActiveFault> faults_;
    std::map<std::string, std::uint64_t> uses_;  ///< arcs per splicer and per cleaver
    std::map<std::string, std::size_t> lotTruth_;
    std::vector<bool> careDone_;
    std::vector<Habit> habits_;  ///< by routine
    std::map<std::string, BladePlace> blades_;
    SimulatedLog log_;
};

}  // namespace

Result<SimulatedLog> simulate(const Scenario& scenario, std::uint64_t seed) {
    if (const auto right = check(scenario); !right) return tl::unexpected(right.error());
    return Simulation(scenario, seed).run();
}

}  // namespace arc::scenario
