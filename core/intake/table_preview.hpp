// SPDX-License-Identifier: GPL-3.0-or-later
// The first rows of somebody's table, as they stand and as they would be read.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/intake/column_key.hpp"
#include "core/result.hpp"

namespace arc {

struct TableQuestion {
    std::filesystem::path file;
    std::optional<FileKind> kind;  ///< none: told from the header, if it can be
    std::optional<ColumnKey> key;
    std::size_t rows = 20;  ///< how many rows to read
};

struct PreviewRow {
    std::uint64_t line = 0;
    std::vector<std::string> theirs;             ///< cells as they stand
    std::vector<std::vector<std::string>> ours;  ///< cells as they are read; several rows from a wide one
    std::string column;                          ///< where it fails; may be empty
    std::string reason;                          ///< why it would be set aside; empty: it lands
};

struct TablePreview {
    char separator = ',';
    std::vector<std::string> theirHeader;  ///< as written
    std::vector<std::string> ourHeader;    ///< of PreviewRow::ours
    std::vector<PreviewRow> rows;
    std::optional<FileKind> kind;    ///< told from the header as it would be read
    std::optional<Problem> problem;  ///< why nothing of the file can be read so; rows then have no `ours`
    std::vector<std::string> notes;
};

}  // namespace arc
