// SPDX-License-Identifier: GPL-3.0-or-later
// Closeout by keyboard over a real logbook: completeness, exceptions with their dispositions, drafts and
// final records, verification.
#include "ui/closeout/closeout_page.hpp"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>

#include <gtest/gtest.h>
#include <set>

#include "core/closeout/paper.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/closeout/exception_list.hpp"
#include "ui/closeout/job_tree.hpp"
#include "ui/closeout/record_bar.hpp"

namespace arc::ui {
namespace {

using namespace arc::literals;
using test::eventually;

class CloseoutScreen : public testing::Test {
  protected:
    void SetUp() override {
        const auto splicer = rig.newId<ToolId>();
        rig.write(Tool{splicer, "S-01", "", Splicer{}, Service::InUse});
        job = rig.newId<JobId>();
        rig.write(Job{job, "HR-B", "Harrow Ridge backbone", {}});
        Closure closure;
        closure.id = rig.newId<ClosureId>();
        closure.job = job;
        closure.label = "HR-17";
        for (int n = 1; n <= 4; ++n) closure.plan.push_back({n, n});
        rig.write(closure);
        // Fibre 3 stays over the limit, fibre 4 is missing.
        for (int n = 1; n <= 3; ++n) {
            SpliceArc arc;
            arc.id = rig.newId<ArcId>();
            arc.at = rig.clock.now();
            arc.splicer = splicer;
            arc.job = job;
            arc.closure = closure.id;
            Reading reading;
            reading.fibreA = reading.fibreB = std::to_string(n);
            reading.loss = n == 3 ? 210_mdb : 30_mdb;
            arc.readings.push_back(reading);
            rig.write(arc);
        }
        session = &rig.start();
        session->setCrew("Mira");
        page = std::make_unique<CloseoutPage>(*session);
        page->resize(1250, 768);
        page->show();
        page->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(page.get()));
        ASSERT_TRUE(eventually(
            [&] { return CareDesk::of(*session).look() && page->settled() && list()->rowCount() > 0; }));
    }
    ExceptionList* list() { return page->findChild<ExceptionList*>(); }
    RecordBar* bar() { return page->findChild<RecordBar*>(); }
    QListView* view() {
        for (auto* one : page->findChildren<QListView*>())
            if (one->model() == list()) return one;
        return nullptr;
    }

    test::UiRig rig;
    JobId job;
    Session* session = nullptr;
    std::unique_ptr<CloseoutPage> page;
};

TEST_F(CloseoutScreen, ShowsWhatIsMissingAndWhatIsOverTheLimit) {
    bool missing = false, over = false;
    for (int i = 0; i < list()->rowCount(); ++i) {
        missing = missing || list()->at(i).kind == closeout::ExceptionKind::Missing;
        over = over || list()->at(i).kind == closeout::ExceptionKind::OverLimit;
    }
    EXPECT_TRUE(missing);
    EXPECT_TRUE(over);
    auto* tree = page->findChild<JobTree*>();
    EXPECT_EQ(tree->job(), job);
    EXPECT_EQ(tree->topLevelItem(0)->childCount(), 1);
}

TEST_F(CloseoutScreen, ShowsEveryKindOfExceptionAndAsksForADispositionOfEach) {
    const auto closure = rig.reopened()->closures(job)->front();
    const auto splicer = rig.reopened()->tools()->front();
    const auto first = rig.reopened()->splices({}, PageOrder::OldestFirst, {}, 10).value().front();
    MeasuredLoss fromOneEnd;
    fromOneEnd.id = rig.newId<EntryId>();
    fromOneEnd.job = job;
    fromOneEnd.closure = closure.id;
    fromOneEnd.fibre = "1";
    fromOneEnd.aToB = 40_mdb;
    fromOneEnd.at = rig.clock.now();
    rig.write(fromOneEnd);
    Reading corrected = first.reading;
    corrected.loss = 50_mdb;
    rig.write(ReadingChange{first.arc.id, corrected});
    CareRecord electrodes;
    electrodes.id = rig.newId<CareId>();
    electrodes.tool = splicer.id;
    electrodes.at = rig.clock.now();
    electrodes.action = action::electrodeReplace;
    rig.write(electrodes);
    rig.write(HoldOverride{rig.newId<EntryId>(), splicer.id, "arc_calibration", "Mira", "the train leaves",
                           rig.clock.now()});
    SpliceArc after = first.arc;
    after.id = rig.newId<ArcId>();
    after.at = rig.clock.now();
    after.readings = {first.reading};
    after.readings[0].fibreA = after.readings[0].fibreB = "9";
    rig.write(after);
    session->noteChange();
    const auto shown = [&] {
        std::set<closeout::ExceptionKind> kinds;
        for (int i = 0; i < list()->rowCount(); ++i) kinds.insert(list()->at(i).kind);
        return kinds;
    };
    using Kind = closeout::ExceptionKind;
    EXPECT_TRUE(eventually([&] { return page->settled() && shown().contains(Kind::OneWay); }));
    for (const Kind kind : {Kind::OverLimit, Kind::Missing, Kind::Unplanned, Kind::CalibrationOwed,
                            Kind::OverrideUsed, Kind::OneWay, Kind::Corrected})
        EXPECT_TRUE(shown().contains(kind)) << closeout::word(kind);
    bool named = false;
    for (int i = 0; i < list()->rowCount(); ++i)
        for (const int role : {Qt::DisplayRole, Qt::ToolTipRole, Qt::AccessibleTextRole})
            named = named || list()->index(i).data(role).toString().contains("One-way only");
    EXPECT_TRUE(named) << "in words";
    EXPECT_GE(list()->firstOpen(), 0);
    view()->setFocus();
    view()->selectAll();
    QTest::keyClick(view(), Qt::Key_A);
    QTest::keyClicks(QApplication::focusWidget(), "seen and agreed");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(eventually([&] { return page->settled() && list()->firstOpen() < 0; }));
    EXPECT_EQ(rig.reopened()->dispositions(job)->size(), static_cast<std::size_t>(list()->rowCount()));
}

TEST_F(CloseoutScreen, EveryExceptionIsDecidedByKeyboardWithNameAndReason) {
    const int all = list()->rowCount();
    view()->setFocus();
    view()->selectAll();
    QTest::keyClick(view(), Qt::Key_A);
    auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_TRUE(line) << "the name is known, the reason is asked";
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_TRUE(rig.reopened()->dispositions(job).value().empty()) << "no decision without a reason";
    QTest::keyClicks(line, "agreed with the client");
    QTest::keyClick(line, Qt::Key_Return);
    const auto decided = rig.reopened()->dispositions(job).value();
    ASSERT_EQ(decided.size(), static_cast<std::size_t>(all));
    EXPECT_EQ(decided[0].by, "Mira");
    EXPECT_EQ(decided[0].disposition, closeout::dispositionAccepted);
    EXPECT_EQ(decided[0].reason, "agreed with the client");
    EXPECT_TRUE(eventually([&] { return page->settled() && list()->firstOpen() < 0; }));
}

TEST_F(CloseoutScreen, AFinalRecordWaitsForTheDispositions) {
    int written = 0;
    rig.bench->onCloseout = [&](JobId asked, const std::filesystem::path& folder,
                                Progress&) -> Result<std::filesystem::path> {
        EXPECT_EQ(asked, job);
        ++written;
        return folder;
    };
    QPushButton* final = nullptr;
    for (auto* one : page->findChildren<QPushButton*>())
        if (one->accessibleName().contains("final")) final = one;
    ASSERT_TRUE(final);
    EXPECT_FALSE(final->isEnabled());
    bar()->writeTo(QString::fromStdString(rig.folder.path.string()), closeout::RecordState::Draft);
    EXPECT_TRUE(eventually([&] { return bar()->outcome().startsWith("Written"); }))
        << bar()->outcome().toStdString();
    EXPECT_EQ(written, 1);
    view()->setFocus();
    view()->selectAll();
    QTest::keyClick(view(), Qt::Key_A);
    QTest::keyClicks(QApplication::focusWidget(), "agreed");
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(eventually([&] { return final->isEnabled(); }));
}

TEST_F(CloseoutScreen, AFailedExportSaysOneSentence) {
    rig.bench->onCloseout = [](JobId, const std::filesystem::path&,
                               Progress&) -> Result<std::filesystem::path> {
        return fail(ProblemCode::Unavailable, "the disk is full", "/media/stick", "Free some room");
    };
    bar()->writeTo("/media/stick", closeout::RecordState::Draft);
    EXPECT_TRUE(eventually([&] { return bar()->outcome().startsWith("The disk is full"); }))
        << bar()->outcome().toStdString();
}

TEST_F(CloseoutScreen, ANumberThatTwoLaptopsGaveIsSaidUntilItIsSuperseded) {
    IssuedRecord issued;
    issued.job = job;
    issued.manifestSha256 = std::string(64, '0');
    issued.at = rig.clock.now();
    const auto issue = [&](const char* by, int number, std::optional<int> supersedes) {
        issued.id = rig.newId<EntryId>();
        issued.by = by;
        issued.number = number;
        issued.supersedes = supersedes;
        ASSERT_TRUE(session->save(Entry(issued), Undo::No));
    };
    const auto says = [&](const QString& words) {
        for (const auto* label : page->findChildren<QLabel*>())
            if (label->text().contains(words)) return true;
        return false;
    };
    issue("Ada", 1, {});
    issue("Ben", 1, {});
    EXPECT_TRUE(eventually([&] { return page->settled() && says("no. 1 was issued twice"); }));
    auto* jobItem = page->findChild<JobTree*>()->topLevelItem(0);
    ASSERT_EQ(jobItem->childCount(), 3) << "the closure and both records";
    EXPECT_EQ(jobItem->child(1)->text(0), "Record no. 1");
    EXPECT_EQ(jobItem->child(2)->text(0), "Record no. 1");
    issue("Ada", 2, 1);
    EXPECT_TRUE(eventually([&] { return page->settled() && says("Final record no. 2 was issued"); }));
}

TEST_F(CloseoutScreen, ThePaperIsChosenByKeyboardAndKept) {
    auto* paper = page->findChild<QComboBox*>();
    paper->setFocus();
    QTest::keyClick(paper, Qt::Key_Down);
    EXPECT_EQ(closeout::paperOf(*rig.reopened()).value(), closeout::PaperSize::Letter);
}

TEST_F(CloseoutScreen, ARecordIsVerified) {
    bar()->verifyAt("/somewhere/closeout-HR-B");
    EXPECT_TRUE(eventually([&] { return bar()->outcome().contains("closeout-HR-B"); }));
}

}  // namespace
}  // namespace arc::ui
