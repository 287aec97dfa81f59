// SPDX-License-Identifier: GPL-3.0-or-later
// Makes the log of an invented crew with known faults.
//
// Loss of a splice: Gaussian modes of radius w apart by (dx, dy) lose 10 log10(e) (dx^2 + dy^2) / w^2 dB, and
// unequal radii -20 log10(2 wa wb / (wa^2 + wb^2)) dB (D. Marcuse, Bell Syst. Tech. J. 56(5), 1977); core
// offsets are Gaussian, a dirty groove pushes its fibre aside, worn electrodes scatter more and lose more, a
// stale calibration lifts every groove, a dull blade widens the cleave angles. Shown in the display step of
// the splicer, never below 0. The same scenario and seed give the same log on every machine.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/result.hpp"
#include "core/scenario/scenario.hpp"
#include "core/units/quantity.hpp"

namespace arc::scenario {

struct SimulatedReading {
    int channel = 1;
    int fibreA = 0, fibreB = 0;
    Loss shown;                       ///< as the splicer shows it
    double trueDb = 0;                ///< without the noise of the estimate
    double radiusA = 0, radiusB = 0;  ///< mode-field radii, micrometres
    Angle cleaveLeft, cleaveRight;
};

struct SimulatedArc {
    Instant at;
    std::string splicer, cleaver, job, closure, mode, operatorName;
    int channels = 1;
    int attempt = 1;
    std::uint64_t number = 0;   ///< arc of this splicer in the log, from 1
    std::uint32_t counter = 0;  ///< lifetime counter of the splicer
    Temperature temperature;
    Humidity humidity;
    Pressure pressure;
    std::vector<SimulatedReading> readings;
};

struct SimulatedCare {
    Instant at;
    CareSetting setting;
    std::uint32_t counter = 0;  ///< of a splicer: its counter then
};

struct SimulatedMeasurement {
    std::string closure, job;
    int fibre = 0;
    int wavelengthNm = 1550;
    std::optional<Loss> aToB, bToA;
    Instant at;
    std::string instrument, note;
};

/// When a fault touched one splicer, as arcs of that splicer in the log from 1.
struct TouchedSplicer {
    std::string splicer;
    std::uint64_t beginArc = 0;
    std::optional<std::uint64_t> endArc;  ///< last arc with it; empty: still there when the log ends
    Instant begin;
    std::optional<Instant> end;
};

struct TrueFault {
    drift::Cause cause = drift::Cause::Unknown;
    std::string tool;  ///< splicer or cleaver; of a fibre fault the job
    std::vector<int> channels;
    std::optional<double> sizeDb;  ///< loss it adds once grown in; of electrodes at the end of the log
    std::vector<TouchedSplicer> touched;
    std::string endedBy;  ///< care action or "job change"; "" while it lasts
};

struct SimulatedLog {
    std::vector<SimulatedArc> arcs;  ///< by time
    std::vector<SimulatedCare> care;
    std::vector<SimulatedMeasurement> measured;
    std::vector<TrueFault> truth;
};

Result<SimulatedLog> simulate(const Scenario& scenario, std::uint64_t seed);

}  // namespace arc::scenario
