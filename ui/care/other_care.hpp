// SPDX-License-Identifier: GPL-3.0-or-later
// Care that nothing asks for: any card for any tool, the card's own text, the limits of all cards.
#pragma once
#include <QFrame>

#include "core/care/card.hpp"
#include "core/kit/tool.hpp"

class QComboBox;

namespace arc::ui {

class OtherCare : public QFrame {
    Q_OBJECT
  public:
    explicit OtherCare(QWidget* parent = nullptr);
    void show(const std::vector<Tool>& tools, const care::Deck& deck);
    [[nodiscard]] QWidget* first() const;  ///< for the keyboard

  Q_SIGNALS:
    void startAsked(const arc::ToolId& tool, const arc::ActionKey& action);
    void editAsked(const arc::ActionKey& action);
    void limitsAsked();

  private:
    void fillCards();
    [[nodiscard]] const Tool* tool() const;
    [[nodiscard]] ActionKey action() const;

    std::vector<Tool> m_tools;
    care::Deck m_deck;
    QComboBox* m_tool;
    QComboBox* m_card;
};

}  // namespace arc::ui
