// SPDX-License-Identifier: GPL-3.0-or-later
// Makes a job with its cable and closures, or adds a closure to one that is there: labels, acceptance rule,
// fibre count and colours, splice plan by range.
#pragma once
#include <QWidget>

#include <optional>
#include <vector>

#include "core/work/job.hpp"
#include "ui/shell/session.hpp"

class QComboBox;
class QLabel;
class QLineEdit;
class QGridLayout;

namespace arc::ui {

class JobSheet : public QWidget {
    Q_OBJECT
  public:
    JobSheet(Session& session, QWidget* parent = nullptr);
    void begin(std::optional<JobId> job);

  Q_SIGNALS:
    void left();
    void made(arc::JobId job, arc::ClosureId closure);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Drafted;
    QWidget* add(QGridLayout* grid, int row, int column, const QString& name, QWidget* control, int span = 1);
    void fillFromJob();
    /// What a ribbon can be, by the unit chosen; of a cable that is there, what it says.
    void offerRibbons(const std::optional<Cable>& cable);
    [[nodiscard]] std::optional<RibbonKind> ribbon() const;
    void fillRule(const AcceptanceRule& rule);
    void check();
    [[nodiscard]] Result<Drafted> read() const;
    void accept();

    Session& m_session;
    std::vector<Job> m_jobs;
    std::vector<Cable> m_cables;
    std::vector<Closure> m_closures;
    QComboBox* m_which;
    QLineEdit* m_label;
    QLineEdit* m_title;
    QComboBox* m_rule;
    QLineEdit* m_perSplice;
    QLineEdit* m_average;
    QLineEdit* m_ceiling;
    QLineEdit* m_attempts;
    QComboBox* m_cable;
    QLineEdit* m_cableLabel;
    QLineEdit* m_fibres;
    QComboBox* m_unit;
    QComboBox* m_ribbon;
    QComboBox* m_order;
    QLineEdit* m_fibreType;
    QLineEdit* m_length;
    QLineEdit* m_closure;
    QLineEdit* m_plan;
    QLabel* m_said;
    std::vector<QWidget*> m_sequence;
};

}  // namespace arc::ui
