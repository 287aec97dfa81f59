// SPDX-License-Identifier: GPL-3.0-or-later
// What people decide about charts: where the baseline lies, and that a signal is answered. Both are
// journaled.
#pragma once
#include <optional>
#include <string>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"

namespace arc {

/// A supervisor moved the ends of a baseline by hand.
struct BaselineChoice {
    EntryId id;
    ToolId splicer;
    std::string stratum;  ///< key of the stratum, see analytics/stream
    Instant from;
    Instant to;
    std::string reason;
    std::string by;
    bool operator==(const BaselineChoice&) const = default;
};

enum class SignalAnswerKind { Dismissed, Reopened };

/// A signal was dismissed (or taken up again) with a reason.
struct SignalAnswer {
    EntryId id;
    ToolId splicer;
    std::string signalKey;  ///< Signal::key
    SignalAnswerKind kind = SignalAnswerKind::Dismissed;
    std::string reason;
    std::string by;
    Instant at;
    bool operator==(const SignalAnswer&) const = default;
};

}  // namespace arc
