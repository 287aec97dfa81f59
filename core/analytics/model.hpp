// SPDX-License-Identifier: GPL-3.0-or-later
// What normal looks like for one stratum: score tables learned from the baseline, and the moments that
// standardise the sums of an arc. A reading is scored only by a model learned from arcs before it.
#pragma once
#include <array>
#include <span>
#include <vector>

#include "core/analytics/cells.hpp"
#include "core/analytics/row.hpp"
#include "core/analytics/scores.hpp"

namespace arc::drift {

struct Model {
    int grooves = 1;
    int arcs = 0;  ///< learned from
    CellGrid lossGrid, angleGrid;
    GammaFit lossGamma, angleGamma;                                ///< starts of the next fit
    std::vector<ScoreTable> rank;                                  ///< by groove
    std::array<std::vector<ScoreTable>, shiftCells.size()> shift;  ///< by groove
    ScoreTable angle;                                              ///< empty when the baseline has no angles
    Moments common;                                                ///< of the arc's mean rank score
    std::array<Moments, shiftCells.size()> shiftSum;
    Moments angleMean, spread;
    std::array<Moments, maxGrooves> apart;
    double wander = 0;  ///< share of the common level's variance that comes from set-up to set-up
    double meanDb = 0;
    std::array<double, maxGrooves> grooveMeanDb{};
    double meanAngleDeg = 0;
    double angle95Deg = 0;  ///< 95 % point of the cleave angles
};

/// Learns from baseline arcs, at least 20. `previous` speeds up a refit; its counts are not used.
Model learn(std::span<const RawArc> baseline, int grooves, const Model* previous);

/// Scores of an arc under the model.
Scores scoresOf(const RawArc& arc, const Model& model);

}  // namespace arc::drift
