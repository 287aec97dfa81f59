// SPDX-License-Identifier: GPL-3.0-or-later
// Run lengths of charts that watch several streams at once: "any of p independent EWMAs signals", and the
// multivariate EWMA in control (S. E. Rigdon, J. Statist. Comput. Simul. 52, 1995). Readings are standardised
// as in run_length.hpp.
#pragma once
#include <span>

#include "core/analytics/run_length.hpp"
#include "core/result.hpp"

namespace arc::drift {

/// Average run length until the first of several independent EWMAs signals; stream i has mean shifts[i]
/// (1-64 streams). Fixed limits, no head start.
[[nodiscard]] Result<double> groupRunLength(const EwmaChart& each, std::span<const double> shifts);

/// The limit of each chart at which the group's in-control run length is `arl`; `each.limit` is not read.
[[nodiscard]] Result<double> groupLimit(const EwmaChart& each, int streams, double arl);

/// Multivariate EWMA of independent streams: T2 = (2 - r) / r x z'z, signal when T2 > limit.
struct MewmaChart {
    int streams = 2;     ///< 1-64
    double r = 0.1;      ///< weight of the new readings, 0.01 to 1
    double limit = 8.6;  ///< of T2, > 0
};

/// Average run length in control from 0.
[[nodiscard]] Result<double> averageRunLength(const MewmaChart& chart);

/// The limit of T2 with this in-control run length; `chart.limit` is not read.
[[nodiscard]] Result<double> limitFor(const MewmaChart& chart, double arl);

}  // namespace arc::drift
