// SPDX-License-Identifier: GPL-3.0-or-later
// Our own icons, drawn in one colour and tinted when asked for. Names are the file names in resources/icons.
#pragma once
#include <QColor>
#include <QIcon>
#include <QPixmap>
#include <QString>

namespace arc::ui {

/// Sharp at the device's pixel ratio; an unknown name gives an empty pixmap.
QPixmap iconPixmap(const QString& name, int side, const QColor& colour, double devicePixelRatio = 1);

/// For buttons: `colour` when usable, the soft ink when not.
QIcon icon(const QString& name, const QColor& colour);

/// The program's own mark for window and task list.
QIcon applicationIcon();

}  // namespace arc::ui
