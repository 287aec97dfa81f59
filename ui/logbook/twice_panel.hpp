// SPDX-License-Identifier: GPL-3.0-or-later
// Records that two laptops edited without knowing of each other: the versions side by side, and which of them
// stays. Record numbers that were given twice stand above.
#pragma once
#include <vector>

#include "core/handover.hpp"
#include "ui/logbook/panel.hpp"

class QHBoxLayout;
class QLabel;
class QListWidget;

namespace arc::ui {

class Outcome;
class Session;

class TwicePanel : public Panel {
    Q_OBJECT
  public:
    explicit TwicePanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override { return !m_working && !m_again; }
    [[nodiscard]] QString count() const override;
    [[nodiscard]] bool counts() const override { return true; }

  private:
    void show(std::vector<ConcurrentEdits> all, std::vector<NumberClash> clashes);
    void showVersions();
    void keep(std::size_t version);
    [[nodiscard]] const ConcurrentEdits* chosen() const;

    Session& m_session;
    std::vector<ConcurrentEdits> m_all;
    std::vector<NumberClash> m_clashes;
    bool m_working = false;
    bool m_again = false;  ///< something was written while the list was read
    QLabel* m_said;
    QLabel* m_clash;
    QListWidget* m_list;
    QWidget* m_versions = nullptr;
    QHBoxLayout* m_place;
    Outcome* m_outcome;
};

}  // namespace arc::ui
