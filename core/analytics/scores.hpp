// SPDX-License-Identifier: GPL-3.0-or-later
// What one reading says against its baseline, by cell. The rank score is the expected normal score of the
// cell; the shift score is the log likelihood ratio of "everything moved up by s cells"; the stretch score
// that of "everything is larger by a factor". All are bounded, so that one bad reading cannot alarm.
#pragma once
#include <span>
#include <vector>

namespace arc::drift {

/// Score by cell.
using ScoreTable = std::vector<double>;

/// (phi(a) - phi(b)) / (Phi(b) - Phi(a)) with a, b the normal quantiles of the cell's ends; cut at +-3, then
/// standardised to mean 0 and variance 1 under p.
ScoreTable rankScores(std::span<const double> p);

/// log(P shifted up by `cells` / P), both mixed with a 2 % flat floor; cut at +-2.5.
ScoreTable shiftScores(std::span<const double> p, int cells);

/// log(P of values `factor` times larger / P), both mixed with a 2 % flat floor; cut at +-2.5.
ScoreTable stretchScores(std::span<const double> p, double factor);

/// Probabilities when everything moved up by `cells`, or when all values are `factor` times larger (values
/// taken as even within a cell).
std::vector<double> movedUp(std::span<const double> p, int cells);
std::vector<double> stretched(std::span<const double> p, double factor);

struct Moments {
    double mean = 0;
    double sd = 1;
};
Moments momentsUnder(std::span<const double> p, const ScoreTable& score);

}  // namespace arc::drift
