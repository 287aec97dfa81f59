// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over, taking in, edits apart, copies and a damaged logbook, by keyboard. What lies behind is
// answered by the test.
#include "ui/logbook/logbook_page.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

#include <gtest/gtest.h>

#include "tests/support/real_window.hpp"
#include "ui/logbook/backups_panel.hpp"
#include "ui/logbook/condition_panel.hpp"
#include "ui/logbook/pack_panel.hpp"
#include "ui/logbook/take_in_panel.hpp"
#include "ui/shell/book_bar.hpp"

namespace arc::ui {
namespace {

using test::eventually;
using test::RealWindow;

const Device vanTwo{"key-of-van-2", "3f9a 07c2 11de 84b0", "van-2", DeviceStanding::Unknown};

class HandoverBench final : public test::RigBench {
  public:
    using RigBench::RigBench;
    Result<PackCount> packSatchel(const PackOrder& order, Progress&) override {
        packed.push_back(order);
        return PackCount{12, 0, 1};
    }
    Result<SatchelAnswer> takeSatchel(const std::filesystem::path& file,
                                      const std::optional<std::string>& passphrase, Progress&) override {
        taken.emplace_back(file, passphrase.value_or(""));
        if (accepted.empty()) {
            waiting = {{file, vanTwo, Instant{}, false}};
            return SatchelAnswer{waiting.front()};
        }
        waiting.clear();
        return SatchelAnswer{
            TakenIn{{vanTwo.key, vanTwo.fingerprint, accepted, DeviceStanding::Accepted}, 12, 3, 1}};
    }
    Result<std::vector<WaitingSatchel>> waitingSatchels() override { return waiting; }
    Result<void> discardSatchel(const WaitingSatchel&) override {
        waiting.clear();
        return {};
    }
    Result<std::vector<Device>> devices() override {
        return std::vector<Device>{{"own", "aaaa bbbb cccc dddd", "this", DeviceStanding::ThisOne}, vanTwo};
    }
    Result<void> acceptDevice(const std::string& key, const std::string& name) override {
        EXPECT_EQ(key, vanTwo.key);
        accepted = name;
        return {};
    }
    Result<std::vector<ConcurrentEdits>> concurrentEdits() override { return edits; }
    Result<Receipt> settle(const ConcurrentEdits& one, std::size_t keep, const Context& context) override {
        kept = one.edits.at(keep).words;
        keptBy = context.who;
        edits.clear();
        return Receipt{};
    }
    Result<std::vector<NumberClash>> numberClashes() override { return clashes; }
    Result<std::vector<BackupCopy>> backups() override { return copies; }
    Result<BackupCopy> makeBackup(Progress&) override {
        copies.push_back({"/books/crew.backups/crew.2031-03-03.arcbook", Instant{}, 4096});
        return copies.back();
    }
    Result<void> restoreBackup(const std::filesystem::path& copy, const std::filesystem::path& book,
                               Progress&) override {
        restored = {copy, book};
        return {};
    }
    Result<BookState> bookState() override { return state; }
    Result<BookState> checkBook(Progress&) override { return state; }
    Result<RescueCount> rescueInto(const std::filesystem::path& book, Progress&) override {
        rescued = book;
        return RescueCount{90, 2, 8, {"3 Mar 2031 08:00 Splice of fibre 7: 0.04 dB"}};
    }

    std::vector<PackOrder> packed;
    std::vector<std::pair<std::filesystem::path, std::string>> taken;
    std::vector<WaitingSatchel> waiting;
    std::string accepted, kept, keptBy;
    std::vector<ConcurrentEdits> edits;
    std::vector<NumberClash> clashes;
    std::vector<BackupCopy> copies;
    std::pair<std::filesystem::path, std::filesystem::path> restored;
    std::filesystem::path rescued;
    BookState state;
};

class LogbookScreen : public testing::Test {
  protected:
    void SetUp() override {
        auto made =
            std::make_unique<HandoverBench>(at.rig.folder / "test.arcbook", at.rig.clock, at.rig.random);
        bench = made.get();
        at.rig.bench = std::move(made);
        job = at.rig.newId<JobId>();
        at.rig.write(Job{job, "HR-B", "Harrow Ridge backbone", {}});
    }
    /// From anywhere into a part of the Logbook screen.
    void go(const QString& part) {
        RealWindow::press(Qt::Key_F7);
        auto* list = at.window->page(Screen::Logbook).findChild<QListWidget*>();
        ASSERT_TRUE(list->hasFocus());
        RealWindow::press(Qt::Key_Home);
        for (int i = 0; i < list->count() && !list->currentItem()->text().startsWith(part); ++i)
            RealWindow::press(Qt::Key_Down);
        ASSERT_TRUE(list->currentItem()->text().startsWith(part)) << part.toStdString();
        RealWindow::press(Qt::Key_Return);
        ASSERT_TRUE(at.settle());
    }
    template <class P>
    P* panel() {
        return at.window->findChild<P*>();
    }
    bool says(const QString& words) {
        for (const auto* label : at.window->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }

    RealWindow at;
    HandoverBench* bench = nullptr;
    JobId job;
};

TEST_F(LogbookScreen, OneJobIsPackedWithAPassphraseTypedTwice) {
    ASSERT_TRUE(at.open());
    go("Hand over");
    RealWindow::press(Qt::Key_End);
    RealWindow::press(Qt::Key_Tab);
    RealWindow::press(Qt::Key_Tab);
    RealWindow::type("three dry fibres");
    RealWindow::press(Qt::Key_Tab);
    RealWindow::type("three dry fibers");
    RealWindow::press(Qt::Key_Return);
    EXPECT_TRUE(says("The two passphrases are not the same"));
    RealWindow::type("three dry fibres");
    EXPECT_TRUE(bench->packed.empty());
    panel<PackPanel>()->packInto(QString::fromStdString(at.rig.folder.path.string()));
    ASSERT_TRUE(eventually([&] { return panel<PackPanel>()->settled(); }));
    ASSERT_EQ(bench->packed.size(), 1u);
    EXPECT_EQ(bench->packed[0].job, job);
    EXPECT_EQ(bench->packed[0].passphrase, "three dry fibres");
    EXPECT_EQ(bench->packed[0].satchel.extension(), ".satchel");
    EXPECT_TRUE(says("12 entries are in "));
    RealWindow::picture(at.window.get(), "logbook-pack");
}

TEST_F(LogbookScreen, ASatchelSaysWhatItIsThenWaitsUntilItsLaptopIsAccepted) {
    ASSERT_TRUE(at.open());
    go("Take in");
    auto* take = panel<TakeInPanel>();
    take->look("/stick/van.satchel");
    ASSERT_TRUE(at.settle());
    EXPECT_TRUE(says("Everything in van.satchel is as it was written")) << "what it is comes first";
    EXPECT_TRUE(bench->taken.empty()) << "looking takes nothing";
    RealWindow::picture(at.window.get(), "logbook-preview");
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(at.settle());
    EXPECT_TRUE(says("nothing of it is in the logbook"));
    ASSERT_EQ(bench->waiting.size(), 1u);
    RealWindow::picture(at.window.get(), "logbook-waiting");
    RealWindow::press(Qt::Key_A);
    EXPECT_TRUE(says("3f9a 07c2 11de 84b0"));
    RealWindow::type("Van 2");
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(at.settle());
    EXPECT_EQ(bench->accepted, "Van 2");
    EXPECT_TRUE(says("New entries from Van 2: 12; here already: 3."));
    EXPECT_TRUE(says("Edited twice"));
    EXPECT_TRUE(bench->waiting.empty());
}

TEST_F(LogbookScreen, AWaitingSatchelIsThrownAwayOnlyWhenAskedTwice) {
    bench->waiting = {{"/books/van.satchel", vanTwo, Instant{}, false}};
    ASSERT_TRUE(at.open());
    go("Take in");
    for (int i = 0; i < 12 && QApplication::focusWidget()->accessibleName() != "Waiting satchels"; ++i)
        RealWindow::press(Qt::Key_Tab);
    RealWindow::press(Qt::Key_X);
    EXPECT_EQ(bench->waiting.size(), 1u);
    RealWindow::press(Qt::Key_X);
    EXPECT_TRUE(bench->waiting.empty());
}

TEST_F(LogbookScreen, OfARecordEditedTwiceBothVersionsShowAndOneIsKept) {
    ConcurrentEdits one;
    one.record = job.uuid;
    one.kind = "job";
    one.edits = {{Instant{}, "Ada", "van-1", "window", "Job HR-B, backbone", "title: backbone", "1"},
                 {Instant{}, "Ben", "van-2", "window", "Job HR-B, ridge", "title: ridge", "2"}};
    bench->edits = {one};
    NumberClash clash;
    clash.jobLabel = "HR-B";
    clash.number = 2;
    clash.records.resize(2);
    clash.records[0].by = "Ada";
    clash.records[1].by = "Ben";
    bench->clashes = {clash};
    ASSERT_TRUE(at.open());
    go("Edited twice");
    EXPECT_TRUE(says("Job HR-B, backbone"));
    EXPECT_TRUE(says("Job HR-B, ridge"));
    EXPECT_TRUE(says("by Ada, from van-1, window"));
    EXPECT_TRUE(says("Closeout record no. 2 of HR-B was issued twice"));
    auto* list = at.window->page(Screen::Logbook).findChild<QListWidget*>();
    EXPECT_TRUE(list->currentItem()->text().contains("(2)")) << "the list says how many wait";
    RealWindow::picture(at.window.get(), "logbook-twice");
    RealWindow::press(Qt::Key_1);
    ASSERT_TRUE(at.settle());
    EXPECT_EQ(bench->kept, "Job HR-B, backbone");
    EXPECT_EQ(bench->keptBy, "Mira");
    EXPECT_TRUE(says("Kept: Job HR-B, backbone"));
}

TEST_F(LogbookScreen, ACopyIsMadeAndALogbookIsMadeOfIt) {
    ASSERT_TRUE(at.open());
    go("Copies");
    RealWindow::press(Qt::Key_Space);
    ASSERT_TRUE(at.settle());
    EXPECT_TRUE(says("Copied: /books/crew.backups/crew.2031-03-03.arcbook"));
    panel<BackupsPanel>()->restoreInto(QString::fromStdString(at.rig.folder.path.string()));
    ASSERT_TRUE(at.settle());
    EXPECT_EQ(bench->restored.first, "/books/crew.backups/crew.2031-03-03.arcbook");
    EXPECT_EQ(bench->restored.second.extension(), ".arcbook");
    EXPECT_TRUE(says("The copy is sound"));
    RealWindow::picture(at.window.get(), "logbook-copies");
}

TEST_F(LogbookScreen, ALaptopGetsAName) {
    ASSERT_TRUE(at.open());
    go("Laptops");
    EXPECT_TRUE(says("aaaa bbbb cccc dddd"));
    RealWindow::press(Qt::Key_Down);
    RealWindow::press(Qt::Key_N);
    RealWindow::type("Van 2");
    RealWindow::press(Qt::Key_Return);
    EXPECT_EQ(bench->accepted, "Van 2");
    RealWindow::picture(at.window.get(), "logbook-laptops");
}

TEST_F(LogbookScreen, ADamagedLogbookSaysSoAboveEveryPageAndIsRescued) {
    bench->state = {BookAccess::Damaged,
                    "the logbook is damaged and open for reading only",
                    {"arcs: 1,200 of 1,310", "journal: 1,400 of 1,500"}};
    ASSERT_TRUE(at.open());
    EXPECT_TRUE(says("The logbook is damaged and open for reading only"));
    auto* bar = at.window->findChild<BookBar*>();
    bar->findChild<QPushButton*>()->setFocus();
    RealWindow::press(Qt::Key_Space);
    EXPECT_EQ(at.window->screen(), Screen::Logbook);
    auto* panel = at.window->findChild<ConditionPanel*>();
    ASSERT_TRUE(panel->isVisible());
    RealWindow::picture(at.window.get(), "logbook-damaged");
    panel->rescueInto(QString::fromStdString(at.rig.folder.path.string()));
    ASSERT_TRUE(at.settle());
    EXPECT_EQ(bench->rescued.filename(), "rescued.arcbook");
    EXPECT_TRUE(says("90 entries as they were, 2 in part, 8 lost"));
}

}  // namespace
}  // namespace arc::ui
