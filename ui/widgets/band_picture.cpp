// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/band_picture.hpp"

namespace arc::ui {

QImage bandPicture(const std::vector<ColumnInk>& columns, int height, const QColor& ink) {
    const auto width = static_cast<int>(columns.size());
    QImage picture(width, height, QImage::Format_ARGB32_Premultiplied);
    const QRgb colour = qPremultiply(ink.rgba());
    for (int row = 0; row < height; ++row) {
        auto* const pixels = reinterpret_cast<QRgb*>(picture.scanLine(row));
        for (int column = 0; column < width; ++column) {
            const ColumnInk& reach = columns[static_cast<std::size_t>(column)];
            pixels[column] = (row >= reach.top) & (row < reach.bottom) ? colour : 0;
        }
    }
    return picture;
}

}  // namespace arc::ui
