// SPDX-License-Identifier: GPL-3.0-or-later
// A consistent copy of a logbook while it is in use.
#pragma once
#include <filesystem>

#include "core/ports.hpp"
#include "core/result.hpp"
#include "storage/connection.hpp"

namespace arc::storage {

/// Writes to a file beside the destination first and renames it, so that a half-written copy never bears the
/// name. Refuses when the destination exists. Bounded: gives up when the book stays busy for a minute.
Result<void> copyBook(Connection& from, const std::filesystem::path& destination, Progress& progress);

/// Opens the book for reading and copies it.
Result<void> backupBook(const std::filesystem::path& book, const std::filesystem::path& destination,
                        Progress& progress);

}  // namespace arc::storage
