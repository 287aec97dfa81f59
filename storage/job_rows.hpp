// SPDX-License-Identifier: GPL-3.0-or-later
// Which journal rows somebody needs to read one job: the job, its cables, closures, splices, measurements and
// decisions, the tools that made them with their care, and whatever takes any of these back.
#pragma once
#include <cstdint>
#include <set>

#include "core/units/id.hpp"
#include "storage/connection.hpp"

namespace arc::storage {

std::set<std::int64_t> journalRowsOfJob(Connection& connection, JobId job);

}  // namespace arc::storage
