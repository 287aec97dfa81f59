// SPDX-License-Identifier: GPL-3.0-or-later
// The entry pad on the screen: one tube or ribbon, digits from the keyboard, verdict while typing. It writes
// nothing itself: what is to be saved goes out as writeAsked, and the page says written() once it is on disk.
#pragma once
#include <QFrame>

#include <optional>
#include <vector>

#include "core/work/pad.hpp"
#include "ui/shell/session.hpp"
#include "ui/today/pad_marks.hpp"
#include "ui/today/pad_row.hpp"
#include "ui/today/prompt_bar.hpp"

class QLabel;
class QPushButton;

namespace arc::ui {

struct Draft;
class EmptyState;
class PadRows;

class LossPad : public QFrame {
    Q_OBJECT
  public:
    explicit LossPad(Session& session, QWidget* parent = nullptr);

    void setPad(pad::Pad pad);
    [[nodiscard]] const std::optional<pad::Pad>& pad() const { return m_pad; }
    void changeSetUp(const pad::SetUp& setUp);
    void changeAverage(Loss sum, int count);
    void setMarks(PadMarks marks);
    void reload(const std::vector<SpliceArc>& arcs);
    void written(const pad::Write& write);
    /// What is typed and not saved; put back by restore when the closure and fibre are here.
    [[nodiscard]] Draft draft() const;
    void restore(const Draft& draft);
    void enter();
    void tell(const Problem& problem);
    /// Asks below the rows; see PromptBar::ask.
    void askPrompt(const QString& question, const std::vector<PromptField>& fields, const QString& doIt,
                   std::function<QString(const QStringList&)> answered);
    /// The sentence below the rows.
    [[nodiscard]] QString hint() const;
    [[nodiscard]] const PadRow* currentRow() const;

  Q_SIGNALS:
    void writeAsked(const arc::pad::Write& write);
    /// Something was typed, noted or dropped.
    void typedChanged();
    /// The pad moved to another fibre or the rows changed.
    void moved();
    /// There is no closure to splice into; one is to be made.
    void closureAsked();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void addActions();
    void fitHint();
    void refresh();
    void take(const Result<void>& done);
    void askToKeep();
    void askToVoid();
    void askToSplit();
    void askWhyResplice();

    Session& m_session;
    std::optional<pad::Pad> m_pad;
    PadMarks m_marks;
    PadRows* m_rows;
    EmptyState* m_noClosure;
    QLabel* m_hint;
    PromptBar* m_prompt;
    QPushButton* m_resplice;
    QPushButton* m_keep;
    QPushButton* m_void;
    QPushButton* m_split;
    QWidget* m_buttons;
    QString m_problem;
};

}  // namespace arc::ui
