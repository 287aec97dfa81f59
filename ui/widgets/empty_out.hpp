// SPDX-License-Identifier: GPL-3.0-or-later
// Empties a layout that is filled anew.
#pragma once
#include <QLayout>
#include <QWidget>

namespace arc::ui {

/// The widgets are hidden at once and go when the event that led here is over: one of them may be its sender.
inline void emptyOut(QLayout& layout) {
    while (auto* old = layout.takeAt(0)) {
        if (old->widget()) {
            old->widget()->hide();
            old->widget()->deleteLater();
        }
        delete old;
    }
}

}  // namespace arc::ui
