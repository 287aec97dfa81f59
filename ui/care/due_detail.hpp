// SPDX-License-Identifier: GPL-3.0-or-later
// One due item in full: why, on what grounds, since when, what happens if not, what it takes.
#pragma once
#include <QFrame>

#include "core/care/card.hpp"
#include "core/care/due.hpp"

class QLabel;
class QPushButton;

namespace arc::ui {

class StateMark;

class DueDetail : public QFrame {
    Q_OBJECT
  public:
    explicit DueDetail(QWidget* parent = nullptr);
    /// `card`: the one that does it; null when there is none.
    void show(const care::DueItem& item, const care::Card* card, Instant now);

  Q_SIGNALS:
    void startAsked();

  private:
    static constexpr int lines = 5;
    StateMark* m_mark;
    QLabel* m_title;
    QLabel* m_why;
    QLabel* m_names[lines]{};
    QLabel* m_values[lines]{};
    QPushButton* m_start;
};

}  // namespace arc::ui
