// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/icons.hpp"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

#include <cmath>

#include "ui/theme/theme.hpp"

namespace arc::ui {

QPixmap iconPixmap(const QString& name, int side, const QColor& colour, double devicePixelRatio) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QByteArray svg = file.readAll();
    svg.replace("#000000", colour.name().toLatin1());
    QSvgRenderer renderer(svg);
    const int pixels = static_cast<int>(std::lround(side * devicePixelRatio));
    QPixmap pixmap(pixels, pixels);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    renderer.render(&painter);
    painter.end();
    pixmap.setDevicePixelRatio(devicePixelRatio);
    return pixmap;
}

QIcon icon(const QString& name, const QColor& colour) {
    QIcon made;
    for (const int side : {24, 48, 96}) {
        made.addPixmap(iconPixmap(name, side, colour));
        made.addPixmap(iconPixmap(name, side, currentTheme().colour(Role::Soft)), QIcon::Disabled);
    }
    return made;
}

QIcon applicationIcon() {
    QIcon made;
    for (const int side : {16, 32, 48, 64, 128, 256})
        made.addPixmap(iconPixmap(QStringLiteral("application"), side, QColor(Qt::black)));
    return made;
}

}  // namespace arc::ui
