// SPDX-License-Identifier: GPL-3.0-or-later
// Search and filter over every splice of the logbook; below, the history of the one that is chosen.
#pragma once
#include <QTimer>
#include <QWidget>

#include <vector>

#include "core/logbook.hpp"
#include "ui/shell/session.hpp"
#include "ui/shell/subject.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QTableView;

namespace arc::ui {

class SpliceTable;

class SpliceSearch : public QWidget {
    Q_OBJECT
  public:
    SpliceSearch(Session& session, QWidget* parent = nullptr);
    void begin();
    /// The last question is answered.
    [[nodiscard]] bool settled() const;
    /// The splice that is chosen in the table.
    [[nodiscard]] std::optional<Subject> subject() const;

  Q_SIGNALS:
    void left();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void fillChoices();
    void filter();
    void showCount();
    void showHistory();
    void attach();

    Session& m_session;
    SpliceTable* m_model;
    QLineEdit* m_text;
    QComboBox* m_job;
    QComboBox* m_tool;
    QComboBox* m_verdict;
    QComboBox* m_time;
    QComboBox* m_loss;
    QComboBox* m_order;
    QTableView* m_table;
    QLabel* m_count;
    QLabel* m_history;
    QTimer m_soon;
    std::vector<Job> m_jobs;
    std::vector<Tool> m_tools;
};

}  // namespace arc::ui
