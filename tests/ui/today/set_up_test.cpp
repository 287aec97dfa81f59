// SPDX-License-Identifier: GPL-3.0-or-later
// From an empty logbook to the first splice by keyboard: a job with its closure, the set-up, the pad.
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>

#include "tests/support/pictures.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/today/job_sheet.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/set_up_panel.hpp"
#include "ui/today/sitting.hpp"
#include "ui/today/today_page.hpp"
#include "ui/widgets/empty_state.hpp"

namespace arc::ui {
namespace {

using namespace arc::literals;

template <class Control>
Control* named(QWidget* in, const QString& name) {
    for (auto* one : in->findChildren<Control*>())
        if (one->accessibleName() == name) return one;
    return nullptr;
}

void fill(QWidget* in, const QString& name, const QString& text) {
    auto* line = named<QLineEdit>(in, name);
    ASSERT_TRUE(line) << name.toStdString();
    line->clear();
    QTest::keyClicks(line, text);
}

class FirstJob : public testing::Test {
  protected:
    void SetUp() override {
        Splicer mass;
        mass.kind = SplicerKind::MassFusion;
        mass.grooves = 12;
        rig.write(Tool{rig.newId<ToolId>(), "S-01", "Heron", mass, Service::InUse});
        rig.write(Tool{rig.newId<ToolId>(), "S-02", "", Splicer{}, Service::InUse});
        session = &rig.start();
        page = std::make_unique<TodayPage>(*session);
        page->resize(1250, 768);
        page->show();
    }
    JobSheet* sheet() { return page->findChild<JobSheet*>(); }
    bool says(const QString& words) {
        return std::ranges::any_of(sheet()->findChildren<QLabel*>(),
                                   [&](const QLabel* label) { return label->text().contains(words); });
    }

    test::UiRig rig;
    Session* session = nullptr;
    std::unique_ptr<TodayPage> page;
};

TEST_F(FirstJob, APlanBeyondTheCableIsRefusedAndNothingIsWritten) {
    sheet()->begin({});
    fill(sheet(), "Job label", "HR-B");
    fill(sheet(), "Fibres in the cable", "48");
    fill(sheet(), "Closure label", "HR-17");
    fill(sheet(), "Splice plan", "1-60 straight");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(rig.reopened()->jobs().value().empty());
}

TEST_F(FirstJob, APlanThatFitsIsWrittenWithJobCableAndClosure) {
    sheet()->begin({});
    fill(sheet(), "Job label", "HR-B");
    fill(sheet(), "Limit per splice, dB", "0,15");
    fill(sheet(), "Fibres in the cable", "48");
    fill(sheet(), "Closure label", "HR-17");
    fill(sheet(), "Splice plan", "1-12 to 13-24");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    const auto jobs = rig.reopened()->jobs().value();
    ASSERT_EQ(jobs.size(), 1u);
    EXPECT_EQ(jobs[0].rule.perSplice, 150_mdb);
    EXPECT_EQ(jobs[0].rule.origin, RuleOrigin::Contract);
    const auto cables = rig.reopened()->cables(jobs[0].id).value();
    ASSERT_EQ(cables.size(), 1u);
    EXPECT_EQ(cables[0].fibreCount, 48);
    const auto closures = rig.reopened()->closures(jobs[0].id).value();
    ASSERT_EQ(closures.size(), 1u);
    ASSERT_EQ(closures[0].plan.size(), 12u);
    EXPECT_EQ(closures[0].plan[0], (PlannedSplice{1, 13}));
    test::typeKeys(&page->pad(), "4\r");
    const auto rows = rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 10).value();
    ASSERT_EQ(rows.size(), 1u);
    EXPECT_EQ(rows[0].reading.fibreA, "1");
    EXPECT_EQ(rows[0].reading.fibreB, "13");
    EXPECT_EQ(rows[0].arc.closure, closures[0].id);
}

TEST_F(FirstJob, WhatIsMissingGetsTheKeyboardAndNothingTypedIsLost) {
    sheet()->begin({});
    QWidget* label = named<QLineEdit>(sheet(), "Closure label");
    fill(sheet(), "Job label", "HR-B");
    fill(sheet(), "Splice plan", "1-12 straight");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(sheet()->focusWidget(), label);
    // Opening a list and taking what is chosen already leaves the rest alone.
    for (const auto* list : {"Closure", "Job"}) {
        auto* combo = named<QComboBox>(sheet(), list);
        Q_EMIT combo->activated(combo->currentIndex());
    }
    EXPECT_EQ(named<QLineEdit>(sheet(), "Splice plan")->text(), "1-12 straight");
    EXPECT_EQ(named<QLineEdit>(sheet(), "Job label")->text(), "HR-B");
    fill(sheet(), "Closure label", "HR-17");
    fill(sheet(), "Fibres in the cable", "many");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(sheet()->focusWidget(), named<QLineEdit>(sheet(), "Fibres in the cable"));
    EXPECT_TRUE(says("Fibres in the cable must be a whole number between 1 and 6,912"));
    fill(sheet(), "Fibres in the cable", "12.5");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(sheet()->focusWidget(), named<QLineEdit>(sheet(), "Fibres in the cable")) << "no half fibre";
    fill(sheet(), "Fibres in the cable", "12");
    fill(sheet(), "Ceiling, dB", "0");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(says("Ceiling, dB must be a number between 0.001 and 5"));
    EXPECT_TRUE(rig.reopened()->jobs().value().empty());
}

TEST(FirstJobOfAMassSplicer, BeginsWithRibbonsAndTheirRule) {
    test::UiRig rig;
    Splicer mass;
    mass.kind = SplicerKind::MassFusion;
    mass.grooves = 12;
    rig.write(Tool{rig.newId<ToolId>(), "S-01", "", mass, Service::InUse});
    TodayPage page(rig.start());
    auto* sheet = page.findChild<JobSheet*>();
    sheet->begin({});
    EXPECT_EQ(named<QComboBox>(sheet, "Acceptance rule")->currentText(), "Sample: ribbon");
    EXPECT_EQ(named<QComboBox>(sheet, "Tubes or ribbons")->currentText(), "ribbons of 12");
}

TEST(AJobWithoutClosures, SaysWhatToDoAndItsFirstSpliceIsALabelAway) {
    test::UiRig rig;
    rig.write(Tool{rig.newId<ToolId>(), "S-01", "", Splicer{}, Service::InUse});
    Job job;
    job.id = rig.newId<JobId>();
    job.label = "HR-B";
    job.rule = sampleRules().front();
    rig.write(job);
    Session& session = rig.start();
    session.setCrew("Crew 4");
    TodayPage page(session);
    page.resize(1250, 768);
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    auto* noClosure = page.pad().findChild<EmptyState*>();
    ASSERT_TRUE(noClosure);
    EXPECT_TRUE(noClosure->isVisible());
    test::picture(page, "no-closure");
    // Keys that move or enter have nothing to work on.
    for (const auto key : {Qt::Key_Down, Qt::Key_End, Qt::Key_PageUp, Qt::Key_Space, Qt::Key_4})
        QTest::keyClick(&page.pad(), key);
    QTest::keyClick(&page.pad(), Qt::Key_Return);
    auto* sheet = page.findChild<JobSheet*>();
    ASSERT_TRUE(sheet->isVisible());
    EXPECT_EQ(sheet->focusWidget(), named<QLineEdit>(sheet, "Closure label"));
    fill(sheet, "Closure label", "HR-17");
    QTest::keyClick(named<QLineEdit>(sheet, "Closure label"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(noClosure->isVisible());
    EXPECT_EQ(rig.reopened()->cables(job.id)->at(0).fibreCount, 144) << "the usual cable";
    test::typeKeys(&page.pad(), "4\r");
    session.setCrew("Crew 5");
    test::typeKeys(&page.pad(), "5\r");
    const auto rows = rig.reopened()->splices({}, PageOrder::OldestFirst, std::nullopt, 10).value();
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].arc.operatorName, "Crew 4") << "who is signed on";
    EXPECT_EQ(rows[1].arc.operatorName, "Crew 5");
}

TEST_F(FirstJob, TheCableSaysHowItsRibbonIsStrippedAndACableThatDoesNotIsAsked) {
    sheet()->begin({});
    auto* unit = named<QComboBox>(sheet(), "Tubes or ribbons");
    auto* ribbon = named<QComboBox>(sheet(), "How they are stripped");
    EXPECT_FALSE(ribbon->isEnabled()) << "loose tubes can only be ribbonised";
    QTest::keyClick(unit, Qt::Key_Down);
    ASSERT_TRUE(unit->currentText().startsWith("ribbons"));
    ASSERT_TRUE(ribbon->isEnabled());
    QTest::keyClick(ribbon, Qt::Key_Down);
    fill(sheet(), "Job label", "HR-B");
    fill(sheet(), "Closure label", "HR-17");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    const auto job = rig.reopened()->jobs().value().at(0).id;
    auto cable = rig.reopened()->cables(job).value().at(0);
    EXPECT_EQ(cable.ribbon, RibbonKind::WebType);

    cable.ribbon.reset();  // as books of before have it
    rig.write(cable);
    sheet()->begin(job);
    EXPECT_FALSE(unit->isEnabled());
    EXPECT_TRUE(ribbon->currentText().contains("not said"));
    fill(sheet(), "Closure label", "HR-18");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    EXPECT_EQ(rig.reopened()->cables(job).value().at(0).ribbon, std::nullopt) << "nobody said";
    sheet()->begin(job);
    QTest::keyClick(ribbon, Qt::Key_Down);
    fill(sheet(), "Closure label", "HR-19");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    EXPECT_EQ(rig.reopened()->cables(job).value().at(0).ribbon, RibbonKind::Flat);
    EXPECT_EQ(rig.reopened()->cables(job).value().size(), 1u);
}

TEST_F(FirstJob, ARuleIsMadeFromASampleEditedAndChosenForTheNextJob) {
    sheet()->begin({});
    auto* rules = named<QComboBox>(sheet(), "Acceptance rule");
    for (int i = 0; i < rules->count(); ++i)
        EXPECT_TRUE(rules->itemText(i).startsWith("Sample")) << "shipped rules say what they are";
    fill(sheet(), "Job label", "HR-B");
    QTest::keyClick(named<QComboBox>(sheet(), "Loss that counts"), Qt::Key_Down);
    fill(sheet(), "Closure label", "HR-17");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    const auto first = rig.reopened()->jobs().value();
    ASSERT_EQ(first.size(), 1u);
    EXPECT_EQ(first[0].rule.directions, Directions::TwoWay);
    EXPECT_EQ(first[0].rule.name, "Contract of HR-B");

    // Edited without touching a closure.
    sheet()->begin(first[0].id);
    fill(sheet(), "Ceiling, dB", "0,25");
    fill(sheet(), "Attempts before keeping", "5");
    QTest::keyClick(named<QComboBox>(sheet(), "Closure"), Qt::Key_End);
    QTest::keyClick(named<QComboBox>(sheet(), "Closure"), Qt::Key_Return, Qt::ControlModifier);
    const auto edited = rig.reopened()->jobs().value().at(0).rule;
    EXPECT_EQ(edited.ceiling, 250_mdb);
    EXPECT_EQ(edited.attempts, 5);
    EXPECT_EQ(rig.reopened()->closures(first[0].id)->size(), 1u);
    session->undo().undo();
    EXPECT_EQ(rig.reopened()->jobs().value().at(0).rule, first[0].rule);

    // Chosen for another job, unchanged.
    sheet()->begin({});
    fill(sheet(), "Job label", "HR-C");
    QTest::keyClick(rules, Qt::Key_End);
    EXPECT_EQ(rules->currentText(), "Contract of HR-B");
    fill(sheet(), "Closure label", "HR-1");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    EXPECT_EQ(rig.reopened()->jobs().value().at(1).rule, first[0].rule);
}

TEST_F(FirstJob, APlanComesFromCsvAndIsChangedLater) {
    const auto csv = rig.folder / "plan.csv";
    std::ofstream(csv) << "fibre_b;fibre_a\n25;1\n26;2\n27;3\n";
    sheet()->begin({});
    page->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
    fill(sheet(), "Job label", "HR-B");
    fill(sheet(), "Closure label", "HR-17");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_O, Qt::ControlModifier);
    auto* dialog = sheet()->findChild<QFileDialog*>();
    ASSERT_TRUE(dialog);
    dialog->selectFile(QString::fromStdString(csv.string()));
    QTest::keyClick(dialog, Qt::Key_Return);
    ASSERT_TRUE(
        test::eventually([&] { return named<QLineEdit>(sheet(), "Splice plan")->text() == "1-3 to 25-27"; }));
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    const auto job = rig.reopened()->jobs().value().at(0).id;
    ASSERT_EQ(rig.reopened()->closures(job)->at(0).plan.size(), 3u);

    sheet()->begin(job);
    QTest::keyClick(named<QComboBox>(sheet(), "Closure"), Qt::Key_Down);
    EXPECT_EQ(named<QLineEdit>(sheet(), "Splice plan")->text(), "1-3 to 25-27");
    fill(sheet(), "Splice plan", "1-144 straight");
    test::picture(*sheet(), "job-sheet");
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    const auto closures = rig.reopened()->closures(job).value();
    ASSERT_EQ(closures.size(), 1u) << "changed, not made a second time";
    EXPECT_EQ(closures[0].plan.size(), 144u);
    EXPECT_EQ(closures[0].trays, 6);
}

TEST_F(FirstJob, AMissingLabelSaysOneSentenceAndWritesNothing) {
    sheet()->begin({});
    QTest::keyClick(named<QLineEdit>(sheet(), "Splice plan"), Qt::Key_Return);
    EXPECT_TRUE(rig.reopened()->jobs().value().empty());
    EXPECT_TRUE(says("needs a label"));
}

TEST_F(FirstJob, TheSetUpSaysWhenTheArcWasCalibratedForOtherFibre) {
    const auto tools = rig.book->tools().value();
    CareRecord calibrated;
    calibrated.id = rig.newId<CareId>();
    calibrated.tool = tools[0].id;
    calibrated.at = rig.clock.now();
    calibrated.action = std::string(action::arcCalibration);
    calibrated.calibration = CalibrationResult{Adequacy::Adequate, Adequacy::Adequate, "G.652.D", 12, 1};
    rig.write(calibrated);
    SetUpPanel panel;
    auto start = completed({}, *rig.book);
    ASSERT_TRUE(start);
    start->splicer = tools[0].id;
    start->fibresPerArc = 12;
    start->mode = "G.652-G.652";
    ASSERT_TRUE(panel.fill(*rig.book, *start, "Crew 4", rig.clock.now()));
    panel.show();
    const auto noticed = [&] {
        for (auto* label : panel.findChildren<QLabel*>())
            if (label->text().contains("calibrated for 12 fibres of G.652.D")) return true;
        return false;
    };
    EXPECT_FALSE(noticed());
    auto* fibres = named<QComboBox>(&panel, "Fibres per arc");
    QTest::keyClick(fibres, Qt::Key_Up);
    EXPECT_TRUE(noticed()) << "eight at once";
    QTest::keyClick(fibres, Qt::Key_Down);
    EXPECT_FALSE(noticed());
    auto* mode = named<QComboBox>(&panel, "Splice mode");
    mode->lineEdit()->clear();
    QTest::keyClicks(mode->lineEdit(), "G.657-G.657");
    EXPECT_TRUE(noticed()) << "another type";
    QTest::keyClick(named<QComboBox>(&panel, "Splicer"), Qt::Key_Down);
    EXPECT_FALSE(noticed()) << "a single-fibre splicer";
}

TEST_F(FirstJob, TheSetUpIsTakenByKeyboardAndRemembered) {
    SetUpPanel panel;
    Sitting taken;
    int times = 0;
    QObject::connect(&panel, &SetUpPanel::accepted, [&](const Sitting& sitting) {
        taken = sitting;
        ++times;
    });
    auto start = completed({}, *rig.book);
    ASSERT_TRUE(start);
    start->ambient.temperature = 21.0_degC;
    ASSERT_TRUE(panel.fill(*rig.book, *start, "Crew 4", rig.clock.now()));
    panel.show();
    EXPECT_EQ(named<QLineEdit>(&panel, "Who splices")->placeholderText(), "Crew 4");
    auto* splicer = named<QComboBox>(&panel, "Splicer");
    QTest::keyClick(splicer, Qt::Key_Down);
    fill(&panel, "Who splices", "Ana");
    fill(&panel, "Temperature, °C", "-4,5");
    bool noticed = false;
    for (auto* label : panel.findChildren<QLabel*>()) noticed = noticed || label->text().contains("colder");
    EXPECT_TRUE(noticed) << "a jump of 25.5 degrees is noticed";
    fill(&panel, "Humidity, %", "140");
    QTest::keyClick(named<QLineEdit>(&panel, "Humidity, %"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(times, 0) << "140 % is refused";
    fill(&panel, "Humidity, %", "61");
    QTest::keyClick(named<QLineEdit>(&panel, "Humidity, %"), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(times, 1);
    EXPECT_EQ(taken.operatorName, "Ana");
    EXPECT_EQ(taken.ambient.temperature, Temperature{273150 - 4500});
    EXPECT_EQ(taken.ambient.humidity, Humidity{610});
    remember(taken);
    EXPECT_EQ(rememberedSitting(), taken);
}

}  // namespace
}  // namespace arc::ui
