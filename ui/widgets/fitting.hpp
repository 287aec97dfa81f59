// SPDX-License-Identifier: GPL-3.0-or-later
// A window of its own is as tall as its wrapped words need at its width: Qt asks a layout for that inside a
// window only, not of the window.
#pragma once
class QWidget;

namespace arc::ui {

/// Makes `sheet` at least as tall as its layout needs at `width` pixels, and opens it at that size. Called when
/// everything is in it.
void fitTo(QWidget& sheet, int width);

}  // namespace arc::ui
