// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/drift_page.hpp"

#include <QTest>

#include "tests/support/window_fixture.hpp"

namespace arc::ui {
namespace {

class DriftPageTest : public test::WindowTest {};

TEST_F(DriftPageTest, showsTheSignalOfAReport) {
    openWindow();
    QTest::keyClick(window.get(), Qt::Key_F5);
    settle();
    picture("drift-day");
    EXPECT_EQ(window->screen(), Screen::Drift);
}

}  // namespace
}  // namespace arc::ui
