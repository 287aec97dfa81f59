// SPDX-License-Identifier: GPL-3.0-or-later
// A signal as a line to choose: its mark, what is likely, when and how it stands. Words wrap, never cut off.
#pragma once
#include <QAbstractButton>

#include "ui/theme/state_mark.hpp"

namespace arc::ui {

class SignalLine : public QAbstractButton {
    Q_OBJECT
  public:
    SignalLine(Mark mark, const QString& headline, const QString& below, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Mark m_mark;
    QString m_below;
};

}  // namespace arc::ui
