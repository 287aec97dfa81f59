// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/row_table.hpp"

#include <QHeaderView>
#include <QTableView>

namespace arc::ui {

void showAsRows(QTableView& table, int rowHeight) {
    table.verticalHeader()->hide();
    table.verticalHeader()->setDefaultSectionSize(rowHeight);
    table.setShowGrid(false);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setTabKeyNavigation(false);
    table.horizontalHeader()->setHighlightSections(false);
}

}  // namespace arc::ui
