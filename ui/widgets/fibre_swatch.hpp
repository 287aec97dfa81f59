// SPDX-License-Identifier: GPL-3.0-or-later
// A fibre's colour with its tracer marks. Fibre colours are a fact of the trade, not of the theme, and are
// always shown with their word.
#pragma once
#include <QColor>
#include <QRectF>
#include <QWidget>

#include "core/work/fibre.hpp"
#include "ui/theme/theme.hpp"

class QPainter;

namespace arc::ui {

QColor screenColour(FibreColour colour);
/// The word for people, translated: "slate".
QString wordOf(FibreColour colour);
/// "slate, 2 tracer marks".
QString wordsOf(const FibreLook& look);

/// A disc with a rim that keeps white and black fibres visible on any ground; tracer marks as rings across.
void paintFibre(QPainter& painter, const QRectF& box, const FibreLook& look, const Theme& theme);

class FibreSwatch : public QWidget {
    Q_OBJECT
  public:
    explicit FibreSwatch(FibreLook look, QWidget* parent = nullptr);
    void setLook(FibreLook look);
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    FibreLook m_look;
};

}  // namespace arc::ui
