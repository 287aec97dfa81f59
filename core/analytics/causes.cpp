// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/causes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace arc::drift {

namespace {

constexpr double clearLead = 0.6;

struct Weighing {
    double logOdds = 0;
    std::vector<std::string> lines;
    void add(double weight) { logOdds += weight; }
    void add(double weight, std::string line) {
        logOdds += weight;
        lines.push_back(std::move(line));
    }
};

template <class... Values>
std::string format(const char* pattern, Values... values) {
    std::array<char, 240> text{};
    std::snprintf(text.data(), text.size(), pattern, values...);
    return text.data();
}

std::string grooveLine(const GrooveFact& groove, double othersDb) {
    return format("groove %d: %.3f -> %.3f dB (n = %d), the others %+.3f dB", groove.groove, groove.beforeDb,
                  groove.afterDb, groove.readings, othersDb);
}

Weighing weighGroove(const CaseFacts& facts, int grooves) {
    Weighing w;
    if (grooves == 1) {
        // One groove only: dirt widens the losses and leaves the small ones where they were.
        w.add(-1.5 + std::clamp(facts.rankGain - facts.shiftGain, -4.0, 2.0));
        return w;
    }
    if (facts.grooves.empty()) {
        w.add(-6.0);
        return w;
    }
    const auto many = static_cast<double>(facts.grooves.size());
    w.add(std::min(12.0, facts.grooves.front().strength * facts.grooves.front().strength / 4) -
          2.0 * std::max(0.0, many - 3));
    for (const auto& groove : facts.grooves) w.lines.push_back(grooveLine(groove, facts.otherGroovesDb));
    return w;
}

Weighing weighCleaver(const CaseFacts& facts, const PeerFacts& peers) {
    Weighing w;
    if (!facts.angleStrength) {
        w.add(-2.0);
        return w;
    }
    const double s = *facts.angleStrength;
    w.add(s > 0 ? std::min(12.0, s * s / 3) - 3.0 : -4.0);
    if (s > 2)
        w.lines.push_back(format("cleave angles: mean %.2f -> %.2f degrees since the begin",
                                 facts.angleBeforeDeg, facts.angleAfterDeg));
    for (const auto& other : peers.sameCleaver)
        if (other.strength > 3)
            w.add(2.0, format("%s, same cleaver: up %+.3f dB too (n = %d)", other.label.c_str(), other.riseDb,
                              other.arcs));
    return w;
}

Weighing weighElectrode(const CaseFacts& facts) {
    Weighing w;
    w.add(std::clamp(facts.rampGain - facts.stepGain, -6.0, 6.0),
          format("grew over the arcs: %+.4f dB per 100 arcs since the begin", facts.perHundredArcsDb));
    if (facts.electrodeArcs) {
        w.add(*facts.electrodeArcs >= 2000 ? 1.0 : -3.0,
              format("%u arcs since the electrodes were new", *facts.electrodeArcs));
    } else if (facts.counter) {
        w.add(*facts.counter >= 2000 ? 0.5 : -2.0, format("the arc counter stood at %u", *facts.counter));
    }
    return w;
}

Weighing weighCalibration(const CaseFacts& facts) {
    Weighing w;
    w.add(std::clamp(facts.stepGain - facts.rampGain, -6.0, 6.0), "all grooves stepped up together");
    if (facts.celsiusBefore && facts.celsiusAfter &&
        std::abs(*facts.celsiusAfter - *facts.celsiusBefore) >= 8)
        w.add(3.0, format("temperature %.0f -> %.0f degrees C at the begin", *facts.celsiusBefore,
                          *facts.celsiusAfter));
    if (facts.idleHours >= 72) w.add(1.0, format("%.0f hours idle before the begin", facts.idleHours));
    return w;
}

Weighing weighFibre(const CaseFacts& facts, const PeerFacts& peers) {
    Weighing w;
    w.add(std::clamp(facts.stepGain - facts.rampGain, -6.0, 6.0));
    if (!facts.arcsFromJobStart) {
        w.add(-6.0);
    } else if (facts.jobStartInInterval || std::abs(*facts.arcsFromJobStart) <= 3) {
        w.add(3.0, format("began %lld arcs from the job's first splice",
                          static_cast<long long>(std::abs(*facts.arcsFromJobStart))));
    } else {
        w.add(-5.0);
    }
    for (const auto& other : peers.sameJob) {
        if (other.arcs < 8) continue;
        if (other.strength > 3)
            w.add(3.0, format("%s on the same job is up too: %+.3f dB (n = %d)", other.label.c_str(),
                              other.riseDb, other.arcs));
        else if (other.arcs >= 15)
            w.add(-4.0, format("%s on the same job is not up (n = %d)", other.label.c_str(), other.arcs));
    }
    return w;
}

ActionKey firstAction(Cause cause) {
    switch (cause) {
        case Cause::Groove:
            return ActionKey(action::grooveClean);
        case Cause::Electrode:
            return ActionKey(action::electrodeReplace);
        case Cause::Calibration:
            return ActionKey(action::arcCalibration);
        case Cause::Cleaver:
            return ActionKey(action::cleaverClean);
        case Cause::Fibre:
            return ActionKey(action::note);
        case Cause::Unknown:
            break;
    }
    return ActionKey(action::grooveClean);
}

std::string headlineOf(Cause cause, const CaseFacts& facts) {
    switch (cause) {
        case Cause::Groove:
            if (facts.grooves.empty()) return "The V-groove is dirty, likely";
            if (facts.grooves.size() == 1)
                return format("Groove %d is dirty, likely", facts.grooves.front().groove);
            return format("Grooves %d and %d are dirty, likely", facts.grooves[0].groove,
                          facts.grooves[1].groove);
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
    return "Something changed; the cause is not clear yet";
}

std::string adviceOf(Cause cause) {
    switch (cause) {
        case Cause::Groove:
            return "Clean the V-grooves and clamps first: it is quick and undoes nothing.";
        case Cause::Electrode:
            return "Replace the electrodes, stabilise, then calibrate the arc.";
        case Cause::Calibration:
            return "Run the arc calibration until power and position are both adequate.";
        case Cause::Cleaver:
            return "Clean the cleaver's pads and anvil, then the blade; rotate the blade only if that does "
                   "not help.";
        case Cause::Fibre:
            return "Leave the splicer alone: make a few splices of this fibre on another splicer to be sure.";
        case Cause::Unknown:
            break;
    }
    return "Start with the gentlest care: clean the V-grooves, then watch the next 20 arcs.";
}

}  // namespace

Verdict decide(const Case& about, const CaseFacts& facts, const PeerFacts& peers, int grooves) {
    const std::array causes{Cause::Groove, Cause::Electrode, Cause::Calibration, Cause::Cleaver,
                            Cause::Fibre};
    std::array weighed{weighGroove(facts, grooves), weighElectrode(facts), weighCalibration(facts),
                       weighCleaver(facts, peers), weighFibre(facts, peers)};
    if (about.chart == ChartKind::SingleGroove) weighed[0].add(4.0);
    if (about.chart == ChartKind::CleaveAngle) weighed[3].add(4.0);
    double top = -1e9, sum = 0;
    for (const auto& w : weighed) top = std::max(top, w.logOdds);
    for (const auto& w : weighed) sum += std::exp(w.logOdds - top);
    Verdict verdict;
    for (std::size_t i = 0; i < causes.size(); ++i)
        verdict.causes.push_back({causes[i], std::exp(weighed[i].logOdds - top) / sum, weighed[i].lines});
    std::stable_sort(verdict.causes.begin(), verdict.causes.end(),
                     [](const CauseWeight& a, const CauseWeight& b) { return a.weight > b.weight; });
    const auto& first = verdict.causes.front();
    verdict.cause = first.weight >= clearLead ? first.cause : Cause::Unknown;
    verdict.action = firstAction(verdict.cause);
    verdict.headline = headlineOf(verdict.cause, facts);
    verdict.advice = adviceOf(verdict.cause);
    return verdict;
}

}  // namespace arc::drift
