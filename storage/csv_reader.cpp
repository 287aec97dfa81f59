// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/csv_reader.hpp"

#include <algorithm>
#include <cstring>
#include <new>

namespace arc::storage {
namespace {

constexpr std::size_t pieceBytes = 1 << 20;

}  // namespace

CsvReader::CsvReader(CsvSource& source, char delimiter) : source_(source), delimiter_(delimiter) {
    if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) != 0) throw std::bad_alloc();
    csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
}

CsvReader::~CsvReader() {
    csv_free(&parser_);
}

void CsvReader::fill() {
    buffer_.erase(0, begin_);
    begin_ = 0;
    ended_ = !source_.read(buffer_, pieceBytes);
}

/// The line at begin_ up to and with its '\n' (or the end of the file); longer lines are cut.
std::size_t CsvReader::findRecord(std::string& fault) {
    while (true) {
        const std::string_view rest = std::string_view(buffer_).substr(begin_);
        const std::size_t end = rest.find('\n');
        if (end == std::string_view::npos && rest.size() <= recordLimit && !ended_) {
            fill();  // the buffer moves, and may have grown even at the end of the file
            continue;
        }
        if (rest.empty()) return 0;
        const std::size_t length = end == std::string_view::npos ? rest.size() : end + 1;
        if (length > recordLimit) {
            fault = "the line is longer than 64 KiB";
            return std::min(length, rest.size());
        }
        if (rest.substr(0, length).find('"') == std::string_view::npos) return length;
        return findQuotedEnd(length, fault);
    }
}

/// The record at begin_ holds a quote in its first line: it may go on over further lines.
std::size_t CsvReader::findQuotedEnd(std::size_t lineEnd, std::string& fault) {
    enum class Where { FieldStart, Plain, Quoted, AfterQuote };
    Where where = Where::FieldStart;
    std::size_t i = 0;
    while (true) {
        if (begin_ + i >= buffer_.size()) {
            if (i <= recordLimit && !ended_) {
                fill();
                continue;
            }
            if (where != Where::Quoted && i <= recordLimit) return i;
            break;
        }
        if (i > recordLimit) break;
        const char c = buffer_[begin_ + i++];
        if (where == Where::Quoted) {
            if (c == '"') where = Where::AfterQuote;
        } else if (c == '\n') {
            return i;
        } else if (c == delimiter_) {
            where = Where::FieldStart;
        } else if (c == '"' && (where == Where::FieldStart || where == Where::AfterQuote)) {
            where = Where::Quoted;
        } else if (where == Where::FieldStart && c != ' ') {
            where = Where::Plain;
        }
    }
    // A quote that is never closed must not swallow the rows below it.
    fault = "a quotation mark is opened and never closed";
    return lineEnd;
}

void CsvReader::split(CsvRecord& record, std::string_view whole) {
    fieldBytes_.clear();
    fieldEnds_.clear();
    const auto onField = [](void* field, std::size_t length, void* self) {
        auto& reader = *static_cast<CsvReader*>(self);
        reader.fieldBytes_.append(static_cast<const char*>(field), length);
        reader.fieldEnds_.push_back(reader.fieldBytes_.size());
    };
    const auto onRow = [](int, void*) {};
    const std::size_t taken = csv_parse(&parser_, whole.data(), whole.size(), onField, onRow, this);
    bool good = taken == whole.size();
    // At the end of the file the last line may lack its line end.
    good = csv_fini(&parser_, onField, onRow, this) == 0 && good;
    if (!good) {
        record.fault = "a quotation mark stands where none may stand";
        csv_free(&parser_);
        csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI);
        csv_set_delim(&parser_, static_cast<unsigned char>(delimiter_));
        return;
    }
    std::size_t from = 0;
    for (const std::size_t end : fieldEnds_) {
        record.fields.push_back(std::string_view(fieldBytes_).substr(from, end - from));
        from = end;
    }
}

bool CsvReader::next(CsvRecord& record) {
    while (true) {
        record.fault.clear();
        record.fields.clear();
        const std::size_t length = findRecord(record.fault);
        if (length == 0) return false;
        const std::string_view whole = std::string_view(buffer_).substr(begin_, length);
        record.line = line_;
        line_ += static_cast<std::uint64_t>(std::count(whole.begin(), whole.end(), '\n'));
        begin_ += length;
        record.raw = whole;
        while (!record.raw.empty() && (record.raw.back() == '\n' || record.raw.back() == '\r'))
            record.raw.remove_suffix(1);
        if (record.raw.find_first_not_of(" \t") == std::string_view::npos) continue;
        if (record.fault.empty()) split(record, whole);
        if (record.fault.empty() && !isUtf8(record.raw)) record.fault = "the row is not UTF-8 text";
        return true;
    }
}

char delimiterOf(std::string_view header) {
    char best = ',';
    std::ptrdiff_t most = 0;
    for (const char candidate : {',', ';', '\t'}) {
        const auto count = std::count(header.begin(), header.end(), candidate);
        if (count > most) {
            most = count;
            best = candidate;
        }
    }
    return best;
}

}  // namespace arc::storage
