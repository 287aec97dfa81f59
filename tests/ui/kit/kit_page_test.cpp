// SPDX-License-Identifier: GPL-3.0-or-later
// The Kit page over a real logbook in a folder that goes away.
#include "ui/kit/kit_page.hpp"

#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <gtest/gtest.h>

#include "tests/support/ui_rig.hpp"
#include "ui/kit/tool_card.hpp"
#include "ui/kit/tool_words.hpp"

namespace arc::ui {
namespace {

using test::eventually;

Tool splicer(const char* label) {
    Tool tool;
    tool.id = ToolId{namedUuid(label)};
    tool.label = label;
    tool.traits = Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual};
    return tool;
}

class KitPageTest : public ::testing::Test {
  protected:
    void open() {
        page = std::make_unique<KitPage>(rig.start());
        page->resize(1200, 760);
        page->show();
        ASSERT_TRUE(eventually([&] { return page->settled(); }));
    }
    template <class W>
    W* named(const QString& name) {
        for (auto* widget : page->findChildren<W*>())
            if (widget->accessibleName() == name) return widget;
        return nullptr;
    }
    std::vector<Tool> tools() { return rig.reopened()->tools().value(); }

    test::UiRig rig;
    std::unique_ptr<KitPage> page;
};

TEST_F(KitPageTest, anEmptyKitSaysWhatToDoFirstAndAddsTheFirstTool) {
    open();
    auto* first = named<QPushButton>(QStringLiteral("Add the first tool"));
    ASSERT_NE(first, nullptr);
    first->click();
    auto* dialog = page->findChild<QDialog*>(QStringLiteral("add_tool"));
    ASSERT_NE(dialog, nullptr);
    named<QLineEdit>(QStringLiteral("Label"))->setText(QStringLiteral("C-07"));
    named<QComboBox>(QStringLiteral("Kind of tool"))->setCurrentIndex(2);
    named<QSpinBox>(QStringLiteral("Blade heights"))->setValue(4);
    QTest::keyClick(dialog, Qt::Key_Return);
    ASSERT_EQ(tools().size(), 1u);
    ASSERT_NE(asCleaver(tools().front()), nullptr);
    EXPECT_EQ(asCleaver(tools().front())->heights, 4);
    EXPECT_EQ(tools().front().label, "C-07");
    EXPECT_TRUE(eventually([&] { return !page->findChildren<ToolCard*>().isEmpty(); }));
}

TEST_F(KitPageTest, aLabelIsNotGivenTwice) {
    rig.write(splicer("S-01"));
    open();
    QTest::keyClick(page.get(), Qt::Key_A);
    ASSERT_NE(named<QLineEdit>(QStringLiteral("Label")), nullptr);
    named<QLineEdit>(QStringLiteral("Label"))->setText(QStringLiteral("S-01"));
    EXPECT_FALSE(named<QPushButton>(QStringLiteral("Add it"))->isEnabled());
    named<QLineEdit>(QStringLiteral("Label"))->setText(QStringLiteral("S-02"));
    EXPECT_TRUE(named<QPushButton>(QStringLiteral("Add it"))->isEnabled());
}

TEST_F(KitPageTest, outOfServiceAndBackByKeyWithUndo) {
    rig.write(splicer("S-01"));
    open();
    QTest::keyClick(page.get(), Qt::Key_O);
    EXPECT_EQ(tools().front().service, Service::OutOfService);
    rig.session->undo().undo();
    EXPECT_EQ(tools().front().service, Service::InUse);
}

TEST_F(KitPageTest, aCounterIsCorrectedWithAReason) {
    rig.write(splicer("S-01"));
    open();
    QTest::keyClick(page.get(), Qt::Key_C);
    auto* shows = named<QSpinBox>(QStringLiteral("Counter shows"));
    ASSERT_NE(shows, nullptr);
    shows->setValue(1234);
    EXPECT_FALSE(named<QPushButton>(QStringLiteral("Write it"))->isEnabled());
    named<QLineEdit>(QStringLiteral("Reason"))->setText(QStringLiteral("board replaced"));
    QTest::keyClick(page->findChild<QDialog*>(QStringLiteral("ask_counter")), Qt::Key_Return);
    const auto corrections = rig.reopened()->counterCorrections().value();
    ASSERT_EQ(corrections.size(), 1u);
    EXPECT_EQ(corrections.front().shows, ArcCount{1234});
    EXPECT_EQ(corrections.front().reason, "board replaced");
}

TEST_F(KitPageTest, pairingWithoutACleaverSaysWhatToDo) {
    rig.write(splicer("S-01"));
    open();
    QString said;
    QObject::connect(rig.session.get(), &Session::problemRaised,
                     [&](const Problem& problem) { said = QString::fromStdString(problem.sentence()); });
    QTest::keyClick(page.get(), Qt::Key_P);
    EXPECT_TRUE(said.contains(QStringLiteral("Add a cleaver"))) << said.toStdString();
}

TEST_F(KitPageTest, pairingWritesWhichCleaver) {
    rig.write(splicer("S-01"));
    Tool cleaver;
    cleaver.id = ToolId{namedUuid("C-01")};
    cleaver.label = "C-01";
    cleaver.traits = Cleaver{};
    rig.write(cleaver);
    open();
    QTest::keyClick(page.get(), Qt::Key_P);
    auto* choice = named<QPushButton>(QStringLiteral("C-01"));
    ASSERT_NE(choice, nullptr);
    choice->click();
    const auto pairings = rig.reopened()->pairings().value();
    ASSERT_EQ(pairings.size(), 1u);
    EXPECT_EQ(pairings.front().cleaver, cleaver.id);
}

TEST(BarWords, tellShareAndWhenDue) {
    kit::LifeBar bar;
    bar.unit = "arcs";
    bar.used = 3912;
    bar.limit = 5000;
    EXPECT_EQ(barWords(bar).words, QStringLiteral("3,912 of about 5,000 arcs"));
    EXPECT_EQ(barWords(bar).mark, Mark::Steady);
    bar.used = 4500;
    EXPECT_EQ(barWords(bar).mark, Mark::Watch);
    bar.used = 5000;
    EXPECT_EQ(barWords(bar).mark, Mark::Drifting);
    bar.certainty = kit::Certainty::AtLeast;
    EXPECT_TRUE(barWords(bar).words.startsWith(QStringLiteral("at least")));
    bar.limit.reset();
    EXPECT_FALSE(barWords(bar).share.has_value());
}

}  // namespace
}  // namespace arc::ui
