// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/cause_words.hpp"

#include <array>
#include <cstdio>

namespace arc::drift::words {

namespace {

template <class... Values>
std::string format(const char* pattern, Values... values) {
    std::array<char, 240> text{};
    std::snprintf(text.data(), text.size(), pattern, values...);
    return text.data();
}

unsigned long long number(std::uint64_t arc) {
    return static_cast<unsigned long long>(arc);
}

/// Gentle before drastic.
int rank(Cause cause) {
    switch (cause) {
        case Cause::Unknown:
            return 0;
        case Cause::Fibre:
            return 1;
        case Cause::Groove:
            return 2;
        case Cause::Cleaver:
            return 3;
        case Cause::Calibration:
            return 4;
        case Cause::Electrode:
            return 5;
    }
    return 0;
}

}  // namespace

std::string level(const Explanation& step) {
    return format("all grooves together: %.3f -> %.3f dB since arc %llu (%d arcs)", step.beforeDb,
                  step.afterDb, number(step.beganAt), step.arcsSince);
}

std::string growth(const Explanation& ramp) {
    const double per = ramp.arcsSince > 0 ? 2 * (ramp.afterDb - ramp.beforeDb) / ramp.arcsSince * 100 : 0;
    return format("grows: %+.4f dB per 100 arcs since about arc %llu", per, number(ramp.beganAt));
}

std::string groove(const GrooveFact& groove, double othersDb) {
    return format("groove %d: %.3f -> %.3f dB (n = %d), the others %+.3f dB", groove.groove, groove.beforeDb,
                  groove.afterDb, groove.readings, othersDb);
}

std::string angles(const Explanation& angles) {
    return format("cleave angles: mean %.2f -> %.2f degrees since arc %llu", angles.beforeDeg,
                  angles.afterDeg, number(angles.beganAt));
}

std::string trigger(const Trigger& trigger) {
    if (trigger.celsiusBefore && trigger.celsiusAfter)
        return format("temperature %.0f -> %.0f degrees C at arc %llu, where the step is",
                      *trigger.celsiusBefore, *trigger.celsiusAfter, number(trigger.step.beganAt));
    if (trigger.action.empty())
        return format("%.0f hours idle before arc %llu, where the step is", trigger.idleHours,
                      number(trigger.step.beganAt));
    return format("step at arc %llu, right after %s", number(trigger.step.beganAt), trigger.action.c_str());
}

std::string jobStart(const Explanation& job) {
    if (job.beganAt == 0) return "no job began near here";
    return format("began with the job's first splice, arc %llu: %.3f -> %.3f dB", number(job.beganAt),
                  job.beforeDb, job.afterDb);
}

std::string electrodeAge(std::uint32_t arcs) {
    return format("%u arcs since the electrodes were new", arcs);
}

std::string counter(std::uint32_t arcs) {
    return format("the splicer's counter stood at %u arcs: the electrodes are not older", arcs);
}

std::string peer(const PeerFacts::Other& other, const char* how) {
    return format("%s, %s: %+.3f dB (n = %d)", other.label.c_str(), how, other.riseDb, other.arcs);
}

std::string headline(Cause cause, const std::vector<int>& grooves, std::optional<int> raisedBy) {
    switch (cause) {
        case Cause::Groove:
            if (grooves.size() >= 2)
                return format("Grooves %d and %d are dirty, likely", grooves[0], grooves[1]);
            if (grooves.size() == 1) return format("Groove %d is dirty, likely", grooves[0]);
            if (raisedBy) return format("Groove %d is dirty, likely", *raisedBy);
            return "The V-groove or a clamp is dirty, likely";
        case Cause::Electrode:
            return "The electrodes are worn, likely";
        case Cause::Calibration:
            return "The arc calibration is off, likely";
        case Cause::Cleaver:
            return "The cleaver cuts badly, likely";
        case Cause::Fibre:
            return "The fibre of this job differs, likely";
        case Cause::Unknown:
            break;
    }
    return "Something may have changed; no cause leads clearly yet";
}

NextStep nextStep(Cause cause, Cause first, Cause second) {
    if (cause == Cause::Unknown) {
        if (first == Cause::Unknown) first = second;
        if (second == Cause::Unknown) second = first;
        const Cause gentle = rank(first) <= rank(second) ? first : second;
        if (gentle == Cause::Unknown)
            return {ActionKey(action::note), "Watch the next 25 arcs: this may have been luck."};
        auto step = nextStep(gentle, gentle, gentle);
        step.advice = "No clear lead, so the gentlest first. " + step.advice;
        return step;
    }
    switch (cause) {
        case Cause::Groove:
            return {ActionKey(action::grooveClean),
                    "Clean the V-grooves and clamps: quick, and it undoes nothing."};
        case Cause::Electrode:
            return {ActionKey(action::electrodeReplace),
                    "Replace the electrodes, stabilise them, then calibrate the arc."};
        case Cause::Calibration:
            return {ActionKey(action::arcCalibration),
                    "Calibrate the arc until power and position are both adequate."};
        case Cause::Cleaver:
            return {ActionKey(action::cleaverClean),
                    "Clean the cleaver's pads and anvil, then the blade; rotate the blade only if that does "
                    "not help."};
        case Cause::Fibre:
        case Cause::Unknown:
            break;
    }
    return {ActionKey(action::note),
            "Leave the splicer alone: make a few splices of this fibre on another splicer to be sure."};
}

}  // namespace arc::drift::words
