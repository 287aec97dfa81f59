// SPDX-License-Identifier: GPL-3.0-or-later
// Did it help, said right or wrong: arc_recovery [RUNS]. A change of 0.02 dB is cured by a care action, or
// the action changes nothing; the verdict is read after the next 20 arcs, where "too early" is an answer too,
// and after 60. Logs without a signal before the care are left out. Beside it, for the grooves: the best that
// is possible when the exact laws of a clean and a dirty groove are known (likelihood ratio of the groove's
// readings after the care; no test errs less, J. Neyman & E. S. Pearson, Phil. Trans. R. Soc. A 231, 1933).
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <span>
#include <string>
#include <vector>

#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

enum class Cure { Helps, DoesNothing };

/// Empty when no signal had been raised by then: there was nothing to cure.
std::string verdict(LogSetting setting, std::string_view action, int careAt, int arcsAfter, Cure cure,
                    std::uint64_t seed) {
    setting.arcs = careAt + arcsAfter;
    setting.cured = cure == Cure::Helps ? careAt : setting.arcs + 1;
    auto history = makeLog(setting, seed).history;
    CareRecord record;
    record.id.uuid.bytes[0] = 99;
    record.tool = history.splicer;
    record.at = Instant{history.arcs[static_cast<std::size_t>(careAt) - 1].at.ms - 60'000, 0};
    record.action = ActionKey(action);
    history.events.push_back(record);
    const auto reports = drift::analyse(std::span(&history, 1), {}, drift::Detail::VerdictsOnly);
    bool complained = false;
    for (const auto& signal : reports.front().strata.front().signals)
        complained = complained || (signal.raisedAtArc >= static_cast<std::uint64_t>(setting.change) &&
                                    signal.raisedAtArc < static_cast<std::uint64_t>(careAt));
    if (!complained) return "";
    const auto& effects = reports.front().strata.front().effects;
    return effects.empty() ? "none" : std::string(drift::word(effects.front().verdict));
}

struct Said {
    std::map<std::string, int> words;
    int judged = 0;
};
Said saidOf(const LogSetting& setting, std::string_view action, int careAt, int arcsAfter, Cure cure,
            int runs) {
    Said said;
    for (int run = 1; run <= runs; ++run) {
        const auto word = verdict(setting, action, careAt, arcsAfter, cure, static_cast<std::uint64_t>(run));
        if (word.empty()) continue;
        ++said.words[word];
        ++said.judged;
    }
    return said;
}

constexpr std::size_t lossCells = 81;
using Law = std::array<double, lossCells>;

std::size_t cellOf(const LogSetting& setting, const FaultNow& fault, scenario::Randomness& random) {
    const double gain = std::exp(setting.setUpSd * random.normal());
    const double lot = std::abs(setting.lotDb * random.normal());
    const auto splice = drawSplice(setting, fault, gain, lot, true, random);
    const double cell = std::round(std::max(0.0, splice.lossDb) / setting.displayDb);
    return std::min(lossCells - 1, static_cast<std::size_t>(cell));
}

Law lawOf(const LogSetting& setting, const FaultNow& fault) {
    constexpr int draws = 1'000'000;
    Law law;
    law.fill(0.5);
    scenario::Randomness random(2, "laws");
    for (int i = 0; i < draws; ++i) ++law[cellOf(setting, fault, random)];
    for (double& n : law) n = std::log(n / draws);
    return law;
}

/// Share said right by the best test of so many readings when cured and still dirty are equally often right.
double bestPossible(const LogSetting& setting, int readings) {
    constexpr int repeats = 40'000;
    const auto grown = faultNow(setting, 1000);
    const auto clean = lawOf(setting, {}), dirty = lawOf(setting, grown);
    std::vector<double> cured, still;
    scenario::Randomness random(3, "verdicts");
    for (int i = 0; i < repeats; ++i)
        for (auto* sums : {&cured, &still}) {
            double sum = 0;
            for (int n = 0; n < readings; ++n) {
                const auto cell = cellOf(setting, sums == &cured ? FaultNow{} : grown, random);
                sum += dirty[cell] - clean[cell];
            }
            sums->push_back(sum);
        }
    std::sort(cured.begin(), cured.end());
    std::sort(still.begin(), still.end());
    // Raise the threshold until as many cures lie below it as faults above.
    std::size_t right = 0;
    while (right < cured.size() && cured[right] < still[still.size() - 1 - right]) ++right;
    return static_cast<double>(right) / repeats;
}

}  // namespace

int main(int argc, char** argv) {
    const int runs = argc > 1 ? std::atoi(argv[1]) : 100;
    struct Row {
        const char* name;
        Fault fault;
        int grooves;
        std::string_view action;
        int careAt;  ///< first arc after the care
    };
    const std::array rows{Row{"12 grooves, all up", Fault::Calibration, 12, action::arcCalibration, 720},
                          Row{"12 grooves, one up", Fault::Groove, 12, action::grooveClean, 1000},
                          Row{"1 groove, up", Fault::Calibration, 1, action::arcCalibration, 720}};
    std::printf(
        "| what was 0.02 dB up | the care | right at 20 arcs | too early at 20 | right at 60 | said at 20 |\n"
        "|---|---|---|---|---|---|\n");
    for (const auto& row : rows)
        for (const Cure cure : {Cure::Helps, Cure::DoesNothing}) {
            LogSetting setting;
            setting.fault = row.fault;
            setting.grooves = row.grooves;
            setting.stepDb = 0.02;
            if (row.grooves == 1) setting.offsetUm = 0.17;
            auto soon = saidOf(setting, row.action, row.careAt, 20, cure, runs);
            auto later = saidOf(setting, row.action, row.careAt, 60, cure, runs);
            const std::string truth = cure == Cure::Helps ? "recovered" : "no_change";
            std::printf(
                "| %s | %s | %.0f %% | %.0f %% | %.0f %% |", row.name,
                cure == Cure::Helps ? "cures it" : "does nothing", 100.0 * soon.words[truth] / soon.judged,
                100.0 * soon.words["too_early"] / soon.judged, 100.0 * later.words[truth] / later.judged);
            for (const auto& [word, count] : soon.words)
                if (count > 0) std::printf(" %s %d", word.c_str(), count);
            std::printf(" |\n");
            std::fflush(stdout);
        }
    LogSetting groove;
    groove.fault = Fault::Groove;
    groove.stepDb = 0.02;
    std::printf("best possible for one groove of 12: %.0f %% after 20 arcs, %.0f %% after 60\n",
                100 * bestPossible(groove, 20), 100 * bestPossible(groove, 60));
    return 0;
}
