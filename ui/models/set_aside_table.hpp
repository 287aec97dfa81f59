// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of imports that could not be read: where, why, and the row itself. Each is asked for when it comes in
// sight.
#pragma once
#include <QAbstractTableModel>

#include <functional>

#include "core/workbench.hpp"

namespace arc::ui {

class SetAsideTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { File, Line, Name, Reason, Row, columnCountAll };
    explicit SetAsideTable(QObject* parent = nullptr) : QAbstractTableModel(parent) {}
    void show(int count, std::function<SetAsideRow(int)> rowAt);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    int m_count = 0;
    std::function<SetAsideRow(int)> m_rowAt;
};

}  // namespace arc::ui
