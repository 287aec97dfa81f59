// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/fitting.hpp"

#include <QLayout>
#include <QWidget>

#include <algorithm>

namespace arc::ui {

void fitTo(QWidget& sheet, int width) {
    // Fonts come with the style sheet; before it is applied words look narrower than they will be.
    sheet.ensurePolished();
    for (auto* child : sheet.findChildren<QWidget*>()) child->ensurePolished();
    auto* layout = sheet.layout();
    layout->invalidate();
    layout->activate();
    width = std::max(width, layout->totalMinimumSize().width());
    const int height = layout->hasHeightForWidth() ? layout->totalHeightForWidth(width)
                                                   : layout->totalMinimumSize().height();
    sheet.setMinimumSize(width, height);
    sheet.resize(width, height);
}

}  // namespace arc::ui
