// SPDX-License-Identifier: GPL-3.0-or-later
// The settings of an invented crew: its tools, jobs, weather, who works where, what goes wrong and what is
// done about it. Every number about machines here is invented; only the loss physics is not (simulate.hpp).
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/record.hpp"
#include "core/scenario/crew.hpp"
#include "core/units/instant.hpp"

namespace arc::scenario {

/// A splicer works through the closures of a job, day by day.
struct Assignment {
    std::string splicer, cleaver, job;
    std::vector<std::string> closures;  ///< labels, in the order of the work
    int fromDay = 0, toDay = 0;         ///< days since the start of the scenario, both worked
    int arcsPerDay = 10;
    double startHour = 7.5;  ///< local time
    std::string operatorName;
    bool operator==(const Assignment&) const = default;
};

/// A moment: a local day and hour, or the number of an arc of the tool (of a cleaver: arcs prepared with it).
struct When {
    std::optional<Instant> at;
    std::optional<std::uint64_t> arc;
    bool operator==(const When&) const = default;
};

/// Something that goes wrong. Electrodes wear by themselves and a bad lot is a property of its job.
struct FaultSetting {
    drift::Cause cause = drift::Cause::Groove;  ///< groove, calibration or cleaver
    std::string tool;
    When begin;
    std::vector<int> channels;  ///< grooves; empty = all
    double stepDb = 0.03;       ///< loss added once grown in; of a cleaver: angleGain counts instead
    int rampArcs = 0;           ///< arcs over which it grows in
    double angleGain = 1.1;     ///< growth of the angle's standard deviation: 1.1 = more than double
    bool operator==(const FaultSetting&) const = default;
};

/// What a care action does to the faults of its tool that it could cure.
enum class Effect { Helps, Nothing, Worse };

struct CareSetting {
    When at;
    std::string tool;
    ActionKey action;
    Effect effect = Effect::Helps;
    std::optional<FaultSetting> brings;  ///< of a care that made it worse: what it brought
    std::string detail, by;
    std::optional<CalibrationResult> calibration;
    std::optional<BladePlace> blade;
    bool operator==(const CareSetting&) const = default;
};

/// Care that is done by habit at the end of a working day, when so many days or uses have gone by since the
/// last. A blade that is turned goes to its next place by itself.
struct RoutineSetting {
    std::string tool;
    ActionKey action;
    int everyDays = 0;  ///< calendar days; 0 = days do not count
    std::uint64_t everyUses =
        0;  ///< arcs of the splicer, or prepared with the cleaver; 0 = uses do not count
    double hour = 16.5;
    int fromDay = 0, toDay = 100'000;
    Effect effect = Effect::Nothing;
    std::string detail, by;
    bool operator==(const RoutineSetting&) const = default;
};

struct ColdMorning {
    int day = 0;
    double celsius = 0;
    bool operator==(const ColdMorning&) const = default;
};

struct Weather {
    double meanC = 14, swingC = 5, daySdC = 2;
    double humidityPct = 60, pressureHpa = 985;
    std::vector<ColdMorning> coldMornings;
    bool operator==(const Weather&) const = default;
};

/// Losses measured from the ends of a finished closure.
struct MeasuringSetting {
    std::string closure;
    int day = 0;
    std::vector<int> fibres;  ///< of side A
    Directions directions = Directions::TwoWay;
    int wavelengthNm = 1550;
    double noiseDb = 0.006;
    std::string instrument, note;
    bool operator==(const MeasuringSetting&) const = default;
};

struct Scenario {
    std::string name, about;
    std::uint64_t seed = 1;  ///< taken when nobody gives another
    Instant start;           ///< local midnight of day 0; its offset is that of all times
    std::vector<Machine> splicers;
    std::vector<CleaverSetting> cleavers;
    std::vector<StripperSetting> strippers;
    std::vector<JobSetting> jobs;
    std::vector<Assignment> work;
    std::vector<FaultSetting> faults;
    std::vector<CareSetting> care;
    std::vector<RoutineSetting> routine;
    std::vector<MeasuringSetting> measuring;
    Weather weather;
    bool operator==(const Scenario&) const = default;
};

/// Labels that must exist, days in order, plans that fit their arcs. The Problem names the setting.
Result<void> check(const Scenario& scenario);

}  // namespace arc::scenario
