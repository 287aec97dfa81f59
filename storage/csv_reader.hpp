// SPDX-License-Identifier: GPL-3.0-or-later
// Records of a CSV file (RFC 4180) with the line each begins on. The library that splits fields drops blank
// lines, and stops at the first malformed quote: so records are found and lines are counted here, in the raw
// bytes, and the library gets one record at a time. Memory does not grow with the file.
#pragma once
#include <cstdint>
#include <csv.h>
#include <string>
#include <string_view>
#include <vector>

#include "storage/csv_source.hpp"

namespace arc::storage {

struct CsvRecord {
    std::uint64_t line = 0;                ///< 1-based, of its first byte
    std::string_view raw;                  ///< without the line end; valid until the next record
    std::vector<std::string_view> fields;  ///< trimmed; valid until the next record
    std::string fault;                     ///< why it could not be split; empty = it could
};

class CsvReader {
  public:
    /// Longest record; a longer one is cut at its first line end and comes with a fault.
    static constexpr std::size_t recordLimit = 64 << 10;

    CsvReader(CsvSource& source, char delimiter);
    ~CsvReader();
    CsvReader(const CsvReader&) = delete;
    CsvReader& operator=(const CsvReader&) = delete;

    /// The next record that is not blank; false at the end.
    bool next(CsvRecord& record);

  private:
    /// Length of the record at begin_ with its line end; 0 at the end of the file.
    std::size_t findRecord(std::string& fault);
    std::size_t findQuotedEnd(std::size_t lineEnd, std::string& fault);
    /// Only before the end of the file.
    void fill();
    void split(CsvRecord& record, std::string_view whole);

    CsvSource& source_;
    char delimiter_;
    csv_parser parser_{};
    std::string buffer_;
    std::size_t begin_ = 0;
    std::uint64_t line_ = 1;
    bool ended_ = false;
    std::string fieldBytes_;
    std::vector<std::size_t> fieldEnds_;
};

/// Which of comma, semicolon and tab splits this header into most columns.
char delimiterOf(std::string_view header);

}  // namespace arc::storage
