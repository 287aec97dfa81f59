// SPDX-License-Identifier: GPL-3.0-or-later
// What a reader of the closeout record must not overlook. Every exception has a stable key, so that a
// disposition given today still belongs to it tomorrow; a new reading of the same splice makes a new key, so
// that an old disposition never covers a new fault.
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "core/closeout/decisions.hpp"

namespace arc::closeout {

enum class ExceptionKind {
    OverCeiling,      ///< above what is ever accepted
    OverLimit,        ///< above the limit for one splice
    AverageOver,      ///< the mean of a span is above the limit for the mean
    Missing,          ///< planned, not spliced
    Unplanned,        ///< spliced, not planned
    CalibrationOwed,  ///< made while an arc calibration was owed
    OverrideUsed,     ///< somebody went on though the tool was on hold
    OneWay,           ///< measured from one end only, or not measured though the rule asks for both
    Corrected,        ///< a reading was changed after the fact
    EnteredTwice,     ///< two first attempts of one fibre pair
};

struct Exception {
    std::string key;  ///< "over_limit/HR-17/7-7/1f0c88aa"
    ExceptionKind kind = ExceptionKind::OverLimit;
    std::string where;        ///< closure or tool label; may be empty
    std::string what;         ///< one sentence for people
    std::size_t splices = 0;  ///< how many splices it concerns; 0: none in particular
    std::optional<ExceptionDisposition> disposition;
};

/// Dispositions we know by name; any other text is taken as accepted.
inline constexpr std::string_view dispositionAccepted = "accepted";
inline constexpr std::string_view dispositionRejected = "rejected";

std::string_view word(ExceptionKind kind);   ///< "over_limit", "calibration_owed", …
std::string_view title(ExceptionKind kind);  ///< "Over limit", "Calibration owed", …

/// Both a name and a reason are there.
bool isDecided(const Exception& exception);

}  // namespace arc::closeout
