// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/screen.hpp"

#include <QCoreApplication>

namespace arc::ui {

QString keyOf(Screen screen) {
    static const char* keys[] = {"today", "kit", "care", "drift", "closeout", "logbook"};
    return QString::fromLatin1(keys[static_cast<int>(screen)]);
}

QString titleOf(Screen screen) {
    static const char* titles[] = {
        QT_TRANSLATE_NOOP("Screen", "Today"),    QT_TRANSLATE_NOOP("Screen", "Kit"),
        QT_TRANSLATE_NOOP("Screen", "Care"),     QT_TRANSLATE_NOOP("Screen", "Drift"),
        QT_TRANSLATE_NOOP("Screen", "Closeout"), QT_TRANSLATE_NOOP("Screen", "Logbook")};
    return QCoreApplication::translate("Screen", titles[static_cast<int>(screen)]);
}

}  // namespace arc::ui
