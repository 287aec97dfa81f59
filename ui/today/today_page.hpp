// SPDX-License-Identifier: GPL-3.0-or-later
// Today: the loss pad of the current closure, the machine now, and the top of the queues. Every Enter is on
// disk before the page says so; a held splicer asks for a name and a reason first.
#pragma once
#include <set>
#include <string>

#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"
#include "ui/today/sitting.hpp"

class QFrame;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace arc::ui {

class CareDesk;
class EmptyState;
class ImportPanel;
class JobSheet;
class LossPad;
class MachineCard;
class PageHead;
class QueueRow;
class SetUpPanel;
class SpanSheet;
class SpliceSearch;

class TodayPage : public Page {
    Q_OBJECT
  public:
    explicit TodayPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;
    [[nodiscard]] LossPad& pad() { return *m_pad; }

  private:
    void build();
    void addActions();
    QWidget* makeWork();
    void load();
    void reloadPad();
    void readJobAverage();
    void showHead();
    void showMachine();
    void showQueues();
    void showHold();
    void write(const pad::Write& write);
    void askOverride(const pad::Write& write);
    void attach();
    void openSetUp();
    void openJobSheet();
    void openSpans();
    void openImport();
    void openSearch();
    void backToWork();
    void saveDraft();
    void care(const care::DueItem& item);

    Session& m_session;
    CareDesk& m_desk;
    Sitting m_sitting;
    std::optional<Desk> m_here;
    std::set<std::string> m_overridden;  ///< keys of holds overridden since the queues were last worked out
    enum class Saving { No, Own } m_saving = Saving::No;
    int m_averageJobs = 0;

    PageHead* m_head = nullptr;
    QStackedWidget* m_stack = nullptr;
    QWidget* m_work = nullptr;
    EmptyState* m_empty = nullptr;
    QPushButton* m_toKit = nullptr;
    SetUpPanel* m_setUp = nullptr;
    JobSheet* m_jobSheet = nullptr;
    ImportPanel* m_import = nullptr;
    SpliceSearch* m_search = nullptr;
    SpanSheet* m_spans = nullptr;
    LossPad* m_pad = nullptr;
    QFrame* m_hold = nullptr;
    QLabel* m_holdTitle = nullptr;
    QLabel* m_holdWhy = nullptr;
    MachineCard* m_machine = nullptr;
    std::vector<QueueRow*> m_queues;
    std::vector<care::DueItem> m_top;
};

}  // namespace arc::ui
