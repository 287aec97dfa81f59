// SPDX-License-Identifier: GPL-3.0-or-later
// The exceptions of a job or closure, and the decisions on them: each with a name and a reason.
#pragma once
#include <QWidget>

#include <memory>
#include <optional>

#include "core/closeout/record.hpp"
#include "ui/shell/subject.hpp"

class QLabel;
class QListView;
class QPushButton;

namespace arc::ui {

class ExceptionList;
class PromptBar;
class Session;

class ExceptionPanel : public QWidget {
    Q_OBJECT
  public:
    explicit ExceptionPanel(Session& session, QWidget* parent = nullptr);
    /// Null: nothing to decide on. `closure`: only what belongs to it.
    void show(std::shared_ptr<const closeout::Record> record, std::optional<ClosureId> closure);
    /// Of the exception that is chosen while the keyboard is here: its decision, else its splice.
    [[nodiscard]] std::optional<Subject> subject() const;

  private:
    void decide(const char* disposition);
    void say(std::size_t all, std::size_t open);

    Session& m_session;
    std::shared_ptr<const closeout::Record> m_record;
    ExceptionList* m_list;
    QLabel* m_head;
    QListView* m_view;
    PromptBar* m_prompt;
    QPushButton* m_accept;
    QPushButton* m_reject;
};

}  // namespace arc::ui
