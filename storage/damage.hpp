// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook with a damaged page is for reading only, here and in every program that opens it: a file
// "NAME.arcbook.damaged" beside it says so, until its pages are found sound again.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/handover.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"
#include "storage/connection.hpp"

namespace arc::storage {

/// The sentence for people; nothing when the book is not known to be damaged. One look at the folder.
std::optional<Problem> knownDamage(const std::filesystem::path& book);
Problem damageOf(const std::filesystem::path& book, const std::string& what);
void markDamaged(const std::filesystem::path& book, const std::string& what);

/// What can be seen without walking all pages, however large the book: the file's length, its tables, the end
/// of the journal. Of a small book all pages. What was found, or nothing. Throws when it cannot look.
std::optional<std::string> quickLook(Connection& connection);

/// Walks all pages and indices. Sets or lifts the mark; Damaged says what was found.
Result<void> checkPages(const std::filesystem::path& book, Progress& progress);

/// "arcs: 1,200 of 1,310 can be read", one line a table.
Result<std::vector<std::string>> whatIsReadable(const std::filesystem::path& book);

/// How this program has the book open.
Result<BookState> bookState(const std::filesystem::path& book);

}  // namespace arc::storage
