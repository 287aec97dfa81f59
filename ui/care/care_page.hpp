// SPDX-License-Identifier: GPL-3.0-or-later
// Care: what is due, by when a crew can do it, with why, on what grounds, since when and what happens if
// not. Taking one up runs its card; a paused run goes on where it stood.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/due.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QLabel;

namespace arc::ui {

class CardRunner;
class CareDesk;
class DoneAside;
class DueDetail;
class OrdersAside;
class OtherCare;
class PageHead;
class PausedRuns;
class QueueList;

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
    /// Takes up a care: goes on with its paused run, or begins one. Gentler care that was not tried is asked
    /// about first.
    void startCare(ToolId tool, const ActionKey& action, const std::vector<std::string>& answers);

  private:
    void build();
    void addActions();
    void refresh();
    void showChosen();
    void showPaused();
    void startChosen();
    void begin(const care::Card& card, const Tool& tool, const std::vector<std::string>& answers,
               const std::map<std::string, std::string>& fields);
    void editCard(const ActionKey& action);
    void openLimits();
    [[nodiscard]] std::optional<care::Card> cardOf(const CareRun& run) const;
    void run(const care::Card& card, const Tool& tool, const CareRun& run);
    void startWaiting();

    Session& m_session;
    CareDesk& m_desk;
    PageHead* m_head = nullptr;
    QLabel* m_putAside = nullptr;
    PausedRuns* m_paused = nullptr;
    QueueList* m_queue = nullptr;
    OtherCare* m_other = nullptr;
    DueDetail* m_detail = nullptr;
    DoneAside* m_done = nullptr;
    OrdersAside* m_orders = nullptr;
    CardRunner* m_runner = nullptr;
    std::optional<Target> m_waiting;  ///< asked for before the first look was finished
};

}  // namespace arc::ui
