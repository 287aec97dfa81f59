// SPDX-License-Identifier: GPL-3.0-or-later
// What a short baseline costs: arc_baselines [BASELINES] [ARCS]. Each baseline is learned once and kept; how
// often its charts then alarm falsely is counted on as many fresh arcs of the same healthy machine. Printed:
// the share of baselines that keep the budget, and the mean and the 90 % point of their false signals per
// budget.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <span>
#include <vector>

#include "core/analytics/chart_state.hpp"
#include "core/analytics/model.hpp"
#include "core/analytics/row.hpp"
#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

constexpr double budget = 1000;

std::vector<drift::RawArc> rawArcs(const SplicerHistory& history) {
    std::vector<drift::RawArc> raw;
    for (std::size_t i = 0; i < history.arcs.size(); ++i) {
        const auto& arc = history.arcs[i];
        raw.push_back(drift::rawArc(
            arc, std::span(history.readings).subspan(arc.firstReading, arc.readingCount), i + 1));
    }
    return raw;
}

/// False signals per budget of all charts together.
double rateOf(std::span<const drift::RawArc> baseline, std::span<const drift::RawArc> fresh, int grooves) {
    const auto model = drift::learn(baseline, grooves, nullptr);
    auto charts = drift::makeCharts(model, budget);
    int alarms = 0;
    for (const auto& arc : fresh) {
        const drift::Row row{arc, drift::scoresOf(arc, model)};
        bool alarm = false;
        for (auto& chart : charts) {
            if (const auto x = drift::seen(chart, row, model)) drift::advance(chart, *x, arc.number);
            alarm = alarm || drift::fullness(chart) >= 1;
        }
        if (!alarm) continue;
        ++alarms;
        for (auto& chart : charts) chart.sum = 0;
    }
    return budget * alarms / static_cast<double>(fresh.size());
}

}  // namespace

int main(int argc, char** argv) {
    const int baselines = argc > 1 ? std::atoi(argv[1]) : 100;
    const int arcs = argc > 2 ? std::atoi(argv[2]) : 30'000;
    std::printf(
        "| grooves | baseline, arcs | keep the budget | mean | 90 %% point |\n|---|---|---|---|---|\n");
    for (const int grooves : {12, 1})
        for (const int length : {60, 100, 200}) {
            std::vector<double> rates;
            for (int i = 1; i <= baselines; ++i) {
                LogSetting setting;
                setting.grooves = grooves;
                if (grooves == 1) setting.offsetUm = 0.17;
                setting.arcs = length + arcs;
                const auto raw = rawArcs(makeLog(setting, 9000 + static_cast<std::uint64_t>(i)).history);
                const std::span all(raw);
                rates.push_back(rateOf(all.first(static_cast<std::size_t>(length)),
                                       all.subspan(static_cast<std::size_t>(length)), grooves));
            }
            std::sort(rates.begin(), rates.end());
            double mean = 0, kept = 0;
            for (const double rate : rates) {
                mean += rate / baselines;
                kept += rate <= 1 ? 1 : 0;
            }
            std::printf("| %d | %d | %.0f %% | %.2f | %.2f |\n", grooves, length, 100 * kept / baselines,
                        mean, rates[static_cast<std::size_t>(0.9 * (baselines - 1) + 0.5)]);
            std::fflush(stdout);
        }
    return 0;
}
