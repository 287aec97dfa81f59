// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/first_run.hpp"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <fstream>

#include "tests/support/real_window.hpp"
#include "tests/support/window_fixture.hpp"
#include "ui/shell/page.hpp"
#include "ui/today/import_panel.hpp"
#include "ui/today/job_sheet.hpp"

namespace arc::ui {
namespace {

class FirstRunTest : public test::WindowTest {
  protected:
    FirstRun* questions() { return window->findChild<FirstRun*>(); }
    template <class W>
    W* named(const QString& name) {
        for (auto* widget : questions()->findChildren<W*>())
            if (widget->accessibleName() == name) return widget;
        return nullptr;
    }
};

TEST_F(FirstRunTest, threeAnswersAndEnterMakeALogbook) {
    openWindow();
    ASSERT_NE(questions(), nullptr);
    picture(QStringLiteral("first-run"));
    auto* crew = named<QLineEdit>(QStringLiteral("Your crew label"));
    QTest::keyClicks(crew, QStringLiteral("Crew 4"));
    QTest::keyClick(crew, Qt::Key_Return);
    auto* splicer = named<QLineEdit>(QStringLiteral("Label of the splicer"));
    splicer->setText(QStringLiteral("S-09"));
    QTest::keyClick(splicer, Qt::Key_Return);
    auto* job = named<QLineEdit>(QStringLiteral("Label of the job"));
    QTest::keyClicks(job, QStringLiteral("HR-B"));
    QTest::keyClick(job, Qt::Key_Return);
    EXPECT_TRUE(book.written.empty());
    auto* closure = named<QLineEdit>(QStringLiteral("Label of the closure"));
    QTest::keyClicks(closure, QStringLiteral("HR-17"));
    QTest::keyClick(closure, Qt::Key_Return);
    ASSERT_EQ(book.written.size(), 3u);
    const auto& tool = std::get<Tool>(book.written[0]);
    EXPECT_EQ(tool.label, "S-09");
    EXPECT_EQ(asSplicer(tool)->grooves, 12);
    EXPECT_EQ(std::get<Job>(book.written[1]).label, "HR-B");
    EXPECT_EQ(std::get<Job>(book.written[1]).rule.name, "Sample: ribbon");
    EXPECT_EQ(std::get<Closure>(book.written[2]).label, "HR-17");
    EXPECT_EQ(std::get<Closure>(book.written[2]).job, std::get<Job>(book.written[1]).id);
    EXPECT_EQ(session->crew(), "Crew 4");
    EXPECT_FALSE(questions()->isVisible());
    EXPECT_TRUE(window->page(Screen::Today).isVisible());
}

TEST(FirstRunOverARealBook, afterTheThreeQuestionsADigitAndEnterIsASplice) {
    test::RealWindow real;
    ASSERT_TRUE(real.open());
    auto* questions = real.window->findChild<FirstRun*>();
    ASSERT_NE(questions, nullptr);
    test::RealWindow::press(Qt::Key_Return);
    test::RealWindow::press(Qt::Key_Return);
    test::RealWindow::type(QStringLiteral("HR-B"));
    test::RealWindow::press(Qt::Key_Return);
    test::RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(real.settle());
    test::RealWindow::type(QStringLiteral("4"));
    test::RealWindow::press(Qt::Key_Return);
    test::RealWindow::type(QStringLiteral("12"));
    test::RealWindow::press(Qt::Key_Return);
    const auto rows = real.rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 10).value();
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[1].reading.fibreA, "2");
    EXPECT_EQ(rows[1].reading.loss.value, 120);
    EXPECT_EQ(rows[1].arc.operatorName, "Mira") << "who is at the keyboard";
}

TEST(FirstRunOverARealBook, whoeverHasALogIsAskedForItAndTheKeysOfTodayWorkWithoutAJob) {
    test::RealWindow real;
    ASSERT_TRUE(real.open());
    auto* questions = real.window->findChild<FirstRun*>();
    ASSERT_NE(questions, nullptr);
    for (auto* choice : questions->findChildren<QPushButton*>())
        if (choice->text().contains(QStringLiteral("import"))) choice->click();
    auto* import = real.window->findChild<ImportPanel*>();
    ASSERT_NE(import, nullptr);
    EXPECT_TRUE(import->isVisible());
    test::RealWindow::press(Qt::Key_Escape);
    EXPECT_FALSE(import->isVisible());
    test::RealWindow::press(Qt::Key_I);
    EXPECT_TRUE(import->isVisible());
    test::RealWindow::press(Qt::Key_Escape);
    test::RealWindow::press(Qt::Key_J);
    EXPECT_TRUE(real.window->findChild<JobSheet*>()->isVisible());

    // A log without a job: what came of it stays in sight.
    const auto log = real.rig.folder / "log.csv";
    std::ofstream(log)
        << "time,splicer,loss_db\n2031-03-03T08:00:00Z,S-01,0.04\n2031-03-03T08:02:00Z,S-01,bad\n";
    test::RealWindow::press(Qt::Key_Escape);
    test::RealWindow::press(Qt::Key_I);
    import->start({QString::fromStdString(log.string())});
    ASSERT_TRUE(test::eventually([&] { return !import->busy(); }));
    ASSERT_TRUE(real.settle());
    EXPECT_EQ(real.rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 10)->size(), 1u);
    EXPECT_TRUE(import->isVisible());
    EXPECT_TRUE(real.session->savedAt()) << "rows of a file are as much on disk as typed ones";
}

TEST_F(FirstRunTest, theJobMayStayEmptyButTheSplicerMayNot) {
    openWindow();
    auto* start = named<QPushButton>(QStringLiteral("Start the logbook"));
    named<QLineEdit>(QStringLiteral("Label of the splicer"))->setText(QStringLiteral(" "));
    EXPECT_FALSE(start->isEnabled());
    named<QLineEdit>(QStringLiteral("Label of the splicer"))->setText(QStringLiteral("S-01"));
    start->click();
    EXPECT_EQ(book.written.size(), 1u);
}

TEST_F(FirstRunTest, aBookWithToolsAsksNothing) {
    book.toolList = test::fakeView().tools;
    openWindow();
    EXPECT_EQ(questions(), nullptr);
}

}  // namespace
}  // namespace arc::ui
