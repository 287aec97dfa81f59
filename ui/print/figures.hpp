// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of a closeout record, as vectors: the comb on the cover, histogram, run chart, verdict mark.
#pragma once
#include <QRectF>

#include "core/closeout/record.hpp"
#include "ui/print/sheet.hpp"

namespace arc::print {

/// Rectangles in millimetres.
void drawComb(Sheet& sheet, const QRectF& place);
void drawVerdictMark(Sheet& sheet, const QRectF& place, closeout::RecordVerdict verdict);
void drawHistogram(Sheet& sheet, const QRectF& place, const closeout::Record& record);
/// Final losses in order of time; beyond 500 splices lowest to highest of each stretch as one stroke.
void drawRunChart(Sheet& sheet, const QRectF& place, const closeout::Record& record);

QColor colourOf(closeout::RecordVerdict verdict);

}  // namespace arc::print
