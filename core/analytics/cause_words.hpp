// SPDX-License-Identifier: GPL-3.0-or-later
// Evidence lines, headlines and advice for signals: short sentences that can be checked by hand.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/causes.hpp"

namespace arc::drift::words {

std::string level(const Explanation& step);   ///< "all grooves together: 0.043 -> 0.055 dB, …"
std::string growth(const Explanation& ramp);  ///< "+0.004 dB per 100 arcs since arc 812"
std::string groove(const GrooveFact& groove, double othersDb);
std::string angles(const Explanation& angles);
std::string trigger(const Trigger& trigger);
std::string jobStart(const Explanation& job);
std::string electrodeAge(std::uint32_t arcs);
std::string counter(std::uint32_t arcs);
std::string peer(const PeerFacts::Other& other, const char* how);

std::string headline(Cause cause, const std::vector<int>& grooves, std::optional<int> raisedBy);

struct NextStep {
    ActionKey action;
    std::string advice;
};
/// What to do first. While the cause is unknown: the gentler care of the two leading causes.
NextStep nextStep(Cause cause, Cause first, Cause second);

}  // namespace arc::drift::words
