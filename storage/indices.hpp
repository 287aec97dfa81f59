// SPDX-License-Identifier: GPL-3.0-or-later
// Indices left out while very many rows are written and made in one go afterwards, which costs less than keeping them in
// step. Both happen in the caller's transaction: whoever reads meanwhile has the old ones, and so has the book when it
// does not come to the commit.
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
