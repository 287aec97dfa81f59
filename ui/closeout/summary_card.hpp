// SPDX-License-Identifier: GPL-3.0-or-later
// A job, or one closure of it, in five figures and a histogram, with the verdict as it stands.
#pragma once
#include <QWidget>

#include <optional>

#include "core/closeout/record.hpp"

class QLabel;

namespace arc::ui {

class Histogram;
class StateMark;

class SummaryCard : public QWidget {
    Q_OBJECT
  public:
    explicit SummaryCard(QWidget* parent = nullptr);
    /// `closure`: figures of that closure alone; the verdict is always the job's.
    void show(const closeout::Record& record, std::optional<ClosureId> closure);
    /// While the job is being worked out, or when there is none.
    void showNothing(const QString& words);

  private:
    /// What one fibre from end to end may lose, and what it loses as spliced.
    void showBudget(const closeout::Record& record);
    StateMark* m_mark;
    QLabel* m_verdict;
    QLabel* m_rule;
    QLabel* m_figures[5]{};
    Histogram* m_histogram;
    QLabel* m_budget;
};

}  // namespace arc::ui
