// SPDX-License-Identifier: GPL-3.0-or-later
// A question inside the page instead of a dialog: one or two lines to fill, usual answers by arrow keys,
// Enter goes on, Esc gives up.
#pragma once
#include <QFrame>
#include <QStringList>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace arc::ui {

struct PromptField {
    QString label;
    QString value;
    QStringList usual;  ///< Up and Down step through them
};

class PromptBar : public QFrame {
    Q_OBJECT
  public:
    explicit PromptBar(QWidget* parent = nullptr);

    /// Shows the question and takes the keyboard. `answered` gets the lines in order, trimmed and not empty;
    /// it answers a sentence when they will not do, else an empty one, and the bar closes.
    void ask(const QString& question, const std::vector<PromptField>& fields, const QString& doIt,
             std::function<QString(const QStringList&)> answered);
    [[nodiscard]] bool asking() const { return isVisibleTo(parentWidget()); }

  Q_SIGNALS:
    void closed();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void finish();
    void giveUp();

    QLabel* m_question;
    QLabel* m_wrong;
    QLabel* m_labels[2];
    QLineEdit* m_lines[2];
    QPushButton* m_do;
    QPushButton* m_leave;
    QStringList m_usual[2];
    std::size_t m_count = 1;
    std::function<QString(const QStringList&)> m_answered;
};

}  // namespace arc::ui
