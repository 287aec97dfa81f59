// SPDX-License-Identifier: GPL-3.0-or-later
// The look that tables of rows share: no grid, no row numbers, whole rows chosen; Tab leaves the table.
#pragma once
class QTableView;

namespace arc::ui {

/// `rowHeight` in pixels.
void showAsRows(QTableView& table, int rowHeight);

}  // namespace arc::ui
