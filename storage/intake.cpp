// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/intake.hpp"

#include <algorithm>
#include <array>
#include <memory>
#include <utility>

#include "storage/indices.hpp"
#include "storage/intake_parts.hpp"
#include "storage/open_book.hpp"
#include "storage/set_aside_sheets.hpp"

namespace arc::storage {
namespace {

constexpr std::size_t shownRows = 1'000;
constexpr std::size_t keptRowBytes = 4'096;
constexpr std::size_t keptAtOnce = 1'000;
/// A setting holds a megabyte; a row takes 67 bytes of it.
constexpr std::size_t sheetRowsAtOnce = 10'000;
/// When not one of so many rows can be read, this is another kind of file.
constexpr std::uint64_t hopelessRows = 1'000;
constexpr std::uint64_t rowsBetweenReports = 4'096;
/// As much text as an arc of twelve fibres takes, and no less than this in all, pays for making indices anew.
constexpr std::uint64_t bytesOfAnArc = 1'200, bytesWorthIndices = 1'000'000;

/// Whether the files bring more arcs than the logbook has.
bool bringsManyArcs(const std::vector<FileToRead>& files, Connection& connection) {
    std::uint64_t bytes = 0;
    for (const FileToRead& file : files) {
        std::error_code error;
        const auto size = file.text ? file.text->size() : std::filesystem::file_size(file.file, error);
        if (!error) bytes += size;
    }
    const auto arcs = static_cast<std::uint64_t>(connection.number("SELECT arcs FROM total"));
    return bytes >= bytesWorthIndices && bytes / bytesOfAnArc > arcs;
}

ImportCount takeFile(const FileToRead& wanted, Connection& connection, Ledger& ledger, KitFinder& kit,
                     const IntakeRequest& request, Progress& progress) {
    auto source = wanted.text ? Result<CsvSource>(CsvSource::ofText(wanted.file, *wanted.text))
                              : CsvSource::open(wanted.file);
    if (!source) throw IntakeStop{source.error()};
    IntakeFile file(*source, connection, ledger, kit, progress, request);
    const bool keyed = request.key && (!wanted.kind || *wanted.kind == request.key->kind);
    file.readHeader(keyed ? &*request.key : nullptr);
    const FileKind told = keyed ? request.key->kind : kindOf(file.header).value_or(FileKind::SpliceLog);
    file.fileKind = wanted.kind.value_or(told);
    switch (file.fileKind) {
        case FileKind::SpliceLog:
            takeSplices(file);
            break;
        case FileKind::Events:
            takeEvents(file);
            break;
        case FileKind::MeasuredLosses:
            takeMeasured(file);
            break;
    }
    file.finish();
    return std::move(file.count);
}

}  // namespace

std::optional<FileKind> kindOf(const std::vector<std::string>& header) {
    const auto has = [&header](std::string_view column) {
        return std::find(header.begin(), header.end(), column) != header.end();
    };
    if (has("equipment") && has("action")) return FileKind::Events;
    if (has("loss_a_to_b_db") || has("loss_b_to_a_db")) return FileKind::MeasuredLosses;
    if (has("loss_db") || has("splicer")) return FileKind::SpliceLog;
    return std::nullopt;
}

IntakeFile::IntakeFile(CsvSource& from, Connection& into, Ledger& writer, KitFinder& finder,
                       Progress& watcher, const IntakeRequest& asked)
    : source(from), connection(into), ledger(writer), kit(finder), progress(watcher), request(asked) {}

void IntakeFile::readHeader(const ColumnKey* key) {
    // The first line decides on the delimiter, so it is looked at before the reader is made.
    auto look = source.again();
    if (!look) throw IntakeStop{look.error()};
    std::string head;
    look->read(head, CsvReader::recordLimit);
    const auto start = head.find_first_not_of("\r\n \t");
    const std::string_view text =
        start == std::string::npos ? std::string_view() : std::string_view(head).substr(start);
    delimiter_ = delimiterOf(text.substr(0, text.find('\n')));
    if (key != nullptr && key->separator) delimiter_ = *key->separator;
    reader_.emplace(source, delimiter_);
    if (!reader_->next(record))
        throw IntakeStop{{ProblemCode::BadInput, "the file is empty", source.file().string(), ""}};
    if (!record.fault.empty())
        throw IntakeStop{{ProblemCode::BadInput, record.fault, source.file().string() + ", header", ""}};
    for (const auto field_ : record.fields) header.push_back(columnName(field_));
    headerLine_ = record.raw;
    theirColumns_ = header.size();
    if (key != nullptr) {
        auto over = Translation::over(*key, header, source.file().string());
        if (!over) throw IntakeStop{over.error()};
        translation_.emplace(std::move(*over));
        header = translation_->header();
    }
    if (source.form() != TextForm::Utf8) note("read as UTF-16");
    if (delimiter_ != ',' && key == nullptr) {
        // Where the comma does not separate columns it may stand in numbers.
        mark = DecimalMark::Comma;
        note(delimiter_ == ';' ? "columns are separated by semicolons" : "columns are separated by tabs");
    }
}

std::vector<int> IntakeFile::place(const std::vector<const char*>& names, std::size_t needed) {
    std::vector<int> places;
    const auto where = source.file().string() + ", header";
    const auto listed = [this] {
        std::string all;
        for (const auto& column : header) all += (all.empty() ? "" : ", ") + column;
        return showable(all, 300);
    };
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto first = std::find(header.begin(), header.end(), names[i]);
        if (first == header.end()) {
            if (i < needed)
                throw IntakeStop{
                    {ProblemCode::BadInput,
                     std::string("the file has no column \"") + names[i] + "\"; it has: " + listed(), where,
                     "Name the column so, or give a column key"}};
            places.push_back(-1);
            continue;
        }
        if (std::find(std::next(first), header.end(), names[i]) != header.end())
            throw IntakeStop{{ProblemCode::BadInput,
                              std::string("the column \"") + names[i] + "\" is there twice", where,
                              "Remove one of them"}};
        places.push_back(static_cast<int>(first - header.begin()));
    }
    std::string unread;
    for (const auto& column : header)
        if (std::find(names.begin(), names.end(), column) == names.end())
            unread +=
                (unread.empty() ? "" : ", ") + (column.empty() ? std::string("(without a name)") : column);
    if (!unread.empty()) note("columns that are not read: " + showable(unread, 300));
    return places;
}

void IntakeFile::show(const Translation::Row& row) {
    record.fields.assign(row.begin(), row.end());
}

bool IntakeFile::translate() {
    auto rows = translation_->rows(record.fields);
    if (!rows) {
        setAside({rows.error().column, rows.error().reason});
        return false;
    }
    translated_ = std::move(*rows);
    nextTranslated_ = 1;
    show(translated_.front());
    return true;
}

bool IntakeFile::nextRow() {
    if (nextTranslated_ < translated_.size()) {
        ++count.read;
        show(translated_[nextTranslated_++]);
        return true;
    }
    while (count.read < request.firstRows.value_or(UINT64_MAX) && reader_->next(record)) {
        ++count.read;
        if (count.read % rowsBetweenReports == 1) {
            progress.report(source.done(), source.size(), "Reading " + name());
            if (progress.stopRequested())
                throw IntakeStop{{ProblemCode::Cancelled, "the import was stopped; nothing was changed",
                                  source.file().string(), ""}};
        }
        if (count.read == hopelessRows + 1 && count.setAside == hopelessRows)
            throw IntakeStop{
                {ProblemCode::BadInput,
                 "not one of the first 1,000 rows can be read; the first: " + count.rows.front().reason,
                 source.file().string(), "Check that this is the right file; nothing was changed"}};
        if (!record.fault.empty()) {
            setAside({"", record.fault});
        } else if (record.fields.size() != theirColumns_) {
            const bool more = record.fields.size() > theirColumns_;
            setAside(
                {"", "the row has " + std::to_string(record.fields.size()) + " fields, the header names " +
                         std::to_string(theirColumns_) +
                         (more && delimiter_ == ',' ? "; a decimal comma without quotes does that" : "")});
        } else if (!translation_ || translate()) {
            return true;
        }
    }
    return false;
}

void IntakeFile::setAside(std::uint64_t line, std::string_view raw, RowFault fault) {
    ++count.setAside;
    SetAsideVersion row{
        std::string(wordOf(fileKind)), name(), line, std::move(fault.column), std::move(fault.reason),
        showable(raw, keptRowBytes)};
    if (request.setAsideTable == SetAsideTable::Wanted) {
        if (count.setAsideTable.empty()) count.setAsideTable = headerLine_ + "\r\n";
        // The channels of a wide row are one row of the file.
        if (line != lastSetAside_) count.setAsideTable += std::string(raw) + "\r\n";
        lastSetAside_ = line;
    }
    const Digest key = setAsideKey(row);
    if (count.rows.size() < shownRows)
        count.rows.push_back({row.file, row.line, row.column, row.reason, row.text, toHex(key)});
    sheetRows_.push_back(toHex(key));
    if (sheetRows_.size() >= sheetRowsAtOnce) keepSheet();
    if (keys_.insert(key).second) unkept_.push_back(std::move(row));
    if (unkept_.size() >= keptAtOnce) keepSetAside();
}

void IntakeFile::keepSetAside() {
    std::erase_if(unkept_, [this](const SetAsideVersion& row) {
        const Digest key = setAsideKey(row);
        Query q = connection.query("SELECT 1 FROM set_aside WHERE sha256 = ?");
        return q.with(Bytes(key)).step();
    });
    keys_.clear();
    if (unkept_.empty()) return;
    Batch batch;
    batch.setAside = std::exchange(unkept_, {});
    const auto number = batch.setAside.size();
    ledger.write(batch, stamp("set_aside", "Set aside " + grouped(number) +
                                               (number == 1 ? " row of " : " rows of ") + name()));
}

/// With the header and the key the rows can be read again once they are mended.
void IntakeFile::keepSheet() {
    if (sheetRows_.empty()) return;
    SheetHead head{
        name(), fileKind, delimiter_, showable(headerLine_, keptRowBytes), {}, std::exchange(sheetRows_, {})};
    if (translation_) head.key = translation_->key();
    writeRecord(connection, ledger, sheetSetting(head),
                stamp("setting", "How the set-aside rows of " + name() + " are read again"));
}

Stamp IntakeFile::stamp(std::string_view kind, std::string text) const {
    return {request.who, "import " + name(), std::string(kind), std::move(text), {}};
}

void IntakeFile::write(Batch& batch, std::string_view kind, std::string text) {
    kit.writeNew(stamp("", ""));
    if (!batch.empty()) ledger.write(batch, stamp(kind, std::move(text)));
    batch.clear();
}

void IntakeFile::finish() {
    kit.writeNew(stamp("", ""));
    keepSetAside();
    keepSheet();
    for (auto& text : kit.takeNotes()) note(std::move(text));
    progress.report(source.size(), source.size(), "Reading " + name());
}

std::string_view wordOf(FileKind kind) {
    return kind == FileKind::Events ? "events" : kind == FileKind::MeasuredLosses ? "measured" : "splices";
}

std::string grouped(std::uint64_t number) {
    std::string text = std::to_string(number);
    for (std::size_t at = text.size(); at > 3; at -= 3) text.insert(at - 3, ",");
    return text;
}

Result<std::vector<ImportCount>> takeIn(const IntakeRequest& request, Clock& clock, Random& random,
                                        Progress& progress) {
    auto open = openBook(request.book, request.mode);
    if (!open) return tl::unexpected(open.error());
    return guarded(request.book, [&]() -> Result<std::vector<ImportCount>> {
        std::vector<ImportCount> counts;
        try {
            Connection& connection = *open->connection;
            // Every key that goes into a row here was looked up or made in this very transaction; asking for
            // it again, eight times a row, would take half of the time.
            connection.execute("PRAGMA foreign_keys = OFF");
            // Beside the memory in which indices are sorted; more makes it no quicker.
            connection.execute("PRAGMA cache_size = -16384");
            WriteTransaction transaction(connection);
            std::vector<std::string> indices;
            if (request.purpose == Purpose::Import && bringsManyArcs(request.files, connection))
                indices = dropIndices(connection, "arc");
            Ledger ledger(connection, clock, random);
            KitFinder kit(connection, ledger);
            for (const FileToRead& file : request.files)
                counts.push_back(takeFile(file, connection, ledger, kit, request, progress));
            if (request.purpose == Purpose::TryOnly) return counts;
            for (std::size_t i = 0; i < indices.size(); ++i) {
                progress.report(i, indices.size(), "Putting the splices in order");
                if (progress.stopRequested()) break;
                connection.execute(indices[i]);
            }
            if (progress.stopRequested())
                return fail(ProblemCode::Cancelled, "the import was stopped; nothing was changed");
            transaction.commit();
            if (!connection.filesStillOurs())
                return fail(
                    ProblemCode::Unavailable, "the logbook file was taken away or replaced during the import",
                    request.book.string(), "Import the files once more; what is known is not doubled");
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
        return counts;
    });
}

}  // namespace arc::storage
