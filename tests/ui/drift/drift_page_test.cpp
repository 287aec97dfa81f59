// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/drift_page.hpp"

#include <QAbstractItemView>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include <algorithm>

#include "tests/support/window_fixture.hpp"
#include "ui/drift/chart_column.hpp"
#include "ui/drift/chart_list.hpp"
#include "ui/drift/readings_table.hpp"

namespace arc::ui {
namespace {

class DriftPageTest : public test::WindowTest {
  protected:
    void openDrift() {
        openWindow();
        QTest::keyClick(window.get(), Qt::Key_F5);
        settle();
        page = &window->page(Screen::Drift);
    }
    bool says(const QString& words) const {
        for (const auto* label : page->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
    void key(Qt::Key k) {
        auto* column = page->findChild<ChartColumn*>();
        column->setFocus();
        QTest::keyClick(column, k);
        QApplication::processEvents();
    }
    Page* page = nullptr;
};

TEST_F(DriftPageTest, showsTheSignalWithItsBeginCausesEvidenceAndBudget) {
    openDrift();
    picture(QStringLiteral("drift"));
    EXPECT_TRUE(says(QStringLiteral("Groove 5 is dirty, likely")));
    EXPECT_TRUE(says(QStringLiteral("arc 1,482 (1,461–1,490)")));
    EXPECT_TRUE(says(QStringLiteral("57 arcs later")));
    EXPECT_TRUE(says(QStringLiteral("318 arcs since the last groove clean")));
    EXPECT_TRUE(says(QStringLiteral("one false signal per 1,000 arcs")));
    EXPECT_TRUE(says(QStringLiteral("it helped: recovered")));
}

TEST_F(DriftPageTest, goesToTheNextSplicerByKeyAndSaysThatItIsSteady) {
    openDrift();
    QTest::keyClick(page, Qt::Key_PageDown, Qt::ControlModifier);
    EXPECT_TRUE(says(QStringLiteral("S-02 “Wren”")));
    EXPECT_TRUE(says(QStringLiteral("steady")));
    picture(QStringLiteral("drift-steady"));
}

TEST_F(DriftPageTest, startGoesToTheCareOfTheRightTool) {
    openDrift();
    std::optional<Target> asked;
    QObject::connect(session.get(), &Session::goAsked, [&](Screen, const Target& target) { asked = target; });
    key(Qt::Key_S);
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->tool, test::toolId("S-01"));
    EXPECT_EQ(asked->action, action::grooveClean);
    ASSERT_EQ(asked->answers.size(), 1u);
    EXPECT_EQ(window->screen(), Screen::Care);
}

TEST_F(DriftPageTest, arcsMadeWhileACalibrationWasOwedSaySo) {
    openDrift();
    auto* column = page->findChild<ChartColumn*>();
    const auto view = test::fakeView();
    const auto& history = view.histories.front();
    care::OwedStretch owed;
    owed.splicer = history.splicer;
    owed.from = history.arcs[9].at;
    owed.to = history.arcs[12].at;
    column->setOwed({owed});
    const QString words = QStringLiteral("calibration owed");
    EXPECT_FALSE(column->readout(9).contains(words));
    EXPECT_TRUE(column->readout(10).contains(words));
    EXPECT_TRUE(column->readout(12).contains(words));
    EXPECT_FALSE(column->readout(13).contains(words));
    const auto marks = owedMarks(history, std::vector{owed});
    ASSERT_EQ(marks.size(), 1u);
    EXPECT_DOUBLE_EQ(marks[0].from, 9.5);
    EXPECT_DOUBLE_EQ(marks[0].to, 12.5);
    picture(QStringLiteral("drift-owed"));
    owed.splicer = test::toolId("S-02");
    EXPECT_TRUE(owedMarks(history, std::vector{owed}).empty());
    const QStringList lines = column->csv().split(QStringLiteral("\r\n"));
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("arc,time,mean_loss_db,calibration_owed,level")));
}

TEST_F(DriftPageTest, dismissingNeedsAReasonAndWritesIt) {
    openDrift();
    session->setCrew("Night crew");
    key(Qt::Key_D);
    auto* dialog = page->findChild<QDialog*>(QStringLiteral("ask_line"));
    ASSERT_NE(dialog, nullptr);
    auto* entry = dialog->findChild<QLineEdit*>();
    QTest::keyClick(entry, Qt::Key_Return);
    EXPECT_TRUE(book.written.empty());
    QTest::keyClicks(entry, QStringLiteral("training splices"));
    QTest::keyClick(entry, Qt::Key_Return);
    ASSERT_EQ(book.written.size(), 1u);
    const auto& answer = std::get<SignalAnswer>(book.written.front());
    EXPECT_EQ(answer.reason, "training splices");
    EXPECT_EQ(answer.kind, SignalAnswerKind::Dismissed);
    EXPECT_EQ(answer.by, "Night crew");
    EXPECT_EQ(answer.splicer, test::toolId("S-01"));
}

TEST_F(DriftPageTest, theBaselineMovesByKeyboardAndIsWritten) {
    openDrift();
    key(Qt::Key_B);
    QSpinBox* to = nullptr;
    for (auto* box : page->findChildren<QSpinBox*>())
        if (box->accessibleName() == QLatin1String("Baseline to arc")) to = box;
    ASSERT_NE(to, nullptr);
    ASSERT_TRUE(to->isVisible());
    to->setValue(300);
    for (auto* line : page->findChildren<QLineEdit*>())
        if (line->accessibleName().startsWith(QLatin1String("Reason"))) {
            line->setText(QStringLiteral("settled in"));
            QTest::keyClick(line, Qt::Key_Return);
        }
    ASSERT_EQ(book.written.size(), 1u);
    const auto& choice = std::get<BaselineChoice>(book.written.front());
    const auto view = test::fakeView();
    EXPECT_EQ(choice.to, view.histories[0].arcs[299].at);
    EXPECT_EQ(choice.from, view.histories[0].arcs[0].at);
    EXPECT_EQ(choice.reason, "settled in");
}

TEST_F(DriftPageTest, rawReadingsAreTwoKeysAwayAndAgreeWithTheHistory) {
    openDrift();
    key(Qt::Key_R);
    auto* table = page->findChild<QDialog*>(QStringLiteral("readings_table"));
    ASSERT_NE(table, nullptr);
    auto* view = table->findChild<QAbstractItemView*>();
    const auto fake = test::fakeView();
    EXPECT_EQ(view->model()->rowCount(), static_cast<int>(fake.histories[0].arcs.size()));
    EXPECT_EQ(view->model()->headerData(view->model()->columnCount() - 1, Qt::Horizontal).toString(),
              QStringLiteral("groove 12"));
    const int row = view->currentIndex().row();
    EXPECT_EQ(row, 1481);
    const auto& reading = fake.histories[0].readings[static_cast<std::size_t>(1481 * 12 + 11)];
    EXPECT_DOUBLE_EQ(view->model()->index(row, view->model()->columnCount() - 1).data().toString().toDouble(),
                     decibels(reading.loss));
    if (!qEnvironmentVariable("ARC_PICTURES").isEmpty())
        table->grab().save(qEnvironmentVariable("ARC_PICTURES") + QStringLiteral("/readings.png"));
}

TEST_F(DriftPageTest, keysZoomAndPanAllChartsTogether) {
    openDrift();
    auto& shown = page->findChild<ChartColumn*>()->window();
    key(Qt::Key_Plus);
    EXPECT_LT(shown.to() - shown.from(), 1599);
    const double from = shown.from();
    key(Qt::Key_Right);
    EXPECT_GT(shown.from(), from);
    key(Qt::Key_0);
    EXPECT_DOUBLE_EQ(shown.from(), 1);
    EXPECT_DOUBLE_EQ(shown.to(), 1600);
}

TEST_F(DriftPageTest, anEmptyBookTeaches) {
    openWindow([](Logbook&, Progress&) -> Result<DriftView> { return DriftView{}; });
    QTest::keyClick(window.get(), Qt::Key_F5);
    settle();
    page = &window->page(Screen::Drift);
    EXPECT_TRUE(says(QStringLiteral("after 60 arcs")));
    picture(QStringLiteral("drift-empty"));
}

TEST(ChartList, averagesTheLossesOfAnArc) {
    const auto view = test::fakeView();
    const auto charts = lowerCharts({view.reports[0].strata[0], view.histories[0]});
    const auto losses = std::ranges::find_if(
        charts, [](const auto& chart) { return chart->title.startsWith(QLatin1String("losses")); });
    ASSERT_NE(losses, charts.end());
    double sum = 0;
    for (int c = 0; c < 12; ++c)
        sum += decibels(view.histories[0].readings[static_cast<std::size_t>(c)].loss);
    EXPECT_NEAR((*losses)->value.front(), sum / 12, 1e-6);
    EXPECT_EQ((*losses)->arc.front(), 1);
}

TEST(ChartList, careStandsBetweenTheArcsItLiesBetween) {
    const auto view = test::fakeView();
    const auto marks = careMarks(view.histories[0]);
    ASSERT_EQ(marks.size(), 2u);
    // Done at the time of arc 1,225: before it, after 1,224.
    EXPECT_DOUBLE_EQ(marks[0].arc, 1224.5);
}

}  // namespace
}  // namespace arc::ui
