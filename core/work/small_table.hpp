// SPDX-License-Identifier: GPL-3.0-or-later
// A table of a few columns as CSV, whole in memory: a splice plan, the spans of a job. Imports of logs have a
// reader of their own, in storage.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace arc {

struct SmallTable {
    struct Row {
        std::size_t line = 0;  ///< in the file, from 1
        std::vector<std::string> cells;
    };
    std::size_t headerLine = 0;  ///< 0: the file is empty
    std::map<std::string, std::size_t, std::less<>> columns;
    std::vector<Row> rows;  ///< without the empty ones

    /// None where the column or the cell is not there.
    [[nodiscard]] std::optional<std::string> cell(const Row& row, std::string_view column) const;
};

/// Cells are parted by a semicolon or tab when the header has one, else by commas; quotes as in RFC 4180,
/// without line breaks inside. Of two columns of one name the first counts.
SmallTable smallTable(std::string_view csv);

/// "line 3": where in the file a row stands.
std::string lineWords(std::size_t line);

}  // namespace arc
