// SPDX-License-Identifier: GPL-3.0-or-later
// Writing a draft, issuing the final record, verifying a record that somebody brought, and what came of it.
#pragma once
#include <QWidget>

#include <memory>

#include "core/closeout/record.hpp"

class QComboBox;
class QPushButton;

namespace arc::ui {

class Outcome;
class PromptBar;
class Session;

class RecordBar : public QWidget {
    Q_OBJECT
  public:
    explicit RecordBar(Session& session, QWidget* parent = nullptr);
    /// Its keys work while the keyboard is anywhere on `owner`.
    void addActions(QWidget* owner);
    /// Null: there is nothing to write.
    void show(std::shared_ptr<const closeout::Record> record);

    // As if a place had been chosen in the file dialog.
    void writeTo(const QString& folder, closeout::RecordState state);
    void verifyAt(const QString& path);
    /// What the last export or check came to.
    [[nodiscard]] QString outcome() const;

  private:
    void enable();
    void askWhere(closeout::RecordState state);
    void askWhat();
    void choosePaper(int index);
    void chooseLanguage(int index);

    Session& m_session;
    std::shared_ptr<const closeout::Record> m_record;
    bool m_writing = false;
    PromptBar* m_prompt;
    QPushButton* m_draft;
    QPushButton* m_final;
    QPushButton* m_verify;
    QComboBox* m_paper;
    QComboBox* m_language;
    Outcome* m_outcome;
};

}  // namespace arc::ui
