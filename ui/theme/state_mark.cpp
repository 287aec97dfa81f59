// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/state_mark.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace arc::ui {

Mark markOf(drift::Standing standing) {
    switch (standing) {
        case drift::Standing::Learning:
            return Mark::Learning;
        case drift::Standing::Steady:
            return Mark::Steady;
        case drift::Standing::Watch:
            return Mark::Watch;
        case drift::Standing::Drifting:
            return Mark::Drifting;
        case drift::Standing::Recovered:
            return Mark::Recovered;
    }
    return Mark::Learning;
}

Role roleOf(Mark mark) {
    switch (mark) {
        case Mark::Steady:
            return Role::Steady;
        case Mark::Watch:
            return Role::Watch;
        case Mark::Drifting:
            return Role::Drifting;
        case Mark::Recovered:
            return Role::Recovered;
        case Mark::Learning:
            return Role::Soft;
    }
    return Role::Soft;
}

QString wordOf(Mark mark) {
    const auto tr = [](const char* text) { return QCoreApplication::translate("arc::ui", text); };
    switch (mark) {
        case Mark::Steady:
            return tr("steady");
        case Mark::Watch:
            return tr("watch");
        case Mark::Drifting:
            return tr("drifting");
        case Mark::Recovered:
            return tr("recovered");
        case Mark::Learning:
            return tr("learning");
    }
    return {};
}

QString stateName(Mark mark) {
    static const char* names[] = {"steady", "watch", "drifting", "recovered", "learning"};
    return QString::fromLatin1(names[static_cast<int>(mark)]);
}

void paintMark(QPainter& painter, const QRectF& box, Mark mark, const Theme& theme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = theme.colour(roleOf(mark));
    const double r = std::min(box.width(), box.height()) / 2;
    const QPointF c = box.center();
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    switch (mark) {
        case Mark::Steady:
            painter.drawEllipse(c, r * 0.86, r * 0.86);
            break;
        case Mark::Watch: {
            const QPointF points[] = {
                {c.x(), c.y() - r}, {c.x() + r, c.y()}, {c.x(), c.y() + r}, {c.x() - r, c.y()}};
            painter.drawConvexPolygon(points, 4);
            break;
        }
        case Mark::Drifting: {
            const QPointF points[] = {
                {c.x(), c.y() - r * 0.92}, {c.x() + r, c.y() + r * 0.84}, {c.x() - r, c.y() + r * 0.84}};
            painter.drawConvexPolygon(points, 3);
            break;
        }
        case Mark::Recovered:
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(ink, r * 0.46));
            painter.drawEllipse(c, r * 0.66, r * 0.66);
            break;
        case Mark::Learning:
            for (const int i : {-1, 0, 1})
                painter.drawEllipse(c + QPointF(i * r * 0.72, 0), r * 0.24, r * 0.24);
            break;
    }
    painter.restore();
}

StateMark::StateMark(Mark mark, QWidget* parent) : QWidget(parent), m_mark(mark) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setMark(mark);
}

void StateMark::setMark(Mark mark) {
    m_mark = mark;
    setAccessibleName(wordOf(mark));
    update();
}

QSize StateMark::sizeHint() const {
    const int side = currentTheme().px(18);
    return {side, side};
}

void StateMark::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    paintMark(painter, QRectF(rect()), m_mark, currentTheme());
}

}  // namespace arc::ui
