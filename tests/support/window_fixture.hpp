// SPDX-License-Identifier: GPL-3.0-or-later
// The real main window over a book in memory and invented charts. With ARC_PICTURES set to a folder, tests
// leave pictures of what they saw there.
#pragma once
#include <QApplication>
#include <QDeadlineTimer>

#include <gtest/gtest.h>
#include <memory>

#include "tests/support/fake_crew.hpp"
#include "tests/support/pictures.hpp"
#include "ui/shell/main_window.hpp"
#include "ui/theme/theme.hpp"

namespace arc::test {

class WindowTest : public ::testing::Test {
  protected:
    void SetUp() override { ui::applyTheme(*qApp, ui::Theme(ui::Tone::Day, 1)); }

    void openWindow(
        ui::DriftReader reader = [](Logbook&, Progress&) -> Result<ui::DriftView> { return fakeView(); },
        QSize size = {1366, 768}) {
        bench = std::make_unique<FakeWorkbench>(book);
        session = std::make_unique<ui::Session>(book, *bench, clock, random, nullptr, std::move(reader));
        ui::WindowOptions options;
        options.remember = ui::Remember::No;
        window = std::make_unique<ui::MainWindow>(*session, options);
        window->resize(size);
        window->show();
        settle();
    }

    void settle() {
        const QDeadlineTimer deadline(20'000);
        while (!window->settled() && !deadline.hasExpired())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents, 50);
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
    }

    void picture(const QString& name) { test::picture(*window, name); }

    MemoryLogbook book;
    StoppedClock clock;
    CountingRandom random;
    std::unique_ptr<FakeWorkbench> bench;
    std::unique_ptr<ui::Session> session;
    std::unique_ptr<ui::MainWindow> window;
};

}  // namespace arc::test
