// SPDX-License-Identifier: GPL-3.0-or-later
// Care: what is due, by when a crew can do it, with why, on what grounds, since when and what happens if
// not. Taking one up runs its card; a paused run goes on where it stood.
#pragma once
#include <optional>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/due.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QComboBox;
class QFrame;
class QGridLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace arc::ui {

class CardRunner;
class CareDesk;
class PageHead;
class QueueRow;
class StateMark;

class CarePage : public Page {
    Q_OBJECT
  public:
    explicit CarePage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;
    /// The card that is being run; null when none is.
    [[nodiscard]] CardRunner* runner() const { return m_runner; }
    /// Takes up a care: goes on with its paused run, or begins one.
    void startCare(ToolId tool, const ActionKey& action, const std::vector<std::string>& answers);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void refresh();
    void showList();
    void showDetail(std::size_t index);
    void showPaused();
    void showDone();
    void showOrders();
    void fillOthers();
    void fillCards();
    void editCard();
    [[nodiscard]] std::optional<care::Card> cardOf(const CareRun& run) const;
    void run(const care::Card& card, const Tool& tool, const CareRun& run);
    void startWaiting();

    Session& m_session;
    CareDesk& m_desk;
    PageHead* m_head = nullptr;
    QVBoxLayout* m_list = nullptr;
    std::vector<QueueRow*> m_rows;
    std::vector<care::DueItem> m_items;
    std::size_t m_chosen = 0;
    QFrame* m_detail = nullptr;
    StateMark* m_mark = nullptr;
    QLabel* m_title = nullptr;
    QLabel* m_why = nullptr;
    QLabel* m_names[5]{};
    QLabel* m_values[5]{};
    QPushButton* m_start = nullptr;
    QVBoxLayout* m_paused = nullptr;
    QLabel* m_done = nullptr;
    QLabel* m_orders = nullptr;
    QFrame* m_doneCard = nullptr;
    QFrame* m_ordersCard = nullptr;
    QComboBox* m_tool = nullptr;
    QComboBox* m_card = nullptr;
    CardRunner* m_runner = nullptr;
    std::optional<Target> m_waiting;  ///< asked for before the first look was finished
};

}  // namespace arc::ui
