// SPDX-License-Identifier: GPL-3.0-or-later
// How the logbook file is: whether it may be written, whether its pages and its journal are whole, and the
// rescue of what is readable into a new one.
#pragma once
#include "core/handover.hpp"
#include "ui/logbook/panel.hpp"

class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace arc::ui {

class Outcome;
class Session;
class StateMark;

class ConditionPanel : public Panel {
    Q_OBJECT
  public:
    explicit ConditionPanel(Session& session, QWidget* parent = nullptr);
    void refresh() override;
    [[nodiscard]] QWidget* firstFocus() override;
    [[nodiscard]] bool settled() const override { return !m_working; }

    /// As if the folder had been chosen in the file dialog.
    void rescueInto(const QString& folder);
    [[nodiscard]] QString outcome() const;

  Q_SIGNALS:
    /// The check found another state than before.
    void stateChanged();

  private:
    void show(const BookState& state);
    void check();
    void askWhere();
    void rescued(const std::filesystem::path& book, const RescueCount& count);

    Session& m_session;
    bool m_working = false;
    StateMark* m_mark;
    QLabel* m_verdict;
    QLabel* m_sentence;
    QPlainTextEdit* m_lines;
    QPushButton* m_check;
    QPushButton* m_rescue;
    Outcome* m_outcome;
};

}  // namespace arc::ui
