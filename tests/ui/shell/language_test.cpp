// SPDX-License-Identifier: GPL-3.0-or-later
// The window changes its language while it is open, by keyboard, and says when that would lose something.
#include "ui/text/language.hpp"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "tests/support/in_language.hpp"
#include "tests/support/window_fixture.hpp"
#include "ui/shell/finder.hpp"
#include "ui/shell/first_run.hpp"
#include "ui/shell/page.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

class LanguageTest : public test::WindowTest {
  protected:
    void TearDown() override { window.reset(); }
    bool saysOnScreen(const QString& words) {
        for (const auto* button : window->findChildren<QPushButton*>())
            if (button->isVisible() && button->text() == words) return true;
        return false;
    }
    test::InLanguage english{text::Language::English};
    void choose(const QString& letters) {
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
        auto* finder = window->findChild<Finder*>();
        ASSERT_NE(finder, nullptr);
        finder->findChild<QLineEdit*>()->setText(letters);
        QTest::keyClick(finder->findChild<QLineEdit*>(), Qt::Key_Return);
        for (int i = 0; i < 5; ++i) QApplication::processEvents();
        settle();
    }
};

TEST_F(LanguageTest, theKeyGoesThroughTheLanguagesAndComesBack) {
    book.toolList = test::fakeView().tools;
    openWindow();
    EXPECT_TRUE(saysOnScreen(QStringLiteral("Today")));
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    settle();
    EXPECT_EQ(text::spokenLanguage(), text::Language::Spanish);
    EXPECT_TRUE(saysOnScreen(QStringLiteral("Hoy")));
    EXPECT_EQ(text::number(0.04, 2), QStringLiteral("0,04"));
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(text::spokenLanguage(), text::Language::German);
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    settle();
    EXPECT_EQ(text::spokenLanguage(), text::Language::English);
    EXPECT_TRUE(saysOnScreen(QStringLiteral("Today")));
    EXPECT_EQ(text::number(0.04, 2), QStringLiteral("0.04"));
}

TEST_F(LanguageTest, eachLanguageIsFoundByItsOwnName) {
    book.toolList = test::fakeView().tools;
    openWindow();
    choose(QStringLiteral("idioma"));
    EXPECT_EQ(text::spokenLanguage(), text::Language::Spanish);
    choose(QStringLiteral("language eng"));
    EXPECT_EQ(text::spokenLanguage(), text::Language::English);
}

TEST_F(LanguageTest, theFirstPageOffersTheLanguages) {
    openWindow();
    for (auto* choice : window->findChild<FirstRun*>()->findChildren<QPushButton*>())
        if (choice->text() == QStringLiteral("Español")) QTest::keyClick(choice, Qt::Key_Space);
    settle();
    EXPECT_EQ(text::spokenLanguage(), text::Language::Spanish);
    EXPECT_NE(window->findChild<FirstRun*>(), nullptr);
}

TEST_F(LanguageTest, whatIsTypedAndNotSavedIsNotLost) {
    openWindow();
    QLineEdit* label = nullptr;
    for (auto* line : window->findChild<FirstRun*>()->findChildren<QLineEdit*>())
        if (line->accessibleName() == QStringLiteral("Your crew label")) label = line;
    ASSERT_NE(label, nullptr);
    QTest::keyClicks(label, QStringLiteral("Crew 4"));
    window->setLanguage(text::Language::Spanish);
    EXPECT_EQ(text::spokenLanguage(), text::Language::English);
    QTest::keyClick(window.get(), Qt::Key_L, Qt::ControlModifier);
    EXPECT_EQ(currentTheme().tone(), Tone::Day);
    EXPECT_EQ(label->text(), QStringLiteral("Crew 4"));
    label->clear();
    window->setLanguage(text::Language::Spanish);
    EXPECT_EQ(text::spokenLanguage(), text::Language::Spanish);
}

TEST_F(LanguageTest, theUndoTextIsSpokenAndTheStackKeepsTheJournalsWords) {
    book.toolList = test::fakeView().tools;
    openWindow();
    window->setLanguage(text::Language::Spanish);
    Job job;
    job.id = session->newId<JobId>();
    job.label = "HR-B";
    ASSERT_TRUE(session->save(job));
    EXPECT_EQ(session->undo().undoText(), QStringLiteral("Job HR-B"));
    EXPECT_EQ(session->actions().find(QStringLiteral("undo"))->text(), QStringLiteral("Deshacer: Obra HR-B"));
}

TEST(Languages, anUnknownCodeIsNoLanguage) {
    EXPECT_EQ(text::languageOf(QStringLiteral("es")), text::Language::Spanish);
    EXPECT_FALSE(text::languageOf(QStringLiteral("xx")));
    EXPECT_EQ(text::codeOf(text::Language::German), QStringLiteral("de"));
}

}  // namespace
}  // namespace arc::ui
