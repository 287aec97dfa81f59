// SPDX-License-Identifier: GPL-3.0-or-later
// How good the electrode forecast is: many invented lives, each followed from new electrodes to their end.
// arc_forecast [LIVES]. Printed by age at the forecast: how often the 80 % interval holds the truth, and the
// mean absolute error beside that of the plain 5,000-arc rule.
#include "core/analytics/forecast.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <vector>

#include "core/scenario/histories.hpp"
#include "core/scenario/physics.hpp"
#include "core/scenario/randomness.hpp"
#include "core/scenario/simulate.hpp"

namespace {

using namespace arc;
using namespace arc::scenario;

/// Mean loss at an age: Gaussian offsets lose 10 log10(e) 2 sd^2 / w^2 dB on average.
double meanLossDb(const Machine& m, std::uint32_t age) {
    const Wear worn = wear(m, age);
    const double sd = m.offsetUm * worn.scatter;
    return m.baseDb + modeLossDb(std::sqrt(2.0) * sd * std::exp(m.setupSd * m.setupSd), 4.6, 4.6) +
           0.006 * 2 * 0.45 * 0.45 + worn.extraDb;
}

std::uint32_t trueLife(const Machine& m) {
    std::uint32_t age = 0;
    while (age < 20'000 && meanLossDb(m, age) < drift::spentMeanDb) ++age;
    return age;
}

Scenario lifeOf(const Machine& machine, Randomness& random, std::uint32_t arcs) {
    Scenario s;
    s.name = "life";
    s.start = *parseInstant("2031-01-01T00:00:00Z");
    s.splicers.push_back(machine);
    s.cleavers.push_back({"C-01", "", {}, 0.45, {}});
    const int perJob = 192 * machine.traits.grooves;
    for (std::uint32_t made = 0, j = 1; made < arcs; made += 192, ++j) {
        JobSetting job;
        job.label = "J-" + std::to_string(j);
        job.modeFieldB = 9.2 + 0.12 * random.normal();
        job.rule.attempts = 1;
        job.cables.push_back({"cable", perJob, FibreUnit::Tube, 12, "TIA-598", "G.652.D", std::nullopt, std::nullopt});
        ClosureSetting closure;
        closure.label = "K-" + std::to_string(j);
        closure.cableA = closure.cableB = "cable";
        for (int i = 1; i <= perJob; ++i) closure.plan.push_back({i, i});
        Assignment work;
        work.splicer = machine.label;
        work.cleaver = "C-01";
        work.job = job.label;
        work.closures = {closure.label};
        work.fromDay = static_cast<int>(j - 1) * 7;
        work.toDay = work.fromDay + 6;
        work.arcsPerDay = 48;
        job.closures.push_back(std::move(closure));
        s.jobs.push_back(std::move(job));
        s.work.push_back(std::move(work));
    }
    return s;
}

struct Score {
    int n = 0, held = 0;
    double error = 0, plainError = 0;
};

}  // namespace

int main(int argc, char** argv) {
    const int lives = argc > 1 ? std::atoi(argv[1]) : 100;
    std::map<std::pair<int, std::uint32_t>, Score> scores;  // grooves, age
    for (int i = 0; i < lives; ++i) {
        Randomness random(static_cast<std::uint64_t>(i) + 1, "lives");
        Machine m;
        m.label = "S-01";
        const bool mass = i % 2 == 1;
        m.traits = mass ? Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual} : Splicer{};
        m.offsetUm = mass ? random.uniform(0.17, 0.24) : random.uniform(0.13, 0.2);
        m.minutesPerArc = 8;
        m.wearStart = static_cast<std::uint32_t>(random.uniform(2'600, 4'400));
        m.wearScale = random.uniform(1'500, 4'500);
        m.wearPower = random.uniform(1.2, 2.0);
        const auto life = trueLife(m);
        const auto log = simulate(lifeOf(m, random, std::min<std::uint32_t>(life, 8'000)), 1);
        if (!log) {
            std::fprintf(stderr, "%s\n", log.error().sentence().c_str());
            return 2;
        }
        auto crew = historiesOf(lifeOf(m, random, 0), *log);
        if (crew.empty()) return 2;
        const auto whole = crew.at(0);
        for (const std::uint32_t age : {3'500u, 4'000u, 4'500u}) {
            if (age >= life || age > whole.arcs.size()) continue;
            auto seen = whole;
            seen.arcs.resize(age);
            const auto forecast = drift::forecastElectrodes(seen);
            if (!forecast.arcsLeft) continue;
            const double truth = static_cast<double>(life) - age;
            auto& score = scores[{m.traits.grooves, age}];
            ++score.n;
            score.held += *forecast.arcsLeftLow <= truth && truth <= *forecast.arcsLeftHigh ? 1 : 0;
            score.error += std::abs(*forecast.arcsLeft - truth);
            score.plainError += std::abs(forecast.plainRuleLeft - truth);
        }
    }
    std::printf(
        "| grooves | age | lives | 80 %% interval holds | mean error | plain rule "
        "|\n|---|---|---|---|---|---|\n");
    Score all;
    for (const auto& [key, s] : scores) {
        std::printf("| %d | %u | %d | %.0f %% | %.0f arcs | %.0f arcs |\n", key.first, key.second, s.n,
                    100.0 * s.held / s.n, s.error / s.n, s.plainError / s.n);
        all.n += s.n;
        all.held += s.held;
        all.error += s.error;
        all.plainError += s.plainError;
    }
    if (all.n > 0)
        std::printf("| all | | %d | %.0f %% | %.0f arcs | %.0f arcs |\n", all.n, 100.0 * all.held / all.n,
                    all.error / all.n, all.plainError / all.n);
    return 0;
}
