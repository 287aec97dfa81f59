// SPDX-License-Identifier: GPL-3.0-or-later
// Which charts and care belong together; for the sources of Watcher only.
#pragma once
#include "core/analytics/case_file.hpp"
#include "core/analytics/chart_state.hpp"
#include "core/care/record.hpp"

namespace arc::drift {

inline bool grooveChart(Statistic s) {
    return s == Statistic::Apart || s == Statistic::Pair;
}

/// Whether the chart looks at what the case reports: a further alarm there is the same problem.
inline bool sameFamily(const Case& about, const Chart& chart) {
    if (grooveChart(about.statistic) != grooveChart(chart.statistic)) return false;
    if (!grooveChart(chart.statistic)) return true;
    const int caseLast = about.index + (about.statistic == Statistic::Pair ? 1 : 0);
    const int chartLast = chart.index + (chart.statistic == Statistic::Pair ? 1 : 0);
    return chart.index <= caseLast + 1 && about.index <= chartLast + 1;
}

enum class Group { Level, Angle, Groove, Respliced };
inline Group groupOf(Statistic s) {
    switch (s) {
        case Statistic::Common:
        case Statistic::Shift:
        case Statistic::Spread:
            return Group::Level;
        case Statistic::Angle:
            return Group::Angle;
        case Statistic::Apart:
        case Statistic::Pair:
            return Group::Groove;
        case Statistic::Respliced:
            return Group::Respliced;
    }
    return Group::Level;
}

inline bool followed(const Case& about) {
    return about.state == SignalState::Open || about.state == SignalState::Answered;
}

inline bool forGrooves(const ActionKey& action) {
    return action == action::grooveClean || action == action::clampClean;
}

inline bool changesTheTool(const CareRecord& record) {
    return record.action != action::note && record.action != action::environmentChange &&
           record.action != action::stripperClean;
}

/// Arcs after a signal that are used to judge it.
inline constexpr std::uint64_t factsAfter = 200;

}  // namespace arc::drift
