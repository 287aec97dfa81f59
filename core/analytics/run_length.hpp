// SPDX-License-Identifier: GPL-3.0-or-later
// Run lengths of EWMA and CUSUM charts on independent normal readings, and the limits that keep a false-alarm
// budget. Readings are standardised: in control mean 0 and standard deviation 1; shifts and slopes are in
// standard deviations. A run length counts readings, the one that signals included. Checked against R's
// spc in tests/reference to better than 1e-6.
// Sources: S. V. Crowder, Technometrics 29 (1987); J. M. Lucas & R. B. Crosier, Technometrics 24 (1982);
// J. M. Lucas & M. S. Saccucci, Technometrics 32 (1990).
// BadInput when a number is out of range or the chart practically never signals (run length above 1e12).
#pragma once
#include <vector>

#include "core/result.hpp"

namespace arc::drift {

/// Upper: only a rise signals. Both: a rise or a fall.
enum class Sides { Upper, Both };

/// Fixed: the limits of the long run. ExactVariance: they open with the EWMA's variance, which starts at 0.
enum class EwmaLimits { Fixed, ExactVariance };

/// z = (1 - lambda) z + lambda x from 0, signal when z leaves limit x sqrt(lambda / (2 - lambda)); an Upper
/// chart is held at 0 from below: z = max(0, …).
struct EwmaChart {
    double lambda = 0.1;   ///< weight of the new reading, 0 < lambda <= 1
    double limit = 2.814;  ///< in standard deviations of the EWMA in the long run, > 0
    Sides sides = Sides::Both;
    EwmaLimits limits = EwmaLimits::Fixed;
    /// Start in the unit of `limit`, from 0 to below `limit`. Both: two charts, one started above and one
    /// below. Only with Fixed limits.
    double headStart = 0;
};

/// C = max(0, C + x - k) from `headStart`, signal when C > h; Both: also downward.
struct CusumChart {
    double k = 0.5;  ///< reference value, half the shift to be seen soonest, >= 0
    double h = 5;    ///< limit, > 0
    Sides sides = Sides::Both;
    double headStart = 0;  ///< from 0 to below h; Both: at most h / 2 + k. Half of h is usual.
};

/// Quadrature nodes: as many as the chart needs, or twice that (to see that it does not matter).
enum class Nodes { Enough, Twice };

/// Average run length when the mean is `shift` from the first reading on (zero state).
[[nodiscard]] Result<double> averageRunLength(const EwmaChart& chart, double shift,
                                              Nodes nodes = Nodes::Enough);
[[nodiscard]] Result<double> averageRunLength(const CusumChart& chart, double shift,
                                              Nodes nodes = Nodes::Enough);

/// Average delay of a shift that comes long after the start, given no false signal before it (conditional
/// steady state). Head starts are forgotten by then; limits are the fixed ones. A two-sided CUSUM needs h of
/// at most 15 and k of at least h / 120.
[[nodiscard]] Result<double> steadyStateRunLength(const EwmaChart& chart, double shift,
                                                  Nodes nodes = Nodes::Enough);
[[nodiscard]] Result<double> steadyStateRunLength(const CusumChart& chart, double shift,
                                                  Nodes nodes = Nodes::Enough);

/// Average run length when reading i has mean i x `slope`. An Upper chart needs slope >= 0; a CUSUM must be
/// Upper.
[[nodiscard]] Result<double> driftRunLength(const EwmaChart& chart, double slope,
                                            Nodes nodes = Nodes::Enough);
[[nodiscard]] Result<double> driftRunLength(const CusumChart& chart, double slope,
                                            Nodes nodes = Nodes::Enough);

/// P(run length > n) for n = 0 … `readings` (at most 1,000,000), zero state, Fixed limits, no head start.
[[nodiscard]] Result<std::vector<double>> runLengthSurvival(const EwmaChart& chart, double shift,
                                                            int readings, Nodes nodes = Nodes::Enough);

/// The limit at which the in-control average run length from 0 is `arl` (> 1, at most 1e9); `chart.limit`
/// and `chart.headStart` are not read.
[[nodiscard]] Result<double> limitFor(const EwmaChart& chart, double arl);
/// The h at which the in-control average run length from 0 is `arl`; `chart.h` and `chart.headStart` are not
/// read.
[[nodiscard]] Result<double> limitFor(const CusumChart& chart, double arl);

}  // namespace arc::drift
