// SPDX-License-Identifier: GPL-3.0-or-later
// Every care card from the first caution to the record, by keyboard, over a real logbook; and a run that goes
// on at the same step after the program went away.
#include "ui/care/care_page.hpp"

#include <QAction>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include <fstream>
#include <gtest/gtest.h>

#include "core/care/run.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/care/card_editor.hpp"
#include "ui/care/card_runner.hpp"
#include "ui/care/care_desk.hpp"
#include "ui/care/field_edit.hpp"
#include "ui/care/gentler_first.hpp"
#include "ui/care/limits_sheet.hpp"
#include "ui/care/queue_row.hpp"

namespace arc::ui {
namespace {

using test::eventually;

class CareScreen : public testing::Test {
  protected:
    void begin() {
        Splicer mass;
        mass.kind = SplicerKind::MassFusion;
        mass.grooves = 12;
        splicer = rig.newId<ToolId>();
        cleaver = rig.newId<ToolId>();
        stripper = rig.newId<ToolId>();
        rig.write(Tool{splicer, "S-01", "Heron", mass, Service::InUse});
        rig.write(Tool{cleaver, "C-01", "", Cleaver{}, Service::InUse});
        rig.write(Tool{stripper, "R-01", "", Stripper{}, Service::InUse});
        rig.write(Pairing{rig.newId<EntryId>(), splicer, cleaver, rig.clock.now()});
    }
    void open() {
        session = &rig.start();
        session->setCrew("Ana");
        page = std::make_unique<CarePage>(*session);
        page->resize(1250, 768);
        page->show();
        ASSERT_TRUE(eventually([&] { return CareDesk::of(*session).look() != nullptr && page->settled(); }));
    }
    /// To what has the keyboard in the card, as a person's key would go there.
    void press(Qt::Key key) {
        auto* runner = page->runner();
        QWidget* at = runner ? static_cast<QWidget*>(runner) : page.get();
        if (runner && runner->focusWidget() && runner->focusWidget()->isVisible()) at = runner->focusWidget();
        QTest::keyClick(at, key);
    }
    GentlerFirst* asked() {
        for (auto* one : page->window()->findChildren<GentlerFirst*>())
            if (one->isVisible()) return one;
        return nullptr;
    }
    /// Takes a care up; if gentler care comes first, goes on with a reason.
    void take(ToolId tool, const ActionKey& action, const std::vector<std::string>& answers = {}) {
        page->startCare(tool, action, answers);
        if (auto* ask = asked()) {
            auto* reason = ask->findChild<QLineEdit*>();
            QTest::keyClicks(reason, "nothing else helps");
            QTest::keyClick(reason, Qt::Key_Return);
        }
    }
    [[nodiscard]] ToolId toolFor(const care::Card& card) const {
        if (card.tool == care::ToolKind::Splicer) return splicer;
        return card.tool == care::ToolKind::Cleaver ? cleaver : stripper;
    }
    /// The program goes away and comes back.
    void restart() {
        page.reset();
        rig.session.reset();
        open();
    }
    void settle() {
        ASSERT_TRUE(eventually([&] { return page->settled(); }));
    }
    /// One screen further, the shortest way that is allowed.
    void goOn() {
        auto* runner = page->runner();
        const auto screen = runner->screen();
        if (screen.kind != care::ScreenKind::Step) return press(Qt::Key_Return);
        const auto& what = screen.step->what;
        if (std::holds_alternative<care::InspectStep>(what) ||
            std::holds_alternative<care::RepeatStep>(what)) {
            press(Qt::Key_Return);
            EXPECT_EQ(runner->screen().number, screen.number) << "a look is never answered by Enter alone";
            return press(Qt::Key_Y);
        }
        if (std::holds_alternative<care::TimerStep>(what)) {
            press(Qt::Key_Return);
            EXPECT_TRUE(runner->screen().timerEnd);
            press(Qt::Key_Return);
            EXPECT_EQ(runner->screen().number, screen.number) << "a timer does not end before its time";
            rig.clock.at.ms += screen.timerMinutes * msPerMinute;
            return press(Qt::Key_Return);
        }
        if (std::holds_alternative<care::RecordStep>(what)) {
            const auto edits = runner->findChildren<FieldEdit*>();
            ASSERT_FALSE(edits.empty());
            for (auto* edit : edits) {
                if (!edit->isVisible()) continue;
                edit->takeFocus();
                if (edit->field().kind == care::FieldKind::Choice) {
                    press(Qt::Key_1);
                } else if (edit->field().kind != care::FieldKind::Photo) {
                    auto* line = edit->findChild<QLineEdit*>();
                    if (line->text().isEmpty()) {
                        const bool number = edit->field().kind == care::FieldKind::Number;
                        QTest::keyClicks(
                            line, number ? QString::number(edit->field().least.value_or(1)) : "G.652.D");
                    }
                    press(Qt::Key_Return);
                } else {
                    press(Qt::Key_Return);
                }
            }
            return;
        }
        press(Qt::Key_Return);
    }

    test::UiRig rig;
    ToolId splicer, cleaver, stripper;
    Session* session = nullptr;
    std::unique_ptr<CarePage> page;
};

TEST_F(CareScreen, EveryCardIsWalkedByKeyboardToItsRecord) {
    begin();
    open();
    const auto deck = CareDesk::of(*session).look()->situation.deck;
    ASSERT_GE(deck.cards.size(), 10u);
    for (const auto& card : deck.cards) {
        SCOPED_TRACE(card.id);
        const ToolId tool = toolFor(card);
        take(tool, card.id, {"asked for"});
        ASSERT_TRUE(page->runner());
        EXPECT_EQ(page->runner()->screen().kind, care::ScreenKind::Cautions) << "cautions come first";
        EXPECT_TRUE(rig.reopened()->openCareRuns().value().empty())
            << "nothing is written before they are read";
        for (int i = 0;
             i < 60 && page->runner() && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) {
            const int before = page->runner()->run().step;
            goOn();
            ASSERT_TRUE(page->runner());
            ASSERT_NE(page->runner()->run().step, before)
                << page->runner()->saidWrong().toStdString() << " focus "
                << (QApplication::focusWidget() ? QApplication::focusWidget()->accessibleName().toStdString()
                                                : "nowhere");
            const auto runs = rig.reopened()->openCareRuns().value();
            ASSERT_EQ(runs.size(), 1u);
            EXPECT_EQ(runs[0], page->runner()->run()) << "what is on the screen is on disk";
        }
        press(Qt::Key_Return);
        EXPECT_FALSE(page->runner()) << page->runner()->saidWrong().toStdString();
        EXPECT_TRUE(rig.reopened()->openCareRuns().value().empty());
        const auto records = rig.reopened()->careRecords(tool).value();
        const auto mine = std::ranges::find_if(records, [&](const CareRecord& r) {
            return r.action == card.id || std::ranges::count(card.also, r.action) > 0;
        });
        ASSERT_NE(mine, records.end());
        EXPECT_EQ(mine->cardVersion, card.version);
        EXPECT_EQ(mine->by, "Ana");
        EXPECT_EQ(mine->answers, std::vector<std::string>{"asked for"});
    }
}

// The program goes away at every screen of every card, and the run is taken up where it stood.
TEST_F(CareScreen, EveryCardGoesOnAtTheSameStepWhereverTheProgramWentAway) {
    begin();
    open();
    const auto deck = CareDesk::of(*session).look()->situation.deck;
    for (const auto& card : deck.cards) {
        SCOPED_TRACE(card.id);
        take(toolFor(card), card.id);
        ASSERT_TRUE(page->runner());
        for (int i = 0; i < 60 && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) {
            goOn();
            ASSERT_TRUE(page->runner());
            const CareRun left = page->runner()->run();
            restart();
            page->startCare(toolFor(card), card.id, {});
            ASSERT_FALSE(asked()) << "what was answered once is not asked again";
            ASSERT_TRUE(page->runner());
            ASSERT_EQ(page->runner()->run(), left);
            press(Qt::Key_Escape);
            ASSERT_FALSE(page->runner());
            ASSERT_EQ(rig.reopened()->openCareRuns().value(), std::vector{left}) << "paused, not given up";
            page->startCare(toolFor(card), card.id, {});
        }
        press(Qt::Key_Return);
        ASSERT_FALSE(page->runner());
        ASSERT_TRUE(rig.reopened()->openCareRuns().value().empty());
        settle();
    }
}

TEST_F(CareScreen, DrasticCareIsAskedAboutAndTheReasonLandsInTheRecord) {
    begin();
    open();
    page->startCare(cleaver, std::string(action::bladeRotate), {});
    auto* ask = asked();
    ASSERT_TRUE(ask);
    EXPECT_FALSE(page->runner()) << "not before it was answered";
    QString said;
    for (auto* label : ask->findChildren<QLabel*>()) said += label->text() + '\n';
    const auto deck = CareDesk::of(*session).look()->situation.deck;
    for (const auto gentler : {action::cleaverClean, action::bladeClean})
        EXPECT_TRUE(said.contains(QString::fromStdString(deck.find(gentler)->title))) << said.toStdString();
    EXPECT_TRUE(said.contains("not in the logbook"));
    auto* reason = ask->findChild<QLineEdit*>();
    QTest::keyClick(reason, Qt::Key_Return);
    EXPECT_TRUE(asked()) << "no reason, no going on";
    QTest::keyClicks(reason, "the edge is chipped");
    QTest::keyClick(reason, Qt::Key_Return);
    ASSERT_TRUE(page->runner());
    for (int i = 0; i < 60 && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) goOn();
    press(Qt::Key_Return);
    const auto records = rig.reopened()->careRecords(cleaver).value();
    ASSERT_EQ(records.size(), 1u);
    EXPECT_EQ(records[0].fields.at(std::string(care::field::skippedReason)), "the edge is chipped");
    EXPECT_EQ(records[0].fields.at(std::string(care::field::skippedGentler)), "cleaver_clean,blade_clean");
}

TEST_F(CareScreen, TheGentlerCareIsOneKeyAwayAndOnceDoneNothingIsAsked) {
    begin();
    open();
    page->startCare(cleaver, std::string(action::bladeClean), {});
    ASSERT_TRUE(asked());
    QTest::keyClick(asked()->focusWidget(), Qt::Key_Space);
    ASSERT_TRUE(page->runner());
    EXPECT_EQ(page->runner()->run().action, action::cleaverClean);
    for (int i = 0; i < 60 && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) goOn();
    press(Qt::Key_Return);
    settle();
    page->startCare(cleaver, std::string(action::bladeClean), {});
    EXPECT_FALSE(asked());
    EXPECT_TRUE(page->runner());
}

TEST_F(CareScreen, APhotoIsKeptWithItsRecordUpToItsLimit) {
    begin();
    open();
    const std::string picture("\x89PNG\r\n\x1a\n a test, no picture");
    const auto file = [&](const char* name, std::size_t size) {
        std::ofstream out(rig.folder / name, std::ios::binary);
        out << picture << std::string(size - picture.size(), ' ');
        return QString::fromStdString((rig.folder / name).string());
    };
    const QString small = file("edge.png", picture.size());
    const QString large = file("large.png", attachmentLimit + 1);
    const QString other = file("book.txt", picture.size());
    take(cleaver, std::string(action::cleaverClean));
    FieldEdit* photo = nullptr;
    for (int i = 0; i < 60 && !photo; ++i) {
        const auto screen = page->runner()->screen();
        ASSERT_NE(screen.kind, care::ScreenKind::Finished);
        for (auto* edit : page->runner()->findChildren<FieldEdit*>())
            if (edit->isVisible() && edit->field().kind == care::FieldKind::Photo) photo = edit;
        if (!photo) goOn();
    }
    ASSERT_TRUE(photo);
    const auto choose = [&](const QString& path) {
        photo->takeFocus();
        QTest::keyClick(photo->findChild<QPushButton*>(), Qt::Key_Space);
        auto* dialog = photo->findChild<QFileDialog*>();
        ASSERT_TRUE(dialog);
        auto* name = dialog->findChild<QLineEdit*>("fileNameEdit");
        ASSERT_TRUE(name);
        name->setText(path);
        ASSERT_TRUE(QMetaObject::invokeMethod(dialog, "accept", Qt::DirectConnection));
        ASSERT_TRUE(eventually([&] { return !photo->findChild<QFileDialog*>(); }));
    };
    choose(large);
    EXPECT_TRUE(photo->photo().isEmpty());
    EXPECT_TRUE(photo->findChild<QPushButton*>()->text().contains("larger"));
    choose(other);
    EXPECT_TRUE(photo->photo().isEmpty());
    choose(small);
    EXPECT_EQ(photo->photo().toStdString(), picture);
    for (int i = 0; i < 60 && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) goOn();
    press(Qt::Key_B);
    photo = nullptr;
    for (auto* edit : page->runner()->findChildren<FieldEdit*>())
        if (edit->isVisible() && edit->field().kind == care::FieldKind::Photo) photo = edit;
    ASSERT_TRUE(photo);
    EXPECT_EQ(photo->value(), "edge.png") << "read again, it is still there";
    goOn();
    press(Qt::Key_Return);
    const auto records = rig.reopened()->careRecords(cleaver).value();
    ASSERT_EQ(records.size(), 1u);
    EXPECT_EQ(records[0].fields.at("photo"), "edge.png");
    const auto kept = rig.reopened()->attachments(records[0].id.uuid).value();
    ASSERT_EQ(kept.size(), 1u);
    EXPECT_EQ(kept[0].bytes, picture);
    EXPECT_EQ(kept[0].mediaType, "image/png");
}

TEST_F(CareScreen, LimitsAreChangedByKeyboardWithinTheirRangeOnly) {
    begin();
    open();
    session->actions().find("care.limits")->trigger();
    auto* sheet = page->window()->findChild<LimitsSheet*>();
    ASSERT_TRUE(sheet);
    const auto lineOf = [&](const QString& part) -> QLineEdit* {
        for (auto* line : sheet->findChildren<QLineEdit*>())
            if (line->accessibleName().contains(part)) return line;
        return nullptr;
    };
    auto* idle = lineOf("days without an arc");
    ASSERT_TRUE(idle);
    EXPECT_TRUE(idle->text().isEmpty()) << "as shipped";
    QTest::keyClicks(idle, "400");
    QTest::keyClick(idle, Qt::Key_Return);
    EXPECT_TRUE(sheet->isVisible());
    EXPECT_TRUE(sheet->said().contains("1 to 365")) << sheet->said().toStdString();
    EXPECT_EQ(rig.reopened()->setting("care.idle_days").value(), std::nullopt);
    idle->clear();
    QTest::keyClicks(idle, "21");
    QTest::keyClicks(lineOf("temperature"), "7,5");
    QTest::keyClick(idle, Qt::Key_Return);
    EXPECT_EQ(rig.reopened()->setting("care.idle_days").value(), "21");
    EXPECT_EQ(rig.reopened()->setting("care.environment_jump_c").value(), "7.5");
    settle();
    EXPECT_EQ(CareDesk::of(*session).look()->situation.settings.idleDays, 21);
}

TEST_F(CareScreen, ABrokenEditionIsToldAndTheShippedCardIsUsed) {
    begin();
    rig.write(CardEdition{rig.newId<EntryId>(), "groove_clean", 2, "{ \"id\": \"groove_clean\" "});
    open();
    auto* aside = page->findChild<QLabel*>("put_aside");
    ASSERT_TRUE(aside);
    EXPECT_TRUE(aside->isVisible());
    EXPECT_TRUE(aside->text().contains("line 1")) << aside->text().toStdString();
    take(splicer, std::string(action::grooveClean));
    ASSERT_TRUE(page->runner());
    EXPECT_EQ(page->runner()->run().cardVersion, 1);
}

TEST_F(CareScreen, AStepThatDidNotSucceedIsRepeatedAndCounted) {
    begin();
    open();
    take(splicer, std::string(action::arcCalibration));
    int rounds = 0;
    for (int i = 0; i < 60 && page->runner()->screen().kind != care::ScreenKind::Finished; ++i) {
        const auto screen = page->runner()->screen();
        if (screen.step && std::holds_alternative<care::RepeatStep>(screen.step->what)) {
            EXPECT_EQ(screen.round, rounds + 1);
            ++rounds;
            press(Qt::Key_N);
        } else {
            goOn();
        }
    }
    EXPECT_EQ(rounds, 4) << "up to four runs, then diagnostics (common practice)";
    press(Qt::Key_Return);
    const auto records = rig.reopened()->careRecords(splicer).value();
    ASSERT_EQ(records.size(), 1u);
    EXPECT_EQ(records[0].fields.at(std::string(care::field::outcome)), "not_reached");
}

TEST_F(CareScreen, APausedRunGoesOnAtTheSameStepAfterTheProgramWentAway) {
    begin();
    open();
    page->startCare(splicer, std::string(action::grooveClean), {});
    for (int i = 0; i < 4; ++i) goOn();
    const auto left = page->runner()->run();
    page.reset();
    rig.session.reset();
    open();
    page->startCare(splicer, std::string(action::grooveClean), {});
    ASSERT_TRUE(page->runner());
    EXPECT_EQ(page->runner()->run(), left);
    press(Qt::Key_Escape);
    EXPECT_FALSE(page->runner());
    EXPECT_EQ(rig.reopened()->openCareRuns().value().size(), 1u) << "paused, not given up";
}

TEST_F(CareScreen, TheQueueIsTakenUpByKeyboardAndClosesByTheRecordAlone) {
    begin();
    CareRecord electrodes;
    electrodes.id = rig.newId<CareId>();
    electrodes.tool = splicer;
    electrodes.at = rig.clock.now();
    electrodes.action = std::string(action::electrodeReplace);
    rig.write(electrodes);
    open();
    auto held = [&] {
        const auto look = CareDesk::of(*session).look();
        return std::ranges::count_if(look->items, [&](const care::DueItem& item) {
            return item.queue == care::Queue::Hold && item.tool == splicer;
        });
    };
    ASSERT_GT(held(), 0);
    auto* first = page->firstFocus();
    first->setFocus();
    QTest::keyClick(first, Qt::Key_Return);
    ASSERT_TRUE(page->runner());
    press(Qt::Key_Escape);
    EXPECT_GT(held(), 0) << "looking at a card closes nothing";
}

TEST_F(CareScreen, AnEditedCardIsAdoptedOnlyWhenItPasses) {
    begin();
    open();
    const auto before = *CareDesk::of(*session).look()->situation.deck.find(action::grooveClean);
    {
        CardEditor editor(*session, before);
        editor.show();
        editor.edit().setPlainText("{ \"id\": \"groove_clean\" ");
        QTest::keyClick(&editor.edit(), Qt::Key_Return, Qt::ControlModifier);
        EXPECT_FALSE(editor.said().isEmpty());
        EXPECT_TRUE(editor.isVisible());
    }
    EXPECT_TRUE(rig.reopened()->cardEditions().value().empty());
    // A run that is begun with the old edition goes on with it.
    page->startCare(splicer, before.id, {});
    goOn();
    press(Qt::Key_Escape);
    {
        CardEditor editor(*session, before);
        editor.show();
        const QString changed =
            editor.edit().toPlainText().replace(QString::fromStdString(before.title), "Brush the V-grooves");
        editor.edit().setPlainText(changed);
        QTest::keyClick(&editor.edit(), Qt::Key_Return, Qt::ControlModifier);
        EXPECT_TRUE(editor.said().isEmpty()) << editor.said().toStdString();
        EXPECT_FALSE(editor.isVisible());
    }
    ASSERT_EQ(rig.reopened()->cardEditions().value().size(), 1u);
    ASSERT_TRUE(eventually([&] {
        const auto* now = CareDesk::of(*session).look()->situation.deck.find(action::grooveClean);
        return page->settled() && now->version > before.version;
    }));
    page->startCare(splicer, before.id, {});
    ASSERT_TRUE(page->runner());
    EXPECT_EQ(page->runner()->run().cardVersion, before.version);
}

}  // namespace
}  // namespace arc::ui
