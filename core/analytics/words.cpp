// SPDX-License-Identifier: GPL-3.0-or-later
// The words for charts, causes and standings as files and the command line use them.
#include "core/analytics/drift.hpp"

namespace arc::drift {

std::string_view word(ChartKind kind) {
    switch (kind) {
        case ChartKind::CommonLevel:
            return "common_level";
        case ChartKind::SingleGroove:
            return "single_groove";
        case ChartKind::Spread:
            return "spread";
        case ChartKind::CleaveAngle:
            return "cleave_angle";
        case ChartKind::ResplicesRate:
            return "resplice_rate";
        case ChartKind::LoneSplice:
            return "lone_splice";
        case ChartKind::Difference:
            return "difference";
    }
    return "";
}

std::string_view word(Cause cause) {
    switch (cause) {
        case Cause::Groove:
            return "groove";
        case Cause::Electrode:
            return "electrode";
        case Cause::Calibration:
            return "calibration";
        case Cause::Cleaver:
            return "cleaver";
        case Cause::Fibre:
            return "fibre";
        case Cause::Unknown:
            return "unknown";
    }
    return "";
}

std::string_view word(SignalState state) {
    switch (state) {
        case SignalState::Open:
            return "open";
        case SignalState::Answered:
            return "answered";
        case SignalState::Recovered:
            return "recovered";
        case SignalState::Dismissed:
            return "dismissed";
    }
    return "";
}

std::string_view word(Standing standing) {
    switch (standing) {
        case Standing::Learning:
            return "learning";
        case Standing::Steady:
            return "steady";
        case Standing::Watch:
            return "watch";
        case Standing::Drifting:
            return "drifting";
        case Standing::Recovered:
            return "recovered";
    }
    return "";
}

std::string_view word(CareVerdict verdict) {
    switch (verdict) {
        case CareVerdict::Recovered:
            return "recovered";
        case CareVerdict::Better:
            return "better";
        case CareVerdict::NoChange:
            return "no_change";
        case CareVerdict::Worse:
            return "worse";
        case CareVerdict::TooEarly:
            return "too_early";
    }
    return "";
}

}  // namespace arc::drift
