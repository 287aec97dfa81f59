// SPDX-License-Identifier: GPL-3.0-or-later
// A readable copy of a logbook that SQLite refuses to open: cut off, or with a first page that is not one.
// Every logbook begins with the same list of tables at the same pages, so that the first page of a new one
// stands in for the lost one.
#pragma once
#include <filesystem>

#include "core/result.hpp"
#include "storage/private_file.hpp"

namespace arc::storage {

/// The copy opens for reading and holds at least one journal row that fits its hash; else the file was no
/// logbook, or too little is left of it. The book itself is not touched. Nothing in this process may have the
/// book open.
Result<PrivateFile> mendedCopy(const std::filesystem::path& book);

}  // namespace arc::storage
