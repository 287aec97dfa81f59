// SPDX-License-Identifier: GPL-3.0-or-later
// Records that two laptops edited without knowing of each other. The later edit shows, both are kept, and a
// person is told until somebody settles it.
//
// What an edit knew of follows from the journal alone: everything its own device wrote before it, and
// everything known to the version it replaces (its base). Two edits of which neither knew the other, that no
// later edit knew both, and that say different things, are concurrent. To settle writes every other edit
// again as it is, on top of itself, and then the one that shall show: from then on one device knew them all,
// on every laptop that takes this in.
#pragma once
#include <filesystem>
#include <vector>

#include "core/handover.hpp"
#include "storage/connection.hpp"
#include "storage/ledger.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::storage {

/// Of these records (or arcs).
std::vector<ConcurrentEdits> concurrentEdits(Connection& connection, std::vector<Uuid> ids);
/// Of the whole book; looks only at what has more than one version.
std::vector<ConcurrentEdits> concurrentEdits(Connection& connection);

/// Final records of one job with one number.
std::vector<NumberClash> numberClashes(Connection& connection);

/// Writes the decision inside the caller's transaction; answers the first and last journal row. A Conflict
/// when the edits are not what the book holds now.
struct SettledRows {
    std::int64_t first = 0, last = 0;
};
Result<SettledRows> settle(Connection& connection, Ledger& ledger, const ConcurrentEdits& edits,
                           std::size_t keep, const Context& context);

/// The same on a book file, each with a connection of its own.
Result<std::vector<ConcurrentEdits>> concurrentEditsOf(const std::filesystem::path& book);
Result<std::vector<NumberClash>> numberClashesOf(const std::filesystem::path& book);
struct WriteTo {
    std::filesystem::path book;
    OpenMode mode = OpenMode::ReadWrite;
};
Result<Receipt> settleEdits(const WriteTo& to, const ConcurrentEdits& edits, std::size_t keep,
                            const Context& context, Clock& clock, Random& random);

}  // namespace arc::storage
