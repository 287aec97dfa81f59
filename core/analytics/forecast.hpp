// SPDX-License-Identifier: GPL-3.0-or-later
// Electrode life ahead, with the plain rule of about 5,000 arcs (common practice) beside it.
#pragma once
#include "core/analytics/drift.hpp"

namespace arc::drift {

inline constexpr double plainElectrodeLife = 5000;  ///< arcs, common practice

ElectrodeForecast forecastElectrodes(const SplicerHistory& history);

}  // namespace arc::drift
