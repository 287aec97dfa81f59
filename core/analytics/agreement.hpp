// SPDX-License-Identifier: GPL-3.0-or-later
// Does the splicer's estimate agree with what is measured from both ends? An estimator that goes blind (dirty
// lenses) is itself a fault. Differences are measured minus estimated: above 0 the splicer flatters.
// Source: J. M. Bland & D. G. Altman, Lancet 327 (1986).
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/result.hpp"
#include "core/stats/order.hpp"
#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/work/splice.hpp"

namespace arc::drift {

/// One splice seen twice.
struct MeasuredSplice {
    ToolId splicer;
    Instant at;  ///< when it was spliced
    ArcId arc;
    int channel = 1;
    int wavelengthNm = 1550;
    double estimatedDb = 0;
    double measuredDb = 0;  ///< mean of both directions
    [[nodiscard]] double differenceDb() const { return measuredDb - estimatedDb; }
};

/// Pairs each two-way measurement with the last good attempt of its fibre in its closure, oldest splice
/// first. One-way values, measurements without closure or fibre, and those of fibres never spliced there are
/// left out. A fibre matches by its name on either side.
[[nodiscard]] std::vector<MeasuredSplice> pairMeasured(std::span<const SpliceArc> arcs,
                                                       std::span<const MeasuredLoss> measured);

/// Mean difference and limits of agreement, with 95 % intervals (t distribution; the standard error of a
/// limit is sqrt(3 / n) standard deviations).
struct Agreement {
    int n = 0;
    double meanDb = 0;                ///< of measured minus estimated
    double deviationDb = 0;           ///< standard deviation of the differences
    double lowerDb = 0, upperDb = 0;  ///< mean -+ 1.96 deviations: where 95 % of differences lie
    stats::Interval meanInterval, lowerInterval, upperInterval;
};
/// BadInput for fewer than three differences or one that is not a number.
[[nodiscard]] Result<Agreement> agreement(std::span<const double> differencesDb);

/// Two-sided self-starting CUSUM (k 0.5) of the differences: each is judged by those before it, turned into a
/// normal score (D. M. Hawkins, The Statistician 36, 1987), so no baseline is needed and the limit keeps its
/// budget from the third difference on. Scatter is never taken to be less than the rounding of a 0.01 dB
/// display leaves.
struct DifferenceChart {
    std::vector<double> score;     ///< standard normal in control; 0 for the first two
    std::vector<double> up, down;  ///< sums; up = the measured loss runs away from the estimate
    double limit = 0;
    std::optional<std::size_t> signal;  ///< index of the first difference at which either sum is beyond it
    std::optional<std::size_t> began;   ///< index after that sum's last zero
};
/// `budget`: one false signal per so many differences, 10 to 1e6; BadInput otherwise.
[[nodiscard]] Result<DifferenceChart> differenceChart(std::span<const double> differencesDb, double budget);

}  // namespace arc::drift
