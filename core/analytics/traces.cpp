// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/traces.hpp"

#include <algorithm>

namespace arc::drift {

namespace {

struct Drawn {
    ChartKind kind;
    std::optional<int> channel;
    const char* title;
};

/// Fullness of the fullest chart of a kind (and groove): 1 is the limit. Empty while there is no such chart.
std::optional<double> fullest(const Watcher& watcher, const Drawn& drawn) {
    std::optional<double> most;
    for (const auto& chart : watcher.charts()) {
        if (kindOf(chart) != drawn.kind) continue;
        if (drawn.channel) {
            const int last = chart.index + (chart.statistic == Statistic::Pair ? 1 : 0);
            if (*drawn.channel - 1 < chart.index || *drawn.channel - 1 > last) continue;
        }
        most = std::max(most.value_or(0), fullness(chart));
    }
    return most;
}

}  // namespace

void TraceRecorder::note(const Watcher& watcher, std::uint64_t arcNumber) {
    if (watcher.learning()) return;
    const int grooves = watcher.model()->grooves;
    std::vector<Drawn> drawn{{ChartKind::CommonLevel, std::nullopt, "Common level"},
                             {ChartKind::Spread, std::nullopt, "Spread"},
                             {ChartKind::CleaveAngle, std::nullopt, "Cleave angles"},
                             {ChartKind::ResplicesRate, std::nullopt, "Re-splice rate"}};
    for (int c = 1; grooves > 1 && c <= grooves; ++c) drawn.push_back({ChartKind::SingleGroove, c, "Groove"});
    if (lines_.empty())
        for (const auto& d : drawn) {
            Trace trace;
            trace.chart = d.kind;
            trace.channel = d.channel;
            trace.title = d.channel ? std::string(d.title) + " " + std::to_string(*d.channel) : d.title;
            trace.limit = 1.0;
            lines_.push_back({trace, false});
        }
    for (std::size_t i = 0; i < lines_.size() && i < drawn.size(); ++i) {
        auto& [trace, watched] = lines_[i];
        const auto stands = fullest(watcher, drawn[i]);
        watched = watched || stands;
        trace.arc.push_back(arcNumber);
        trace.value.push_back(static_cast<float>(stands.value_or(0)));
    }
}

std::vector<Trace> TraceRecorder::traces() const {
    std::vector<Trace> traces;
    for (const auto& line : lines_)
        if (line.watched) traces.push_back(line.trace);
    return traces;
}

}  // namespace arc::drift
