// SPDX-License-Identifier: GPL-3.0-or-later
// The entry pad by keyboard alone, over a real logbook: every reading is on disk when the page says so. Keys
// are counted as a person presses them. Bounds: 4 keys a fibre, 30 keys a ribbon of twelve.
#include "ui/today/loss_pad.hpp"

#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <gtest/gtest.h>

#include "core/work/attempts.hpp"
#include "tests/support/pad_crew.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

using namespace arc::literals;
using test::eventually;

std::vector<SpliceRow> onDisk(test::UiRig& rig) {
    return rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 1000).value();
}

class Pad : public testing::Test {
  protected:
    void begin(int grooves) {
        crew = test::makePadCrew(rig, grooves);
        session = &rig.start();
        page = std::make_unique<TodayPage>(*session);
        page->resize(1250, 768);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        page->firstFocus()->setFocus();
    }
    LossPad* pad() { return &page->pad(); }
    int press(const QString& keys) { return test::typeKeys(pad(), keys); }

    test::UiRig rig;
    test::PadCrew crew{};
    Session* session = nullptr;
    std::unique_ptr<TodayPage> page;
};

TEST_F(Pad, OneFibreInAtMostFourKeysAndOnDisk) {
    begin(1);
    for (const auto* typed : {"4\r", "12\r", ",04\r"}) EXPECT_LE(press(typed), 4);
    const auto rows = onDisk(rig);
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[0].reading.loss, 40_mdb);
    EXPECT_EQ(rows[1].reading.loss, 120_mdb);
    EXPECT_EQ(rows[2].reading.loss, 40_mdb);
    EXPECT_EQ(rows[2].reading.fibreA, "3");
    EXPECT_EQ(rows[0].arc.job, crew.job);
    EXPECT_EQ(rows[0].arc.closure, crew.closure);
    EXPECT_EQ(rows[0].arc.cleaver, crew.cleaver);
    EXPECT_TRUE(session->savedAt());
}

TEST_F(Pad, ARibbonOfTwelveInAtMostThirtyKeysEachReadingOnDiskAsItIsEntered) {
    begin(12);
    const QStringList losses{"3", "4", "2", "5", "11", "3", "4", "6", "12", "2", "0", "10"};
    int keys = 0;
    for (int i = 0; i < losses.size(); ++i) {
        keys += press(losses[i] + '\r');
        EXPECT_EQ(onDisk(rig).size(), static_cast<std::size_t>(i + 1));
    }
    EXPECT_LE(keys, 30);
    const auto rows = onDisk(rig);
    for (const auto& row : rows) EXPECT_EQ(row.arc.id, rows.front().arc.id);
    EXPECT_EQ(rows.front().arc.channels, 12);
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 13"));
}

TEST_F(Pad, AWholeRibbonInOneGo) {
    begin(12);
    const int keys = press("3 4 2 5 11 3 4 6 12 2 0 10\r");
    EXPECT_LE(keys, 30);
    const auto rows = onDisk(rig);
    ASSERT_EQ(rows.size(), 12u);
    EXPECT_EQ(rows[8].reading.loss, 120_mdb);
}

TEST_F(Pad, APastedRibbonIsTaken) {
    begin(12);
    QApplication::clipboard()->setText(
        "0.03\n0.04\n0.02\n0.05\n0.11\n0.03\n0.04\n0.06\n0.12\n0.02\n0.00\n0.10\n");
    QTest::keyClick(pad(), Qt::Key_V, Qt::ControlModifier);
    press("\r");
    EXPECT_EQ(onDisk(rig).size(), 12u);
}

TEST_F(Pad, TheVerdictComesWhileTyping) {
    begin(1);
    press("4");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("0.04 dB, attempt 1, accept"))
        << pad()->currentRow()->accessibleName().toStdString();
    QTest::keyClick(pad(), Qt::Key_Backspace);
    press("12");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("accept, high"));
    EXPECT_TRUE(pad()->hint().contains("Average so far"));
    QTest::keyClick(pad(), Qt::Key_Escape);
    press("22");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("re-splice"));
    QTest::keyClick(pad(), Qt::Key_Escape);
    press("45");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("over ceiling"));
    EXPECT_TRUE(onDisk(rig).empty());
}

TEST_F(Pad, ThreeAttemptsThenKeptWithANote) {
    begin(1);
    press("22\r21\r20\r");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 1 "));
    press("k");
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(line);
    QTest::keyClick(line, Qt::Key_Down);
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 2 "));
    const auto rows = onDisk(rig);
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[2].reading.attempt, 3);
    EXPECT_FALSE(rows[2].reading.note.empty());
    const auto chains = attemptChains(rows);
    ASSERT_EQ(chains.size(), 1u);
    EXPECT_EQ(outcome(chains[0], rows, session->book().jobs().value()[0].rule), arc::Outcome::KeptWithNote);
}

TEST_F(Pad, ReasonsByKeyboardForAReSplice) {
    begin(1);
    press("22\r");
    press("r");
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(line);
    QTest::keyClicks(line, "bubble");
    QTest::keyClick(line, Qt::Key_Return);
    press("5\r");
    const auto rows = onDisk(rig);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[1].reading.note, "re-spliced: bubble");
}

TEST_F(Pad, AnAttemptOfTheWrongFibreIsTakenApartAndTakenBackByName) {
    begin(1);
    press("22\r4\r");  // the second one was made at fibre 2
    QTest::keyClick(pad(), Qt::Key_Up);
    press("t");
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(line);
    EXPECT_EQ(line->accessibleName(), "Fibre");
    EXPECT_EQ(line->text(), "2") << "the next fibre that waits is offered";
    QTest::keyClicks(line, "99");
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(onDisk(rig).size(), 2u);
    EXPECT_TRUE(line->isVisible()) << "fibre 99 is not in this closure; the question stays";
    line->selectAll();
    QTest::keyClicks(line, "2");
    QTest::keyClick(line, Qt::Key_Return);
    const auto fibres = [&] {
        std::vector<std::string> names;
        for (const auto& row : onDisk(rig))
            names.push_back(row.reading.fibreA + "/" + std::to_string(row.reading.attempt));
        return names;
    };
    EXPECT_EQ(fibres(), (std::vector<std::string>{"1/1", "2/1"}));
    EXPECT_EQ(onDisk(rig)[1].reading.note, "moved from fibre 1");
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 1 ")) << "still to be re-spliced";
    EXPECT_EQ(session->undo().undoText(), "Split: attempt 2 of fibre 1 belongs to fibre 2");
    session->undo().undo();
    EXPECT_EQ(fibres(), (std::vector<std::string>{"1/1", "1/2"}));
    session->undo().redo();
    EXPECT_EQ(fibres(), (std::vector<std::string>{"1/1", "2/1"}));
}

TEST_F(Pad, EveryRowInSightIsTallEnoughForAGlovedFinger) {
    // 15 mm at 96 dots an inch; the page as it is in a window of 1366 x 768.
    begin(12);
    page->resize(1250, 768);
    const double fifteenMm = 15.0 / 25.4 * 96;
    for (int i = 0; i < 12; ++i) {
        QApplication::processEvents();
        const auto* current = pad()->currentRow();
        ASSERT_TRUE(current && current->isVisible()) << i;
        EXPECT_TRUE(pad()->rect().contains(QRect(current->mapTo(pad(), QPoint()), current->size())));
        int bottom = 0, seen = 0;
        for (const auto* row : pad()->findChildren<PadRow*>()) {
            if (!row->isVisible()) continue;
            ++seen;
            EXPECT_GE(row->height(), fifteenMm - 0.5);
            EXPECT_GE(row->y(), bottom) << "rows do not lie on each other";
            bottom = row->y() + row->height();
        }
        EXPECT_GE(seen, 5);
        press("3\r");
    }
    for (const auto* one : pad()->findChildren<QPushButton*>()) {
        if (!one->isVisible()) continue;
        EXPECT_GE(one->height(), fifteenMm - 0.5) << one->text().toStdString();
    }
}

TEST_F(Pad, UndoAndRedoOfThisSitting) {
    begin(12);
    press("3\r4\r");
    EXPECT_EQ(session->undo().undoText(), "Reading of fibre 2: 0.04 dB");
    session->undo().undo();
    auto good = [&] {
        std::size_t count = 0;
        for (const auto& row : onDisk(rig)) count += row.reading.state == ReadingState::Good ? 1 : 0;
        return count;
    };
    EXPECT_EQ(good(), 1u);
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 2 "));
    session->undo().undo();
    EXPECT_EQ(good(), 0u);
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 1 "));
    session->undo().redo();
    session->undo().redo();
    EXPECT_EQ(good(), 2u);
    EXPECT_TRUE(pad()->currentRow()->accessibleName().contains("fibre 3 "));
}

TEST_F(Pad, WhatWasTypedAndNotSavedComesBack) {
    begin(12);
    press("3 4 0,0");
    page.reset();
    page = std::make_unique<TodayPage>(*session);
    page->show();
    EXPECT_EQ(pad()->pad()->typed(), "0,0");
    EXPECT_EQ(pad()->pad()->noted().size(), 2u);
    EXPECT_TRUE(pad()->hint().contains("not saved"));
    press("5\r");
    EXPECT_EQ(onDisk(rig).size(), 3u);
}

TEST_F(Pad, ImpossibleValuesAreCaughtAndNothingIsWritten) {
    begin(1);
    press("-4\r");
    EXPECT_TRUE(onDisk(rig).empty());
    QTest::keyClick(pad(), Qt::Key_Escape);
    press("125\r");
    EXPECT_TRUE(onDisk(rig).empty());
    EXPECT_TRUE(pad()->hint().contains("0.125"));
    press("\r");
    EXPECT_EQ(onDisk(rig).size(), 1u);
}

TEST_F(Pad, AHeldSplicerAsksForANameAndAReasonOnce) {
    crew = test::makePadCrew(rig, 1);
    // New electrodes and no calibration since: the splicer is on hold.
    CareRecord electrodes;
    electrodes.id = rig.newId<CareId>();
    electrodes.tool = crew.splicer;
    electrodes.at = rig.clock.now();
    electrodes.action = std::string(action::electrodeReplace);
    rig.write(electrodes);
    session = &rig.start();
    session->setCrew("Ana");
    page = std::make_unique<TodayPage>(*session);
    page->show();
    pad()->setFocus();
    ASSERT_TRUE(eventually([&] { return page->settled() && CareDesk::of(*session).look() != nullptr; }));
    ASSERT_FALSE(CareDesk::of(*session).look()->openHolds(crew.splicer).empty());
    press("4\r");
    EXPECT_TRUE(onDisk(rig).empty());
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(line) << "the pad asks who goes on and why";
    QTest::keyClicks(line, "last ribbon");
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(onDisk(rig).size(), 1u);
    const auto overrides = rig.reopened()->holdOverrides().value();
    ASSERT_FALSE(overrides.empty());
    EXPECT_EQ(overrides[0].by, "Ana");
    EXPECT_EQ(overrides[0].reason, "last ribbon");
    press("5\r");
    EXPECT_EQ(onDisk(rig).size(), 2u) << "asked once, not at every fibre";
}

}  // namespace
}  // namespace arc::ui
