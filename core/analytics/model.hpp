// SPDX-License-Identifier: GPL-3.0-or-later
// What normal looks like for one stratum: score tables learned from the baseline, and the moments that
// standardise the sums of an arc. A reading is scored only by a model learned from arcs before it.
#pragma once
#include <array>
#include <span>

#include "core/analytics/score_tables.hpp"

namespace arc::drift {

/// A statistic of an arc on the baseline. Mean and deviation are cross-validated: each part of the baseline
/// is scored by tables learned from the rest, because scores are kinder to the arcs they were learned from.
struct Learned {
    double mean = 0;
    double sd = 1;
    double wander = 0;  ///< share of the variance that the arcs of one set-up have in common
    double perMdb = 0;  ///< rise in standard deviations when all losses rise by 0.001 dB
};

/// Where a change of one kind and size moves the two level statistics, in their standard deviations.
struct Direction {
    double common = 0, shift = 0;
};

/// The two ways in which a level rises: everything up by the same dB (a calibration, a fibre), or everything
/// larger in proportion (offsets grow: dirt, worn electrodes, bad cleaves).
struct Shapes {
    std::array<Direction, 3> up, larger;
    double correlation = 0.8;  ///< of the two statistics in control
};

/// Good lots of fibre differ by about this much, 0.001 dB: mode fields 0.1-0.2 um apart (Marcuse's mismatch
/// formula gives 0.0005 to 0.002 dB at 9.2 um).
inline constexpr double lotsMdb = 1.0;

struct Model {
    int grooves = 1;
    int arcs = 0;  ///< learned from
    ScoreTables tables;
    Laws laws;
    Learned common;  ///< mean rank score
    std::array<Learned, shiftCells.size()> shift;
    Learned angle, spread;
    Learned redone;  ///< re-splices per arc, drawn towards one in 20
    Shapes shapes;
    std::array<Learned, maxGrooves> apart;
    double ownWeight = 0;  ///< how far a groove's own readings count against all grooves together, 0-1
    double meanDb = 0;
    std::array<double, maxGrooves> grooveMeanDb{};
    double meanAngleDeg = 0;
};

/// Learns from baseline arcs, at least 20. `previous` speeds up a refit; its counts are not used.
Model learn(std::span<const RawArc> baseline, int grooves, const Model* previous);

/// Scores of an arc under the model.
Scores scoresOf(const RawArc& arc, const Model& model);

}  // namespace arc::drift
