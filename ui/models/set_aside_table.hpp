// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of an import that could not be read: where, why, and the row itself.
#pragma once
#include <QAbstractTableModel>

#include <vector>

#include "core/workbench.hpp"

namespace arc::ui {

class SetAsideTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { File, Line, Name, Reason, Row, columnCountAll };
    explicit SetAsideTable(QObject* parent = nullptr) : QAbstractTableModel(parent) {}
    void show(std::vector<SetAsideRow> rows);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<SetAsideRow> m_rows;
};

}  // namespace arc::ui
