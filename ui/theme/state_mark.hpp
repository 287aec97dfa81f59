// SPDX-License-Identifier: GPL-3.0-or-later
// A state as a shape: steady a disc, watch a diamond, drifting a triangle, recovered a ring, learning three
// dots. Shape and colour always come with the word.
#pragma once
#include <QRectF>
#include <QWidget>

#include "core/analytics/drift.hpp"
#include "ui/theme/theme.hpp"

class QPainter;

namespace arc::ui {

enum class Mark { Steady, Watch, Drifting, Recovered, Learning };

Mark markOf(drift::Standing standing);
Role roleOf(Mark mark);
/// "steady", "watch", … for people, translated.
QString wordOf(Mark mark);
/// The value of the style sheet's "state" property.
QString stateName(Mark mark);

/// Fills the largest square in the middle of `box`.
void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme);

/// The shape alone; its accessible name is the word.
class StateMark : public QWidget {
    Q_OBJECT
  public:
    explicit StateMark(Mark mark, QWidget* parent = nullptr);
    void setMark(Mark mark);
    [[nodiscard]] Mark mark() const { return m_mark; }
    [[nodiscard]] QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    Mark m_mark;
};

}  // namespace arc::ui
