// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/table_preview.hpp"

#include <algorithm>

#include "storage/intake_parts.hpp"
#include "storage/set_aside_sheets.hpp"

namespace arc::storage {
namespace {

constexpr std::string_view keyPrefix = "column_key/";

Result<TablePreview> rawRows(const TableQuestion& question) {
    auto source = CsvSource::open(question.file);
    if (!source) return tl::unexpected(source.error());
    std::string head;
    auto look = source->again();
    if (!look) return tl::unexpected(look.error());
    look->read(head, CsvReader::recordLimit);
    const auto start = head.find_first_not_of("\r\n \t");
    const std::string_view text =
        start == std::string::npos ? std::string_view() : std::string_view(head).substr(start);
    TablePreview preview;
    preview.separator = delimiterOf(text.substr(0, text.find('\n')));
    if (question.key && question.key->separator) preview.separator = *question.key->separator;
    if (source->form() != TextForm::Utf8) preview.notes.emplace_back("read as UTF-16");
    CsvReader reader(*source, preview.separator);
    CsvRecord record;
    if (!reader.next(record)) return fail(ProblemCode::BadInput, "the file is empty", question.file.string());
    if (!record.fault.empty())
        return fail(ProblemCode::BadInput, record.fault, question.file.string() + ", header");
    preview.theirHeader.assign(record.fields.begin(), record.fields.end());
    while (preview.rows.size() < question.rows && reader.next(record)) {
        PreviewRow row;
        row.line = record.line;
        if (record.fault.empty()) row.theirs.assign(record.fields.begin(), record.fields.end());
        preview.rows.push_back(std::move(row));
    }
    return preview;
}

/// "0.030000" → "0.03"
std::string shorter(std::string text) {
    if (text.find('.') == std::string::npos || text.find_first_not_of("-0123456789.") != std::string::npos)
        return text;
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

void translate(TablePreview& preview, const std::optional<ColumnKey>& key,
               const std::vector<std::string>& header, const std::string& file) {
    const auto over = Translation::over(key.value_or(ColumnKey{}), header, file);
    if (!over) {
        preview.problem = over.error();
        return;
    }
    preview.ourHeader = over->header();
    preview.kind = key ? std::optional(key->kind) : kindOf(preview.ourHeader);
    for (auto& row : preview.rows) {
        if (row.theirs.size() != header.size()) continue;
        const std::vector<std::string_view> fields(row.theirs.begin(), row.theirs.end());
        if (auto rows = over->rows(fields)) row.ours = std::move(*rows);
        for (auto& one : row.ours)
            for (auto& cell : one) cell = shorter(std::move(cell));
    }
}

}  // namespace

Result<TablePreview> previewTable(const std::filesystem::path& book, const TableQuestion& question,
                                  Clock& clock, Random& random) {
    try {
        auto preview = rawRows(question);
        if (!preview) return preview;
        std::vector<std::string> header;
        for (const auto& name : preview->theirHeader) header.push_back(columnName(name));
        translate(*preview, question.key, header, question.file.string());
        if (preview->problem) return preview;
        IntakeRequest request;
        request.book = book;
        request.files = {{question.file, question.kind}};
        request.purpose = Purpose::TryOnly;
        request.mode = OpenMode::Companion;
        request.key = question.key;
        request.firstRows = question.rows;
        NoProgress unwatched;
        const auto tried = takeIn(request, clock, random, unwatched);
        if (!tried) {
            preview->problem = tried.error();
            return preview;
        }
        for (const auto& fault : tried->front().rows)
            for (auto& row : preview->rows)
                if (row.line == fault.line && row.reason.empty()) {
                    row.column = fault.column;
                    row.reason = fault.reason;
                }
        return preview;
    } catch (const std::ios_base::failure&) {
        return fail(ProblemCode::Unavailable, "the file cannot be read any further", question.file.string());
    }
}

Result<Setting> keySetting(const ColumnKey& key) {
    if (key.name.empty())
        return fail(ProblemCode::BadInput, "the column key has no name", "", "Give it one, like \"Crew B\"");
    return Setting{std::string(keyPrefix) + key.name, toJson(key)};
}

Result<std::vector<ColumnKey>> savedKeys(const std::filesystem::path& book) {
    const auto settings = settingsUnder(book, keyPrefix);
    if (!settings) return tl::unexpected(settings.error());
    std::vector<ColumnKey> keys;
    for (const auto& setting : *settings)
        if (auto key = readColumnKey(setting.value, setting.key)) keys.push_back(std::move(*key));
    std::sort(keys.begin(), keys.end(),
              [](const ColumnKey& a, const ColumnKey& b) { return a.name < b.name; });
    return keys;
}

}  // namespace arc::storage
