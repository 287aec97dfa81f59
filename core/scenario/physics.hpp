// SPDX-License-Identifier: GPL-3.0-or-later
// One splice of the simulated crew. Source of the formulas: D. Marcuse, Bell Syst. Tech. J. 56(5), 1977.
#pragma once
#include <cstdint>

#include "core/scenario/randomness.hpp"
#include "core/scenario/scenario.hpp"

namespace arc::scenario {

/// Loss in dB of Gaussian modes of radii wa, wb (micrometres, above 0) whose axes are `offset` apart:
/// -20 log10(2 wa wb / (wa^2 + wb^2)) + 10 log10(e) offset^2 / ((wa^2 + wb^2) / 2).
double modeLossDb(double offset, double wa, double wb);

/// What worn electrodes do at `arcs` since they were new.
struct Wear {
    double scatter = 1;  ///< factor on the offset
    double extraDb = 0;
};
Wear wear(const Machine& machine, std::uint32_t arcs);

/// The state of everything that shapes one groove of one arc.
struct Conditions {
    double offsetSd = 0.3;  ///< micrometres, each axis
    double pushUm = 0;      ///< sideways, by dirt in the groove
    double extraDb = 0;     ///< calibration, electrodes
    double angleSd = 0.45;  ///< degrees
    double radiusA = 4.6, radiusB = 4.6;
};

struct SpliceMade {
    double trueDb = 0;                     ///< what the splice loses
    double shownDb = 0;                    ///< with the noise of the estimate, before the display step
    double angleLeft = 0, angleRight = 0;  ///< degrees
};
SpliceMade makeSplice(const Machine& machine, const Conditions& conditions, Randomness& random);

/// The sideways push that costs `stepDb` at mode-field radius `w`.
double pushFor(double stepDb, double w);

}  // namespace arc::scenario
