// SPDX-License-Identifier: GPL-3.0-or-later
// Run lengths of an upward CUSUM on discrete scores, C = max(0, C + score - k), signal when C > h, by Markov
// chain (D. Brook & D. A. Evans, Biometrika 59, 1972). One elimination gives the run length of every limit at
// once, so a limit costs no more than a run length.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/result.hpp"

namespace arc::drift {

/// How the chain divides the axis.
struct ChainGrid {
    /// Width of a state in the unit of the scores, > 0. Scores that are whole steps away from k make the
    /// chain exact; others are shared between the two nearest states so that their mean is kept. Empty: a
    /// thirtieth of the scores' standard deviation (run lengths of smooth laws are then good to about 0.2 %).
    std::optional<double> step;
};

/// Average run length from C = 0. `scores` and `probabilities` have one entry per value, probabilities >= 0
/// and adding up to 1 within 1e-6 (they are rescaled); k and h are in the unit of the scores, h >= 0.
/// BadInput when a number is out of range, when C can never pass h, or when the run length exceeds 1e12.
[[nodiscard]] Result<double> discreteCusumArl(std::span<const double> scores,
                                              std::span<const double> probabilities, double k, double h,
                                              ChainGrid grid = {});

/// The smallest h whose average run length from 0 is at least `arl` (> 1, at most 1e9). Off a lattice it is
/// interpolated between states. Scores on a lattice step the run length: the one reached is then above `arl`.
[[nodiscard]] Result<double> discreteCusumLimit(std::span<const double> scores,
                                                std::span<const double> probabilities, double k, double arl,
                                                ChainGrid grid = {});

/// Run lengths of several limits for the price of the largest, in the order of `limits`.
[[nodiscard]] Result<std::vector<double>> discreteCusumArls(std::span<const double> scores,
                                                            std::span<const double> probabilities, double k,
                                                            std::span<const double> limits,
                                                            ChainGrid grid = {});

}  // namespace arc::drift
