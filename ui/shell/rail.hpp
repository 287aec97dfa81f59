// SPDX-License-Identifier: GPL-3.0-or-later
// The left edge of the window: the mark, the screens, help, and at the foot who is at the keyboard and
// when the last entry was on disk.
#pragma once
#include <QPushButton>
#include <QWidget>

#include <vector>

#include "ui/shell/screen.hpp"

class QLabel;
class QVBoxLayout;

namespace arc::ui {

/// Icon, word and key, painted by hand; checked is the screen that is open.
class RailButton : public QPushButton {
    Q_OBJECT
  public:
    RailButton(const QString& word, const QString& key, const QString& icon, QWidget* parent);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QString m_key, m_icon;
};

class Rail : public QWidget {
    Q_OBJECT
  public:
    explicit Rail(QWidget* parent = nullptr);
    void setScreen(Screen screen);
    /// "saved 14:07:31"; empty: nothing written in this sitting.
    void setSaved(const QString& words);
    void setCrew(const QString& crew);

  Q_SIGNALS:
    void screenChosen(arc::ui::Screen screen);
    void helpChosen();
    void crewChosen();

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::vector<RailButton*> m_buttons;
    QPushButton* m_crew;
    QLabel* m_saved;
};

}  // namespace arc::ui
