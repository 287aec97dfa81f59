// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/physics.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace arc::scenario {
namespace {

constexpr double dbPerNeper = 10.0 / std::numbers::ln10;
/// A rough cleave costs a little; invented, dB per square degree. Cleave angle is not axis tilt.
constexpr double dbPerSquareDegree = 0.006;

}  // namespace

double modeLossDb(double offset, double wa, double wb) {
    const double squares = wa * wa + wb * wb;
    return -20.0 * std::log10(2.0 * wa * wb / squares) + dbPerNeper * offset * offset / (squares / 2.0);
}

Wear wear(const Machine& machine, std::uint32_t arcs) {
    if (arcs <= machine.wearStart) return {};
    const double age = (arcs - machine.wearStart) / machine.wearScale;
    const double worn = machine.wearGain * std::pow(age, machine.wearPower);
    return {1.0 + 2.0 * worn, 0.05 * worn};
}

SpliceMade makeSplice(const Machine& machine, const Conditions& conditions, Randomness& random) {
    const double dx = random.normal() * conditions.offsetSd;
    const double dy = random.normal() * conditions.offsetSd + conditions.pushUm;
    SpliceMade made;
    made.angleLeft = std::abs(random.normal()) * conditions.angleSd;
    made.angleRight = std::abs(random.normal()) * conditions.angleSd;
    made.trueDb = machine.baseDb + modeLossDb(std::hypot(dx, dy), conditions.radiusA, conditions.radiusB) +
                  dbPerSquareDegree * (made.angleLeft * made.angleLeft + made.angleRight * made.angleRight) +
                  conditions.extraDb;
    // Drawn always, so that the share of bad splices does not shift the numbers that follow.
    const bool failed = random.uniform() < machine.outlier;
    const double failure = random.uniform(0.1, 0.4);
    if (failed) made.trueDb += failure;
    made.shownDb = std::max(0.0, made.trueDb + random.normal() * machine.noiseDb);
    return made;
}

double pushFor(double stepDb, double w) {
    return w * std::sqrt(std::max(0.0, stepDb) / dbPerNeper);
}

}  // namespace arc::scenario
