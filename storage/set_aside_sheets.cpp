// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/set_aside_sheets.hpp"

#include <algorithm>
#include <charconv>
#include <map>
#include <nlohmann/json.hpp>
#include <span>
#include <unordered_set>

#include "storage/canonical.hpp"
#include "storage/column_key.hpp"
#include "storage/csv_reader.hpp"
#include "storage/intake_parts.hpp"
#include "storage/open_book.hpp"
#include "storage/sqlite_logbook.hpp"
#include "storage/strict_json.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view sheetPrefix = "set_aside.sheet/";
constexpr std::string_view settledPrefix = "set_aside.settled/";

std::optional<FileKind> kindFrom(std::string_view word) {
    for (const auto kind : {FileKind::SpliceLog, FileKind::Events, FileKind::MeasuredLosses})
        if (wordOf(kind) == word) return kind;
    return std::nullopt;
}

std::string joined(const std::vector<std::string>& cells, char separator) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) line += separator;
        const std::string& cell = cells[i];
        if (cell.find_first_of(std::string("\"\r\n") + separator) == std::string::npos) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) {
            if (c == '"') line += '"';
            line += c;
        }
        line += '"';
    }
    return line;
}

/// Exporters give every day's file the same name and header: the rows tell the files apart.
std::string idOf(const SheetHead& head) {
    constexpr std::size_t enough = 32;
    return toHex(sha256(Canonical()
                            .text(head.file)
                            .text(wordOf(head.kind))
                            .text(std::string(1, head.separator))
                            .text(head.header)
                            .text(head.key ? toJson(*head.key) : "")
                            .text(joined(head.rows, ' '))
                            .view()))
        .substr(0, enough);
}

std::optional<SheetHead> headFrom(const std::string& text) {
    const auto json = parseStrict(text, "set-aside sheet");
    if (!json || !json->is_object()) return std::nullopt;
    try {
        SheetHead head;
        head.file = json->at("file").get<std::string>();
        const auto kind = kindFrom(json->at("kind").get<std::string>());
        const auto separator = json->at("separator").get<std::string>();
        if (!kind || separator.size() != 1) return std::nullopt;
        head.kind = *kind;
        head.separator = separator.front();
        head.header = json->at("header").get<std::string>();
        if (json->contains("key")) {
            auto key = readColumnKey(json->at("key").get<std::string>(), head.file);
            if (!key) return std::nullopt;
            head.key = std::move(*key);
        }
        head.rows = json->at("rows").get<std::vector<std::string>>();
        return head;
    } catch (const nlohmann::json::exception&) {
        return std::nullopt;
    }
}

std::vector<std::string> split(const std::string& line, char separator) {
    CsvSource source = CsvSource::ofText("row", line);
    CsvReader reader(source, separator);
    CsvRecord record;
    if (!reader.next(record) || !record.fault.empty()) return {};
    return {record.fields.begin(), record.fields.end()};
}

std::string lineOf(const MendedRow& row, char separator) {
    return row.cells.empty() ? row.text : joined(row.cells, separator);
}

std::vector<std::uint8_t> bytesOf(const std::string& hex) {
    std::vector<std::uint8_t> bytes;
    for (std::size_t i = 0; i + 1 < hex.size(); i += 2) {
        unsigned value = 0;
        std::from_chars(hex.data() + i, hex.data() + i + 2, value, 16);
        bytes.push_back(static_cast<std::uint8_t>(value));
    }
    return bytes;
}

std::string settledKey(const SetAsideSheet& sheet, std::size_t row) {
    return std::string(settledPrefix) + sheet.id + "/" + sheet.rows.at(row).key;
}

/// Tries or takes in the rows, one line each below the header; answers reason and column by index.
Result<std::map<std::size_t, RowFault>> take(const std::filesystem::path& book, const SetAsideSheet& sheet,
                                             const std::vector<MendedRow>& rows, Purpose purpose,
                                             const std::string& who, Clock& clock, Random& random,
                                             std::uint64_t& added) {
    std::string text = joined(sheet.header, sheet.separator) + "\n";
    auto lines = static_cast<std::uint64_t>(std::count(text.begin(), text.end(), '\n'));
    std::map<std::uint64_t, std::size_t> rowAt;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        rowAt[lines + 1] = i;
        const std::string line = lineOf(rows[i], sheet.separator) + "\n";
        lines += static_cast<std::uint64_t>(std::count(line.begin(), line.end(), '\n'));
        text += line;
    }
    IntakeRequest request;
    request.book = book;
    request.files = {{sheet.file, sheet.kind, std::move(text)}};
    request.purpose = purpose;
    request.mode = OpenMode::Companion;
    request.who = who;
    request.key = sheet.key;
    NoProgress unwatched;
    const auto counts = takeIn(request, clock, random, unwatched);
    if (!counts) return tl::unexpected(counts.error());
    added = counts->front().added;
    std::map<std::size_t, RowFault> faults;
    for (const auto& row : counts->front().rows)
        if (const auto at = rowAt.find(row.line); at != rowAt.end())
            faults.emplace(at->second, RowFault{row.column, row.reason});
    return faults;
}

}  // namespace

Setting sheetSetting(const SheetHead& head) {
    Json json{{"file", head.file},
              {"kind", wordOf(head.kind)},
              {"separator", std::string(1, head.separator)},
              {"header", head.header}};
    if (head.key) json["key"] = toJson(*head.key);
    json["rows"] = head.rows;
    return {std::string(sheetPrefix) + idOf(head), json.dump(-1, ' ', false, Json::error_handler_t::replace)};
}

Result<std::vector<Setting>> settingsUnder(const std::filesystem::path& book, std::string_view prefix) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return guarded(book, [&]() -> Result<std::vector<Setting>> {
        std::vector<Setting> found;
        Query q = open->connection->query(
            "SELECT body FROM record WHERE kind = 'setting' AND live = 1 ORDER BY row");
        while (q.step()) {
            // Bodies are written by us: the key stands in front, so most are passed over unparsed.
            if (q.text(0).find(prefix) == std::string_view::npos) continue;
            auto setting = fromBody<Setting>(q.text(0));
            if (setting.key.starts_with(prefix) && !setting.value.empty())
                found.push_back(std::move(setting));
        }
        return found;
    });
}

Result<std::vector<SetAsideSheet>> openSheets(const std::filesystem::path& book) {
    const auto heads = settingsUnder(book, sheetPrefix);
    if (!heads) return tl::unexpected(heads.error());
    if (heads->empty()) return std::vector<SetAsideSheet>{};
    const auto done = settingsUnder(book, settledPrefix);
    if (!done) return tl::unexpected(done.error());
    // A file that grew brings its old rows again: each is shown once, and settled once.
    std::unordered_set<std::string> gone;
    for (const auto& setting : *done) gone.insert(setting.key.substr(setting.key.rfind('/') + 1));
    std::vector<SetAsideSheet> sheets;
    for (auto setting = heads->rbegin(); setting != heads->rend(); ++setting) {
        auto head = headFrom(setting->value);
        if (!head) continue;
        SetAsideSheet sheet;
        sheet.id = setting->key.substr(sheetPrefix.size());
        sheet.file = head->file;
        sheet.kind = head->kind;
        sheet.separator = head->separator;
        sheet.header = split(head->header, head->separator);
        sheet.key = head->key;
        for (auto& key : head->rows) {
            if (!gone.insert(key).second) continue;
            SetAsideRow row;
            row.file = sheet.file;
            row.key = std::move(key);
            sheet.rows.push_back(std::move(row));
        }
        sheet.cells.resize(sheet.rows.size());
        if (!sheet.rows.empty()) sheets.push_back(std::move(sheet));
    }
    return sheets;
}

Result<void> readRows(const std::filesystem::path& book, SetAsideSheet& sheet, std::size_t from,
                      std::size_t count) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return guarded(book, [&]() -> Result<void> {
        const std::size_t end = std::min(sheet.rows.size(), from + count);
        for (std::size_t i = from; i < end; ++i) {
            SetAsideRow& row = sheet.rows[i];
            if (row.line > 0) continue;
            const auto bytes = bytesOf(row.key);
            Query q = open->connection->query(
                "SELECT line, column_name, reason, text FROM set_aside WHERE sha256 = ?");
            if (!q.with(Bytes(bytes)).step()) {
                row.reason = "the row is not in this logbook";
                continue;
            }
            row.line = static_cast<std::uint64_t>(q.integer(0));
            row.column = q.text(1);
            row.reason = q.text(2);
            row.text = q.text(3);
            sheet.cells[i] = split(row.text, sheet.separator);
        }
        return {};
    });
}

Setting mendedSetting(const SetAsideSheet& sheet, const MendedRow& row) {
    return {settledKey(sheet, row.row), "mended: " + lineOf(row, sheet.separator)};
}

Setting leftOutSetting(const SetAsideSheet& sheet, std::size_t row) {
    return {settledKey(sheet, row), "left out"};
}

namespace {

Result<void> mendSome(const std::filesystem::path& book, const SetAsideSheet& sheet,
                      std::span<MendedRow> rows, MendPurpose purpose, const std::string& who, Clock& clock,
                      Random& random) {
    std::uint64_t added = 0;
    const auto faults =
        take(book, sheet, {rows.begin(), rows.end()}, Purpose::TryOnly, who, clock, random, added);
    if (!faults) return tl::unexpected(faults.error());
    std::vector<MendedRow> good;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto fault = faults->find(i);
        rows[i].verdict = fault != faults->end() ? MendVerdict::StillWrong
                          : added > 0            ? MendVerdict::Lands
                                                 : MendVerdict::Known;
        rows[i].column = fault != faults->end() ? fault->second.column : "";
        rows[i].reason = fault != faults->end() ? fault->second.reason : "";
        if (fault == faults->end()) good.push_back(rows[i]);
    }
    if (purpose == MendPurpose::Try || good.empty()) return {};
    const auto taken = take(book, sheet, good, Purpose::Import, who, clock, random, added);
    if (!taken) return tl::unexpected(taken.error());
    auto logbook = openLogbook(book, OpenMode::Companion, clock, random);
    if (!logbook) return tl::unexpected(logbook.error());
    std::vector<Entry> settled;
    for (std::size_t i = 0; i < good.size(); ++i)
        if (!taken->contains(i)) settled.emplace_back(mendedSetting(sheet, good[i]));
    if (const auto saved = (*logbook)->append(settled, {who, "import " + sheet.file, {}}); !saved)
        return tl::unexpected(saved.error());
    return {};
}

}  // namespace

Result<std::vector<MendedRow>> mendRows(const std::filesystem::path& book, const SetAsideSheet& sheet,
                                        std::vector<MendedRow> rows, MendPurpose purpose,
                                        const std::string& who, Clock& clock, Random& random) {
    // Of more an import does not name each fault.
    constexpr std::size_t atOnce = 1'000;
    for (std::size_t from = 0; from < rows.size(); from += atOnce) {
        const auto some = std::span(rows).subspan(from, std::min(atOnce, rows.size() - from));
        if (const auto done = mendSome(book, sheet, some, purpose, who, clock, random); !done)
            return tl::unexpected(done.error());
    }
    return rows;
}

}  // namespace arc::storage
