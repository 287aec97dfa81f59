// SPDX-License-Identifier: GPL-3.0-or-later
// A drawing of the help in the colours of the look. The files are drawn in the Day palette and hold no words:
// each of its colours is exchanged for that role's colour of the look in force.
#pragma once
#include <QByteArray>
#include <QPixmap>

#include "ui/theme/theme.hpp"

namespace arc::ui {

/// The SVG of resources/pictures/help/KEY.svg in the theme's colours; empty when there is no such drawing.
QByteArray helpDrawing(const QString& key, const Theme& theme);
/// As wide as asked, in device-independent pixels; null when there is no such drawing.
QPixmap helpPicture(const QString& key, int width, const Theme& theme, double devicePixelRatio);

}  // namespace arc::ui
