// SPDX-License-Identifier: GPL-3.0-or-later
// Journal lines as a table: of one record, oldest first, or of the whole logbook, newest first and read in
// windows, so that a million lines cost what a hundred do.
#pragma once
#include <QAbstractTableModel>

#include <vector>

#include "core/logbook.hpp"

namespace arc::ui {

class JournalTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { When, What, Who, From, Row, columnCountAll };
    explicit JournalTable(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void show(std::vector<JournalLine> lines);
    /// `book` must outlive the model.
    Result<void> showAll(Logbook& book);
    /// What was written since, on top; the lines that are shown stay.
    Result<void> addNew(Logbook& book);
    [[nodiscard]] const JournalLine& line(int row) const { return m_lines[static_cast<std::size_t>(row)]; }
    [[nodiscard]] bool complete() const { return m_book == nullptr || m_complete; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

  Q_SIGNALS:
    void failed(const arc::Problem& problem);

  private:
    Logbook* m_book = nullptr;  ///< none: all lines are here
    std::vector<JournalLine> m_lines;
    bool m_complete = true;
};

/// "van-3, window": the machine and the way it was entered.
QString fromWhere(const JournalLine& line);

}  // namespace arc::ui
