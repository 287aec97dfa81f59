// SPDX-License-Identifier: GPL-3.0-or-later
// Moves the ends of the baseline by keyboard: two arc numbers and a reason. What is typed shows in the charts
// at once; it counts when it is written.
#pragma once
#include <QFrame>

class QLineEdit;
class QPushButton;
class QSpinBox;

namespace arc::ui {

class BaselineBar : public QFrame {
    Q_OBJECT
  public:
    explicit BaselineBar(QWidget* parent = nullptr);
    void open(int from, int to, int lastArc);
    [[nodiscard]] int from() const;
    [[nodiscard]] int to() const;
    [[nodiscard]] QString reason() const;

  Q_SIGNALS:
    void moved(int from, int to);
    void writeAsked();
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QSpinBox* m_from;
    QSpinBox* m_to;
    QLineEdit* m_reason;
    QPushButton* m_write;
};

}  // namespace arc::ui
