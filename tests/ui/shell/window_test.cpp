// SPDX-License-Identifier: GPL-3.0-or-later
// The real window, driven by keys.
#include <QAbstractButton>
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

#include <map>

#include "tests/support/window_fixture.hpp"
#include "ui/shell/finder.hpp"
#include "ui/shell/page.hpp"
#include "ui/shell/page_list.hpp"

namespace arc::ui {
namespace {

class WindowKeysTest : public test::WindowTest {};

TEST_F(WindowKeysTest, everyScreenOpensByItsKey) {
    openWindow();
    const std::pair<Qt::Key, Screen> keys[] = {{Qt::Key_F3, Screen::Kit},
                                               {Qt::Key_F4, Screen::Care},
                                               {Qt::Key_F5, Screen::Drift},
                                               {Qt::Key_F6, Screen::Closeout},
                                               {Qt::Key_F2, Screen::Today}};
    for (const auto& [key, screen] : keys) {
        QTest::keyClick(window.get(), key);
        EXPECT_EQ(window->screen(), screen);
        EXPECT_TRUE(window->page(screen).isVisible());
    }
}

TEST_F(WindowKeysTest, everyActionHasWordsAndNoKeyIsTakenTwice) {
    openWindow();
    std::map<std::pair<int, QString>, QString> taken;
    for (const auto& known : session->actions().all()) {
        EXPECT_FALSE(known.row.text.isEmpty()) << known.row.id.toStdString();
        if (known.row.key.isEmpty()) continue;
        const int where = known.row.screen ? static_cast<int>(*known.row.screen) : -1;
        const auto [it, fresh] = taken.emplace(std::pair(where, known.row.key.toString()), known.row.id);
        EXPECT_TRUE(fresh) << known.row.id.toStdString() << " and " << it->second.toStdString();
    }
}

TEST_F(WindowKeysTest, theFinderGoesToASplicersDrift) {
    book.toolList = test::fakeView().tools;
    openWindow();
    QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
    auto* finder = window->findChild<Finder*>();
    ASSERT_NE(finder, nullptr);
    QTest::keyClicks(finder->findChild<QLineEdit*>(), QStringLiteral("drift of wren"));
    QTest::keyClick(finder->findChild<QLineEdit*>(), Qt::Key_Return);
    QApplication::processEvents();
    QApplication::processEvents();
    EXPECT_EQ(window->screen(), Screen::Drift);
}

TEST_F(WindowKeysTest, theFinderStartsACareCard) {
    book.toolList = test::fakeView().tools;
    openWindow();
    care::Card card;
    card.id = "groove_clean";
    card.title = "Clean V-grooves";
    card.cautions = {"Glass. " + std::string(care::cautionEnding)};
    bench->deck.cards = {card};
    QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
    auto* finder = window->findChild<Finder*>();
    ASSERT_NE(finder, nullptr);
    QTest::keyClicks(finder->findChild<QLineEdit*>(), QStringLiteral("clean v-grooves, s-02"));
    auto* list = finder->findChild<QListWidget*>();
    ASSERT_NE(list->currentItem(), nullptr);
    EXPECT_TRUE(list->currentItem()->text().contains(QStringLiteral("care card")));
    QTest::keyClick(finder->findChild<QLineEdit*>(), Qt::Key_Return);
    QApplication::processEvents();
    QApplication::processEvents();
    EXPECT_EQ(window->screen(), Screen::Care);
}

TEST(Fit, prefersStartsOfWords) {
    EXPECT_FALSE(fit(QStringLiteral("xyz"), QStringLiteral("Go to Drift")));
    EXPECT_TRUE(fit(QStringLiteral("gtd"), QStringLiteral("Go to Drift")));
    EXPECT_GT(*fit(QStringLiteral("drift"), QStringLiteral("Go to Drift")),
              *fit(QStringLiteral("drift"), QStringLiteral("Undo right inside a file, then turn")));
}

TEST_F(WindowKeysTest, toneAndSizeChangeWithoutARestart) {
    openWindow();
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(currentTheme().tone(), Tone::Night);
    window->setLook(Theme(Tone::Night, 2));
    EXPECT_EQ(currentTheme().scale(), 2.0);
    QTest::keyClick(window.get(), Qt::Key_F5);
    EXPECT_EQ(window->screen(), Screen::Drift);
}

TEST_F(WindowKeysTest, everyControlHasAName) {
    openWindow();
    for (const auto& row : pageList()) {
        window->go(row.screen);
        settle();
        for (auto* widget : window->page(row.screen).findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
            const auto* button = qobject_cast<QAbstractButton*>(widget);
            const bool named = !widget->accessibleName().isEmpty() || (button && !button->text().isEmpty());
            const bool inner = widget->objectName().startsWith(QLatin1String("qt_"));
            EXPECT_TRUE(named || inner)
                << keyOf(row.screen).toStdString() << ": " << widget->metaObject()->className();
        }
    }
}

TEST_F(WindowKeysTest, tabGoesAroundAndComesBack) {
    openWindow();
    for (const auto& row : pageList()) {
        window->go(row.screen);
        settle();
        window->activateWindow();
        auto* start = window->focusWidget();
        if (!start) continue;
        QWidget* at = start;
        int steps = 0;
        do {
            at = at->nextInFocusChain();
            ++steps;
        } while (at != start && steps < 5000);
        EXPECT_LT(steps, 5000) << keyOf(row.screen).toStdString();
    }
}

TEST_F(WindowKeysTest, aProblemIsSaidInOneSentenceAndStays) {
    openWindow();
    session->tell(Problem{ProblemCode::Unavailable, "the disk is full", "logbook.arcbook",
                          "Free some space and save again"});
    bool said = false;
    for (const auto* label : window->findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text().contains(QLatin1String("disk is full")));
    EXPECT_TRUE(said);
}

}  // namespace
}  // namespace arc::ui
