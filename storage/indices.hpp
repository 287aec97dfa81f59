// SPDX-License-Identifier: GPL-3.0-or-later
// Indices left out while very many rows are written and made in one go afterwards, which takes half of the
// time. Both happen in the caller's transaction: whoever reads meanwhile, and whoever does not come to the
// commit, has the old ones.
#pragma once
#include <string>
#include <vector>

#include "storage/connection.hpp"

namespace arc::storage {

/// Drops the indices of `table` that are not part of it and gives the statements that make them again, in
/// their order, to be run before the commit. Drops nothing when the tables are not exactly those of a
/// logbook: a stranger's text is not run.
std::vector<std::string> dropIndices(Connection& connection, const std::string& table);

}  // namespace arc::storage
