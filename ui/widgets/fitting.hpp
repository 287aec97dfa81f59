// SPDX-License-Identifier: GPL-3.0-or-later
// The size of a window of its own: as tall as its wrapped words need at its width (Qt asks a layout for that inside
// a window only, not of the window), and never larger than the window it lies over; what is taller scrolls.
#pragma once
#include <QSize>

class QWidget;

namespace arc::ui {

/// Opens `sheet` at that width and as tall as its layout needs. Called when everything is in it.
void fitTo(QWidget& sheet, int width);
/// The same, and at least that tall where there is room.
void fitTo(QWidget& sheet, QSize wanted);

}  // namespace arc::ui
