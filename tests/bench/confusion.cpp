// SPDX-License-Identifier: GPL-3.0-or-later
// Cause said against cause true, over the scenarios beside this file: arc_confusion [SEEDS] [FILE...]
// A signal is matched with the fault that is active on its splicer when it is raised; the first one of each
// fault counts. Printed: the matrix, missed faults, signals while nothing was wrong per 1,000 arcs, the
// delay, the error of the begin and whether its interval holds the truth; and of every care action what was
// said of it against what it did to the losses of that splicer.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/scenario/histories.hpp"
#include "core/scenario/simulate.hpp"
#include "storage/scenario_json.hpp"

namespace {

using namespace arc;
namespace fs = std::filesystem;

struct Tally {
    std::map<std::string, std::map<std::string, int>> said;  ///< true cause → cause said
    std::map<std::string, std::map<std::string, int>> care;  ///< what care did → verdict said
    std::vector<double> delays, beginErrors;
    int covered = 0, matched = 0;
    int falseSignals = 0;
    std::uint64_t quietArcs = 0;

    void add(const Tally& other) {
        for (const auto& [truth, row] : other.said)
            for (const auto& [cause, n] : row) said[truth][cause] += n;
        for (const auto& [truth, row] : other.care)
            for (const auto& [verdict, n] : row) care[truth][verdict] += n;
        delays.insert(delays.end(), other.delays.begin(), other.delays.end());
        beginErrors.insert(beginErrors.end(), other.beginErrors.begin(), other.beginErrors.end());
        covered += other.covered;
        matched += other.matched;
        falseSignals += other.falseSignals;
        quietArcs += other.quietArcs;
    }
};

/// A fault on one splicer; what a cure leaves in the charts for a while is not a false signal.
struct Stretch {
    std::string cause;
    std::uint64_t begin = 0, end = 0;
    bool seen = false;
};
constexpr std::uint64_t aftermath = 30;

std::vector<Stretch> stretchesOf(const scenario::SimulatedLog& log, const SplicerHistory& history) {
    std::vector<Stretch> stretches;
    for (const auto& fault : log.truth)
        for (const auto& t : fault.touched)
            if (t.splicer == history.label)
                stretches.push_back({std::string(drift::word(fault.cause)), t.beginArc,
                                     t.endArc.value_or(history.arcs.size())});
    return stretches;
}

void match(const drift::Signal& signal, std::vector<Stretch>& stretches, Tally& tally) {
    Stretch* best = nullptr;
    bool aftermathOf = false;
    for (auto& stretch : stretches) {
        if (signal.raisedAtArc < stretch.begin) continue;
        if (signal.raisedAtArc <= stretch.end) {
            if (!best || stretch.begin > best->begin) best = &stretch;
        } else if (signal.raisedAtArc <= stretch.end + aftermath) {
            aftermathOf = true;
        }
    }
    if (!best) {
        if (!aftermathOf) ++tally.falseSignals;
        return;
    }
    if (best->seen) return;
    best->seen = true;
    ++tally.said[best->cause][std::string(drift::word(signal.cause))];
    const auto truth = static_cast<double>(best->begin);
    tally.delays.push_back(static_cast<double>(signal.raisedAtArc) - truth + 1);
    tally.beginErrors.push_back(std::abs(static_cast<double>(signal.beganAtArc) - truth));
    ++tally.matched;
    if (signal.beganLow <= best->begin && best->begin <= signal.beganHigh) ++tally.covered;
}

/// "cured" when a fault of this splicer ended with that care, "worse" when one began with it.
std::string whatItDid(const CareRecord& record, const scenario::SimulatedLog& log,
                      const std::string& splicer) {
    for (const auto& done : log.care) {
        if (done.at != record.at || done.setting.action != record.action) continue;
        if (done.setting.effect == scenario::Effect::Worse) return "made worse";
    }
    for (const auto& fault : log.truth) {
        if (fault.endedBy != record.action) continue;
        for (const auto& t : fault.touched) {
            if (t.splicer != splicer || !t.end || *t.end > record.at) continue;
            // Nothing but a night or a weekend between the last bad arc and the care.
            if (record.at.ms - t.end->ms < 4 * msPerDay) return "cured";
        }
    }
    return "no matter";
}

void judgeCare(const SplicerHistory& history, const drift::SplicerReport& report,
               const scenario::SimulatedLog& log, Tally& tally) {
    for (const auto& stratum : report.strata)
        for (const auto& effect : stratum.effects)
            for (const auto& record : history.events)
                if (record.id == effect.care && effect.verdict != drift::CareVerdict::TooEarly)
                    ++tally.care[whatItDid(record, log, history.label)]
                                [std::string(drift::word(effect.verdict))];
}

Tally run(const scenario::Scenario& settings, std::uint64_t seed) {
    Tally tally;
    const auto log = scenario::simulate(settings, seed);
    if (!log) {
        std::fprintf(stderr, "%s\n", log.error().sentence().c_str());
        std::exit(2);
    }
    const auto crew = scenario::historiesOf(settings, *log);
    const auto reports = drift::analyse(crew, drift::Settings{}, drift::Detail::VerdictsOnly);
    for (std::size_t i = 0; i < crew.size(); ++i) {
        auto stretches = stretchesOf(*log, crew[i]);
        std::vector<drift::Signal> signals;
        for (const auto& stratum : reports[i].strata)
            signals.insert(signals.end(), stratum.signals.begin(), stratum.signals.end());
        std::sort(signals.begin(), signals.end(),
                  [](const auto& a, const auto& b) { return a.raisedAtArc < b.raisedAtArc; });
        for (const auto& signal : signals)
            if (signal.chart != drift::ChartKind::LoneSplice) match(signal, stretches, tally);
        judgeCare(crew[i], reports[i], *log, tally);
        std::uint64_t quiet = crew[i].arcs.size();
        for (const auto& stretch : stretches) {
            quiet -= std::min(quiet, stretch.end - stretch.begin + 1 + aftermath);
            if (!stretch.seen) ++tally.said[stretch.cause]["missed"];
        }
        tally.quietArcs += quiet;
    }
    return tally;
}

double median(std::vector<double> values) {
    if (values.empty()) return 0;
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                     values.end());
    return values[values.size() / 2];
}

void print(const std::string& name, const Tally& tally) {
    std::printf(
        "%-28s false %5.2f per 1,000 (%d in %llu arcs); median delay %.0f, begin off by %.0f, interval holds "
        "%d of %d\n",
        name.c_str(),
        tally.quietArcs ? 1000.0 * tally.falseSignals / static_cast<double>(tally.quietArcs) : 0.0,
        tally.falseSignals, static_cast<unsigned long long>(tally.quietArcs), median(tally.delays),
        median(tally.beginErrors), tally.covered, tally.matched);
    for (const auto& [truth, row] : tally.said) {
        std::printf("    %-12s said:", truth.c_str());
        for (const auto& [cause, n] : row) std::printf(" %s %d", cause.c_str(), n);
        std::printf("\n");
    }
    for (const auto& [truth, row] : tally.care) {
        std::printf("    care: %-10s said:", truth.c_str());
        for (const auto& [verdict, n] : row) std::printf(" %s %d", verdict.c_str(), n);
        std::printf("\n");
    }
}

}  // namespace

int main(int argc, char** argv) {
    const int seeds = argc > 1 ? std::atoi(argv[1]) : 20;
    std::vector<fs::path> files(argv + std::min(argc, 2), argv + argc);
    if (files.empty())
        for (const auto& entry : fs::directory_iterator(ARC_SOURCE_DIR "/tests/bench/scenarios"))
            if (entry.path().extension() == ".json") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    Tally all;
    for (const auto& path : files) {
        std::ifstream file(path, std::ios::binary);
        const std::string text{std::istreambuf_iterator<char>(file), {}};
        const auto settings = storage::scenarioFromJson(text);
        if (!settings) {
            std::fprintf(stderr, "%s: %s\n", path.c_str(), settings.error().sentence().c_str());
            return 2;
        }
        Tally tally;
        for (int seed = 1; seed <= seeds; ++seed) tally.add(run(*settings, static_cast<std::uint64_t>(seed)));
        print(path.stem().string(), tally);
        all.add(tally);
    }
    print("all", all);
    return 0;
}
