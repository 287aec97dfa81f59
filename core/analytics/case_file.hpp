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
#include "core/analytics/model.hpp"

namespace arc::drift {

/// One groove that stands out, with what can be checked by hand.
struct GrooveFact {
    int groove = 1;
    double beforeDb = 0, afterDb = 0;
    int readings = 0;
    double strength = 0;  ///< mean of its scores apart from the arc, in standard errors
};

/// A care action or environment entry near the begin.
struct NearbyEvent {
    ActionKey action;
    Instant at;
    std::int64_t arcsBefore = 0;  ///< arcs between the event and the begin; negative: after it
};

struct CaseFacts {
    std::uint64_t beganAt = 0, low = 0, high = 0;
    Instant beganTime;
    int arcsSince = 0;  ///< scored arcs since the begin
    double beforeDb = 0, afterDb = 0;
    int ramp = 1;                         ///< arcs over which it grew
    double stepGain = 0, rampGain = 0;    ///< log-likelihoods of the best step and the best open ramp
    double commonStrength = 0;            ///< mean common score since the begin, in standard errors
    double shiftGain = 0, rankGain = 0;   ///< log-likelihood of "all moved up" and of "larger"
    std::vector<GrooveFact> grooves;      ///< those that stand out, strongest first
    double otherGroovesDb = 0;            ///< rise of the grooves that do not stand out
    std::optional<double> angleStrength;  ///< mean angle score since the begin, in standard errors
    double angleBeforeDeg = 0, angleAfterDeg = 0;
    std::optional<std::uint32_t> counter;          ///< lifetime arcs at the begin
    std::optional<std::uint32_t> electrodeArcs;    ///< arcs since the electrodes were new, if known
    std::optional<std::uint32_t> job;              ///< at the begin
    std::optional<std::int64_t> arcsFromJobStart;  ///< begin minus the nearest job's first arc
    bool jobStartInInterval = false;
    std::optional<double> celsiusBefore, celsiusAfter;
    double idleHours = 0;  ///< longest pause just before the begin
    std::vector<NearbyEvent> events;
    int resplicesBefore = 0, arcsBefore = 0, resplicesAfter = 0;
    double perHundredArcsDb = 0;  ///< slope since the begin
};

/// What raised a signal and how it stands.
struct Case {
    std::string key;
    ChartKind chart = ChartKind::CommonLevel;
    std::optional<int> channel;  ///< 1-based
    Statistic statistic = Statistic::Common;
    int index = 0;
    std::uint64_t raisedAt = 0;
    Instant raisedTime;
    SignalState state = SignalState::Open;
    std::string answerReason;
    double level = 0;         ///< mean of the raising statistic since the begin, standard deviations
    double backToNormal = 0;  ///< evidence that the level is gone again, log-likelihood
    int rowsSince = 0;
    std::optional<CaseFacts> closed;  ///< facts as they stood when the window was about to lose them
};

}  // namespace arc::drift
