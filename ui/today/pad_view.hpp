// SPDX-License-Identifier: GPL-3.0-or-later
// The pad in words and marks: what a row shows, and the sentence below the rows.
#pragma once
#include "core/work/pad.hpp"
#include "ui/today/pad_marks.hpp"
#include "ui/today/pad_row.hpp"

namespace arc::ui {

PadRowView viewOf(const pad::Pad& pad, std::size_t row, const pad::Preview& preview,
                  const PadMarks& marks = {});
/// What can be done next, and the average when it is over the one agreed.
QString usualHint(const pad::Pad& pad, const pad::Preview& preview, const PadMarks& marks = {});

}  // namespace arc::ui
