// SPDX-License-Identifier: GPL-3.0-or-later
// An area without a frame that scrolls up and down only and is no stop of the Tab key.
#pragma once
class QScrollArea;
class QWidget;

namespace arc::ui {

/// Gives the area its look and answers the empty widget that scrolls in it.
QWidget* canvasIn(QScrollArea& area);

}  // namespace arc::ui
