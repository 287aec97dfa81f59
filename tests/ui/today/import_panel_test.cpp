// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in files from the window: counts, rows set aside with their reason, the same file twice, stopping.
#include "ui/today/import_panel.hpp"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include <fstream>
#include <gtest/gtest.h>

#include "tests/support/ui_rig.hpp"
#include "ui/models/set_aside_table.hpp"

namespace arc::ui {
namespace {

using test::eventually;

class Import : public testing::Test {
  protected:
    void SetUp() override {
        session = &rig.start();
        panel = std::make_unique<ImportPanel>(*session);
        panel->resize(1200, 640);
        panel->show();
        panel->begin();
    }
    QString file(const std::string& text) {
        const auto path = rig.folder / "log.csv";
        std::ofstream(path) << text;
        return QString::fromStdString(path.string());
    }
    void take(const QString& path) {
        panel->start({path});
        ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    }
    bool says(const QString& words) {
        for (auto* label : panel->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }

    test::UiRig rig;
    Session* session = nullptr;
    std::unique_ptr<ImportPanel> panel;
};

const char* const twoGoodOneBad =
    "time,splicer,loss_db,fibre_a\n"
    "2031-03-03T08:00:00+01:00,S-01,0.03,1\n"
    "2031-03-03T08:02:00+01:00,S-01,-0.20,2\n"
    "2031-03-03T08:04:00+01:00,S-01,0.05,3\n";

TEST_F(Import, EveryRowLandsOrIsSetAsideWithItsLineAndReason) {
    take(file(twoGoodOneBad));
    EXPECT_EQ(rig.reopened()->totals().value().readings, 2u);
    auto* rows = panel->findChild<SetAsideTable*>();
    QAbstractItemModelTester tester(rows, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(rows->rowCount(), 1);
    EXPECT_EQ(rows->data(rows->index(0, SetAsideTable::Line), Qt::DisplayRole), "3");
    EXPECT_EQ(rows->data(rows->index(0, SetAsideTable::Name), Qt::DisplayRole), "loss_db");
    EXPECT_FALSE(rows->data(rows->index(0, SetAsideTable::Reason), Qt::DisplayRole).toString().isEmpty());
    EXPECT_TRUE(says("set aside"));
}

TEST_F(Import, TheSameFileTwiceChangesNothing) {
    const auto path = file(twoGoodOneBad);
    take(path);
    take(path);
    EXPECT_EQ(rig.reopened()->totals().value().readings, 2u);
    EXPECT_TRUE(says("2"));
}

TEST_F(Import, AnUnreadableFileSaysOneSentenceAndTakesNothing) {
    take(file("this is, no\nsplice log\n"));
    EXPECT_EQ(rig.reopened()->totals().value().readings, 0u);
    take("/nowhere/at/all.csv");
    EXPECT_TRUE(says("all.csv")) << "the sentence names the file";
}

TEST_F(Import, StoppingLeavesNothing) {
    rig.bench->onImport = [](const std::filesystem::path&, FileKind,
                             Progress& progress) -> Result<ImportCount> {
        while (!progress.stopRequested()) progress.report(1, 100, "reading");
        return fail(ProblemCode::Cancelled, "stopped");
    };
    panel->start({file(twoGoodOneBad)});
    EXPECT_TRUE(panel->busy());
    QPushButton* stop = nullptr;
    for (auto* one : panel->findChildren<QPushButton*>())
        if (one->accessibleName().startsWith("Stop")) stop = one;
    ASSERT_TRUE(stop && stop->isVisible());
    stop->click();
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    EXPECT_TRUE(says("nothing was taken in"));
}

TEST_F(Import, TheKindIsChosenByKey) {
    panel->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(panel.get()));
    QTest::keyClick(panel.get(), Qt::Key_2);
    EXPECT_EQ(panel->kind(), FileKind::Events);
    QTest::keyClick(panel.get(), Qt::Key_3);
    EXPECT_EQ(panel->kind(), FileKind::MeasuredLosses);
}

}  // namespace
}  // namespace arc::ui
