// SPDX-License-Identifier: GPL-3.0-or-later
// The history of any record, by one key from wherever it is chosen, over a real logbook.
#include <QTableView>

#include <gtest/gtest.h>

#include "tests/support/real_window.hpp"
#include "ui/history/history_sheet.hpp"
#include "ui/history/journal_table.hpp"
#include "ui/history/journal_view.hpp"
#include "ui/shell/page.hpp"

namespace arc::ui {
namespace {

using namespace arc::literals;
using test::eventually;
using test::RealWindow;

class History : public testing::Test {
  protected:
    void SetUp() override {
        auto& rig = at.rig;
        tool = Tool{rig.newId<ToolId>(), "S-01", "", Splicer{}, Service::InUse};
        rig.write(tool);
        tool.nickname = "Heron";
        rig.write(tool);
        job = rig.newId<JobId>();
        rig.write(Job{job, "HR-B", "Harrow Ridge backbone", {}});
        closure.id = rig.newId<ClosureId>();
        closure.job = job;
        closure.label = "HR-17";
        for (int n = 1; n <= 3; ++n) closure.plan.push_back({n, n});
        rig.write(closure);
        for (int n = 1; n <= 2; ++n) {
            SpliceArc arc;
            arc.id = rig.newId<ArcId>();
            arc.at = rig.clock.now();
            arc.splicer = tool.id;
            arc.job = job;
            arc.closure = closure.id;
            Reading reading;
            reading.fibreA = reading.fibreB = std::to_string(n);
            reading.loss = 210_mdb;
            arc.readings.push_back(reading);
            rig.write(arc);
            if (n == 1) {
                reading.loss = 40_mdb;
                rig.write(ReadingChange{arc.id, reading});
            }
        }
    }
    /// Presses the key and answers the sheet that opens; null when none does.
    HistorySheet* sheet() {
        RealWindow::press(Qt::Key_H, Qt::ControlModifier);
        auto* found = at.window->findChild<HistorySheet*>();
        const auto open = [&] { return !found->looking() && QApplication::activeWindow() == found; };
        return found && eventually(open) ? found : nullptr;
    }
    static JournalTable& lines(HistorySheet* sheet) { return sheet->findChild<JournalView*>()->model(); }
    static QString cell(HistorySheet* sheet, int row, int column) {
        return lines(sheet).index(row, column).data().toString();
    }
    void close(HistorySheet* sheet) {
        const QPointer<HistorySheet> gone(sheet);
        RealWindow::press(Qt::Key_Escape);
        ASSERT_TRUE(eventually([&] { return gone.isNull(); }));
        // A window manager does this.
        at.window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(at.window.get()));
    }

    RealWindow at;
    Tool tool;
    JobId job;
    Closure closure;
};

TEST_F(History, OfAToolSaysWhoWroteWhatWhenAndFromWhere) {
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F3);
    ASSERT_TRUE(at.settle());
    auto* shown = sheet();
    ASSERT_NE(shown, nullptr);
    ASSERT_EQ(lines(shown).rowCount(), 2);
    EXPECT_EQ(cell(shown, 0, JournalTable::What), "Splicer S-01");
    EXPECT_EQ(cell(shown, 1, JournalTable::What), "Splicer S-01 \"Heron\"");
    EXPECT_EQ(cell(shown, 1, JournalTable::Who), "test");
    EXPECT_TRUE(cell(shown, 1, JournalTable::From).endsWith(", test")) << "machine and way";
    EXPECT_FALSE(cell(shown, 1, JournalTable::When).isEmpty());
    RealWindow::picture(shown, "history-tool");
    close(shown);
}

TEST_F(History, OfASpliceIsOneKeyFromThePadAndFromTheSearch) {
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F2);
    ASSERT_TRUE(at.settle());
    RealWindow::press(Qt::Key_Home);
    auto* shown = sheet();
    ASSERT_NE(shown, nullptr);
    ASSERT_EQ(lines(shown).rowCount(), 2);
    EXPECT_EQ(cell(shown, 0, JournalTable::What), "Splice of fibre 1: 0.21 dB");
    EXPECT_EQ(cell(shown, 1, JournalTable::What), "Reading of fibre 1: 0.04 dB");
    close(shown);
    RealWindow::press(Qt::Key_Slash);
    RealWindow::press(Qt::Key_Down);
    ASSERT_TRUE(at.settle());
    shown = sheet();
    ASSERT_NE(shown, nullptr);
    ASSERT_EQ(lines(shown).rowCount(), 1);
    EXPECT_EQ(cell(shown, 0, JournalTable::What), "Splice of fibre 2: 0.21 dB") << "the newest stands on top";
    close(shown);
}

TEST_F(History, OfJobsClosuresRecordsAndDecisionsIsOneKeyFromCloseout) {
    IssuedRecord issued;
    issued.id = at.rig.newId<EntryId>();
    issued.job = job;
    issued.manifestSha256 = std::string(64, '0');
    issued.by = "Ada";
    issued.at = at.rig.clock.now();
    at.rig.write(issued);
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F6);
    ASSERT_TRUE(at.settle());
    const char* expected[] = {"Job HR-B, Harrow Ridge backbone", "Closure HR-17, 3 splices planned",
                              "Closeout record 1 issued by Ada"};
    for (const char* words : expected) {
        auto* shown = sheet();
        ASSERT_NE(shown, nullptr) << words;
        EXPECT_EQ(cell(shown, 0, JournalTable::What).toStdString(), words);
        close(shown);
        RealWindow::press(Qt::Key_Down);
    }
    // An open exception leads to its splice, a decided one to the decision.
    for (int i = 0; i < 20 && QApplication::focusWidget()->accessibleName() != "Exceptions"; ++i)
        RealWindow::press(Qt::Key_Tab);
    auto* shown = sheet();
    ASSERT_NE(shown, nullptr);
    EXPECT_EQ(cell(shown, 0, JournalTable::What), "Splice of fibre 2: 0.21 dB");
    close(shown);
    RealWindow::press(Qt::Key_A);
    RealWindow::type("agreed with the client");
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return !at.rig.reopened()->dispositions(job)->empty(); }));
    ASSERT_TRUE(at.settle());
    RealWindow::press(Qt::Key_End);
    shown = sheet();
    ASSERT_NE(shown, nullptr);
    EXPECT_TRUE(cell(shown, 0, JournalTable::What).contains("accepted by Mira: agreed with the client"))
        << cell(shown, 0, JournalTable::What).toStdString();
    close(shown);
}

TEST_F(History, TheWholeJournalIsReadInWindows) {
    for (int i = 0; i < 450; ++i) at.rig.write(Setting{"test.count", std::to_string(i)});
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F7);
    ASSERT_TRUE(at.settle());
    auto* view = at.window->page(Screen::Logbook).findChild<JournalView*>();
    ASSERT_NE(view, nullptr);
    EXPECT_EQ(view->model().rowCount(), 200) << "only what is needed is read";
    RealWindow::press(Qt::Key_Return);
    ASSERT_EQ(QApplication::focusWidget(), &view->table());
    const auto all = static_cast<int>(at.rig.book->totals()->journalRows);
    for (int i = 0; i < 10 && view->model().rowCount() < all; ++i) {
        RealWindow::press(Qt::Key_End, Qt::ControlModifier);
        QApplication::processEvents();
    }
    ASSERT_EQ(view->model().rowCount(), all);
    for (int i = 1; i < all; ++i) EXPECT_LT(view->model().line(i).row, view->model().line(i - 1).row);
    RealWindow::picture(at.window.get(), "journal");
}

TEST_F(History, EnterOnAJournalLineOpensTheHistoryOfItsRecord) {
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F7);
    RealWindow::press(Qt::Key_Return);
    auto* view = at.window->page(Screen::Logbook).findChild<JournalView*>();
    while (view->model().line(view->chosen()).kind != "reading") RealWindow::press(Qt::Key_Down);
    RealWindow::press(Qt::Key_Return);
    auto* shown = at.window->findChild<HistorySheet*>();
    ASSERT_NE(shown, nullptr);
    ASSERT_TRUE(eventually([&] { return !shown->looking() && QApplication::activeWindow() == shown; }));
    EXPECT_EQ(lines(shown).rowCount(), 2) << "the splice and its correction";
    close(shown);
}

TEST_F(History, WhatIsWrittenMeanwhileComesOnTop) {
    ASSERT_TRUE(at.open());
    RealWindow::press(Qt::Key_F7);
    auto* view = at.window->page(Screen::Logbook).findChild<JournalView*>();
    const int before = view->model().rowCount();
    ASSERT_TRUE(at.session->save(Entry(Setting{"test.count", "1"})));
    EXPECT_EQ(view->model().rowCount(), before + 1);
    EXPECT_EQ(view->model().line(0).text, "Setting test.count: 1");
    EXPECT_EQ(view->model().line(0).who, "Mira");
    EXPECT_EQ(view->model().line(0).source, "window");
}

}  // namespace
}  // namespace arc::ui
