// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of measured minus estimated loss beside the other charts of a splicer: with its limit, its signal
// and since when. An estimator that goes blind is itself a fault.
#pragma once
#include <span>
#include <vector>

#include "core/analytics/agreement_report.hpp"
#include "core/analytics/drift.hpp"
#include "core/logbook.hpp"
#include "core/result.hpp"

namespace arc::drift {

/// Adds the chart to the traces, and its signal to the signals, of each splicer that was measured from both
/// ends: in the stratum of its last measured splice, at the wavelength measured most; value of the trace =
/// how far the measured losses have run away from the estimates, either way. `answers`: signals dismissed by
/// a supervisor. Problems are those of the logbook.
[[nodiscard]] Result<void> addDifferences(Logbook& book, std::span<const SplicerHistory> crew,
                                          std::vector<SplicerReport>& reports,
                                          std::span<const SignalAnswer> answers,
                                          double budget = usualDifferenceBudget);

}  // namespace arc::drift
