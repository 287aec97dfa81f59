// SPDX-License-Identifier: GPL-3.0-or-later
// Looks after the logbook file while the window is open: whether it is sound, and a copy now and then. All of
// it on a worker; nobody waits for it.
#pragma once
#include <QObject>
#include <QTimer>

#include "core/handover.hpp"

namespace arc::ui {

class Session;

class Keeper : public QObject {
    Q_OBJECT
  public:
    explicit Keeper(Session& session, QObject* parent = nullptr);
    [[nodiscard]] const BookState& state() const { return m_state; }
    /// Asks again how the book is open.
    void look();

  Q_SIGNALS:
    void stateChanged();

  private:
    void take(const BookState& state);
    void check();
    void copyIfDue();

    Session& m_session;
    BookState m_state;
    QTimer m_soon;
    bool m_copying = false;
};

}  // namespace arc::ui
