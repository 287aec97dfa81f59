// SPDX-License-Identifier: GPL-3.0-or-later
// Tells of long work: what, how far, about how long still, and a way to stop it. Shown after 300 ms.
#pragma once
#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace arc::ui {

class Background;

class JobBar : public QWidget {
    Q_OBJECT
  public:
    explicit JobBar(Background& background, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void look();

    Background& m_background;
    QLabel* m_words;
    QProgressBar* m_bar;
    QPushButton* m_stop;
    int m_job = 0;
};

}  // namespace arc::ui
