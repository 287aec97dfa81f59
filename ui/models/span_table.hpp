// SPDX-License-Identifier: GPL-3.0-or-later
// The spans of a job, and below each the closures on it: what is done, the average, the link budget, and how
// much of it was measured. States are a shape and words.
#pragma once
#include <QAbstractTableModel>

#include <optional>
#include <vector>

#include "core/closeout/record.hpp"

namespace arc::ui {

class SpanTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { Name, Where, Length, Done, Average, FirstBudget, SecondBudget, Measured, columnCountAll };
    explicit SpanTable(QObject* parent = nullptr) : QAbstractTableModel(parent) {}
    void show(closeout::Record record);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// The span of a row, also of a closure row; none below the last row.
    [[nodiscard]] const closeout::SpanSection* spanAt(int row) const;

  private:
    struct Place {
        std::size_t span = 0;
        std::optional<std::size_t> section;  ///< a closure row
    };
    [[nodiscard]] QString spanCell(const closeout::SpanSection& span, int column) const;
    [[nodiscard]] QString closureCell(const closeout::ClosureSection& section, int column) const;
    [[nodiscard]] QString average(const closeout::SpanSection& span) const;
    closeout::Record m_record;
    std::vector<Place> m_places;
};

}  // namespace arc::ui
