// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/ladder.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "core/care/words.hpp"

namespace arc::care {
namespace {

using drift::CareVerdict;
using drift::Cause;

constexpr std::array<std::string_view, 6> lossRungs{action::grooveClean,      action::clampClean,
                                                    action::lensClean,        action::arcCalibration,
                                                    action::electrodeReplace, action::diagnostic};
constexpr std::array<std::string_view, 4> cleaveRungs{action::cleaverClean, action::bladeClean,
                                                      action::bladeRotate, action::bladeRaise};
/// A cause with less than this share of the leader's weight does not put its care before the leader's.
constexpr double contender = 0.4;
/// Electrodes with less than this share of their life behind them are seldom the reason.
constexpr double youngLife = 0.4;

double weightOf(const drift::Signal& signal, Cause cause) {
    double weight = 0;
    for (const drift::CauseWeight& c : signal.causes)
        if (c.cause == cause) weight = std::max(weight, c.weight);
    if (signal.causes.empty() && signal.cause == cause) return 1;
    return weight;
}

/// What speaks for each rung of the loss ladder.
Cause causeOf(std::string_view rung) {
    if (rung == action::grooveClean || rung == action::clampClean) return Cause::Groove;
    if (rung == action::lensClean || rung == action::arcCalibration) return Cause::Calibration;
    if (rung == action::electrodeReplace) return Cause::Electrode;
    return Cause::Unknown;
}

/// Loss rungs in the order they are to be tried: those of the leading causes from gentle to drastic, then the
/// rest from gentle to drastic; the diagnostic run always last.
std::vector<std::string_view> lossOrder(const drift::Signal& signal, const Wear& wear) {
    double leader = 0;
    for (const Cause cause : {Cause::Groove, Cause::Calibration, Cause::Electrode})
        leader = std::max(leader, weightOf(signal, cause));
    std::vector<std::string_view> order;
    const auto add = [&](std::string_view rung) {
        if (std::ranges::find(order, rung) == order.end()) order.push_back(rung);
    };
    if (leader > 0)
        for (const std::string_view rung : lossRungs) {
            const double weight = weightOf(signal, causeOf(rung));
            if (causeOf(rung) == Cause::Unknown || weight < contender * leader) continue;
            // Taking the electrodes out to reach the lenses is no first answer to a shifted arc.
            if (rung == action::lensClean) continue;
            const bool young = wear.electrodeArcs && *wear.electrodeArcs < youngLife * wear.electrodeLife;
            if (rung == action::electrodeReplace && young) add(action::arcCalibration);
            add(rung);
        }
    for (const std::string_view rung : lossRungs) add(rung);
    std::erase(order, action::diagnostic);
    order.push_back(action::diagnostic);
    return order;
}

struct Past {
    int inVain = 0;        ///< no change or worse
    int inPart = 0;        ///< better, not recovered
    bool byCard = false;   ///< one of those in vain was done by its card
    bool waiting = false;  ///< the last one is too early to tell
    bool recovered = false;
    std::optional<Tried> last;
};

Past pastOf(std::span<const Tried> tried, std::string_view rung) {
    Past past;
    for (const Tried& one : tried) {
        if (one.action != rung) continue;
        past.waiting = one.verdict == CareVerdict::TooEarly;
        past.recovered = one.verdict == CareVerdict::Recovered;
        if (one.verdict == CareVerdict::Better) ++past.inPart;
        if (one.verdict == CareVerdict::NoChange || one.verdict == CareVerdict::Worse) {
            ++past.inVain;
            past.byCard = past.byCard || one.cardVersion > 0;
        }
        past.last = one;
    }
    return past;
}

bool usedUp(const Past& past) {
    return past.inVain >= 2 || (past.inVain == 1 && past.byCard) || past.inPart >= 2 ||
           (past.inPart == 1 && past.inVain == 1);
}

std::string wordsFor(std::string_view action) {
    if (action == action::grooveClean) return "cleaning the grooves";
    if (action == action::clampClean) return "cleaning the clamp chips";
    if (action == action::lensClean) return "cleaning the lenses";
    if (action == action::arcCalibration) return "the arc calibration";
    if (action == action::electrodeReplace) return "replacing the electrodes";
    if (action == action::diagnostic) return "the diagnostic run";
    if (action == action::cleaverClean) return "cleaning pads and anvil";
    if (action == action::bladeClean) return "cleaning the blade";
    if (action == action::bladeRotate) return "turning the blade";
    if (action == action::bladeRaise) return "raising the blade";
    return std::string(action);
}

std::string outcomeOf(const Tried& tried) {
    const std::string what = wordsFor(tried.action) + " on " + shortTime(tried.at);
    switch (tried.verdict) {
        case CareVerdict::NoChange:
            return what + " changed nothing";
        case CareVerdict::Worse:
            return what + " made it worse";
        case CareVerdict::Better:
            return what + " helped in part";
        case CareVerdict::Recovered:
            return what + " helped";
        case CareVerdict::TooEarly:
            break;
    }
    return what + " cannot be judged yet";
}

}  // namespace

std::span<const std::string_view> rungs(Symptom symptom) {
    if (symptom == Symptom::Cleave) return cleaveRungs;
    return lossRungs;
}

Advice nextCare(const drift::Signal& signal, std::span<const Tried> tried, const Wear& wear) {
    Advice advice;
    advice.why = signal.headline;
    if (signal.cause == Cause::Fibre) {
        advice.why += advice.why.empty() ? "" : "; ";
        advice.why += "a fibre lot is not cured by care of a tool: try a few splices on another splicer";
        return advice;
    }
    const bool cleave = signal.cause == Cause::Cleaver ||
                        (signal.cause == Cause::Unknown && signal.chart == drift::ChartKind::CleaveAngle);
    std::vector<std::string_view> order(cleaveRungs.begin(), cleaveRungs.end());
    if (!cleave) order = lossOrder(signal, wear);
    for (std::size_t i = 0; i < order.size(); ++i) {
        const Past past = pastOf(tried, order[i]);
        if (past.last && (past.last->verdict != CareVerdict::TooEarly || past.waiting)) {
            advice.why += advice.why.empty() ? "" : "; ";
            advice.why += outcomeOf(*past.last);
        }
        if (usedUp(past)) continue;
        // What a later, more drastic care has shown to be no help need not be waited for; a waiting one must.
        advice.action = ActionKey(order[i]);
        if (past.waiting || past.recovered) advice.wait = Wait::ForVerdict;
        for (std::size_t j = i + 1; j < order.size(); ++j)
            if (!usedUp(pastOf(tried, order[j]))) advice.stillAhead.emplace_back(order[j]);
        break;
    }
    // Somebody went on to a later rung already: its verdict is waited for before anything else is proposed.
    if (advice.wait == Wait::No)
        for (const std::string_view rung : order)
            if (const Past past = pastOf(tried, rung); past.waiting) {
                advice.action = ActionKey(rung);
                advice.wait = Wait::ForVerdict;
            }
    if (advice.action.empty() && cleave) {
        advice.why += advice.why.empty() ? "" : "; ";
        advice.why += "every step was tried: fit a new blade or take the cleaver out of service";
    } else if (advice.action.empty()) {
        advice.why += advice.why.empty() ? "" : "; ";
        advice.why += "every step was tried: take the splicer out of service and have it checked";
    }
    return advice;
}

}  // namespace arc::care
