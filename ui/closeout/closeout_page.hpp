// SPDX-License-Identifier: GPL-3.0-or-later
// Closeout: which job is complete, what is out of order and who decided what about it, and the record that
// goes to the client.
#pragma once
#include <map>
#include <memory>
#include <set>

#include "core/closeout/record.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

class QFrame;
class QLabel;
class QListView;
class QPushButton;

namespace arc::ui {

class CareDesk;
class EmptyState;
class ExceptionList;
class Histogram;
class JobTree;
class PageHead;
class PromptBar;
class StateMark;

class CloseoutPage : public Page {
    Q_OBJECT
  public:
    explicit CloseoutPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] bool settled() const override;

    // As if a place had been chosen in the file dialog.
    void writeTo(const QString& folder, closeout::RecordState state);
    void verifyAt(const QString& path);
    /// What the last export or check came to.
    [[nodiscard]] QString outcome() const;

  private:
    void build();
    void addActions();
    void read();
    void work();
    void showJob();
    void showSummary(const closeout::Record& record);
    void decide(const char* disposition);
    void askWhere(closeout::RecordState state);
    void askWhat();
    void finished(const QString& words, const char* state);
    [[nodiscard]] const closeout::Record* chosen() const;

    Session& m_session;
    CareDesk& m_desk;
    std::vector<Job> m_jobs;
    std::map<JobId, std::shared_ptr<const closeout::Record>> m_records;
    std::set<JobId> m_stale;
    bool m_working = false;
    std::optional<JobId> m_wanted;

    PageHead* m_head = nullptr;
    QWidget* m_body = nullptr;
    EmptyState* m_empty = nullptr;
    JobTree* m_tree = nullptr;
    StateMark* m_mark = nullptr;
    QLabel* m_verdict = nullptr;
    QLabel* m_figures[5]{};
    QLabel* m_rule = nullptr;
    Histogram* m_histogram = nullptr;
    QLabel* m_exceptionHead = nullptr;
    ExceptionList* m_list = nullptr;
    QListView* m_view = nullptr;
    PromptBar* m_prompt = nullptr;
    QPushButton* m_accept = nullptr;
    QPushButton* m_reject = nullptr;
    QPushButton* m_draft = nullptr;
    QPushButton* m_final = nullptr;
    QPushButton* m_verify = nullptr;
    QLabel* m_outcome = nullptr;
};

}  // namespace arc::ui
