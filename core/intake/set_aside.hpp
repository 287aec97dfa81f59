// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of imports that could not be read. They are kept in the logbook, with what is needed to read them
// again (header, separator, column key), until each is mended or left out on purpose: a crew mends them days
// later and on another laptop, so a file beside the logbook or the memory of the window would not do.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/intake/column_key.hpp"

namespace arc {

/// A row of a file that could not be read: kept with the reason, never dropped.
struct SetAsideRow {
    std::string file;
    std::uint64_t line = 0;  ///< 1-based line in the file
    std::string column;      ///< may be empty
    std::string reason;
    std::string text;  ///< the raw row
    std::string key;   ///< identity in the logbook; may be empty
};

/// The open rows of one file, and how it was read.
struct SetAsideSheet {
    std::string id;
    std::string file;
    FileKind kind = FileKind::SpliceLog;
    char separator = ',';
    std::vector<std::string> header;  ///< as written in the file
    std::optional<ColumnKey> key;
    std::vector<SetAsideRow> rows;                ///< a row that was not read yet has its key alone; line 0
    std::vector<std::vector<std::string>> cells;  ///< of the rows; empty where a row cannot be split
};

enum class MendPurpose { Try, Import };
enum class MendVerdict { Untried, Lands, Known, StillWrong };

/// A row of a sheet with mended cells, and what comes of it.
struct MendedRow {
    std::size_t row = 0;  ///< index into the sheet's rows
    std::vector<std::string> cells;
    std::string text = {};  ///< the whole raw row instead, when there are no cells
    MendVerdict verdict = MendVerdict::Untried;
    std::string column;  ///< of StillWrong: where; may be empty
    std::string reason;
};

}  // namespace arc
