// SPDX-License-Identifier: GPL-3.0-or-later
// F1: every key of the window, made from the list of actions, and short pages of what is behind the screens
// (see help_pages.hpp).
#pragma once
#include <QDialog>

class QListWidget;
class QStackedWidget;

namespace arc::ui {

class Actions;

class Help : public QDialog {
    Q_OBJECT
  public:
    /// Opens at the page of that key; the keys first when there is none.
    explicit Help(const Actions& actions, const QString& page = {}, QWidget* parent = nullptr);

  private:
    QListWidget* m_list;
    QStackedWidget* m_stack;
};

}  // namespace arc::ui
