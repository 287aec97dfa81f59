// SPDX-License-Identifier: GPL-3.0-or-later
// The logbook in one SQLite file. One object, one thread; open another read-only for a worker.
#pragma once
#include <filesystem>
#include <memory>

#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

/// ReadWrite takes the one-writer lock (a sidecar file); when another program holds it the book opens
/// read-only only if the caller asks for ReadOnly, else the Problem says who writes. Companion is a further
/// writer, for a worker of the program that already holds the lock; SQLite lets one of them write at a time.
enum class OpenMode { ReadWrite, ReadOnly, Companion };

/// Makes a new logbook; refuses when the file exists.
Result<std::unique_ptr<Logbook>> createLogbook(const std::filesystem::path& book, Clock& clock,
                                               Random& random);

/// Opens, checks application id and schema number, migrates an older book (backup first).
Result<std::unique_ptr<Logbook>> openLogbook(const std::filesystem::path& book, OpenMode mode, Clock& clock,
                                             Random& random);

}  // namespace arc::storage
