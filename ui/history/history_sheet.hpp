// SPDX-License-Identifier: GPL-3.0-or-later
// The history of one record: every version that was ever written of it, who wrote it, when, and from where.
#pragma once
#include <QDialog>

#include <vector>

#include "core/logbook.hpp"
#include "ui/shell/subject.hpp"

class QLabel;

namespace arc::ui {

class JournalView;
class Session;

class HistorySheet : public QDialog {
    Q_OBJECT
  public:
    HistorySheet(Session& session, const Subject& subject, QWidget* parent);
    /// True while the record behind a journal row is looked for.
    [[nodiscard]] bool looking() const { return m_looking; }

  private:
    void look(const Subject& subject);
    void show(std::vector<JournalLine> lines);

    Session& m_session;
    QLabel* m_said;
    JournalView* m_view;
    bool m_looking = false;
};

/// Opens over `parent`; does not stop the window.
void showHistory(Session& session, const Subject& subject, QWidget* parent);

}  // namespace arc::ui
