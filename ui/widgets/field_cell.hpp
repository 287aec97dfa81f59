// SPDX-License-Identifier: GPL-3.0-or-later
// A field of a form in a grid: its name above it.
#pragma once
class QGridLayout;
class QString;
class QWidget;

namespace arc::ui {

/// The name is the label, the buddy and the accessible name of the control.
void addField(QGridLayout& grid, int row, int column, const QString& name, QWidget& control, int span = 1);

}  // namespace arc::ui
