// SPDX-License-Identifier: GPL-3.0-or-later
// The main window over a real logbook in a folder that goes away. With ARC_PICTURES set to a folder, tests
// leave pictures of what they saw there.
#pragma once
#include <memory>

#include "tests/support/ui_rig.hpp"
#include "ui/shell/main_window.hpp"

namespace arc::test {

struct RealWindow {
    UiRig rig;
    ui::Session* session = nullptr;
    std::unique_ptr<ui::MainWindow> window;

    explicit RealWindow(ui::Theme theme = {}) : rig(theme) {}

    /// Fill the book first.
    [[nodiscard]] bool open(QSize size = {1366, 768}) {
        session = &rig.start();
        session->setCrew("Mira");
        ui::WindowOptions options;
        options.remember = ui::Remember::No;
        window = std::make_unique<ui::MainWindow>(*session, options);
        window->resize(size);
        window->show();
        window->activateWindow();
        return QTest::qWaitForWindowActive(window.get()) && settle();
    }
    [[nodiscard]] bool settle() {
        return eventually([this] { return window->settled(); });
    }
    /// A key where the keyboard is.
    static void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : QApplication::activeWindow(), key, with);
    }
    static void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    static void picture(QWidget* of, const QString& name) {
        const QString folder = qEnvironmentVariable("ARC_PICTURES");
        if (folder.isEmpty()) return;
        // Layouts that follow from what has just been said.
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
        of->grab().save(folder + QLatin1Char('/') + name + QStringLiteral(".png"));
    }
};

}  // namespace arc::test
