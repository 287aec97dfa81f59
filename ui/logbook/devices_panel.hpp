// SPDX-License-Identifier: GPL-3.0-or-later
// Which laptops are known by name: their satchels are taken in, their records are called by that name.
#pragma once
#include <vector>

#include "core/handover.hpp"
#include "ui/logbook/panel.hpp"

class QLabel;
class QListWidget;
class QPushButton;

namespace arc::ui {

class Outcome;
class PromptBar;
class Session;

class DevicesPanel : public Panel {
    Q_OBJECT
  public:
    explicit DevicesPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;

  private:
    void name();
    [[nodiscard]] const Device* chosen() const;

    Session& m_session;
    std::vector<Device> m_all;
    QLabel* m_own;
    QListWidget* m_list;
    QPushButton* m_name;
    PromptBar* m_prompt;
    Outcome* m_outcome;
};

}  // namespace arc::ui
