// SPDX-License-Identifier: GPL-3.0-or-later
// How soon, how right and since when: arc_delays [RUNS] [NAME PART]. Every log has one known fault. The false
// alarms are counted before it, the cause is read 30 arcs after the signal from a log that ends there.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>

#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

constexpr std::uint64_t lookOn = 30;
constexpr double budget = 1000;

double quantile(std::vector<double> values, double q) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(q * static_cast<double>(values.size() - 1) + 0.5)];
}

void score(const NamedSetting& named, int runs) {
    std::vector<double> delays, beginErrors;
    int falseSignals = 0, missed = 0, right = 0, held = 0;
    double quiet = 0, delaySum = 0;
    std::map<std::string, int> said;
    for (int run = 1; run <= runs; ++run) {
        const auto log = makeLog(named.setting, static_cast<std::uint64_t>(run));
        const auto change = static_cast<std::uint64_t>(log.change);
        const auto signals = signalsOf(log.history, budget);
        const auto* late = firstFrom(signals, change);
        const bool early = !signals.empty() && late != &signals.front();
        quiet += static_cast<double>(early ? signals.front().raisedAtArc : change - 1);
        falseSignals += early ? 1 : 0;
        if (late == nullptr) {
            ++missed;
            continue;
        }
        delays.push_back(static_cast<double>(late->raisedAtArc - change + 1));
        delaySum += delays.back();
        const auto soon = signalsOf(upTo(log.history, late->raisedAtArc + lookOn), budget);
        const auto* seen = firstFrom(soon, change);
        const auto& signal = seen != nullptr ? *seen : *late;
        ++said[std::string(drift::word(signal.cause))];
        right += signal.cause == causeOf(named.setting.fault) ? 1 : 0;
        held += signal.beganLow <= change && change <= signal.beganHigh ? 1 : 0;
        beginErrors.push_back(std::abs(static_cast<double>(signal.beganAtArc) - static_cast<double>(change)));
    }
    const double n = std::max<double>(1, static_cast<double>(delays.size()));
    std::printf("| %-24s | %.2f | %6.1f | %4.0f | %d | %3.0f %% | %4.1f | %3.0f %% |", named.name.c_str(),
                1000 * falseSignals / quiet, delaySum / n, quantile(delays, 0.9), missed, 100 * right / n,
                quantile(beginErrors, 0.5), 100 * held / n);
    for (const auto& [cause, count] : said) std::printf(" %s %d", cause.c_str(), count);
    std::printf("\n");
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 40;
    const std::string part = argc > 2 ? argv[2] : "";
    std::printf(
        "| fault | false per 1,000 | mean delay | p90 | missed of %d | right cause | median begin error | "
        "interval holds |\n|---|---|---|---|---|---|---|---|\n",
        runs);
    for (const auto& named : knownFaults())
        if (named.name.find(part) != std::string::npos) score(named, runs);
    return 0;
}
