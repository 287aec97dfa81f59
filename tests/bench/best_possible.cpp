// SPDX-License-Identifier: GPL-3.0-or-later
// The best that is possible beside what the charts do: arc_best_possible [RUNS] [NAME PART]. A
// likelihood-ratio CUSUM is told the exact law of every reading before the fault and at every age after it,
// and that no other fault exists; its limit lets all of it alarm falsely as often as all our charts together.
// For a sudden change and independent readings nothing is faster in the worst case (G. V. Moustakides, Ann.
// Statist. 14, 1986); set-ups make readings hang together, so it is a yardstick here, not a proof.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

#include "tests/bench/splice_logs.hpp"
#include "tests/bench/told_laws.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

constexpr double budget = 1000;

class Told {
  public:
    explicit Told(const LogSetting& setting) : ratios_(setting) {}

    /// Largest sum over all begins, per arc; empties itself after an alarm at `limit`.
    std::vector<double> path(const SplicerHistory& history, double limit) const {
        std::vector<double> most;
        std::vector<Begin> begins;
        double step = 0;
        for (std::size_t i = 0; i < history.arcs.size(); ++i) {
            const auto seen = seenIn(history, i);
            double now = 0;
            if (ratios_.grows()) {
                if (i % static_cast<std::size_t>(ratios_.every()) == 0) begins.push_back({i, 0});
                for (auto& begin : begins) {
                    begin.sum += ratios_.arc(seen, static_cast<int>(i - begin.at));
                    now = std::max(now, begin.sum);
                }
                std::erase_if(begins, [&](const Begin& b) {
                    return i - b.at >= ToldRatios::longestFault || (b.sum < now - 15 && i - b.at > 100);
                });
            } else {
                step = std::max(0.0, step + ratios_.arc(seen, 0));
                now = step;
            }
            most.push_back(now);
            if (now >= limit) {
                begins.clear();
                step = 0;
            }
        }
        return most;
    }

  private:
    struct Begin {
        std::size_t at = 0;
        double sum = 0;
    };

    ToldRatios ratios_;
};

/// The limit at which healthy logs alarm once in a budget's arcs, counted to the first alarm of each.
double limitOf(const Told& told, LogSetting setting, int runs) {
    setting.fault = Fault::None;
    std::vector<std::vector<double>> paths;
    for (int run = 1; run <= runs; ++run)
        paths.push_back(told.path(makeLog(setting, 50'000 + static_cast<std::uint64_t>(run)).history, 1e9));
    double low = 0, high = 100;
    for (int round = 0; round < 40; ++round) {
        const double limit = (low + high) / 2;
        double alarms = 0, arcs = 0;
        for (const auto& path : paths) {
            const auto first =
                std::find_if(path.begin(), path.end(), [limit](double sum) { return sum >= limit; });
            alarms += first != path.end() ? 1 : 0;
            arcs += static_cast<double>(first - path.begin()) + (first != path.end() ? 1 : 0);
        }
        (alarms / arcs > 1 / budget ? low : high) = limit;
    }
    return high;
}

struct Delays {
    double sum = 0;
    int seen = 0, missed = 0;
    void add(std::uint64_t raised, int change) {
        sum += static_cast<double>(raised) - change + 1;
        ++seen;
    }
    [[nodiscard]] double mean() const { return seen > 0 ? sum / seen : 0; }
};

void compare(const NamedSetting& named, int runs) {
    const Told told(named.setting);
    const double limit = limitOf(told, named.setting, std::max(runs, 200));
    Delays best, ours;
    for (int run = 1; run <= runs; ++run) {
        const auto log = makeLog(named.setting, static_cast<std::uint64_t>(run));
        const auto path = told.path(log.history, limit);
        const auto first = std::find_if(path.begin() + log.change - 1, path.end(),
                                        [limit](double sum) { return sum >= limit; });
        if (first == path.end())
            ++best.missed;
        else
            best.add(static_cast<std::uint64_t>(first - path.begin()) + 1, log.change);
        const auto signals = signalsOf(log.history, budget);
        if (const auto* late = firstFrom(signals, static_cast<std::uint64_t>(log.change)))
            ours.add(late->raisedAtArc, log.change);
        else
            ++ours.missed;
    }
    std::printf("| %s | %.1f (%d missed) | %.1f (%d missed) | %.2f |\n", named.name.c_str(), best.mean(),
                best.missed, ours.mean(), ours.missed, ours.mean() / best.mean());
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 200;
    const std::string part = argc > 2 ? argv[2] : "";
    std::printf(
        "| fault (%d logs) | best possible, arcs | all our charts, arcs | ratio |\n|---|---|---|---|\n",
        runs);
    for (const auto& named : knownFaults())
        if (named.setting.fault != Fault::Groove && named.name.find(part) != std::string::npos)
            compare(named, runs);
    return 0;
}
