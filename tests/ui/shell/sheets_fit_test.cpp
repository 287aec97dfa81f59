// SPDX-License-Identifier: GPL-3.0-or-later
// Every action of every page is asked for over the invented crew of Harrow Ridge; of what opens - sheets, dialogs,
// lists - no word may be cut off, in either whole language, at the smallest window and with text at 200 %.
#include <QFileDialog>
#include <QTest>

#include <gtest/gtest.h>

#include "storage/demo_book.hpp"
#include "tests/support/cut_off.hpp"
#include "tests/support/in_language.hpp"
#include "tests/support/pictures.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/shell/main_window.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

struct Look {
    QSize size;
    double scale;
    text::Language language;
};

class SheetsFitTest : public ::testing::TestWithParam<Look> {
  protected:
    void lookAtAll(const QString& after) {
        for (auto* top : QApplication::topLevelWidgets()) {
            if (!top->isVisible() || qobject_cast<const QFileDialog*>(top)) continue;
            if (top->isFullScreen()) {
                top->showNormal();
                top->resize(GetParam().size);
                QApplication::processEvents();
            }
            if (!qobject_cast<const MainWindow*>(top))
                test::picture(*top, QStringLiteral("sheet-%1-%2-%3")
                                        .arg(after, text::codeOf(GetParam().language))
                                        .arg(GetParam().scale));
            EXPECT_LE(top->width(), GetParam().size.width()) << after.toStdString();
            EXPECT_LE(top->height(), GetParam().size.height()) << after.toStdString();
            for (const auto* widget : top->findChildren<QWidget*>()) {
                if (!widget->isVisible()) continue;
                const QString words = test::cutOff(widget);
                if (words.isEmpty() || m_said.contains(words)) continue;
                m_said.insert(words);
                ADD_FAILURE() << after.toStdString() << ": " << words.toStdString();
            }
        }
    }

    void closeDialogs(const QWidget& main) {
        for (auto* top : QApplication::topLevelWidgets())
            if (top != &main && top->isVisible()) top->close();
        for (int i = 0; i < 2 && QApplication::focusWidget(); ++i)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    }

  private:
    QSet<QString> m_said;
};

TEST_P(SheetsFitTest, noWordOfWhatAnActionOpensIsCutOff) {
    const test::InLanguage spoken(GetParam().language);
    test::UiRig rig(Theme(Tone::Day, GetParam().scale));
    ASSERT_TRUE(storage::fillWithHarrowRidge(*rig.book, rig.clock.now()));
    WindowOptions options;
    options.remember = Remember::No;
    MainWindow window(rig.start(), options);
    window.resize(GetParam().size);
    window.show();
    int tried = 0;
    for (const auto& page : pageList()) {
        std::vector<QPointer<QAction>> actions;
        window.go(page.screen);
        ASSERT_TRUE(test::eventually([&] { return window.settled(); }));
        for (const auto& known : rig.session->actions().all()) {
            if (known.row.screen.value_or(Screen::Today) == page.screen) actions.push_back(known.action);
        }
        for (const auto& action : actions) {
            if (!action || !action->isEnabled()) continue;
            window.go(page.screen);
            ASSERT_TRUE(test::eventually([&] { return window.settled(); }));
            const QString name = action->objectName().isEmpty() ? action->text() : action->objectName();
            action->trigger();
            test::eventually([&] { return window.settled(); });
            for (int i = 0; i < 5; ++i) QApplication::processEvents();
            lookAtAll(name);
            closeDialogs(window);
            ++tried;
        }
    }
    EXPECT_GT(tried, 40);
}

INSTANTIATE_TEST_SUITE_P(Sheets, SheetsFitTest,
                         ::testing::Values(Look{{1366, 768}, 1.0, text::Language::English},
                                           Look{{1366, 768}, 1.0, text::Language::Spanish},
                                           Look{{1920, 1080}, 2.0, text::Language::English},
                                           Look{{1920, 1080}, 2.0, text::Language::Spanish}));

}  // namespace
}  // namespace arc::ui
