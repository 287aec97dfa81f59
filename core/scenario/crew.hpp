// SPDX-License-Identifier: GPL-3.0-or-later
// The tools and the jobs of an invented crew. Every number about machines here is invented.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/care/record.hpp"
#include "core/kit/tool.hpp"
#include "core/work/job.hpp"
#include "core/work/plan.hpp"

namespace arc::scenario {

/// A splicer and how it behaves.
struct Machine {
    std::string label, nickname;
    arc::Splicer traits;
    std::string mode = "G.652-G.652";
    double offsetUm = 0.33;      ///< standard deviation of the lateral core offset, each axis, micrometres
    double baseDb = 0.008;       ///< what every splice loses, dB
    double noiseDb = 0.004;      ///< noise of the loss estimate, dB
    double setupSd = 0.07;       ///< log-normal wandering of the offset from set-up to set-up
    int setupArcs = 24;          ///< arcs after which a set-up is redone at the latest
    double outlier = 0.004;      ///< share of splices that fail for no reason of the machine
    double minutesPerArc = 8;    ///< mean time from arc to arc
    double resolutionDb = 0.01;  ///< display step of the splicer, dB
    std::uint32_t counterStart = 0;
    std::uint32_t electrodeArcs = 0;  ///< arcs on the electrodes when the log begins
    std::uint32_t wearStart = 3200;   ///< arcs after which electrodes begin to wear
    double wearScale = 2600, wearPower = 1.6, wearGain = 1.0;
    std::string lastElectrodes;  ///< ISO time of the exchange before the log begins; "" = not known
    bool operator==(const Machine&) const = default;
};

struct CleaverSetting {
    std::string label, nickname;
    arc::Cleaver traits;
    double angleSd = 0.45;  ///< degrees, half-normal
    BladePlace blade;       ///< where the blade stands when the log begins
    bool operator==(const CleaverSetting&) const = default;
};

struct StripperSetting {
    std::string label, nickname;
    bool operator==(const StripperSetting&) const = default;
};

struct CableSetting {
    std::string label;
    int fibreCount = 12;
    FibreUnit unit = FibreUnit::Tube;
    int unitSize = 12;
    std::string colourOrder = "TIA-598", fibreType = "G.652.D";
    std::optional<double> lengthKm;
    std::optional<RibbonKind> ribbon;
    bool operator==(const CableSetting&) const = default;
};

struct ClosureSetting {
    std::string label;
    std::string cableA, cableB;
    int trays = 1, perTray = 24;
    SplicePlan plan;
    std::vector<int> leftOut;  ///< fibres of side A the crew does not come to
    bool operator==(const ClosureSetting&) const = default;
};

struct JobSetting {
    std::string label, title;
    AcceptanceRule rule;
    double modeFieldA = 9.2,
           modeFieldB = 9.2;    ///< mean mode-field diameter of either side's lot, micrometres
    double modeFieldSd = 0.04;  ///< from fibre to fibre, micrometres
    bool badLot = false;        ///< the truth names this job's fibre as a fault
    std::vector<CableSetting> cables;
    std::vector<ClosureSetting> closures;
    bool operator==(const JobSetting&) const = default;
};

}  // namespace arc::scenario
