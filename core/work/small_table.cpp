// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/small_table.hpp"

#include "core/work/trim.hpp"

namespace arc {
namespace {

std::vector<std::string> cellsOf(std::string_view line, char separator) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"')
            cells.back() += line[++i];
        else if (c == '"')
            quoted = !quoted;
        else if (c == separator && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    }
    for (auto& cell : cells) cell = std::string(trim(cell));
    return cells;
}

}  // namespace

std::optional<std::string> SmallTable::cell(const Row& row, std::string_view column) const {
    const auto found = columns.find(column);
    if (found == columns.end() || found->second >= row.cells.size()) return std::nullopt;
    return row.cells[found->second];
}

SmallTable smallTable(std::string_view csv) {
    if (csv.starts_with("\xEF\xBB\xBF")) csv.remove_prefix(3);
    SmallTable table;
    char separator = ',';
    for (std::size_t line = 1; !csv.empty(); ++line) {
        const auto end = csv.find('\n');
        const std::string_view row = csv.substr(0, end);
        csv = end == std::string_view::npos ? std::string_view{} : csv.substr(end + 1);
        if (trim(row).empty()) continue;
        if (table.headerLine > 0) {
            table.rows.push_back({line, cellsOf(row, separator)});
            continue;
        }
        for (const char candidate : {';', '\t'})
            if (row.find(candidate) != std::string_view::npos) separator = candidate;
        const auto names = cellsOf(row, separator);
        for (std::size_t i = 0; i < names.size(); ++i) table.columns.emplace(names[i], i);
        table.headerLine = line;
    }
    return table;
}

std::string lineWords(std::size_t line) {
    return "line " + std::to_string(line);
}

}  // namespace arc
