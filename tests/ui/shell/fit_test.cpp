// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing that is said is cut off: not at the smallest window, not with text at 200 %.
#include <QSize>

#include "tests/support/cut_off.hpp"
#include "tests/support/window_fixture.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"

namespace arc::ui {
namespace {

struct Look {
    QSize size;
    double scale;
};

class FitTest : public test::WindowTest, public ::testing::WithParamInterface<Look> {};

TEST_P(FitTest, noWordIsCutOff) {
    applyTheme(*qApp, Theme(Tone::Day, GetParam().scale));
    book.toolList = test::fakeView().tools;
    openWindow([](Logbook&, Progress&) -> Result<DriftView> { return test::fakeView(); }, GetParam().size);
    for (const auto screen : {Screen::Drift, Screen::Kit}) {
        window->go(screen);
        settle();
        picture(QStringLiteral("fit-%1-%2-%3")
                    .arg(keyOf(screen))
                    .arg(GetParam().size.width())
                    .arg(GetParam().scale));
        EXPECT_LE(window->width(), GetParam().size.width()) << keyOf(screen).toStdString();
        EXPECT_LE(window->height(), GetParam().size.height()) << keyOf(screen).toStdString();
        for (const auto* widget : window->page(screen).findChildren<QWidget*>()) {
            if (!widget->isVisible()) continue;
            EXPECT_EQ(test::cutOff(widget).toStdString(), "") << keyOf(screen).toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Screens, FitTest,
                         ::testing::Values(Look{{1366, 768}, 1.0}, Look{{1920, 1080}, 1.5},
                                           Look{{3840, 2160}, 2.0}, Look{{1920, 1080}, 2.0}));

}  // namespace
}  // namespace arc::ui
