// SPDX-License-Identifier: GPL-3.0-or-later
// Which set-aside rows are still open, and how they are read again. The rows themselves lie in their own
// table; a setting per imported header names them (so that satchels carry it), and a setting per row says
// when it is settled: written once, so that laptops never disagree about it.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/entry.hpp"
#include "core/intake/set_aside.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

/// One file with set-aside rows, as it was imported.
struct SheetHead {
    std::string file;  ///< name without folder
    FileKind kind = FileKind::SpliceLog;
    char separator = ',';
    std::string header;  ///< the raw line
    std::optional<ColumnKey> key;
    std::vector<std::string> rows;  ///< identities of the rows
};
Setting sheetSetting(const SheetHead& head);

/// The sheets with open rows, the newest first, each row by its key alone. A sheet that cannot be read is
/// passed over.
Result<std::vector<SetAsideSheet>> openSheets(const std::filesystem::path& book);

/// Reads rows [from, from + count) that were not read yet.
Result<void> readRows(const std::filesystem::path& book, SetAsideSheet& sheet, std::size_t from,
                      std::size_t count);

/// Says that a row is settled.
Setting mendedSetting(const SetAsideSheet& sheet, const MendedRow& row);
Setting leftOutSetting(const SetAsideSheet& sheet, std::size_t row);

/// See Workbench::mend. Import: the book must be open for writing in this program.
Result<std::vector<MendedRow>> mendRows(const std::filesystem::path& book, const SetAsideSheet& sheet,
                                        std::vector<MendedRow> rows, MendPurpose purpose,
                                        const std::string& who, Clock& clock, Random& random);

/// The settings whose key begins so, emptied ones left out, the newest last.
Result<std::vector<Setting>> settingsUnder(const std::filesystem::path& book, std::string_view prefix);

}  // namespace arc::storage
