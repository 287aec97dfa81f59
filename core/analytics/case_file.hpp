// SPDX-License-Identifier: GPL-3.0-or-later
// A signal being followed: what raised it, and the facts about it that one splicer's own arcs can tell. The
// cause is decided from these facts together with what the other splicers saw (causes.hpp).
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/chart_state.hpp"
#include "core/analytics/drift.hpp"

namespace arc::drift {

/// One way to explain the scores: how well it fits, and since when it would be so.
struct Explanation {
    double evidence = -1e9;  ///< log of the likelihood ratio to "no change", averaged over its candidates
    double best = 0;         ///< the same of its best candidate
    std::uint64_t beganAt = 0, low = 0, high = 0;
    Instant beganTime;
    int ramp = 1;       ///< arcs over which it grew
    double riseDb = 0;  ///< of the level, by the scores; 0 for other statistics
    int arcsSince = 0;  ///< arcs looked at since the begin
    double beforeDb = 0, afterDb = 0;
    double beforeDeg = 0, afterDeg = 0;  ///< mean cleave angles
};

/// One groove that stands out, with what can be checked by hand.
struct GrooveFact {
    int groove = 1;
    double beforeDb = 0, afterDb = 0;
    int readings = 0;
    double strength = 0;  ///< mean of its scores apart from the arc, in standard errors
};

/// Something logged near which a step fits: a temperature jump, a long pause, a care action.
struct Trigger {
    ActionKey action;  ///< of a care action or environment entry; empty for a jump or a pause
    Instant at;
    std::optional<double> celsiusBefore, celsiusAfter;
    double idleHours = 0;
    Explanation step;
};

struct CaseFacts {
    Explanation raising;      ///< of the statistic that raised the signal
    double lasting = 0;       ///< log-likelihood, from the arcs after the signal, that it lasts; at most 0
    Explanation step, ramp;   ///< all grooves together: at once, or growing slowly
    Explanation dirt;         ///< all losses larger, growing over tens of arcs, the smallest ones unmoved
    double widening = 0;      ///< log-likelihood for "all losses larger" over "all up by the same"
    Explanation job;          ///< up during one job only
    Explanation jobOn;        ///< up from a job's first splice on
    Explanation grooveAlone;  ///< one groove or two neighbours apart from the others
    Explanation angles;       ///< cleave angles
    std::vector<Trigger> triggers;
    std::vector<GrooveFact> grooves;  ///< those that stand out, strongest first
    double otherGroovesDb = 0;        ///< rise of the grooves that do not stand out
    std::optional<std::uint32_t> jobAtRaise;
    std::optional<std::uint32_t> cleaverAtRaise;
    bool angleSeen = false;
    std::optional<std::uint32_t> counter;        ///< lifetime arcs at the signal
    std::optional<std::uint32_t> electrodeArcs;  ///< arcs since the electrodes were new, if known
};

/// What raised a signal and how it stands.
struct Case {
    std::string key;
    ChartKind chart = ChartKind::CommonLevel;
    std::optional<int> channel;  ///< 1-based
    Statistic statistic = Statistic::Common;
    int index = 0;
    std::uint64_t zeroAt = 0;  ///< arc at which the chart last stood at zero
    std::uint64_t raisedAt = 0;
    Instant raisedTime;
    SignalState state = SignalState::Open;
    std::string answerReason;
    ActionKey curedBy;        ///< the care after which it was gone; empty while none
    double level = 0;         ///< mean of the raising statistic since the begin, standard deviations
    double noise = 1;         ///< variance of that statistic since the begin, at least 1
    int refires = 0;          ///< alarms since that were taken as the same problem
    double backToNormal = 0;  ///< evidence that the level is gone again, log-likelihood
    int rowsSince = 0;
    std::optional<CaseFacts> closed;  ///< facts as they stood when the window was about to lose them
};

}  // namespace arc::drift
