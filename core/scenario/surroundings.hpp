// SPDX-License-Identifier: GPL-3.0-or-later
// Days, hours and weather of a scenario: the same for everybody who works there.
#pragma once
#include <cstdint>
#include <utility>
#include <vector>

#include "core/scenario/scenario.hpp"
#include "core/units/quantity.hpp"

namespace arc::scenario {

/// Weekends are free. Day 0 is the local date of the start.
bool isWorkday(const Scenario& scenario, int day);

/// Local hour of a day, to the second.
Instant atHour(const Scenario& scenario, int day, double hour);

Instant later(Instant at, double minutes);

/// Local hours since midnight.
double hourOf(const Scenario& scenario, Instant at);

/// Temperature, humidity and pressure of the place. Keeps a reference to the scenario.
class Sky {
  public:
    Sky(const Scenario& scenario, std::uint64_t seed, int days);
    [[nodiscard]] Temperature temperature(Instant at) const;
    [[nodiscard]] Humidity humidity(Instant at) const;
    [[nodiscard]] Pressure pressure(Instant at) const;

  private:
    [[nodiscard]] std::size_t dayOf(Instant at) const;
    const Scenario& scenario_;
    std::vector<double> offsetC_, offsetHpa_;  ///< by day
};

}  // namespace arc::scenario
