// SPDX-License-Identifier: GPL-3.0-or-later
// The demo crew's window in Spanish on a rugged laptop: every word is there, none is cut off, no key clashes.
#include <QAbstractButton>
#include <QAction>
#include <QDeadlineTimer>

#include <gtest/gtest.h>
#include <map>

#include "storage/demo_book.hpp"
#include "tests/support/cut_off.hpp"
#include "tests/support/in_language.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/shell/help.hpp"
#include "ui/shell/main_window.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"
#include "ui/widgets/life_bar.hpp"

namespace arc::ui {
namespace {

constexpr int slack = 4;

class SpanishWindow : public testing::Test {
  protected:
    void SetUp() override {
        ASSERT_TRUE(storage::fillWithHarrowRidge(*rig.book, rig.clock.now()));
        WindowOptions options;
        options.remember = Remember::No;
        window = std::make_unique<MainWindow>(rig.start(), options);
        window->resize(1366, 768);
        window->show();
    }
    void settle() {
        ASSERT_TRUE(test::eventually([&] { return window->settled(); }, 120'000));
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
    }
    void look(const QWidget& root, const QString& where) {
        std::map<QString, QString> taken;
        for (const auto* widget : root.findChildren<QWidget*>()) {
            if (!widget->isVisible()) continue;
            EXPECT_EQ(test::cutOff(widget).toStdString(), "") << where.toStdString();
            const auto* bar = qobject_cast<const LifeBar*>(widget);
            if (bar) {
                EXPECT_LE(bar->sizeHint().width(), bar->width() + slack) << bar->toolTip().toStdString();
            }
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            if (button && button->property("kind") != QLatin1String("rail")) {
                EXPECT_LE(button->sizeHint().width(), button->width() + slack)
                    << button->text().toStdString();
            }
            if (!button || button->shortcut().isEmpty()) continue;
            const auto [it, fresh] = taken.emplace(button->shortcut().toString(), button->text());
            EXPECT_TRUE(fresh) << button->text().toStdString() << " and " << it->second.toStdString();
        }
    }

    test::Unsaid unsaid;
    test::InLanguage spanish{text::Language::Spanish};
    test::UiRig rig;
    std::unique_ptr<MainWindow> window;
};

TEST_F(SpanishWindow, everyPageIsWholeAndNothingIsCutOff) {
    const QString pictures = qEnvironmentVariable("ARC_PICTURES");
    for (const auto& row : pageList()) {
        window->go(row.screen);
        settle();
        look(window->page(row.screen), keyOf(row.screen));
        EXPECT_LE(window->width(), 1366) << keyOf(row.screen).toStdString();
        if (!pictures.isEmpty()) window->grab().save(pictures + "/es-" + keyOf(row.screen) + ".png");
    }
    Help help(rig.session->actions());
    help.show();
    look(help, QStringLiteral("help"));
    std::string listed;
    for (const auto& text : unsaid.texts)
        if (!text.starts_with("Q")) listed += text + "\n";
    EXPECT_EQ(listed, "");
}

}  // namespace
}  // namespace arc::ui
