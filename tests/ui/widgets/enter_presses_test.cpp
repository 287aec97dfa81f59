// SPDX-License-Identifier: GPL-3.0-or-later
// Enter presses the button that has the keyboard: on a page, where Qt presses none, and in a dialog, where Qt would
// press the default one instead.
#include <QDialog>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/widgets/ask_line.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

TEST(EnterPresses, theButtonThatHasTheKeyboardOnAPage) {
    QWidget page;
    auto* made = button(QStringLiteral("Make a job"), ButtonKind::Wide, &page);
    int pressed = 0;
    QObject::connect(made, &QPushButton::clicked, &page, [&] { ++pressed; });
    page.show();
    made->setFocus();
    QTest::keyClick(made, Qt::Key_Return);
    QTest::keyClick(made, Qt::Key_Enter, Qt::KeypadModifier);
    QTest::keyClick(made, Qt::Key_Space);
    EXPECT_EQ(pressed, 3);
    QTest::keyClick(made, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(pressed, 3) << "Ctrl+Enter belongs to the sheet the button stands on";
    made->setEnabled(false);
    QTest::keyClick(made, Qt::Key_Return);
    EXPECT_EQ(pressed, 3);
}

TEST(EnterPresses, leavingADialogWhenTheKeyboardIsThere) {
    QWidget page;
    page.show();
    LineQuestion question;
    question.title = QStringLiteral("Dismiss");
    question.accept = QStringLiteral("Dismiss it");
    question.given = QStringLiteral("why");
    bool answered = false;
    askLine(&page, question, [&](const QString&) { answered = true; });
    auto* dialog = page.findChild<QDialog*>(QStringLiteral("ask_line"));
    ASSERT_NE(dialog, nullptr);
    for (auto* one : dialog->findChildren<QPushButton*>())
        if (one->text() == QStringLiteral("Leave it")) {
            one->setFocus();
            QTest::keyClick(one, Qt::Key_Return);
        }
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_FALSE(answered);
}

}  // namespace
}  // namespace arc::ui
