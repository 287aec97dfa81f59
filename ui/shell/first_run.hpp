// SPDX-License-Identifier: GPL-3.0-or-later
// An empty logbook asks three questions: who, which machine, which job with which closure. Enter goes to the
// next; everything can be changed later, and the demo is one click away.
#pragma once
#include <QWidget>

#include "ui/shell/session.hpp"
#include "ui/text/language.hpp"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace arc::ui {

/// True when nobody has put a tool or a job into the book yet.
bool isUntouched(Logbook& book);

enum class Demo { Offered, None };

class FirstRun : public QWidget {
    Q_OBJECT
  public:
    FirstRun(Session& session, Demo demo, QWidget* parent = nullptr);
    void begin();

  Q_SIGNALS:
    /// Written.
    void finished();
    /// Skipped: a log brings splicer and job along.
    void importAsked();
    void demoAsked();
    void languageAsked(arc::ui::text::Language language);

  private:
    void write();
    [[nodiscard]] Tool splicer() const;
    [[nodiscard]] Job job() const;
    [[nodiscard]] Closure closureOf(JobId job) const;

    Session& m_session;
    QLineEdit* m_crew;
    QComboBox* m_kind;
    QLineEdit* m_splicer;
    QLineEdit* m_job;
    QLineEdit* m_closure;
    QPushButton* m_start;
};

}  // namespace arc::ui
