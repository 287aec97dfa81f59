// SPDX-License-Identifier: GPL-3.0-or-later
// What else is known of the fibre under the hand is said on the pad: measured from one end or both, edited on
// two laptops. A shape and words, never a colour alone.
#include "ui/today/pad_marks.hpp"

#include <QLabel>

#include <gtest/gtest.h>

#include "tests/support/cut_off.hpp"
#include "tests/support/pad_crew.hpp"
#include "tests/support/pictures.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

class Marks : public testing::Test {
  protected:
    void SetUp() override { crew = test::makePadCrew(rig, 1); }
    void splice(const char* fibre) {
        SpliceArc arc;
        arc.id = rig.newId<ArcId>();
        arc.at = rig.clock.now();
        arc.splicer = crew.splicer;
        arc.job = crew.job;
        arc.closure = crew.closure;
        arc.readings.push_back(Reading{1, Loss{40}, {}, {}, fibre, fibre, 1, {}, ""});
        rig.write(arc);
        last = arc.id;
    }
    void measure(const char* fibre, std::optional<Loss> there, std::optional<Loss> back) {
        MeasuredLoss loss;
        loss.id = rig.newId<EntryId>();
        loss.job = crew.job;
        loss.closure = crew.closure;
        loss.fibre = fibre;
        loss.aToB = there;
        loss.bToA = back;
        loss.at = rig.clock.now();
        rig.write(loss);
    }
    void open() {
        session = &rig.start();
        page = std::make_unique<TodayPage>(*session);
        page->resize(1250, 768);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        page->firstFocus()->setFocus();
        ASSERT_TRUE(test::eventually([this] { return page->settled(); }));
    }
    QString row() { return page->pad().currentRow()->accessibleName(); }
    QString hint() { return page->pad().hint(); }

    test::UiRig rig;
    test::PadCrew crew{};
    ArcId last;
    Session* session = nullptr;
    std::unique_ptr<TodayPage> page;
};

TEST_F(Marks, AOneWayValueSaysSoAndBothWaysShowTheirSignsAndTheMean) {
    splice("1");
    splice("2");
    measure("1", Loss{-273}, std::nullopt);
    measure("2", Loss{-273}, Loss{313});
    open();
    QTest::keyClick(&page->pad(), Qt::Key_Home);
    EXPECT_TRUE(row().contains("accept, one way")) << row().toStdString();
    EXPECT_TRUE(hint().contains("one way only, -0.273 dB")) << hint().toStdString();
    QTest::keyClick(&page->pad(), Qt::Key_Down);
    EXPECT_FALSE(row().contains("one way"));
    // (-0.273 + 0.313) / 2
    EXPECT_TRUE(hint().contains("-0.273 and +0.313, mean 0.020 dB")) << hint().toStdString();
    ASSERT_TRUE(test::eventually([&] { return page->settled(); }));
    for (int i = 0; i < 5; ++i) QApplication::processEvents();
    for (auto* label : page->findChildren<QLabel*>())
        if (label->isVisible()) {
            EXPECT_EQ(test::cutOff(label).toStdString(), "");
        }
    test::picture(*page, "pad-marks");
}

TEST_F(Marks, AReadingAndAClosureEditedOnTwoLaptopsAreMarked) {
    splice("1");
    ConcurrentEdits reading{last.uuid, "reading", 1, {}};
    ConcurrentEdits closure{crew.closure.uuid, "closure", std::nullopt, {}};
    rig.bench->twice = {reading, closure};
    open();
    QTest::keyClick(&page->pad(), Qt::Key_Home);
    EXPECT_TRUE(row().contains("edited twice")) << row().toStdString();
    EXPECT_TRUE(hint().contains("choose on Logbook, F7"));
    EXPECT_EQ(page->pad().currentRow()->view().mark, Mark::Watch) << "a shape as well";
    bool head = false;
    for (auto* label : page->findChildren<QLabel*>())
        head = head || label->text().contains("the closure was edited twice");
    EXPECT_TRUE(head);
    QTest::keyClick(&page->pad(), Qt::Key_Down);
    EXPECT_FALSE(row().contains("edited twice"));
}

}  // namespace
}  // namespace arc::ui
