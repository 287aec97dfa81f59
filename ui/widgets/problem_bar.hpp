// SPDX-License-Identifier: GPL-3.0-or-later
// What went wrong, in one sentence, above the page; it stays until it is read and put away.
#pragma once
#include <QWidget>

#include "core/result.hpp"

class QLabel;

namespace arc::ui {

class ProblemBar : public QWidget {
    Q_OBJECT
  public:
    explicit ProblemBar(QWidget* parent = nullptr);
    void show(const Problem& problem);
    void clear();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QLabel* m_sentence;
};

}  // namespace arc::ui
