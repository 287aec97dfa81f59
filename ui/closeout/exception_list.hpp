// SPDX-License-Identifier: GPL-3.0-or-later
// The exceptions of a closeout record as a list: kind, place, what it is, and what was decided. Open ones
// first. Painted by its delegate, so that hundreds cost nothing.
#pragma once
#include <QAbstractListModel>
#include <QStyledItemDelegate>

#include <vector>

#include "core/closeout/exception.hpp"
#include "ui/theme/state_mark.hpp"

namespace arc::ui {

class ExceptionList : public QAbstractListModel {
    Q_OBJECT
  public:
    explicit ExceptionList(QObject* parent = nullptr) : QAbstractListModel(parent) {}
    void show(std::vector<closeout::Exception> exceptions);
    [[nodiscard]] const closeout::Exception& at(int row) const {
        return m_all[static_cast<std::size_t>(row)];
    }
    /// Row of the first one nobody has decided on; below 0 when there is none.
    [[nodiscard]] int firstOpen() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<closeout::Exception> m_all;
};

class ExceptionDelegate : public QStyledItemDelegate {
    Q_OBJECT
  public:
    ExceptionDelegate(const ExceptionList& list, QObject* parent)
        : QStyledItemDelegate(parent), m_list(list) {}
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    const ExceptionList& m_list;
};

}  // namespace arc::ui
