// SPDX-License-Identifier: GPL-3.0-or-later
// Electrode life ahead, with the plain rule of about 5,000 arcs (common practice) beside it.
//
// The mean loss since the exchange is followed in blocks of arcs. Lives that stay level up to a share of
// themselves and then rise, steadily or ever faster, to the acceptance mean are weighed against these blocks,
// starting from a wide belief about how long electrodes last; the answer is what the weights leave, as a
// median with an 80 % interval. Job lots move a level too, so a block is never trusted further than they go.
#pragma once
#include "core/analytics/drift.hpp"

namespace arc::drift {

inline constexpr double plainElectrodeLife = 5000;  ///< arcs, common practice
/// Mean loss at which electrodes count as spent: the average limit of the sample rules, dB.
inline constexpr double spentMeanDb = 0.05;
/// Younger electrodes tell less than the plain rule does: no forecast.
inline constexpr std::uint32_t earliestForecastArcs = 3500;

ElectrodeForecast forecastElectrodes(const SplicerHistory& history);

}  // namespace arc::drift
