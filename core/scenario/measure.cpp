// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/measure.hpp"

#include <cmath>
#include <map>
#include <utility>

#include "core/scenario/randomness.hpp"
#include "core/scenario/surroundings.hpp"

namespace arc::scenario {
namespace {

Loss rounded(double db) {
    return Loss{static_cast<std::int32_t>(std::lround(db * 1000.0))};
}

}  // namespace

std::vector<SimulatedMeasurement> measure(const Scenario& scenario, const SimulatedLog& log,
                                          std::uint64_t seed) {
    using Standing = std::pair<const SimulatedArc*, const SimulatedReading*>;
    std::map<std::pair<std::string, int>, Standing> standing;
    for (const auto& arc : log.arcs)
        for (const auto& reading : arc.readings) standing[{arc.closure, reading.fibreA}] = {&arc, &reading};

    Randomness random(seed, "measuring");
    std::vector<SimulatedMeasurement> measured;
    for (const auto& order : scenario.measuring) {
        double minutes = 0;
        for (const int fibre : order.fibres) {
            const auto found = standing.find({order.closure, fibre});
            if (found == standing.end()) continue;
            const auto& [arc, reading] = found->second;
            SimulatedMeasurement m;
            m.closure = order.closure;
            m.job = arc->job;
            m.fibre = fibre;
            m.wavelengthNm = order.wavelengthNm;
            m.instrument = order.instrument;
            m.note = order.note;
            m.at = later(atHour(scenario, order.day, 15.0), minutes);
            minutes += 1.5;
            const double tilt = 10.0 * std::log10(reading->radiusB / reading->radiusA);
            m.aToB = rounded(reading->trueDb + tilt + order.noiseDb * random.normal());
            const double back = reading->trueDb - tilt + order.noiseDb * random.normal();
            if (order.directions == Directions::TwoWay) m.bToA = rounded(back);
            measured.push_back(std::move(m));
        }
    }
    return measured;
}

}  // namespace arc::scenario
