// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/chart_export.hpp"

#include <QFileInfo>
#include <QPainter>
#include <QPixmap>
#include <QSvgGenerator>
#include <QWidget>

#include "ui/theme/theme.hpp"

namespace arc::ui {

Result<void> saveCharts(QWidget& charts, const QString& file) {
    const auto refuse = [&] {
        return fail(ProblemCode::Unavailable, "the charts cannot be written", file.toStdString(),
                    "Choose a folder you may write to, and a name that ends in .svg or .png");
    };
    const QString ending = QFileInfo(file).suffix().toLower();
    if (ending == QLatin1String("png")) {
        if (!charts.grab().save(file, "PNG")) return refuse();
        return {};
    }
    if (ending != QLatin1String("svg") || !QFileInfo(QFileInfo(file).absolutePath()).isWritable())
        return refuse();
    QSvgGenerator svg;
    svg.setFileName(file);
    svg.setSize(charts.size());
    svg.setViewBox(charts.rect());
    svg.setTitle(charts.accessibleName());
    QPainter painter;
    if (!painter.begin(&svg)) return refuse();
    painter.fillRect(charts.rect(), currentTheme().colour(Role::Paper));
    charts.render(&painter);
    painter.end();
    return {};
}

}  // namespace arc::ui
