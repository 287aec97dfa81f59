// SPDX-License-Identifier: GPL-3.0-or-later
// All splices as a table that reads windows by key, newest first: the same cost for a thousand and a million.
// A worker reads; what is shown stays until the answer is there, and only the newest question counts.
#pragma once
#include <QAbstractTableModel>

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/logbook.hpp"
#include "ui/shell/session.hpp"

namespace arc::ui {

/// "accept", "kept, noted", …
QString verdictWords(ReadingVerdict verdict);

class SpliceTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { At, Where, Fibre, LossDb, Attempt, Verdict, Machine, Groove, Who, Note, columnCountAll };
    explicit SpliceTable(Session& session, QObject* parent = nullptr);

    /// Reads the names of tools, jobs and closures again, then the first window.
    Result<void> show(const SpliceFilter& filter, PageOrder order = PageOrder::NewestFirst);
    [[nodiscard]] bool loading() const { return m_job.has_value(); }
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
    /// A window of rows is there.
    void loaded();

  private:
    [[nodiscard]] QString cell(const SpliceRow& row, int column) const;
    enum class Window { First, Next };
    void ask(Window window);
    void take(Window window, Result<std::vector<SpliceRow>> page);

    Session& m_session;
    std::shared_ptr<std::unique_ptr<Logbook>> m_reader;  ///< of the one job that runs; opened by the first
    std::optional<int> m_job;
    enum class Asked { Once, Again } m_asked = Asked::Once;
    SpliceFilter m_filter;
    PageOrder m_order = PageOrder::NewestFirst;
    std::vector<SpliceRow> m_rows;
    bool m_complete = true;
    std::map<ToolId, QString> m_tools;
    std::map<ClosureId, QString> m_closures;
    std::map<JobId, Job> m_jobs;
};

}  // namespace arc::ui
