// SPDX-License-Identifier: GPL-3.0-or-later
// Top of a page: what it is about, and one line below; controls may stand at the right.
#pragma once
#include <QWidget>

class QHBoxLayout;
class QLabel;

namespace arc::ui {

class PageHead : public QWidget {
    Q_OBJECT
  public:
    explicit PageHead(QWidget* parent = nullptr);
    void setTitle(const QString& title);
    void setLine(const QString& line);
    /// Added from left to right at the right end.
    void addControl(QWidget* control);

  private:
    QLabel* m_title;
    QLabel* m_line;
    QHBoxLayout* m_controls;
};

}  // namespace arc::ui
