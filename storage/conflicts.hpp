// SPDX-License-Identifier: GPL-3.0-or-later
// Records that two laptops edited without knowing of each other. The later edit shows, both are kept, and a
// person is told.
#pragma once
#include <string>
#include <vector>

#include "core/units/id.hpp"
#include "storage/connection.hpp"

namespace arc::storage {

/// Of these records (or arcs), one sentence each: which two edits, by whom, where.
std::vector<std::string> concurrentEdits(Connection& connection, std::vector<Uuid> ids);

}  // namespace arc::storage
