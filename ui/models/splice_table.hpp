// SPDX-License-Identifier: GPL-3.0-or-later
// All splices as a table that reads windows by key: the same cost for a thousand and a million. Newest first.
#pragma once
#include <QAbstractTableModel>

#include <map>
#include <optional>
#include <vector>

#include "core/logbook.hpp"

namespace arc::ui {

class SpliceTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { At, Where, Fibre, LossDb, Attempt, Verdict, Machine, Groove, Who, Note, columnCountAll };
    explicit SpliceTable(Logbook& book, QObject* parent = nullptr);

    /// Reads the names of tools, jobs and closures again, then the first window.
    Result<void> show(const SpliceFilter& filter);
    [[nodiscard]] const SpliceRow& row(int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    [[nodiscard]] bool complete() const { return m_complete; }
    [[nodiscard]] QString closureName(const SpliceArc& arc) const;
    [[nodiscard]] QString toolName(ToolId tool) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

  Q_SIGNALS:
    void failed(const arc::Problem& problem);

  private:
    [[nodiscard]] QString cell(const SpliceRow& row, int column) const;
    Result<std::vector<SpliceRow>> next();

    Logbook& m_book;
    SpliceFilter m_filter;
    std::vector<SpliceRow> m_rows;
    bool m_complete = true;
    std::map<ToolId, QString> m_tools;
    std::map<ClosureId, QString> m_closures;
    std::map<JobId, Job> m_jobs;
};

}  // namespace arc::ui
