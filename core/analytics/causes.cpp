// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/causes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/analytics/cause_words.hpp"

namespace arc::drift {

namespace {

constexpr double clearLead = 0.6;     ///< weight from which a cause is named
constexpr double wearing = 0.5;       ///< electrodes always wear
constexpr double pastMidLife = 1.0;   ///< electrodes of more than 3,000 arcs; they last about 5,000
constexpr double luck = -1.5;         ///< log odds of "nothing of these"
constexpr double untriggered = -4.0;  ///< a calibration goes off without any trigger logged less often
constexpr double triggered = 1.0;
constexpr double oddLot = -3.0;        ///< fibre lots that differ, against the other causes
constexpr double anglesNeeded = -2.0;  ///< cleave angles must say so clearly before the cleaver is named
constexpr double madeFor = 4.0;
constexpr double cured = 5.0;        ///< a care on one part that helped
constexpr double shapeCounts = 6.0;  ///< most that the shape of the change may count
constexpr double seen = 3.0;         ///< standard errors at which another splicer counts as up

/// Calibrations that are off and odd lots show as steps of a hundredth of a dB and more; a smaller one is
/// rather what good lots differ by. Log odds, at most 0.
double wideEnough(const Explanation& step) {
    constexpr double usualDb = 0.008, scatterDb = 0.0015, most = 6;
    if (step.riseDb <= 0 || step.riseDb >= usualDb) return 0;
    const double missing = (usualDb - step.riseDb) / scatterDb;
    return std::max(-most, -missing * missing / 2);
}

/// A cause with its log odds, its account of the begin, and lines to check by hand.
struct Weighed {
    Cause cause = Cause::Unknown;
    double logOdds = -1e9;
    Explanation since;
    std::vector<std::string> lines;
};

double positive(double evidence) {
    return std::max(0.0, evidence);
}

const Explanation& better(const Explanation& a, const Explanation& b) {
    return a.evidence >= b.evidence ? a : b;
}

Weighed weighGroove(const CaseFacts& facts, int grooves) {
    Weighed w{Cause::Groove, -1e9, facts.grooveAlone, {}};
    if (grooves == 1) {
        // Dirt under a lone fibre widens its losses over tens of arcs and leaves the smallest where they
        // were.
        w.since = facts.dirt;
        w.logOdds = facts.dirt.evidence - 1.5;
        w.lines.push_back(words::level(facts.dirt));
        return w;
    }
    // A high groove lifts the mean of all a little: so much of the level it explains too.
    const double level = positive(better(facts.step, facts.ramp).evidence);
    w.logOdds =
        facts.grooveAlone.evidence + std::min(level, 1.5 * positive(facts.grooveAlone.evidence) / grooves);
    for (const auto& groove : facts.grooves) w.lines.push_back(words::groove(groove, facts.otherGroovesDb));
    return w;
}

Weighed weighElectrode(const CaseFacts& facts) {
    Weighed w{Cause::Electrode, facts.ramp.evidence + wearing, facts.ramp, {}};
    w.lines.push_back(words::growth(facts.ramp));
    if (facts.electrodeArcs) {
        w.lines.push_back(words::electrodeAge(*facts.electrodeArcs));
        w.logOdds += *facts.electrodeArcs < 1000   ? -4.0
                     : *facts.electrodeArcs < 2000 ? -2.0
                     : *facts.electrodeArcs < 3000 ? 0.0
                                                   : pastMidLife;
    } else if (facts.counter && *facts.counter < 2000) {
        w.lines.push_back(words::counter(*facts.counter));
        w.logOdds -= 2.0;
    } else if (facts.counter && *facts.counter >= 3000) {
        // No exchange is in the book: they may well be as old as the splicer.
        w.logOdds += pastMidLife;
    }
    return w;
}

bool ofTheArc(const ActionKey& action) {
    return action.empty() || action == action::environmentChange || action == action::arcCalibration ||
           action == action::lensClean || action == action::electrodeReplace || action == action::stabilise ||
           action == action::diagnostic;
}

Weighed weighCalibration(const CaseFacts& facts) {
    Weighed w{Cause::Calibration, facts.step.evidence + untriggered, facts.step, {words::level(facts.step)}};
    const Trigger* best = nullptr;
    for (const auto& trigger : facts.triggers)
        if (ofTheArc(trigger.action) && (!best || trigger.step.evidence > best->step.evidence))
            best = &trigger;
    if (best && best->step.evidence + triggered > w.logOdds) {
        w.logOdds = best->step.evidence + triggered;
        w.since = best->step;
        w.lines = {words::level(best->step), words::trigger(*best)};
    }
    w.logOdds += wideEnough(w.since);
    return w;
}

Weighed weighCleaver(const CaseFacts& facts, const PeerFacts& peers) {
    Weighed w{Cause::Cleaver, -1e9, facts.angles, {}};
    const double level = positive(better(facts.dirt, facts.ramp).evidence);
    if (facts.angleSeen) {
        w.logOdds =
            facts.angles.evidence + anglesNeeded + std::min(level, 2 * positive(facts.angles.evidence));
        w.lines.push_back(words::angles(facts.angles));
    } else {
        w.logOdds = level + anglesNeeded;
        w.since = better(facts.dirt, facts.ramp);
        w.lines.push_back("no cleave angles were logged");
    }
    for (const auto& other : peers.sameCleaver) {
        if (other.arcs < 8) continue;
        w.logOdds += other.strength > seen ? 3.0 : -1.0;
        if (other.strength > seen) w.lines.push_back(words::peer(other, "with the same cleaver"));
    }
    return w;
}

Weighed weighFibre(const CaseFacts& facts, const PeerFacts& peers) {
    // Gone in the next job speaks for the fibre; still there after it rather for the machine.
    const bool during = facts.job.evidence >= facts.jobOn.evidence - 1.5;
    Weighed w{Cause::Fibre,
              std::max(facts.job.evidence, facts.jobOn.evidence - 1.5) + oddLot,
              during ? facts.job : facts.jobOn,
              {}};
    w.logOdds += wideEnough(w.since);
    w.lines.push_back(words::jobStart(w.since));
    for (const auto& other : peers.sameJob) {
        if (other.arcs < 8) continue;
        const bool up = other.strength > seen;
        w.logOdds += up ? 4.0 : other.strength < 1 && other.arcs >= 15 ? -4.0 : 0.0;
        w.lines.push_back(
            words::peer(other, up ? "on the same job, is up too" : "on the same job, is not clearly up"));
    }
    return w;
}

/// The part a care works on.
std::optional<Cause> partOf(const ActionKey& action) {
    if (action == action::grooveClean || action == action::clampClean) return Cause::Groove;
    if (action == action::arcCalibration || action == action::lensClean) return Cause::Calibration;
    if (action == action::electrodeReplace || action == action::stabilise) return Cause::Electrode;
    if (action == action::cleaverClean || action == action::bladeClean || action == action::bladeRotate ||
        action == action::bladeRaise)
        return Cause::Cleaver;
    return std::nullopt;
}

/// What a chart is made for is the first guess when it alarms, as long as it lasts. Wear grows through ups
/// and downs: a level that sank for some arcs does not speak against it.
double ofItsChart(Cause cause, ChartKind chart, double lasting) {
    if (chart == ChartKind::SingleGroove && cause == Cause::Groove)
        return 2 * madeFor + std::max(lasting, -madeFor);
    if (chart == ChartKind::CleaveAngle && cause == Cause::Cleaver) return madeFor + lasting;
    const bool step = cause == Cause::Calibration || cause == Cause::Fibre;
    return chart == ChartKind::CommonLevel && step ? lasting : 0;
}

}  // namespace

Verdict decide(const Case& about, const CaseFacts& facts, const PeerFacts& peers, int grooves) {
    std::array weighed{weighGroove(facts, grooves), weighElectrode(facts),
                       weighCalibration(facts),     weighCleaver(facts, peers),
                       weighFibre(facts, peers),    Weighed{Cause::Unknown, luck, facts.raising, {}}};
    // Calibrations and fibres lift every loss by the same; dirt, wear and bad cleaves make all losses larger.
    const double same = std::clamp(-facts.widening, -shapeCounts / 3, shapeCounts);
    for (auto& w : weighed) {
        if (w.cause == Cause::Electrode) w.logOdds -= same / 2;
        // Dirt under a lone fibre can push all of its losses up as well: there the shape tells nothing.
        if (grooves > 1 && (w.cause == Cause::Calibration || w.cause == Cause::Fibre))
            w.logOdds += std::max(same, 0.0);
    }
    for (auto& w : weighed) w.logOdds += ofItsChart(w.cause, about.chart, facts.lasting);
    if (const auto part = partOf(about.curedBy))
        for (auto& w : weighed) {
            if (w.cause != *part) continue;
            w.logOdds += cured;
            w.lines.push_back("it was gone after " + about.curedBy);
        }
    std::stable_sort(weighed.begin(), weighed.end(),
                     [](const Weighed& a, const Weighed& b) { return a.logOdds > b.logOdds; });
    double sum = 0;
    for (const auto& w : weighed) sum += std::exp(w.logOdds - weighed.front().logOdds);
    Verdict verdict;
    for (const auto& w : weighed)
        verdict.causes.push_back({w.cause, std::exp(w.logOdds - weighed.front().logOdds) / sum, w.lines});
    const auto& first = weighed.front();
    verdict.cause = verdict.causes.front().weight >= clearLead ? first.cause : Cause::Unknown;
    verdict.since = first.since.beganAt > 0 ? first.since : facts.raising;
    if (verdict.cause == Cause::Groove)
        for (const auto& groove : facts.grooves) verdict.grooves.push_back(groove.groove);
    const auto second = verdict.causes.size() > 1 ? verdict.causes[1].cause : Cause::Unknown;
    const auto next = words::nextStep(verdict.cause, verdict.causes.front().cause, second);
    verdict.action = next.action;
    verdict.advice = next.advice;
    verdict.headline = words::headline(verdict.cause, verdict.grooves, about.channel);
    return verdict;
}

}  // namespace arc::drift
