// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the printed closeout record, in the order they are read: cover, summary, exceptions, tools,
// link budget, photos and notes, cautions and signatures, then a table per closure.
#pragma once
#include "core/closeout/record.hpp"
#include "ui/print/sheet.hpp"

namespace arc::print {

/// `contents`: of the silent pass.
void coverPage(Sheet& sheet, const closeout::Record& record, const std::vector<Beginning>& contents);
void summaryPart(Sheet& sheet, const closeout::Record& record);
void exceptionsPart(Sheet& sheet, const closeout::Record& record);
void equipmentPart(Sheet& sheet, const closeout::Record& record);
void budgetPart(Sheet& sheet, const closeout::Record& record);
/// Nothing when there are none.
void attachmentsPart(Sheet& sheet, const closeout::Record& record);
void signaturePart(Sheet& sheet, const closeout::Record& record);
/// Answers false when it was stopped.
bool closureTables(Sheet& sheet, const closeout::Record& record, Progress& progress);

/// "HR-B no. 2" or "HR-B, draft".
QString nameOf(const Tongue& in, const closeout::Record& record);

}  // namespace arc::print
