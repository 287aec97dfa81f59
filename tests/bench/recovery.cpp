// SPDX-License-Identifier: GPL-3.0-or-later
// Did it help, said right or wrong: arc_recovery [RUNS]. A change of 0.02 dB is cured by a care action, or
// the action changes nothing; the verdict is read after the next 20 arcs. Logs without a signal before the
// care are left out.
#include <array>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <span>
#include <string>

#include "tests/bench/splice_logs.hpp"

namespace {

using namespace arc;
using namespace arc::bench;

enum class Cure { Helps, DoesNothing };

/// Empty when no signal had been raised by then: there was nothing to cure.
std::string verdict(LogSetting setting, std::string_view action, int careAt, Cure cure, std::uint64_t seed) {
    setting.arcs = careAt + 20;
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
    std::printf("| what was 0.02 dB up | the care | said right | said |\n|---|---|---|---|\n");
    for (const auto& row : rows)
        for (const Cure cure : {Cure::Helps, Cure::DoesNothing}) {
            LogSetting setting;
            setting.fault = row.fault;
            setting.grooves = row.grooves;
            setting.stepDb = 0.02;
            if (row.grooves == 1) setting.offsetUm = 0.17;
            std::map<std::string, int> said;
            int judged = 0;
            for (int run = 1; run <= runs; ++run) {
                const auto word =
                    verdict(setting, row.action, row.careAt, cure, static_cast<std::uint64_t>(run));
                if (word.empty()) continue;
                ++said[word];
                ++judged;
            }
            const int right = said[cure == Cure::Helps ? "recovered" : "no_change"];
            std::printf("| %s | %s | %.0f %% |", row.name, cure == Cure::Helps ? "cures it" : "does nothing",
                        100.0 * right / judged);
            for (const auto& [word, count] : said)
                if (count > 0) std::printf(" %s %d", word.c_str(), count);
            std::printf(" |\n");
            std::fflush(stdout);
        }
    return 0;
}
