// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the reference tables below tests/reference/data: '#' lines name the source, then a header row, then
// plain rows (quotes allowed). A missing file or column fails the test by an exception.
#pragma once
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "source_dir.hpp"

namespace arc::support {

class ReferenceRow {
  public:
    explicit ReferenceRow(std::map<std::string, std::string> given) : cells(std::move(given)) {}
    [[nodiscard]] const std::string& text(const std::string& column) const {
        const auto found = cells.find(column);
        if (found == cells.end()) throw std::runtime_error("no column " + column);
        return found->second;
    }
    [[nodiscard]] double number(const std::string& column) const { return std::stod(text(column)); }
    [[nodiscard]] int whole(const std::string& column) const { return std::stoi(text(column)); }
    [[nodiscard]] bool has(const std::string& column) const {
        const auto found = cells.find(column);
        return found != cells.end() && !found->second.empty() && found->second != "NA";
    }
    /// "lambda=0.1 limit=2.7 …" for the message of a failing check.
    [[nodiscard]] std::string describe() const {
        std::string all;
        for (const auto& [name, value] : cells) all += name + "=" + value + " ";
        return all;
    }

  private:
    std::map<std::string, std::string> cells;
};

inline std::vector<std::string> splitCsvLine(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            cells.emplace_back();
        else if (c != '\r')
            cells.back() += c;
    }
    return cells;
}

/// Rows of tests/reference/data/`name`; throws when there is none.
inline std::vector<ReferenceRow> referenceRows(const std::string& name) {
    const std::string path = std::string(ARC_SOURCE_DIR) + "/tests/reference/data/" + name;
    std::ifstream in(path);
    if (!in) throw std::runtime_error("cannot read " + path);
    std::vector<std::string> header;
    std::vector<ReferenceRow> rows;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line[0] == '#') continue;
        const std::vector<std::string> cells = splitCsvLine(line);
        if (header.empty()) {
            header = cells;
            continue;
        }
        if (cells.size() != header.size()) throw std::runtime_error(path + ": ragged row " + line);
        std::map<std::string, std::string> row;
        for (std::size_t i = 0; i < header.size(); ++i) row[header[i]] = cells[i];
        rows.emplace_back(std::move(row));
    }
    if (rows.empty()) throw std::runtime_error(path + " has no rows");
    return rows;
}

}  // namespace arc::support
