// SPDX-License-Identifier: GPL-3.0-or-later
// record.xlsx: the closeout record as a workbook (summary, splices, exceptions, equipment, measured losses).
// Numbers are numbers and times are times; texts are always written as texts, so none of them becomes a
// formula.
#pragma once
#include <filesystem>

#include "core/closeout/record.hpp"
#include "core/result.hpp"

namespace arc::storage {

/// Makes a new file. The same record gives the same bytes.
Result<void> writeRecordXlsx(const closeout::Record& record, const std::filesystem::path& file);

}  // namespace arc::storage
