// SPDX-License-Identifier: GPL-3.0-or-later
// A band from least to most in each pixel column, filled row by row: a thousand strokes one by one cost most of
// a frame.
#pragma once
#include <QColor>
#include <QImage>
#include <QSize>

#include <vector>

namespace arc::ui {

/// Rows of the picture a column's ink covers: [top, bottom); both 0: none.
struct ColumnInk {
    int top = 0, bottom = 0;
};

/// As wide as `columns` is long; clear where there is no ink.
QImage bandPicture(const std::vector<ColumnInk>& columns, int height, const QColor& ink);

}  // namespace arc::ui
