// SPDX-License-Identifier: GPL-3.0-or-later
// Counts of the baseline's readings by cell, and the score tables learned from them. Grooves share strength:
// those that differ no more than by chance use nearly the same cells (empirical Bayes).
#pragma once
#include <array>
#include <span>
#include <vector>

#include "core/analytics/cells.hpp"
#include "core/analytics/row.hpp"
#include "core/analytics/scores.hpp"

namespace arc::drift {

struct BaselineCounts {
    std::vector<std::vector<double>> loss;  ///< by groove and cell
    std::vector<double> angle;              ///< both sides of all grooves
    double arcs = 0;
};

/// The grids of losses and angles, chosen from all of the baseline.
struct Grids {
    CellGrid loss, angle;
};
Grids chooseGrids(std::span<const RawArc> baseline, int grooves);

BaselineCounts countCells(std::span<const RawArc> arcs, int grooves, const Grids& grids);
BaselineCounts without(const BaselineCounts& all, const BaselineCounts& part);

/// Fitted once on the whole baseline; the cells of its parts are smoothed towards the same laws.
struct Laws {
    GammaFit loss{1.5, 4.0}, angle{1.2, 4.0};
};
Laws fitLaws(const BaselineCounts& counts, const Laws& start);

struct ScoreTables {
    int grooves = 1;
    Grids grids;
    std::vector<double> lossP, angleP;  ///< cell probabilities, all grooves together; angleP may be empty
    ScoreTable pooledRank;
    std::array<ScoreTable, shiftCells.size()> pooledShift;
    std::vector<ScoreTable> rank;                                  ///< by groove
    std::array<std::vector<ScoreTable>, shiftCells.size()> shift;  ///< by groove
    ScoreTable angle;                                              ///< empty when the baseline has no angles
    double pooledWeight = 0;  ///< readings' worth of all grooves together in the cells of each one
};
ScoreTables makeTables(const BaselineCounts& counts, const Grids& grids, const Laws& laws);

/// Sums of an arc under the tables, before they are standardised.
struct ArcSums {
    int readings = 0, angles = 0;
    double rank = 0, rankSquare = 0, angle = 0;
    std::array<double, shiftCells.size()> shift{};
    std::array<double, maxGrooves> z{};
};
ArcSums sumsOf(const RawArc& arc, const ScoreTables& tables);

}  // namespace arc::drift
