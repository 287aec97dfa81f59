// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/scroll_canvas.hpp"

#include <QScrollArea>

namespace arc::ui {

QWidget* canvasIn(QScrollArea& area) {
    area.setWidgetResizable(true);
    area.setFrameShape(QFrame::NoFrame);
    area.setFocusPolicy(Qt::NoFocus);
    area.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* canvas = new QWidget;
    canvas->setProperty("ground", QStringLiteral("none"));
    area.setWidget(canvas);
    return canvas;
}

}  // namespace arc::ui
