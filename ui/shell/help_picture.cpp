// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/help_picture.hpp"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

#include <cmath>

namespace arc::ui {

QByteArray helpDrawing(const QString& key, const Theme& theme) {
    QFile file(QStringLiteral(":/pictures/help/%1.svg").arg(key));
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QByteArray day = file.readAll();
    if (theme.tone() == Tone::Day) return day;
    QByteArray drawing;
    // One pass, so that a colour put in is not exchanged again.
    for (qsizetype at = 0; at < day.size();) {
        const auto hash = day.indexOf('#', at);
        if (hash < 0 || hash + 7 > day.size()) {
            drawing += day.mid(at);
            break;
        }
        drawing += day.mid(at, hash - at);
        QByteArray colour = day.mid(hash, 7);
        for (int role = 0; role < roleCount; ++role)
            if (ui::colour(Tone::Day, static_cast<Role>(role)).name().toLatin1() == colour.toLower()) {
                colour = theme.colour(static_cast<Role>(role)).name().toLatin1();
                break;
            }
        drawing += colour;
        at = hash + 7;
    }
    return drawing;
}

QPixmap helpPicture(const QString& key, int width, const Theme& theme, double devicePixelRatio) {
    const QByteArray drawing = helpDrawing(key, theme);
    QSvgRenderer renderer(drawing);
    if (drawing.isEmpty() || !renderer.isValid()) return {};
    const QSizeF size = renderer.viewBoxF().size();
    const double scale = width * devicePixelRatio / size.width();
    QPixmap pixmap(static_cast<int>(std::lround(size.width() * scale)),
                   static_cast<int>(std::lround(size.height() * scale)));
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter);
    painter.end();
    pixmap.setDevicePixelRatio(devicePixelRatio);
    return pixmap;
}

}  // namespace arc::ui
