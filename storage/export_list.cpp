// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/export_list.hpp"

#include <array>

#include "storage/export_csv.hpp"
#include "storage/export_json.hpp"
#include "storage/export_xlsx.hpp"
#include "storage/plain_file.hpp"

namespace arc::storage {
namespace {

Result<void> writeJson(const closeout::Record& record, const std::filesystem::path& file) {
    const Result<std::string> json = recordJson(record);
    if (!json) return tl::unexpected(json.error());
    return writePlainFile(file, *json, FileMode::Normal);
}

Result<void> writeCsv(const closeout::Record& record, const std::filesystem::path& file) {
    return writePlainFile(file, splicesCsv(record), FileMode::Normal);
}

}  // namespace

std::span<const CloseoutExport> closeoutExports() {
    static constexpr std::array<CloseoutExport, 3> exports{{
        {"record.json", "Whole record, for programs", writeJson},
        {"splices.csv", "All attempts, one a row", writeCsv},
        {"record.xlsx", "Workbook", writeRecordXlsx},
    }};
    return exports;
}

}  // namespace arc::storage
