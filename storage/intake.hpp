// SPDX-License-Identifier: GPL-3.0-or-later
// Takes CSV files into a logbook: splice logs, events, measured losses. All files of one call in one
// transaction; every row lands or is set aside with line, column and reason; what is known already is left
// alone. Memory does not grow with the file.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/ports.hpp"
#include "core/workbench.hpp"
#include "storage/column_key.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::storage {

struct FileToRead {
    std::filesystem::path file;
    /// Empty: told from the header.
    std::optional<FileKind> kind;
    /// The content, when it is at hand; `file` is then only its name.
    std::optional<std::string> text = {};
};

enum class Purpose { Import, TryOnly };
enum class SetAsideTable { No, Wanted };

struct IntakeRequest {
    std::filesystem::path book;
    std::vector<FileToRead> files;  ///< in the order they are read
    Purpose purpose = Purpose::Import;
    OpenMode mode = OpenMode::ReadWrite;  ///< Companion when this program writes the book already
    std::string who;
    std::optional<ColumnKey> key = {};  ///< for the files of its kind
    SetAsideTable setAsideTable = SetAsideTable::No;
    std::optional<std::uint64_t> firstRows = {};  ///< read no more than these
};

/// One count per file, in order. A Problem means that nothing was changed.
Result<std::vector<ImportCount>> takeIn(const IntakeRequest& request, Clock& clock, Random& random,
                                        Progress& progress);

}  // namespace arc::storage
