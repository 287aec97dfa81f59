// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/help.hpp"

#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QStackedWidget>
#include <QTest>

#include <algorithm>

#include "source_dir.hpp"
#include "tests/support/in_language.hpp"
#include "tests/support/window_fixture.hpp"
#include "ui/shell/help_pages.hpp"
#include "ui/shell/help_picture.hpp"
#include "ui/shell/measured_faults.hpp"

namespace arc::ui {
namespace {

class HelpTest : public test::WindowTest {
  protected:
    Help* opened() { return window->findChild<Help*>(); }
    bool says(const QString& words) {
        for (const auto* label : opened()->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
};

TEST_F(HelpTest, f1OpensTheKeysAndTheArrowGoesThroughThePages) {
    openWindow();
    QTest::keyClick(window.get(), Qt::Key_F1);
    ASSERT_NE(opened(), nullptr);
    auto* list = opened()->findChild<QListWidget*>();
    EXPECT_EQ(list->currentRow(), 0);
    EXPECT_TRUE(says(QStringLiteral("Ctrl+K")));
    for (const auto& page : helpPages()) {
        QTest::keyClick(list, Qt::Key_Down);
        EXPECT_EQ(list->currentItem()->data(Qt::UserRole).toString(), QLatin1String(page.key));
        EXPECT_TRUE(says(helpWords(page.lines.front().english))) << page.key;
        if (const auto folder = qEnvironmentVariable("ARC_PICTURES"); !folder.isEmpty())
            opened()->grab().save(folder + QStringLiteral("/help-") + QLatin1String(page.key) + ".png");
    }
}

TEST_F(HelpTest, aPageIsAnActionThatTheFinderKnows) {
    openWindow();
    session->actions().find(QStringLiteral("help.closeout"))->trigger();
    ASSERT_NE(opened(), nullptr);
    EXPECT_TRUE(says(QStringLiteral("device.pem")));
}

// The page and the README tell one story.
TEST(MeasuredFaults, areTheReadmesFigures) {
    QFile readme(QStringLiteral(ARC_SOURCE_DIR "/README.md"));
    ASSERT_TRUE(readme.open(QIODevice::ReadOnly));
    const QStringList lines =
        QString::fromUtf8(readme.readAll()).remove(QStringLiteral("**")).split(QChar('\n'));
    for (const auto& fault : measuredFaults) {
        const QString row = QStringLiteral("| %1 |").arg(QLatin1String(fault.key));
        const auto found =
            std::ranges::find_if(lines, [&](const QString& line) { return line.startsWith(row); });
        ASSERT_NE(found, lines.end()) << fault.key;
        const QStringList cells = found->split(QChar('|'));
        EXPECT_TRUE(cells.at(3).trimmed().startsWith(QString::number(fault.meanArcs, 'f', 1) + ' '))
            << fault.key;
        EXPECT_TRUE(
            cells.at(7).trimmed().startsWith(QString::number(fault.causePercent) + QStringLiteral(" %")))
            << fault.key;
    }
}

TEST_F(HelpTest, theChartsPageSaysWhatToExpect) {
    openWindow();
    session->actions().find(QStringLiteral("help.decides"))->trigger();
    ASSERT_NE(opened(), nullptr);
    EXPECT_TRUE(says(QStringLiteral("cause named right")));
    EXPECT_TRUE(says(QStringLiteral("Measured on simulated logs")));
    if (const auto folder = qEnvironmentVariable("ARC_PICTURES"); !folder.isEmpty())
        opened()
            ->findChild<QStackedWidget*>()
            ->currentWidget()
            ->findChild<QWidget*>(QStringLiteral("qt_scrollarea_viewport"))
            ->findChild<QWidget*>(QString(), Qt::FindDirectChildrenOnly)
            ->grab()
            .save(folder + QStringLiteral("/help-decides.png"));
}

TEST(HelpPictures, everyPageHasOneInTheColoursOfTheLook) {
    for (const auto& page : helpPages()) {
        const QString key = QString::fromLatin1(page.key);
        const Theme day(Tone::Day, 1), night(Tone::Night, 1);
        ASSERT_FALSE(helpDrawing(key, day).isEmpty()) << page.key;
        EXPECT_EQ(helpPicture(key, 560, day, 2).width(), 1120) << page.key;
        EXPECT_FALSE(
            helpDrawing(key, night).toLower().contains(colour(Tone::Day, Role::Paper).name().toLatin1()))
            << page.key;
        EXPECT_TRUE(
            helpDrawing(key, night).toLower().contains(colour(Tone::Night, Role::Paper).name().toLatin1()))
            << page.key;
    }
    EXPECT_TRUE(helpPicture(QStringLiteral("nothing"), 560, Theme(), 1).isNull());
}

}  // namespace
}  // namespace arc::ui
