// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of the house's tables: the same inner margin whether chosen or not, a hairline below.
#pragma once
#include <QStyledItemDelegate>

namespace arc::ui {

class CellDelegate : public QStyledItemDelegate {
    Q_OBJECT
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
};

}  // namespace arc::ui
