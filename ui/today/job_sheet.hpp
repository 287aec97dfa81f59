// SPDX-License-Identifier: GPL-3.0-or-later
// Makes a job with its cable and closures, adds a closure to one that is there, or changes what is there:
// labels, acceptance rule, fibre count and colours, splice plan by range or from CSV.
#pragma once
#include <QWidget>

#include <optional>
#include <vector>

#include "core/work/job.hpp"
#include "ui/shell/session.hpp"

class QComboBox;
class QLabel;
class QLineEdit;

namespace arc::ui {

class JobSheet : public QWidget {
    Q_OBJECT
  public:
    JobSheet(Session& session, QWidget* parent = nullptr);
    void begin(std::optional<JobId> job);

  Q_SIGNALS:
    void left();
    /// No closure: only the job was changed.
    void made(arc::JobId job, std::optional<arc::ClosureId> closure);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Drafted;
    void fillFromJob();
    void offerCable();
    /// What a ribbon can be, by the unit chosen; of a cable that is there, what it says.
    void offerRibbons(const std::optional<Cable>& cable);
    [[nodiscard]] std::optional<RibbonKind> ribbon() const;
    void fillRules(const AcceptanceRule& own);
    void fillRule(const AcceptanceRule& rule);
    void fillFromClosure();
    void choosePlan();
    void readPlan(const QString& file);
    enum class ClosureChoice { New, Known, None };
    [[nodiscard]] ClosureChoice closureChoice() const;
    [[nodiscard]] Result<AcceptanceRule> readRule(const std::string& jobLabel);
    [[nodiscard]] Result<Closure> readClosure(JobId job, std::optional<Cable>& freshCable);
    void check();
    /// The keyboard goes to the field that has to be mended.
    tl::unexpected<Problem> wrongIn(QWidget& field, Problem problem);
    [[nodiscard]] Result<Drafted> read();
    [[nodiscard]] std::vector<Entry> back(const std::vector<Entry>& entries) const;
    void accept();

    Session& m_session;
    int m_filledJob = -1, m_filledClosure = -1;  ///< what the fields were filled from
    std::vector<Job> m_jobs;
    std::vector<Cable> m_cables;
    std::vector<Closure> m_closures;
    std::vector<AcceptanceRule> m_rules;  ///< samples, and the contracts of this logbook
    QComboBox* m_which;
    QLineEdit* m_label;
    QLineEdit* m_title;
    QComboBox* m_rule;
    QLineEdit* m_perSplice;
    QLineEdit* m_average;
    QLineEdit* m_ceiling;
    QLineEdit* m_attempts;
    QComboBox* m_directions;
    QComboBox* m_cable;
    QComboBox* m_cableB;
    QComboBox* m_closureWhich;
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
