// SPDX-License-Identifier: GPL-3.0-or-later
// Says above the page that the logbook is open for reading only, and why; of a damaged one it leads to what
// is readable and to its rescue.
#pragma once
#include <QWidget>

class QLabel;
class QPushButton;

namespace arc::ui {

class Keeper;
class Session;

class BookBar : public QWidget {
    Q_OBJECT
  public:
    BookBar(Session& session, Keeper& keeper, QWidget* parent = nullptr);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void look();

    Keeper& m_keeper;
    QLabel* m_sentence;
    QPushButton* m_more;
};

}  // namespace arc::ui
