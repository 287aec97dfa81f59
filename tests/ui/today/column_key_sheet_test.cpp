// SPDX-License-Identifier: GPL-3.0-or-later
// A table nobody has matched yet: matched once by keyboard with the rows in sight, saved, offered again; and
// rows that were set aside, mended in place.
#include "ui/today/column_key_sheet.hpp"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>

#include <fstream>
#include <gtest/gtest.h>

#include "tests/support/pictures.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/models/preview_table.hpp"
#include "ui/models/set_aside_table.hpp"
#include "ui/today/import_panel.hpp"
#include "ui/today/mend_sheet.hpp"

namespace arc::ui {
namespace {

using test::eventually;

class Matching : public testing::Test {
  protected:
    void SetUp() override {
        session = &rig.start();
        panel = std::make_unique<ImportPanel>(*session);
        panel->resize(1250, 700);
        panel->show();
        panel->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(panel.get()));
        panel->begin();
    }
    QString file(const std::string& name, const std::string& text) {
        const auto path = rig.folder / name;
        std::ofstream(path, std::ios::binary) << text;
        return QString::fromStdString(path.string());
    }
    void take(const QString& path) {
        panel->start({path});
        ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    }
    ColumnKeySheet* sheet() { return panel->findChild<ColumnKeySheet*>(); }
    MendSheet* mend() { return panel->findChild<MendSheet*>(); }
    template <class Control>
    Control* named(const QString& name) {
        for (auto* one : panel->findChildren<Control*>())
            if (one->accessibleName() == name && one->isVisible()) return one;
        return nullptr;
    }
    /// Goes there by Tab alone and answers whether the keyboard arrives.
    bool tabTo(QWidget* wanted) {
        for (int i = 0; i < 60; ++i) {
            auto* now = QApplication::focusWidget();
            if (now == wanted || (now && now->parentWidget() == wanted)) return true;
            QTest::keyClick(now ? now : panel.get(), Qt::Key_Tab);
        }
        return false;
    }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        auto* now = QApplication::focusWidget();
        ASSERT_TRUE(now);
        QTest::keyClick(now, key, with);
    }
    void type(const QString& text) {
        auto* now = QApplication::focusWidget();
        ASSERT_TRUE(now);
        QTest::keyClicks(now, text);
    }
    bool says(const QString& words) {
        for (auto* label : panel->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
    std::vector<SpliceRow> rows() {
        return rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 100).value();
    }

    test::UiRig rig;
    Session* session = nullptr;
    std::unique_ptr<ImportPanel> panel;
};

const char* const german =
    "Datum;Uhrzeit;Dämpfung;Muffe\n03.04.2031;07:00;0,03;HR-17\n04.04.2031;07:05;0,04;HR-17\n"
    "05.04.2031;07:10;x,05;HR-17\n";

TEST_F(Matching, MatchedOnceByKeyboardWithTheRowsInSightThenOfferedByItself) {
    take(file("april.csv", german));
    ASSERT_TRUE(sheet()->isVisible());
    auto* preview = panel->findChild<PreviewTable*>();
    QAbstractItemModelTester tester(preview, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_TRUE(says("splicer")) << "what is still missing is said";
    ASSERT_TRUE(tabTo(named<QComboBox>("splicer")));
    type("= S-09");
    EXPECT_TRUE(says("can be read in two ways")) << "3 April or 4 March: nobody knows";
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(sheet()->isVisible()) << "not before it is answered";
    EXPECT_TRUE(rows().empty());
    ASSERT_TRUE(tabTo(named<QComboBox>("Dates are written"))) << "the keyboard is led there";
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(sheet()->key().dates, DateForm::DayMonthYear);
    EXPECT_TRUE(says("from UTC"));
    ASSERT_TRUE(tabTo(named<QComboBox>("Offset of times without one")));
    type("+02:00");
    EXPECT_TRUE(says("2 of the first 3 rows land"));
    ASSERT_EQ(preview->rowCount(), 3);
    EXPECT_EQ(preview->data(preview->index(0, PreviewTable::Verdict), Qt::DisplayRole), "lands");
    EXPECT_TRUE(preview->data(preview->index(2, PreviewTable::Verdict), Qt::DisplayRole)
                    .toString()
                    .startsWith("set aside: "));
    bool inWords = false;
    for (int c = 0; c < preview->columnCount(); ++c)
        inWords =
            inWords || preview->data(preview->index(0, c), Qt::DisplayRole).toString() == "3 Apr 2031 07:00";
    EXPECT_TRUE(inWords) << "the month stands in words";
    ASSERT_TRUE(tabTo(named<QLineEdit>("Save the key as")));
    type("Crew B");
    test::picture(*panel, "matching");
    press(Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    ASSERT_EQ(rows().size(), 2u);
    EXPECT_EQ(toIso(rows()[0].arc.at), "2031-04-03T07:00:00+02:00");
    EXPECT_EQ(rows()[0].reading.loss, Loss{30});
    EXPECT_EQ(rig.bench->columnKeys()->at(0).name, "Crew B");

    take(file("may.csv", "Datum;Uhrzeit;Dämpfung;Muffe\n05.05.2031;08:00;0,06;HR-18\n"));
    EXPECT_TRUE(says("Crew B")) << "the same header: offered by itself";
    press(Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    EXPECT_EQ(rows().size(), 3u);
}

TEST_F(Matching, OneColumnAGrooveInThousandths) {
    take(file("wide.tsv", "when\tunit\tF1\tF2\tF3\tF4\n2031-03-03T07:00:00Z\tS-2\t30\t41\t\t\n"));
    ASSERT_TRUE(sheet()->isVisible());
    EXPECT_EQ(sheet()->key().wide.size(), 4u);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(rows().empty()) << "30 dB or 30 thousandths: asked";
    ASSERT_TRUE(tabTo(named<QComboBox>("Losses are in")));
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(sheet()->key().lossUnit, LossUnit::Millidecibel);
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    ASSERT_EQ(rows().size(), 2u);
    EXPECT_EQ(rows()[1].reading.loss, Loss{41});
    EXPECT_EQ(rows()[1].arc.channels, 4);
}

TEST_F(Matching, WordsForWhatWasDoneAreMatchedWithOurCareCards) {
    rig.write(Tool{rig.newId<ToolId>(), "S-01", "Heron", Splicer{}, Service::InUse});
    QTest::keyClick(panel.get(), Qt::Key_2);  // events
    take(file("pflege.csv",
              "Wann,Geraet,Was\n2031-03-03T07:00:00Z,S-01,Nuten gereinigt\n2031-03-04T07:00:00Z,S-01,Linse "
              "gereinigt\n2031-03-05T07:00:00Z,S-01,Nuten gereinigt\n2031-03-06T07:00:00Z,S-01,Kaffee\n"));
    ASSERT_TRUE(sheet()->isVisible());
    for (const auto& [field, column] : std::initializer_list<std::pair<const char*, const char*>>{
             {"date and time", "Wann"}, {"tool", "Geraet"}, {"what was done", "Was"}}) {
        auto* choice = named<QComboBox>(field);
        ASSERT_TRUE(choice) << field;
        ASSERT_TRUE(tabTo(choice)) << field;
        choice->lineEdit()->selectAll();
        type(column);
    }
    EXPECT_TRUE(says("0 of the first 4 rows land"));
    ASSERT_TRUE(tabTo(named<QComboBox>("\"Nuten gereinigt\" means")));
    const auto down = [](const QString& words) {
        auto* box = qobject_cast<QComboBox*>(QApplication::focusWidget());
        for (int i = 0; box && i < 30 && box->currentText() != words; ++i) QTest::keyClick(box, Qt::Key_Down);
    };
    down("Clean V-grooves");
    EXPECT_TRUE(says("2 of the first 4 rows land")) << "live";
    ASSERT_TRUE(tabTo(named<QComboBox>("\"Linse gereinigt\" means")));
    down("Clean camera lenses");
    EXPECT_TRUE(says("3 of the first 4 rows land"));
    ASSERT_TRUE(tabTo(named<QLineEdit>("Save the key as")));
    type("Crew P");
    test::picture(*panel, "matching-words");
    press(Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    const auto care = rig.reopened()->careRecords(std::nullopt).value();
    ASSERT_EQ(care.size(), 3u);
    EXPECT_EQ(care[0].action, action::grooveClean);
    EXPECT_EQ(care[1].action, action::lensClean);
    EXPECT_EQ(mend()->open(), 1) << "coffee waits for somebody";
    const auto saved = rig.bench->columnKeys()->at(0);
    EXPECT_EQ(saved.values.at("action").at("Nuten gereinigt"), action::grooveClean);

    // The next file of theirs lands with the saved key alone.
    take(file("april.csv", "Wann,Geraet,Was\n2031-04-03T07:00:00Z,S-01,Linse gereinigt\n"));
    EXPECT_TRUE(says("Crew P"));
    press(Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return !panel->busy(); }));
    EXPECT_EQ(rig.reopened()->careRecords(std::nullopt)->size(), 4u);
}

TEST_F(Matching, EscLeavesWithoutTakingAnythingIn) {
    take(file("april.csv", german));
    press(Qt::Key_Escape);
    EXPECT_FALSE(sheet()->isVisible());
    EXPECT_TRUE(rows().empty());
    EXPECT_TRUE(rig.bench->columnKeys()->empty());
}

TEST_F(Matching, AColumnThatIsNotThereIsNamed) {
    take(file("april.csv", german));
    ASSERT_TRUE(tabTo(named<QComboBox>("splicer")));
    type("S-09");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(says("no column \"S-09\""));
    EXPECT_TRUE(sheet()->isVisible());
}

const char* const oneBad =
    "time,splicer,loss_db,fibre_a\n2031-03-03T08:00:00+01:00,S-01,0.03,1\n"
    "2031-03-03T08:02:00+01:00,S-01,-0.20,2\n2031-03-03T08:04:00+01:00,S-01,0.05,3\n";

TEST_F(Matching, ASetAsideRowIsMendedInPlaceAndTakenIn) {
    take(file("log.csv", oneBad));
    ASSERT_EQ(rows().size(), 2u);
    ASSERT_EQ(mend()->open(), 1);
    press(Qt::Key_Return);
    auto* cell = named<QLineEdit>("loss_db");
    ASSERT_TRUE(cell && cell->hasFocus()) << "the cell at fault comes first";
    type("zero");
    EXPECT_TRUE(says("not a number"));
    cell->selectAll();
    type("0.02");
    EXPECT_TRUE(says("This row lands"));
    test::picture(*panel, "mending");
    press(Qt::Key_Return);
    EXPECT_EQ(rows().size(), 2u) << "nothing is written before it is asked for";
    press(Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(rows().size(), 3u);
    EXPECT_EQ(rows()[1].reading.loss, Loss{20});
    EXPECT_EQ(mend()->open(), 0);
}

TEST_F(Matching, WhoCancelsFindsTheRowsAgainLater) {
    take(file("log.csv", oneBad));
    press(Qt::Key_Return);
    type("0.02");
    press(Qt::Key_Escape);
    EXPECT_EQ(rows().size(), 2u);
    ImportPanel later(*session);
    later.show();
    later.begin();
    EXPECT_EQ(later.findChild<MendSheet*>()->open(), 1);
    auto* table = later.findChild<MendSheet*>()->table();
    QTest::keyClick(table, Qt::Key_Delete);
    EXPECT_EQ(later.findChild<MendSheet*>()->open(), 0) << "left out on purpose";
    session->undo().undo();
    later.begin();
    EXPECT_EQ(later.findChild<MendSheet*>()->open(), 1) << "and taken back";
}

TEST_F(Matching, WhatIsMendedAndNotTakenInSurvivesTheWindow) {
    take(file("log.csv", oneBad));
    press(Qt::Key_Return);
    type("0.02");
    ASSERT_TRUE(says("This row lands"));
    // The window goes without a word, as in a crash.
    panel.reset();
    ImportPanel later(*session);
    later.resize(1250, 700);
    later.show();
    later.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&later));
    later.begin();
    auto* sheet = later.findChild<MendSheet*>();
    auto* rows = sheet->table()->model();
    EXPECT_EQ(rows->index(0, SetAsideTable::Reason).data().toString(), "mended, will be taken in");
    EXPECT_TRUE(rows->index(0, SetAsideTable::Row).data().toString().contains("0.02"));
    QTest::keyClick(&later, Qt::Key_M);
    QTest::keyClick(sheet->table(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(this->rows().size(), 3u);
    EXPECT_EQ(sheet->open(), 0);
    // And is forgotten once it is taken in.
    ImportPanel last(*session);
    last.begin();
    EXPECT_EQ(last.findChild<MendSheet*>()->open(), 0);
}

TEST_F(Matching, TheLastOfThreeThousandRowsIsMended) {
    std::string log = "time,splicer,loss_db,fibre_a\n2031-03-03T08:00:00+01:00,S-01,0.03,1\n";
    for (int i = 0; i < 3'000; ++i) log += "2031-03-03T09:00:00+01:00,S-01,x" + std::to_string(i) + ",2\n";
    take(file("log.csv", log));
    ASSERT_EQ(mend()->open(), 3'000);
    auto* table = mend()->table();
    QAbstractItemModelTester tester(table->model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(table->hasFocus());
    press(Qt::Key_End, Qt::ControlModifier);
    EXPECT_EQ(table->currentIndex().row(), 2'999);
    EXPECT_TRUE(table->model()->index(2'999, SetAsideTable::Row).data().toString().contains("x2999"));
    press(Qt::Key_Return);
    auto* cell = named<QLineEdit>("loss_db");
    ASSERT_TRUE(cell && cell->hasFocus());
    cell->selectAll();
    type("0.02");
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(rows().size(), 2u);
    EXPECT_EQ(mend()->open(), 2'999);
    EXPECT_EQ(table->currentIndex().row(), 2'998) << "one stays where one was";
}

TEST_F(Matching, ARowThatCannotBeSplitIsMendedAsAWhole) {
    take(file("log.csv",
              "time,splicer,loss_db\n2031-03-03T08:00:00Z,S-01,0,03\n2031-03-03T08:01:00Z,S-01,0.03\n"));
    ASSERT_EQ(mend()->open(), 1);
    press(Qt::Key_Return);
    auto* cell = named<QLineEdit>("the whole row");
    ASSERT_TRUE(cell && cell->hasFocus());
    cell->selectAll();
    type("2031-03-03T08:00:00Z,S-01,0.03");
    EXPECT_TRUE(says("This row lands"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(rows().size(), 2u);
}

}  // namespace
}  // namespace arc::ui
