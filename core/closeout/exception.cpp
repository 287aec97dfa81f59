// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/exception.hpp"

namespace arc::closeout {

std::string_view word(ExceptionKind kind) {
    switch (kind) {
        case ExceptionKind::OverCeiling:
            return "over_ceiling";
        case ExceptionKind::OverLimit:
            return "over_limit";
        case ExceptionKind::AverageOver:
            return "average_over";
        case ExceptionKind::Missing:
            return "missing";
        case ExceptionKind::Unplanned:
            return "unplanned";
        case ExceptionKind::CalibrationOwed:
            return "calibration_owed";
        case ExceptionKind::OverrideUsed:
            return "override_used";
        case ExceptionKind::OneWay:
            return "one_way";
        case ExceptionKind::Corrected:
            return "corrected";
        case ExceptionKind::EnteredTwice:
            return "entered_twice";
    }
    return "";
}

std::string_view title(ExceptionKind kind) {
    switch (kind) {
        case ExceptionKind::OverCeiling:
            return "Over ceiling";
        case ExceptionKind::OverLimit:
            return "Over limit";
        case ExceptionKind::AverageOver:
            return "Mean over limit";
        case ExceptionKind::Missing:
            return "Missing";
        case ExceptionKind::Unplanned:
            return "Not in the plan";
        case ExceptionKind::CalibrationOwed:
            return "Calibration owed";
        case ExceptionKind::OverrideUsed:
            return "Override used";
        case ExceptionKind::OneWay:
            return "One-way only";
        case ExceptionKind::Corrected:
            return "Corrected after the fact";
        case ExceptionKind::EnteredTwice:
            return "Entered twice";
    }
    return "";
}

bool isDecided(const Exception& exception) {
    return exception.disposition && !exception.disposition->by.empty() &&
           !exception.disposition->reason.empty();
}

}  // namespace arc::closeout
