// SPDX-License-Identifier: GPL-3.0-or-later
// Closeout: which job is complete, what is out of order and who decided what about it, and the record that
// goes to the client.
#pragma once
#include <optional>
#include <vector>

#include "ui/closeout/job_records.hpp"
#include "ui/closeout/job_tree.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/session.hpp"

namespace arc::ui {

class EmptyState;
class ExceptionPanel;
class PageHead;
class RecordBar;
class SummaryCard;

class CloseoutPage : public Page {
    Q_OBJECT
  public:
    explicit CloseoutPage(Session& session, QWidget* parent = nullptr);

    void open(const Target& target) override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] std::optional<Subject> subject() override;
    [[nodiscard]] bool settled() const override;

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build();
    void read();
    void showJob();
    void sayHead();

    Session& m_session;
    CareDesk& m_desk;
    JobRecords m_records;
    std::vector<Job> m_jobs;
    IssuedByJob m_issued;
    std::optional<JobId> m_wanted;

    PageHead* m_head = nullptr;
    QWidget* m_body = nullptr;
    EmptyState* m_empty = nullptr;
    JobTree* m_tree = nullptr;
    SummaryCard* m_summary = nullptr;
    ExceptionPanel* m_exceptions = nullptr;
    RecordBar* m_bar = nullptr;
};

}  // namespace arc::ui
