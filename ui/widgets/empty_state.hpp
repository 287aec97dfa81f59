// SPDX-License-Identifier: GPL-3.0-or-later
// What an empty screen says: what belongs here, and what to do first.
#pragma once
#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace arc::ui {

class EmptyState : public QWidget {
    Q_OBJECT
  public:
    EmptyState(const QString& icon, const QString& title, const QString& teach, QWidget* parent = nullptr);
    /// The first one is the thing to do.
    QPushButton* addButton(const QString& text, const QString& icon = {});

  private:
    QVBoxLayout* m_buttons;
};

}  // namespace arc::ui
