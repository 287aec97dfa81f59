// SPDX-License-Identifier: GPL-3.0-or-later
// Spans by keyboard: made, changed, taken back, read from a table; what the job adds up to by span.
#include "ui/today/span_sheet.hpp"

#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>

#include <fstream>
#include <gtest/gtest.h>

#include "tests/support/pad_crew.hpp"
#include "tests/support/pictures.hpp"
#include "ui/models/span_table.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

using test::eventually;

class Spans : public testing::Test {
  protected:
    void SetUp() override {
        crew = test::makePadCrew(rig, 1);
        Closure next;
        next.id = rig.newId<ClosureId>();
        next.job = crew.job;
        next.label = "HR-18";
        next.plan = {{1, 1}, {2, 2}};
        rig.write(next);
        other = next.id;
        // HR-18, at the far end: 0.3 dB, far above the average of 0.1 that is agreed.
        SpliceArc arc;
        arc.id = rig.newId<ArcId>();
        arc.at = rig.clock.now();
        arc.splicer = crew.splicer;
        arc.job = crew.job;
        arc.closure = next.id;
        arc.readings.push_back(Reading{1, Loss{300}, {}, {}, "1", "1", 1, {}, ""});
        rig.write(arc);
        MeasuredLoss oneWay;
        oneWay.id = rig.newId<EntryId>();
        oneWay.job = crew.job;
        oneWay.closure = next.id;
        oneWay.fibre = "1";
        oneWay.aToB = Loss{-20};
        oneWay.at = rig.clock.now();
        rig.write(oneWay);
        session = &rig.start();
        page = std::make_unique<TodayPage>(*session);
        page->resize(1250, 768);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        page->firstFocus()->setFocus();
    }
    void open() {
        QTest::keyClick(&page->pad(), Qt::Key_L);
        ASSERT_TRUE(sheet()->isVisible());
        ASSERT_TRUE(settled());
    }
    bool settled() {
        return eventually([this] { return page->settled(); });
    }
    SpanSheet* sheet() { return page->findChild<SpanSheet*>(); }
    /// What a person types, field after field.
    void type(const QStringList& fields) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        for (const QString& field : fields) {
            auto* at = QApplication::focusWidget();
            if (auto* line = qobject_cast<QLineEdit*>(at)) {
                line->selectAll();
                if (field.isEmpty())
                    QTest::keyClick(at, Qt::Key_Delete);
                else
                    QTest::keyClicks(at, field);
            }
            QTest::keyClick(at, Qt::Key_Return);
        }
    }
    QString cell(int row, int column) {
        const auto* table = sheet()->findChild<QTableView*>()->model();
        return table->index(row, column).data().toString();
    }
    std::vector<Span> spans() { return rig.reopened()->spans(crew.job).value(); }
    QLineEdit* field(const QString& name) {
        for (auto* one : sheet()->findChildren<QLineEdit*>())
            if (one->accessibleName() == name) return one;
        return nullptr;
    }
    bool says(const QString& words) {
        for (auto* label : sheet()->findChildren<QLabel*>())
            if (label->text().contains(words)) return true;
        return false;
    }

    test::UiRig rig;
    test::PadCrew crew{};
    ClosureId other;
    Session* session = nullptr;
    std::unique_ptr<TodayPage> page;
};

TEST_F(Spans, AJobWithoutSpansIsOne) {
    open();
    EXPECT_EQ(cell(0, SpanTable::Name), "the whole job, one span");
    EXPECT_EQ(cell(0, SpanTable::Done), "1 of 50");
    EXPECT_TRUE(cell(0, SpanTable::Average).contains("over"));
    EXPECT_TRUE(cell(0, SpanTable::Measured).startsWith("No link budget: the length of cable A"));
    EXPECT_EQ(cell(1, SpanTable::Done), "0 of 48");
    EXPECT_EQ(cell(2, SpanTable::Measured), QStringLiteral("◐ 1 one way"));
}

TEST_F(Spans, AreMadeChangedAndTakenBackByKeyboard) {
    open();
    type({"West", "rack 1", "HR-17", "", "12,5", "HR-17"});
    ASSERT_TRUE(settled());
    ASSERT_EQ(spans().size(), 1u);
    const Span west = spans()[0];
    EXPECT_EQ(west.label, "West");
    EXPECT_EQ(west.from.name, "rack 1");
    EXPECT_EQ(west.to.closure, crew.closure);
    EXPECT_EQ(west.lengthKm, 12.5);
    EXPECT_EQ(west.closures, std::vector{crew.closure});
    // A splice counts in one span.
    type({"East", "HR-17", "rack 2", "", "8", "HR-17 to HR-18"});
    EXPECT_EQ(spans().size(), 1u);
    EXPECT_TRUE(says("HR-17 is on span West already"));
    auto* closures = QApplication::focusWidget();
    qobject_cast<QLineEdit*>(closures)->selectAll();
    QTest::keyClicks(closures, "HR-18");
    QTest::keyClick(closures, Qt::Key_Return);
    ASSERT_TRUE(settled());
    ASSERT_EQ(spans().size(), 2u);
    EXPECT_EQ(cell(0, SpanTable::Name), "East");
    EXPECT_EQ(cell(0, SpanTable::Where), "HR-17 to rack 2");
    // 8 x 0.4 + 0.15 + 0.5 allowed, 8 x 0.4 + 0.3 + 0.5 as spliced.
    EXPECT_EQ(cell(0, SpanTable::FirstBudget), QStringLiteral("▲ 4.00 of 3.85, over"));
    EXPECT_EQ(cell(0, SpanTable::Measured), "estimated only");
    test::picture(*page, "spans");
    // Changed: chosen above, another length.
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    type({"East", "HR-17", "rack 2", "", "9", "HR-18"});
    ASSERT_TRUE(settled());
    EXPECT_EQ(spans()[0].lengthKm, 9.0);
    EXPECT_EQ(spans().size(), 2u) << "changed, not made a second time";
    session->undo().undo();
    EXPECT_EQ(spans()[0].lengthKm, 8.0);
    // Taken back, and undone.
    ASSERT_TRUE(settled());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(spans().size(), 1u);
    session->undo().undo();
    EXPECT_EQ(spans().size(), 2u);
    ASSERT_TRUE(settled());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    EXPECT_TRUE(page->pad().isVisible());
}

TEST_F(Spans, ChoosingAgainWhatIsChosenClearsNothing) {
    open();
    QComboBox* which = nullptr;
    for (auto* one : page->findChildren<QComboBox*>())
        if (one->accessibleName() == "Span") which = one;
    QLineEdit* const label = field("Span label");
    ASSERT_TRUE(which && label);
    QTest::keyClicks(label, "West");
    Q_EMIT which->activated(which->currentIndex());
    EXPECT_EQ(label->text(), "West");
}

TEST_F(Spans, WhatIsTypedStaysWhenSomebodyElseWrites) {
    open();
    type({"West", "rack 1", "HR-17", "", "12.5", "HR-17"});
    ASSERT_TRUE(settled());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    auto* length = field("Length, km");
    ASSERT_EQ(length->text(), "12.500");
    length->setFocus();
    length->selectAll();
    QTest::keyClicks(length, "13");
    // The same span gets another name meanwhile, and the job another span before it.
    Span west = spans()[0];
    west.label = "Ouest";
    Span east;
    east.id = session->newId<SpanId>();
    east.job = crew.job;
    east.label = "East";
    east.closures = {other};
    east.from.closure = crew.closure;
    east.to.name = "rack 2";
    ASSERT_TRUE(session->save({west, east}, Undo::No, {}, "by another"));
    ASSERT_TRUE(settled());
    EXPECT_EQ(length->text(), "13");
    EXPECT_EQ(field("Span label")->text(), "West");
    QTest::keyClick(length, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(settled());
    ASSERT_EQ(spans().size(), 2u) << "the span that was chosen is changed, not made a second time";
    EXPECT_TRUE(std::ranges::any_of(
        spans(), [&](const Span& span) { return span.id == west.id && span.lengthKm == 13.0; }));
    EXPECT_EQ(field("Length, km")->text(), "") << "saved, the next one begins empty";
}

TEST_F(Spans, ComeFromATable) {
    const auto csv = rig.folder / "spans.csv";
    std::ofstream(csv) << "span;from;to;length_km;closures\nWest;rack 1;HR-17;12,5;HR-17\nEast;HR-17;rack "
                          "2;8;HR-18\n";
    open();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_O, Qt::ControlModifier);
    auto* dialog = sheet()->findChild<QFileDialog*>();
    ASSERT_TRUE(dialog);
    dialog->selectFile(QString::fromStdString(csv.string()));
    QTest::keyClick(dialog, Qt::Key_Return);
    ASSERT_TRUE(eventually([&] { return spans().size() == 2; }));
    EXPECT_TRUE(says("2 spans are saved"));
    ASSERT_TRUE(settled());
}

TEST_F(Spans, TheAverageOnThePadIsThatOfTheSpan) {
    const auto hint = [this](const QString& keys) {
        test::typeKeys(&page->pad(), keys);
        const QString said = page->pad().hint();
        QTest::keyClick(&page->pad(), Qt::Key_Escape);
        return said;
    };
    Target here;
    here.job = crew.job;
    here.closure = crew.closure;
    page->open(here);
    ASSERT_TRUE(settled());
    // 0.3 in HR-18 and 0.04 here: 0.17.
    EXPECT_TRUE(hint("4").contains("Average so far 0.170"));
    open();
    type({"West", "rack 1", "HR-17", "", "", "HR-17"});
    ASSERT_TRUE(settled());
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
    ASSERT_TRUE(settled());
    ASSERT_EQ(spans().size(), 1u);
    const QString after = hint("4");
    EXPECT_FALSE(after.contains("Average so far"))
        << after.toStdString() << ": HR-18 is not on the span of HR-17";
}

}  // namespace
}  // namespace arc::ui
