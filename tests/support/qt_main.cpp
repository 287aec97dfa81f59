// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QLocale>

#include <gtest/gtest.h>

#include "source_dir.hpp"

int main(int argc, char** argv) {
    // Without a display Qt aborts; a test never needs one. The screen of our own is as large as the largest window
    // we try: by itself Qt offers 800 x 800, and cuts dialogs to that.
    const QByteArray platform = qgetenv("QT_QPA_PLATFORM");
    if (platform.isEmpty() || platform == "offscreen")
        qputenv("QT_QPA_PLATFORM", "offscreen:configfile=" ARC_SOURCE_DIR "/tests/support/screen.json");
    QApplication application(argc, argv);
    // Numbers as the tests write them, whatever the machine speaks.
    QLocale::setDefault(QLocale(QLocale::English));
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
