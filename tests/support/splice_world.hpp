// SPDX-License-Identifier: GPL-3.0-or-later
// Small seeded splice logs with a known fault, for tests of the charts. Loss of a splice between equal
// Gaussian modes of radius w that are d apart: 4.343 (d / w)^2 dB (D. Marcuse, Bell Syst. Tech. J. 56(5),
// 1977); all numbers about machines are invented.
#pragma once
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>

#include "core/analytics/drift.hpp"

namespace arc::testing {

enum class Fault { None, Groove, Calibration, Cleaver, Fibre, Electrode };

struct World {
    int arcs = 900;
    int grooves = 12;
    double offsetUm = 0.33;
    double setUpSd = 0.07;  ///< set-ups of 24 arcs
    int stepMdb = 10;       ///< display step, 0.001 dB
    int arcsPerJob = 150;
    Fault fault = Fault::None;
    int change = 601;       ///< first changed arc, from 1
    int cured = 1'000'000;  ///< first arc after the cure
    double sizeDb = 0.03;
    int groove = 5;
    double offsetMinutes = 0;
};

/// Standard normal by sums of uniforms' inverse is not portable; Box-Muller on mt19937_64 is.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    double uniform() { return (static_cast<double>(engine_() >> 11) + 0.5) / 9007199254740992.0; }
    double normal() { return std::sqrt(-2 * std::log(uniform())) * std::cos(6.283185307179586 * uniform()); }

  private:
    std::mt19937_64 engine_;
};

inline SplicerHistory makeLog(const World& world, std::uint64_t seed) {
    constexpr double radius = 4.6;
    Dice dice(seed);
    SplicerHistory log;
    log.splicer.uuid.bytes[0] = 1;
    log.label = "S-01";
    log.modes = {"G.652-G.652"};
    ToolId cleaver;
    cleaver.uuid.bytes[0] = 7;
    log.cleavers = {cleaver};
    double gain = 1, lot = 0;
    for (int i = 0; i < world.arcs; ++i) {
        if (i % 24 == 0) gain = std::exp(world.setUpSd * dice.normal());
        if (i % world.arcsPerJob == 0) {
            lot = std::abs(0.0015 * dice.normal());
            JobId job;
            job.uuid.bytes[0] = static_cast<std::uint8_t>(log.jobs.size() + 1);
            log.jobs.push_back(job);
            log.jobLabels.push_back("J" + std::to_string(log.jobs.size()));
        }
        const bool on = i + 1 >= world.change && i + 1 < world.cured;
        const double grown = on ? std::min(1.0, (i + 1 - world.change) / 40.0) : 0.0;
        const double age = on ? (i + 1 - world.change) / 1000.0 : 0.0;
        double sigma = world.offsetUm * gain, extra = lot, angleSd = 0.45;
        if (world.fault == Fault::Calibration || world.fault == Fault::Fibre) extra += on ? world.sizeDb : 0;
        if (world.fault == Fault::Electrode) sigma *= 1 + age, extra += 0.02 * age;
        if (world.fault == Fault::Cleaver) angleSd *= 1 + 1.1 * std::min(1.0, 4 * age);
        HistoryArc arc;
        arc.at = Instant{1'930'201'200'000 + static_cast<std::int64_t>(i) * 360'000,
                         static_cast<std::int16_t>(world.offsetMinutes)};
        arc.counter = ArcCount{static_cast<std::uint32_t>(3000 + i)};
        arc.job = static_cast<std::uint32_t>(i / world.arcsPerJob);
        arc.cleaver = 0;
        arc.channels = static_cast<std::uint8_t>(world.grooves);
        arc.readingCount = arc.channels;
        arc.firstReading = log.readings.size();
        for (int c = 1; c <= world.grooves; ++c) {
            const bool dirty = world.fault == Fault::Groove && c == world.groove;
            const double push = dirty ? radius * std::sqrt(world.sizeDb / 4.343) * grown : 0;
            const double dx = sigma * dice.normal(), dy = sigma * dice.normal() + push;
            const double left = std::abs(angleSd * dice.normal()), right = std::abs(angleSd * dice.normal());
            const double loss = 0.008 + 4.343 * (dx * dx + dy * dy) / (radius * radius) +
                                0.006 * (left * left + right * right) + extra + 0.004 * dice.normal();
            HistoryReading reading;
            reading.channel = static_cast<std::uint8_t>(c);
            reading.loss =
                Loss{static_cast<std::int32_t>(std::lround(std::max(0.0, loss) * 1000 / world.stepMdb)) *
                     world.stepMdb};
            reading.cleaveLeft = Angle{static_cast<std::int32_t>(std::lround(left * 10)) * 10};
            reading.cleaveRight = Angle{static_cast<std::int32_t>(std::lround(right * 10)) * 10};
            log.readings.push_back(reading);
        }
        log.arcs.push_back(arc);
    }
    return log;
}

/// The first signal at or after an arc, if any.
inline const drift::Signal* firstSignal(const drift::SplicerReport& report, std::uint64_t fromArc) {
    const drift::Signal* first = nullptr;
    for (const auto& stratum : report.strata)
        for (const auto& signal : stratum.signals)
            if (signal.raisedAtArc >= fromArc && (!first || signal.raisedAtArc < first->raisedAtArc))
                first = &signal;
    return first;
}

}  // namespace arc::testing
