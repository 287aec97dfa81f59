// SPDX-License-Identifier: GPL-3.0-or-later
// What is due and how the tools stand, worked out by a worker each time the charts have looked again. One
// desk for all pages of a session.
#pragma once
#include <QObject>

#include <memory>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/queues.hpp"
#include "core/kit/life.hpp"
#include "ui/shell/session.hpp"

namespace arc::ui {

/// One finished look; shared, never changed.
struct CareLook {
    care::Situation situation;
    std::vector<care::DueItem> items;
    std::vector<kit::ToolLife> lives;
    std::vector<care::OrderLine> orders;
    std::vector<care::OwedStretch> owed;
    std::vector<CareRun> openRuns;
    std::vector<Problem> putAside;  ///< card editions and settings that could not be used

    [[nodiscard]] const Tool* tool(ToolId id) const;
    [[nodiscard]] const kit::ToolLife* lifeOf(ToolId id) const;
    /// What stops this splicer and was not overridden.
    [[nodiscard]] std::vector<care::DueItem> openHolds(ToolId splicer) const;
};

class CareDesk : public QObject {
    Q_OBJECT
  public:
    /// The desk of the session; made when it is first asked for, goes with the session.
    static CareDesk& of(Session& session);

    /// Null until the first look is finished.
    [[nodiscard]] std::shared_ptr<const CareLook> look() const { return m_look; }
    [[nodiscard]] bool pending() const { return m_running || m_again || m_session.driftPending(); }

  Q_SIGNALS:
    void changed();

  private:
    explicit CareDesk(Session& session);
    void start();

    Session& m_session;
    std::shared_ptr<const CareLook> m_look;
    bool m_running = false;
    bool m_again = false;
};

}  // namespace arc::ui
