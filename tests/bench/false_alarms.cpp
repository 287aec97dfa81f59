// SPDX-License-Identifier: GPL-3.0-or-later
// Whether healthy splicers keep the budget: arc_false_alarms [RUNS] [BUDGET...]. Every cell of the grid is
// RUNS logs of two budgets' arcs with nothing wrong; counted is the first signal of each log against the arcs
// up to it. Exit code 1 when a cell lies outside 0.5 to 1.3 of what was promised.
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

struct NamedFamily {
    const char* name;
    Family family;
};
constexpr std::array families{NamedFamily{"gamma", Family::Gamma},
                              NamedFamily{"lognormal", Family::Lognormal},
                              NamedFamily{"Weibull", Family::Weibull}};
constexpr std::array wanders{0.0, 0.06, 0.12};

/// False signals per budget's worth of arcs.
double rate(const LogSetting& setting, double budget, int runs) {
    int signals = 0;
    double arcs = 0;
    for (int run = 1; run <= runs; ++run) {
        const auto log = makeLog(setting, 1000 + static_cast<std::uint64_t>(run));
        const auto found = signalsOf(log.history, budget);
        signals += found.empty() ? 0 : 1;
        arcs += found.empty() ? setting.arcs : static_cast<double>(found.front().raisedAtArc);
    }
    return budget * signals / arcs;
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 200;
    std::vector<double> budgets;
    for (int i = 2; i < argc; ++i) budgets.push_back(std::atof(argv[i]));
    if (budgets.empty()) budgets = {1000};
    double lowest = 1e9, highest = 0;
    std::printf("| grooves | step, dB | losses | budget |");
    for (const double wander : wanders) std::printf(" set-ups %.0f %% |", 100 * wander);
    std::printf("\n|---|---|---|---|---|---|---|\n");
    for (const int grooves : {12, 4, 1})
        for (const double step : {0.01, 0.02})
            for (const auto& family : families)
                for (const double budget : budgets) {
                    std::printf("| %d | %.2f | %s | %.0f |", grooves, step, family.name, budget);
                    for (const double wander : wanders) {
                        LogSetting setting;
                        setting.arcs = static_cast<int>(2 * budget);
                        setting.grooves = grooves;
                        setting.offsetUm = grooves == 1 ? 0.17 : 0.33;
                        setting.family = family.family;
                        setting.setUpSd = wander;
                        setting.displayDb = step;
                        const double found = rate(setting, budget, runs);
                        lowest = std::min(lowest, found);
                        highest = std::max(highest, found);
                        std::printf(" %.2f |", found);
                        std::fflush(stdout);
                    }
                    std::printf("\n");
                }
    std::printf("lowest %.2f, highest %.2f of what was promised (allowed 0.5 to 1.3; %d logs a cell)\n",
                lowest, highest, runs);
    return lowest >= 0.5 && highest <= 1.3 ? 0 : 1;
}
