// SPDX-License-Identifier: GPL-3.0-or-later
// Every tool of the crew: a card each with its lives, and of the chosen one its history and what can be
// written about it.
#pragma once
#include <memory>
#include <vector>

#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QStackedWidget;

namespace arc::ui {

class EmptyState;
class PageHead;
class Timeline;
class ToolCard;
struct CareLook;

class KitPage : public Page {
    Q_OBJECT
  public:
    explicit KitPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void makeDetail(QWidget* parent);
    void addActions();
    void readAgain();
    void placeCards();
    void choose(ToolId tool);
    void showDetail();
    void addTool();
    void pair();
    void changeService();
    void correctCounter();
    [[nodiscard]] const Tool* chosen() const;
    [[nodiscard]] QString labelOf(std::optional<ToolId> tool) const;

    Session& m_session;
    std::shared_ptr<const CareLook> m_look;
    std::optional<ToolId> m_chosen;
    PageHead* m_head;
    QStackedWidget* m_stack;
    EmptyState* m_empty;
    QScrollArea* m_scroll;
    QWidget* m_board;
    QGridLayout* m_grid;
    std::vector<ToolCard*> m_cards;
    QWidget* m_detail;
    QLabel* m_name;
    QLabel* m_kind;
    QLabel* m_facts;
    QPushButton *m_care, *m_drift, *m_pair, *m_service, *m_counter;
    QGridLayout* m_buttons;
    Timeline* m_timeline;
};

}  // namespace arc::ui
