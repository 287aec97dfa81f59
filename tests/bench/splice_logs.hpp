// SPDX-License-Identifier: GPL-3.0-or-later
// Splice logs of one machine with one known fault, fast and with the exact law of every loss, for the benches
// of the charts. Loss physics: Gaussian modes, 4.343 (offset / w)^2 dB (D. Marcuse, Bell Syst. Tech. J.
// 56(5), 1977), with cleave angles, lots of fibre and the estimator's noise. All numbers about machines are
// invented.
#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/scenario/randomness.hpp"

namespace arc::bench {

enum class Fault { None, Groove, Calibration, Cleaver, Fibre, Electrode };
/// What the losses look like: from the physics, or drawn from a law with the same mean.
enum class Family { Physics, Gamma, Lognormal, Weibull };

struct LogSetting {
    int arcs = 2000;
    int grooves = 12;
    Family family = Family::Physics;
    double offsetUm = 0.33;  ///< scatter of the offset per axis
    double setUpSd = 0.07;   ///< of the log of that scatter, by set-up
    int setUpArcs = 24, arcsPerJob = 150;
    double lotDb = 0.0015;  ///< scatter of the job's fibre
    double outliers = 0.008;
    double displayDb = 0.01;
    Fault fault = Fault::None;
    int change = 638;       ///< first changed arc, from 1; a fibre fault begins with the job of that arc
    int cured = 1'000'000;  ///< first arc without the fault again
    double stepDb = 0.03;
    std::vector<int> dirty{5};  ///< grooves, from 1
};

/// What the fault does to an arc of age `since` (0 = the first changed arc).
struct FaultNow {
    double extraDb = 0, scatter = 1, angleScatter = 1, dirtUm = 0;
};
FaultNow faultNow(const LogSetting& setting, int since);

/// One loss of the physics family before display, dB. Angles in degrees as made.
struct Splice {
    double lossDb = 0, left = 0, right = 0;
};
Splice drawSplice(const LogSetting& setting, const FaultNow& fault, double setUpGain, double lotDb,
                  bool inDirtyGroove, scenario::Randomness& random);

struct Log {
    SplicerHistory history;
    int change = 0;  ///< first changed arc, 0 = none
    int readings = 0;
    std::vector<double> setUpGain, lotDb;  ///< by arc, what nobody but the simulation knows
};
Log makeLog(const LogSetting& setting, std::uint64_t seed);

/// The log up to an arc.
SplicerHistory upTo(const SplicerHistory& history, std::uint64_t arcs);

drift::Cause causeOf(Fault fault);

/// Signals of a log by the arc that raised them.
std::vector<drift::Signal> signalsOf(const SplicerHistory& history, double budgetArcs);
/// The first of them raised at `arc` or later; null when there is none.
const drift::Signal* firstFrom(const std::vector<drift::Signal>& signals, std::uint64_t arc);

/// The faults whose delay, cause and begin are measured, by name.
struct NamedSetting {
    std::string name;
    LogSetting setting;
};
std::vector<NamedSetting> knownFaults();

}  // namespace arc::bench
