// SPDX-License-Identifier: GPL-3.0-or-later
// Searching all splices by keyboard: text, job, tool, day, verdict; windows of rows by key.
#include "ui/today/splice_search.hpp"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>

#include <gtest/gtest.h>

#include "tests/support/pad_crew.hpp"
#include "ui/models/splice_table.hpp"

namespace arc::ui {
namespace {

using test::eventually;

constexpr int count = 450;

class Search : public testing::Test {
  protected:
    void SetUp() override {
        crew = test::makePadCrew(rig, 1);
        std::vector<Entry> arcs;
        for (int i = 0; i < count; ++i) {
            SpliceArc arc;
            arc.id = rig.newId<ArcId>();
            arc.at = Instant{parseInstant("2031-03-03T00:00:00Z").value().ms + i * 20 * msPerMinute, 0};
            arc.splicer = crew.splicer;
            if (i % 3 == 0) arc.cleaver = crew.cleaver;
            if (i % 5 != 0) arc.job = crew.job;
            arc.mode = "G.652-G.652";
            arc.operatorName = i % 2 ? "Ana" : "Ben";
            Reading reading;
            reading.fibreA = std::to_string(i + 1);
            reading.loss =
                Loss{(i % 40) * 10};  // the job's rule: 0.15 a splice, 0.10 on average, ceiling 0.30
            arc.readings.push_back(reading);
            arcs.emplace_back(arc);
        }
        ASSERT_TRUE(rig.book->append(arcs, {"test", "test", std::nullopt}));
        session = &rig.start();
    }
    void open() {
        search = std::make_unique<SpliceSearch>(*session);
        search->resize(1200, 640);
        search->show();
        search->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(search.get()));
        search->begin();
        settle();
    }
    void settle() {
        ASSERT_TRUE(eventually([&] { return search->settled(); }));
    }
    /// Tab goes to the control of this name; no mouse.
    void tabTo(const QString& name) {
        for (int i = 0; i < 20; ++i) {
            auto* now = QApplication::focusWidget();
            if (now && now->accessibleName() == name) return;
            QTest::keyClick(now ? now : search.get(), Qt::Key_Tab);
        }
        FAIL() << name.toStdString() << " is not reached by Tab";
    }
    void choose(const QString& name, const QString& words) {
        tabTo(name);
        auto* box = qobject_cast<QComboBox*>(QApplication::focusWidget());
        ASSERT_TRUE(box);
        QTest::keyClick(box, Qt::Key_Home);
        for (int i = 0; i < 20 && box->currentText() != words; ++i) QTest::keyClick(box, Qt::Key_Down);
        EXPECT_EQ(box->currentText(), words);
        settle();
    }
    SpliceTable& table() { return *search->findChild<SpliceTable*>(); }
    int all() {
        while (table().canFetchMore({})) {
            table().fetchMore({});
            settle();
        }
        return table().rowCount();
    }

    test::UiRig rig;
    test::PadCrew crew;
    Session* session = nullptr;
    std::unique_ptr<SpliceSearch> search;
};

TEST_F(Search, TheTableReadsWindowsByKeyNewestFirst) {
    SpliceTable rows(*session);
    ASSERT_TRUE(rows.show({}));
    ASSERT_TRUE(eventually([&] { return !rows.loading(); }));
    EXPECT_EQ(rows.rowCount(), 200);
    EXPECT_EQ(rows.row(0).reading.fibreA, "450");
    // The tester asks for more by itself, also while a window is on its way.
    QAbstractItemModelTester tester(&rows, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(rows.show({}));
    ASSERT_TRUE(eventually([&] { return !rows.loading(); }));
    while (rows.canFetchMore({})) {
        rows.fetchMore({});
        ASSERT_TRUE(eventually([&] { return !rows.loading(); }));
    }
    ASSERT_EQ(rows.rowCount(), count);
    for (int i = 0; i < count; ++i) EXPECT_EQ(rows.row(i).reading.fibreA, std::to_string(count - i));
}

TEST_F(Search, TheOldestIsOneKeyAway) {
    open();
    choose("Order", "oldest first");
    ASSERT_EQ(all(), count);
    for (int i = 0; i < count; ++i) EXPECT_EQ(table().row(i).reading.fibreA, std::to_string(i + 1));
    choose("Order", "newest first");
    EXPECT_EQ(table().row(0).reading.fibreA, "450");
}

TEST_F(Search, OnlyTheNewestQuestionCounts) {
    SpliceTable rows(*session);
    SpliceFilter first, second;
    first.text = "Ana";
    second.text = "Ben";
    ASSERT_TRUE(rows.show({}));
    ASSERT_TRUE(rows.show(first));
    ASSERT_TRUE(rows.show(second));
    ASSERT_TRUE(eventually([&] { return !rows.loading(); }));
    ASSERT_GT(rows.rowCount(), 0);
    for (int i = 0; i < rows.rowCount(); ++i) EXPECT_EQ(rows.row(i).arc.operatorName, "Ben");
}

TEST_F(Search, VerdictToolJobDayAndTextByKeyboardAlone) {
    open();
    choose("Verdict", "over ceiling");
    // Above 0.30 whatever the job: 0.31 to 0.39 of every 40.
    int expected = 0;
    for (int i = 0; i < count; ++i) expected += i % 40 > 30 ? 1 : 0;
    EXPECT_EQ(all(), expected);

    choose("Tool", "C-01");
    expected = 0;
    for (int i = 0; i < count; ++i) expected += i % 40 > 30 && i % 3 == 0 ? 1 : 0;
    EXPECT_EQ(all(), expected);

    choose("Job", "HR-B");
    expected = 0;
    for (int i = 0; i < count; ++i) expected += i % 40 > 30 && i % 3 == 0 && i % 5 != 0 ? 1 : 0;
    EXPECT_EQ(all(), expected);

    tabTo("Time");
    QTest::keyClicks(QApplication::focusWidget(), "2031-03-04");
    settle();
    expected = 0;
    for (int i = 72; i < 144; ++i) expected += i % 40 > 30 && i % 3 == 0 && i % 5 != 0 ? 1 : 0;
    EXPECT_EQ(all(), expected);
    EXPECT_GT(expected, 0);

    tabTo("Search words");
    QTest::keyClicks(QApplication::focusWidget(), "Ana");
    settle();
    for (int i = 0; i < all(); ++i) EXPECT_EQ(table().row(i).arc.operatorName, "Ana");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(qobject_cast<QTableView*>(QApplication::focusWidget()));
}

TEST_F(Search, ADayThatCannotBeReadSaysSoAndKeepsTheRows) {
    open();
    const int before = table().rowCount();
    tabTo("Time");
    QTest::keyClicks(QApplication::focusWidget(), "3.4.2031");
    settle();
    bool said = false;
    for (auto* label : search->findChildren<QLabel*>())
        said = said || (label->isVisible() && label->text().contains("no day"));
    EXPECT_TRUE(said);
    EXPECT_EQ(table().rowCount(), before);
}

}  // namespace
}  // namespace arc::ui
