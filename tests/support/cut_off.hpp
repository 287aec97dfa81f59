// SPDX-License-Identifier: GPL-3.0-or-later
// Words on the screen that do not fit where they stand.
#pragma once
#include <QLabel>
#include <QPushButton>
#include <QString>

#include "ui/care/queue_row.hpp"
#include "ui/today/pad_row.hpp"
#include "ui/widgets/life_bar.hpp"

namespace arc::test {

/// Words of a label, a button or a painted row that do not fit into it, or nothing.
inline QString cutOff(const QWidget* widget) {
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
        if (label->text().isEmpty()) return {};
        const int needed =
            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        const bool wide =
            !label->wordWrap() && label->fontMetrics().horizontalAdvance(label->text()) > label->width() + 1;
        if (wide || needed > label->height() + 2) return label->text();
    } else if (const auto* row = qobject_cast<const ui::QueueRow*>(widget)) {
        if (row->height() < row->heightForWidth(row->width())) return row->accessibleName();
    } else if (const auto* bar = qobject_cast<const ui::LifeBar*>(widget)) {
        if (bar->width() < bar->minimumSizeHint().width() || bar->height() < bar->heightForWidth(bar->width()))
            return bar->toolTip();
    } else if (const auto* fibre = qobject_cast<const ui::PadRow*>(widget)) {
        if (!fibre->fits()) return fibre->accessibleName();
    } else if (const auto* button = qobject_cast<const QPushButton*>(widget)) {
        if (button->property("kind") != QLatin1String("rail") &&
            button->fontMetrics().horizontalAdvance(button->text()) > button->width())
            return button->text();
    }
    return {};
}

}  // namespace arc::test
