// SPDX-License-Identifier: GPL-3.0-or-later
// A look at the first rows of a table, and the column keys of a logbook.
#pragma once
#include <filesystem>
#include <vector>

#include "core/entry.hpp"
#include "core/intake/table_preview.hpp"
#include "core/ports.hpp"

namespace arc::storage {

/// See Workbench::preview. The rows are tried against the book for real and taken back, so what it says is
/// what the import will do; the book must be open for writing in this program.
Result<TablePreview> previewTable(const std::filesystem::path& book, const TableQuestion& question,
                                  Clock& clock, Random& random);

/// Keys live in the logbook as settings: journaled, and handed over with satchels.
Result<Setting> keySetting(const ColumnKey& key);
Result<std::vector<ColumnKey>> savedKeys(const std::filesystem::path& book);

}  // namespace arc::storage
