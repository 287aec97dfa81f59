// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that was ever written into this logbook, newest first; Enter opens the history of a line's
// record.
#pragma once
#include "ui/logbook/panel.hpp"

class QLabel;

namespace arc::ui {

class JournalView;
class Session;

class JournalPanel : public Panel {
    Q_OBJECT
  public:
    explicit JournalPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;

  private:
    Session& m_session;
    QLabel* m_said;
    JournalView* m_view;
};

}  // namespace arc::ui
