// SPDX-License-Identifier: GPL-3.0-or-later
// The first rows of a table as they would be read, with the reason beside each that would be set aside.
#pragma once
#include <QAbstractTableModel>

#include <vector>

#include "core/intake/table_preview.hpp"

namespace arc::ui {

class PreviewTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { Line, Verdict, firstCell };
    explicit PreviewTable(QObject* parent = nullptr) : QAbstractTableModel(parent) {}
    void show(TablePreview preview);
    [[nodiscard]] const TablePreview& preview() const { return m_preview; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    /// A wide row of theirs is several of ours.
    struct Place {
        std::size_t row = 0, ours = 0;
    };
    [[nodiscard]] bool translated() const { return !m_preview.problem; }
    TablePreview m_preview;
    std::vector<Place> m_places;
};

}  // namespace arc::ui
