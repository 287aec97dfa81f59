// SPDX-License-Identifier: GPL-3.0-or-later
// Builds the closeout record of a job from the logbook. Reads the job's splices once, page by page; cost is
// O(splices of the job), whatever else the logbook holds.
#pragma once
#include <functional>
#include <vector>

#include "core/closeout/record.hpp"
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::closeout {

/// Stretches in which the splicer owed a calibration and which reach into its use by the job; given its care
/// records in order of time. Care cards and history live outside, so whoever has them hands this in.
using OwedBy = std::function<Result<std::vector<care::OwedStretch>>(const Equipment& splicer,
                                                                    const std::vector<CareRecord>& records)>;

struct BuildSettings {
    RecordState state = RecordState::Draft;
    std::string issuedBy;  ///< of a final record
    Instant madeAt;
    OwedBy owed;  ///< empty: nothing is known about owed calibrations
};

/// Problems: no such job, a final record with open exceptions (Refused; the keys are in `where`), stopped.
Result<Record> build(Logbook& book, JobId job, const BuildSettings& settings, Progress& progress);

/// The job with that label.
Result<Job> jobLabelled(Logbook& book, std::string_view label);

/// Settings "link.attenuation_db_per_km.1310", "….1550", "link.connectors", "link.db_per_connector"; what is
/// not set or not a number keeps the shipped sample value.
Result<LinkAssumptions> linkAssumptions(Logbook& book);

}  // namespace arc::closeout
