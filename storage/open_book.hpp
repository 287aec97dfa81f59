// SPDX-License-Identifier: GPL-3.0-or-later
// Opening a logbook file with all checks: is it one, do we know its schema, may we write.
#pragma once
#include <filesystem>
#include <memory>
#include <optional>

#include "core/ports.hpp"
#include "core/result.hpp"
#include "storage/connection.hpp"
#include "storage/private_file.hpp"
#include "storage/sqlite_logbook.hpp"
#include "storage/writer_lock.hpp"

namespace arc::storage {

struct OpenBook {
    std::optional<WriterLock> lock;     ///< first, so that it goes last
    std::optional<PrivateFile> mended;  ///< what is open instead of a book that cannot be opened itself
    std::unique_ptr<Connection> connection;
};

/// A damaged book opens for reading only, from a mended copy when SQLite would not open it itself; for
/// writing it is refused as Damaged, and so it is in every program from then on (storage/damage). An older
/// schema is migrated when opened for writing, after a backup beside the book ("NAME.schema-1.bak"); for
/// reading only it is refused with what to do.
Result<OpenBook> openBook(const std::filesystem::path& book, OpenMode mode);

/// A new, empty book with its identity and first journal row.
Result<OpenBook> makeBook(const std::filesystem::path& book, Clock& clock, Random& random);

/// The tables alone, for a book that takes its content from another.
Result<OpenBook> makeEmptyBook(const std::filesystem::path& book);

/// Opens the same file again, e.g. after its log was deleted under us.
std::unique_ptr<Connection> reopen(const Connection& connection);

/// Identity of the book.
Uuid bookId(Connection& connection);

}  // namespace arc::storage
