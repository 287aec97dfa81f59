// SPDX-License-Identifier: GPL-3.0-or-later
// The raw readings behind the charts: one row an arc, a column a groove. Only what is on the screen is asked
// for, so a year of arcs opens as fast as a day.
#pragma once
#include <QAbstractTableModel>
#include <QDialog>

#include <memory>
#include <vector>

#include "core/care/rules.hpp"
#include "ui/shell/drift_view.hpp"

class QTableView;

namespace arc::ui {

class ReadingsModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    ReadingsModel(std::shared_ptr<const DriftView> view, const SplicerHistory& history,
                  std::vector<std::size_t> arcs, std::vector<care::OwedStretch> owed, int channels,
                  QObject* parent = nullptr);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Row of the first arc with at least this number.
    [[nodiscard]] int rowOf(double arc) const;
    /// RFC 4180 text of the rows [from, to), point-decimal.
    [[nodiscard]] QString csv(int from, int to) const;

  private:
    [[nodiscard]] const HistoryReading* reading(std::size_t arc, int channel) const;

    std::shared_ptr<const DriftView> m_view;
    const SplicerHistory& m_history;
    std::vector<std::size_t> m_arcs;
    std::vector<care::OwedStretch> m_owed;
    int m_channels;
};

/// Shows the table at an arc; non-modal.
class ReadingsTable : public QDialog {
    Q_OBJECT
  public:
    ReadingsTable(const QString& title, std::shared_ptr<const DriftView> view,
                  const drift::StratumReport& report, const SplicerHistory& history,
                  std::vector<care::OwedStretch> owed, double atArc, QWidget* parent);

  private:
    void copySelected();

    ReadingsModel* m_model;
    QTableView* m_table;
};

}  // namespace arc::ui
