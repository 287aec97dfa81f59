// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/splice_logs.hpp"

#include <algorithm>
#include <cmath>
#include <span>

namespace arc::bench {

using namespace arc::literals;

namespace {

constexpr double radiusUm = 4.6, perRadius = 4.343;
constexpr double baseDb = 0.008, noiseDb = 0.004;
constexpr double angleSd = 0.45, anglePerSquare = 0.006;
constexpr int dirtGrows = 40;

double gammaDraw(double shape, scenario::Randomness& random) {
    // G. Marsaglia, W. W. Tsang, ACM Trans. Math. Softw. 26, 2000; shape at least 1.
    const double d = shape - 1.0 / 3, c = 1 / std::sqrt(9 * d);
    while (true) {
        const double x = random.normal(), v = std::pow(1 + c * x, 3);
        if (v > 0 && std::log(1 - random.uniform()) < x * x / 2 + d - d * v + d * std::log(v)) return d * v;
    }
}

/// Mean 1.
double unitDraw(Family family, scenario::Randomness& random) {
    switch (family) {
        case Family::Gamma:
            return gammaDraw(2.0, random) / 2.0;
        case Family::Lognormal:
            return std::exp(0.6 * random.normal() - 0.18);
        case Family::Weibull:
            return std::pow(-std::log(1 - random.uniform()), 1 / 1.4) / std::tgamma(1 + 1 / 1.4);
        case Family::Physics:
            break;
    }
    return 1;
}

}  // namespace

FaultNow faultNow(const LogSetting& setting, int since) {
    FaultNow now;
    if (since < 0) return now;
    switch (setting.fault) {
        case Fault::None:
            break;
        case Fault::Groove:
            now.dirtUm = radiusUm * std::sqrt(setting.stepDb / perRadius) *
                         std::min(1.0, static_cast<double>(since) / dirtGrows);
            break;
        case Fault::Calibration:
        case Fault::Fibre:
            now.extraDb = setting.stepDb;
            break;
        case Fault::Cleaver:
            now.angleScatter = 1 + 1.1 * std::min(1.0, since / 150.0);
            break;
        case Fault::Electrode: {
            const double worn = std::pow(since / 2600.0, 1.6);
            now.scatter = 1 + 2 * worn;
            now.extraDb = 0.05 * worn;
            break;
        }
    }
    return now;
}

Splice drawSplice(const LogSetting& setting, const FaultNow& fault, double setUpGain, double lotDb,
                  bool inDirtyGroove, scenario::Randomness& random) {
    const double sd = setting.offsetUm * setUpGain * fault.scatter;
    const double dx = sd * random.normal(), dy = sd * random.normal() + (inDirtyGroove ? fault.dirtUm : 0);
    Splice splice;
    splice.left = std::abs(angleSd * fault.angleScatter * random.normal());
    splice.right = std::abs(angleSd * fault.angleScatter * random.normal());
    const double angles = anglePerSquare * (splice.left * splice.left + splice.right * splice.right);
    double loss = perRadius * (dx * dx + dy * dy) / (radiusUm * radiusUm);
    if (setting.family != Family::Physics)
        loss = perRadius * 2 * sd * sd / (radiusUm * radiusUm) * unitDraw(setting.family, random);
    splice.lossDb = baseDb + loss + angles + lotDb + fault.extraDb + noiseDb * random.normal();
    if (random.uniform() < setting.outliers) splice.lossDb += random.uniform(0.1, 0.4);
    return splice;
}

Log makeLog(const LogSetting& setting, std::uint64_t seed) {
    scenario::Randomness random(seed, "splice logs");
    Log log;
    auto& history = log.history;
    history.splicer.uuid.bytes[0] = 1;
    history.label = "S-01";
    history.modes = {"G.652-G.652"};
    ToolId cleaver;
    cleaver.uuid.bytes[0] = 7;
    history.cleavers = {cleaver};
    int change = setting.fault == Fault::None ? setting.arcs + 1 : setting.change;
    if (setting.fault == Fault::Fibre)
        change = (setting.change - 1) / setting.arcsPerJob * setting.arcsPerJob + 1;
    log.change = setting.fault == Fault::None ? 0 : change;
    const auto counter = static_cast<std::uint32_t>(
        setting.fault == Fault::Electrode ? 3200 - change : random.uniform(200, 4200));
    history.arcs.reserve(static_cast<std::size_t>(setting.arcs));
    history.readings.reserve(static_cast<std::size_t>(setting.arcs) *
                             static_cast<std::size_t>(setting.grooves));
    double gain = 1, lot = 0;
    const auto start = parseInstant("2031-03-03T07:00:00Z");
    for (int i = 0; i < setting.arcs; ++i) {
        if (i % setting.setUpArcs == 0) gain = std::exp(setting.setUpSd * random.normal());
        if (i % setting.arcsPerJob == 0) {
            lot = std::abs(setting.lotDb * random.normal());
            JobId job;
            job.uuid.bytes[0] = static_cast<std::uint8_t>(history.jobs.size() + 1);
            history.jobs.push_back(job);
            history.jobLabels.push_back("J" + std::to_string(history.jobs.size()));
        }
        log.setUpGain.push_back(gain);
        log.lotDb.push_back(lot);
        const auto fault = faultNow(setting, i + 1 < setting.cured ? i + 1 - change : -1);
        HistoryArc arc;
        arc.at = Instant{start->ms + (i / 96) * 86'400'000LL + (i % 96) * 360'000LL, 0};
        arc.counter = ArcCount{counter + static_cast<std::uint32_t>(i)};
        arc.job = static_cast<std::uint32_t>(i / setting.arcsPerJob);
        arc.cleaver = 0;
        arc.channels = arc.readingCount = static_cast<std::uint8_t>(setting.grooves);
        arc.firstReading = history.readings.size();
        const bool cold = setting.fault == Fault::Calibration && i + 1 >= change;
        arc.temperature = cold ? 3.0_degC : 18.0_degC;
        for (int c = 1; c <= setting.grooves; ++c) {
            const bool dirty =
                std::find(setting.dirty.begin(), setting.dirty.end(), c) != setting.dirty.end();
            const auto splice = drawSplice(setting, fault, gain, lot, dirty, random);
            HistoryReading reading;
            reading.channel = static_cast<std::uint8_t>(c);
            const double shown = std::round(std::max(0.0, splice.lossDb) / setting.displayDb);
            reading.loss = Loss{static_cast<std::int32_t>(std::lround(shown * setting.displayDb * 1000))};
            reading.cleaveLeft = Angle{static_cast<std::int32_t>(std::lround(splice.left * 10)) * 10};
            reading.cleaveRight = Angle{static_cast<std::int32_t>(std::lround(splice.right * 10)) * 10};
            history.readings.push_back(reading);
        }
        history.arcs.push_back(arc);
    }
    log.readings = static_cast<int>(history.readings.size());
    return log;
}

SplicerHistory upTo(const SplicerHistory& history, std::uint64_t arcs) {
    SplicerHistory cut = history;
    if (arcs < cut.arcs.size()) cut.arcs.resize(arcs);
    return cut;
}

drift::Cause causeOf(Fault fault) {
    switch (fault) {
        case Fault::Groove:
            return drift::Cause::Groove;
        case Fault::Calibration:
            return drift::Cause::Calibration;
        case Fault::Cleaver:
            return drift::Cause::Cleaver;
        case Fault::Fibre:
            return drift::Cause::Fibre;
        case Fault::Electrode:
            return drift::Cause::Electrode;
        case Fault::None:
            break;
    }
    return drift::Cause::Unknown;
}

std::vector<drift::Signal> signalsOf(const SplicerHistory& history, double budgetArcs) {
    drift::Settings settings;
    settings.budgetArcs = budgetArcs;
    const auto reports = drift::analyse(std::span(&history, 1), settings, drift::Detail::VerdictsOnly);
    std::vector<drift::Signal> signals;
    for (const auto& stratum : reports.at(0).strata)
        signals.insert(signals.end(), stratum.signals.begin(), stratum.signals.end());
    std::stable_sort(signals.begin(), signals.end(),
                     [](const auto& a, const auto& b) { return a.raisedAtArc < b.raisedAtArc; });
    return signals;
}

const drift::Signal* firstFrom(const std::vector<drift::Signal>& signals, std::uint64_t arc) {
    const auto found = std::ranges::find_if(signals, [arc](const auto& s) { return s.raisedAtArc >= arc; });
    return found == signals.end() ? nullptr : &*found;
}

std::vector<NamedSetting> knownFaults() {
    const auto with = [](Fault fault, double step, std::vector<int> dirty, int grooves) {
        LogSetting s;
        s.fault = fault;
        s.stepDb = step;
        s.dirty = std::move(dirty);
        s.grooves = grooves;
        if (grooves == 1) s.offsetUm = 0.17;
        return s;
    };
    return {{"groove 0.02", with(Fault::Groove, 0.02, {5}, 12)},
            {"groove 0.04", with(Fault::Groove, 0.04, {5}, 12)},
            {"groove 0.08", with(Fault::Groove, 0.08, {5}, 12)},
            {"two grooves 0.03", with(Fault::Groove, 0.03, {5, 6}, 12)},
            {"calibration 0.01", with(Fault::Calibration, 0.01, {}, 12)},
            {"calibration 0.02", with(Fault::Calibration, 0.02, {}, 12)},
            {"cleaver", with(Fault::Cleaver, 0, {}, 12)},
            {"electrode", with(Fault::Electrode, 0, {}, 12)},
            {"fibre 0.015", with(Fault::Fibre, 0.015, {}, 12)},
            {"single, calibration 0.01", with(Fault::Calibration, 0.01, {}, 1)},
            {"single, cleaver", with(Fault::Cleaver, 0, {}, 1)},
            {"single, electrode", with(Fault::Electrode, 0, {}, 1)}};
}

}  // namespace arc::bench
