// SPDX-License-Identifier: GPL-3.0-or-later
// F1: every key of the window, made from the list of actions, and short pages of what is behind the screens.
#pragma once
#include <QDialog>

namespace arc::ui {

class Actions;

class Help : public QDialog {
    Q_OBJECT
  public:
    explicit Help(const Actions& actions, QWidget* parent = nullptr);
};

}  // namespace arc::ui
