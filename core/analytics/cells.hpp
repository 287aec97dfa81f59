// SPDX-License-Identifier: GPL-3.0-or-later
// Readings are shown in steps and pile up at zero, so the charts work on cells: cell q holds the readings
// that show q widths, i.e. true values in [(q - 1/2) width, (q + 1/2) width) cut at 0; the last cell holds
// everything above. Probabilities are counts smoothed towards a gamma distribution that is fitted by
// interval-censored maximum likelihood.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

namespace arc::drift {

/// Counts of raw readings by value (index = raw unit, e.g. 0.001 dB); the last entry holds all above.
using RawCounts = std::vector<std::uint32_t>;

/// The largest of 1, 2, 5, 10, 20, 50 raw units that at least 98 % of the readings are multiples of.
int displayStep(const RawCounts& counts);

struct CellGrid {
    int width = 10;  ///< raw units
    int cells = 8;
    [[nodiscard]] int cell(int raw) const {
        const int q = (raw + width / 2) / width;
        return q < cells ? q : cells - 1;
    }
};

/// Cells of the display step, or of several steps together where the readings spread over many of them
/// (about four cells to a standard deviation), up to one and a half times the 97.5 % point.
CellGrid makeGrid(const RawCounts& counts);

std::vector<double> cellCounts(const RawCounts& counts, const CellGrid& grid);

/// Gamma distribution by its shape and mean (in cell widths).
struct GammaFit {
    double shape = 1;
    double mean = 1;
};
/// Interval-censored maximum likelihood; the last cell is right-censored. `start` speeds up a refit.
GammaFit fitGamma(std::span<const double> counts, GammaFit start);
std::vector<double> gammaCells(const GammaFit& fit, int cells);

/// (counts + weight * towards) / (n + weight).
std::vector<double> smoothed(std::span<const double> counts, std::span<const double> towards, double weight);

}  // namespace arc::drift
