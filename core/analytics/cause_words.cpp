// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/cause_words.hpp"

#include "core/stats/plain_number.hpp"

namespace arc::drift::words {

namespace {

using stats::fixedNumber;
using stats::signedNumber;

std::string fromTo(double before, double after, int places) {
    return fixedNumber(before, places) + " -> " + fixedNumber(after, places);
}

std::string atArc(std::uint64_t arc) {
    return "arc " + std::to_string(arc);
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
    return "all grooves together: " + fromTo(step.beforeDb, step.afterDb, 3) + " dB since " +
           atArc(step.beganAt) + " (" + std::to_string(step.arcsSince) + " arcs)";
}

std::string growth(const Explanation& ramp) {
    const double per = ramp.arcsSince > 0 ? 2 * (ramp.afterDb - ramp.beforeDb) / ramp.arcsSince * 100 : 0;
    return "grows: " + signedNumber(per, 4) + " dB per 100 arcs since about " + atArc(ramp.beganAt);
}

std::string groove(const GrooveFact& groove, double othersDb) {
    return "groove " + std::to_string(groove.groove) + ": " + fromTo(groove.beforeDb, groove.afterDb, 3) +
           " dB (n = " + std::to_string(groove.readings) + "), the others " + signedNumber(othersDb, 3) +
           " dB";
}

std::string angles(const Explanation& angles) {
    return "cleave angles: mean " + fromTo(angles.beforeDeg, angles.afterDeg, 2) + " degrees since " +
           atArc(angles.beganAt);
}

std::string trigger(const Trigger& trigger) {
    const std::string where = atArc(trigger.step.beganAt);
    if (trigger.celsiusBefore && trigger.celsiusAfter)
        return "temperature " + fromTo(*trigger.celsiusBefore, *trigger.celsiusAfter, 0) + " degrees C at " +
               where + ", where the step is";
    if (trigger.action.empty())
        return fixedNumber(trigger.idleHours, 0) + " hours idle before " + where + ", where the step is";
    return "step at " + where + ", right after " + trigger.action;
}

std::string jobStart(const Explanation& job) {
    if (job.beganAt == 0) return "no job began near here";
    return "began with the job's first splice, " + atArc(job.beganAt) + ": " +
           fromTo(job.beforeDb, job.afterDb, 3) + " dB";
}

std::string electrodeAge(std::uint32_t arcs) {
    return std::to_string(arcs) + " arcs since the electrodes were new";
}

std::string counter(std::uint32_t arcs) {
    return "the splicer's counter stood at " + std::to_string(arcs) + " arcs: the electrodes are not older";
}

std::string peer(const PeerFacts::Other& other, const char* how) {
    return other.label + ", " + how + ": " + signedNumber(other.riseDb, 3) +
           " dB (n = " + std::to_string(other.arcs) + ")";
}

std::string headline(Cause cause, const std::vector<int>& grooves, std::optional<int> raisedBy) {
    switch (cause) {
        case Cause::Groove:
            if (grooves.size() >= 2)
                return "Grooves " + std::to_string(grooves[0]) + " and " + std::to_string(grooves[1]) +
                       " are dirty, likely";
            if (grooves.size() == 1) raisedBy = grooves[0];
            if (raisedBy) return "Groove " + std::to_string(*raisedBy) + " is dirty, likely";
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
