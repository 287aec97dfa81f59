// SPDX-License-Identifier: GPL-3.0-or-later
// Handing over between real logbooks, each with its own window, key and clock, by keyboard: nothing behind
// the windows is answered by the test.
#include <QApplication>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

#include <cstdlib>
#include <gtest/gtest.h>

#include "app/workbench.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"
#include "tests/support/real_window.hpp"
#include "ui/logbook/take_in_panel.hpp"
#include "ui/shell/page.hpp"

namespace arc::ui {
namespace {

using test::eventually;
using test::RealWindow;

QString whereTheKeysGo() {
    const QWidget* at = QApplication::focusWidget();
    return at ? at->accessibleName() : QString();
}

/// A laptop: folder, key, clock, logbook, and its window while somebody sits at it.
class Van {
  public:
    explicit Van(std::uint64_t seed)
        : clock(1'930'000'000'000 + static_cast<std::int64_t>(seed) * 1'000), random(seed) {
        book = storage::createLogbook(file(), clock, random).value();
    }
    [[nodiscard]] std::filesystem::path file() const { return folder / "crew.arcbook"; }
    [[nodiscard]] std::string head() const { return book->journalHead().value(); }

    /// Somebody sits down and opens the window.
    void open(const char* crew) {
        setenv("ARCWRIGHT_HOME", (folder / "home").c_str(), 1);
        applyTheme(*qApp, Theme{});
        bench = app::makeWorkbench(file(), clock, random);
        session = std::make_unique<Session>(*book, *bench, clock, random);
        session->setCrew(crew);
        WindowOptions options;
        options.remember = Remember::No;
        window = std::make_unique<MainWindow>(*session, options);
        window->resize(1366, 768);
        window->show();
        window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        EXPECT_TRUE(settle());
    }
    void close() {
        window.reset();
        session.reset();
        bench.reset();
    }
    [[nodiscard]] bool settle() {
        return eventually([this] { return window->settled(); });
    }
    /// From anywhere into a part of the Logbook screen.
    void go(const QString& part) {
        RealWindow::press(Qt::Key_F7);
        auto* const list = window->page(Screen::Logbook).findChild<QListWidget*>();
        ASSERT_TRUE(list->hasFocus());
        RealWindow::press(Qt::Key_Home);
        for (int i = 0; i < list->count() && !list->currentItem()->text().startsWith(part); ++i)
            RealWindow::press(Qt::Key_Down);
        ASSERT_TRUE(list->currentItem()->text().startsWith(part)) << part.toStdString();
        RealWindow::press(Qt::Key_Return);
        ASSERT_TRUE(settle());
    }
    bool says(const QString& words) {
        for (const auto* label : window->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
    std::string allItSays() {
        QStringList lines;
        for (const auto* label : window->findChildren<QLabel*>())
            if (label->isVisible() && !label->text().isEmpty()) lines << label->text();
        return lines.join(QStringLiteral(" | ")).toStdString();
    }
    /// Types a path into the file dialog that is open.
    void give(const std::filesystem::path& path) {
        QFileDialog* dialog = window->findChild<QFileDialog*>();
        ASSERT_TRUE(dialog);
        auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        ASSERT_TRUE(name);
        name->setFocus();
        name->setText(QString::fromStdString(path.string()));
        QTest::keyClick(name, Qt::Key_Return);
        ASSERT_TRUE(eventually([this] { return !window->findChild<QFileDialog*>(); }));
        // As a desktop does when a dialog goes; the screen without one leaves no window active.
        window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
        ASSERT_TRUE(settle());
    }
    /// "everything" (0), "since a day" (1) or "one job" (2), the job as the how manieth of its list.
    std::filesystem::path handOver(int what, int job, const QString& passphrase) {
        go("Hand over");
        RealWindow::press(Qt::Key_Home);
        for (int i = 0; i < what; ++i) RealWindow::press(Qt::Key_Down);
        for (int i = 0; i < 8 && whereTheKeysGo() != "Passphrase"; ++i) {
            if (whereTheKeysGo() == "Job")
                for (int down = 0; down < job; ++down) RealWindow::press(Qt::Key_Down);
            RealWindow::press(Qt::Key_Tab);
        }
        EXPECT_EQ(whereTheKeysGo(), "Passphrase");
        RealWindow::type(passphrase);
        if (!passphrase.isEmpty()) {
            RealWindow::press(Qt::Key_Tab);
            RealWindow::type(passphrase);
        }
        RealWindow::press(Qt::Key_Return);
        const auto out = folder / ("stick-" + std::to_string(++packed));
        std::filesystem::create_directory(out);
        give(out);
        EXPECT_TRUE(says("signed by this laptop")) << allItSays();
        for (const auto& entry : std::filesystem::directory_iterator(out))
            if (entry.path().extension() == ".satchel") return entry.path();
        ADD_FAILURE() << "no satchel was written";
        return {};
    }
    /// Chooses a satchel; what it is shows, the passphrase has the keyboard.
    void look(const std::filesystem::path& satchel) {
        go("Take in");
        RealWindow::press(Qt::Key_Space);
        give(satchel);
        EXPECT_TRUE(eventually([] { return whereTheKeysGo() == "Passphrase of the satchel"; }))
            << whereTheKeysGo().toStdString() << " of " << allItSays();
    }
    void takeIn(const QString& passphrase = {}) {
        RealWindow::type(passphrase);
        RealWindow::press(Qt::Key_Return);
        EXPECT_TRUE(settle());
    }
    void save(const Entry& entry) {
        clock.at.ms += 60'000;
        const auto saved = book->append(entry, {session ? session->crew() : "test", "window", {}});
        if (!saved) ADD_FAILURE() << saved.error().sentence();
        if (session) session->noteChange();
    }
    void expectSound() {
        NoProgress unwatched;
        const auto verdict = storage::verifyBook(file(), unwatched);
        EXPECT_TRUE(verdict) << verdict.error().sentence();
    }

    test::TempFolder folder;
    test::FakeClock clock;
    test::FakeRandom random;
    std::unique_ptr<Logbook> book;
    std::unique_ptr<Workbench> bench;
    std::unique_ptr<Session> session;
    std::unique_ptr<MainWindow> window;
    int packed = 0;
};

std::vector<SpliceRow> splicesOf(Logbook& book) {
    return book.splices({}, PageOrder::OldestFirst, {}, 1'000).value();
}

class TwoBooks : public testing::Test {
  protected:
    void SetUp() override {
        const auto kit = test::addKit(*van.book, van.clock, van.random);
        job = kit.job;
        other = kit.job;
        other.id = makeId<JobId>(van.clock, van.random);
        other.label = "HR-Z";
        van.save(other);
        for (int i = 0; i < 6; ++i) {
            SpliceArc arc =
                test::arcOf(kit, makeId<ArcId>(van.clock, van.random), 1'929'900'000'000 + i * 60'000, 4);
            if (i >= 4) arc.job = other.id;
            van.save(arc);
        }
    }
    /// The office takes in all of the van, accepting its key on the way.
    void acquaint() {
        van.open("Ada");
        const auto all = van.handOver(0, 0, {});
        van.close();
        office.open("Mira");
        office.look(all);
        office.takeIn();
        RealWindow::press(Qt::Key_A);
        RealWindow::press(Qt::Key_Return);
        ASSERT_TRUE(office.settle());
        ASSERT_EQ(splicesOf(*office.book).size(), 24u) << office.allItSays();
        office.close();
    }

    Van van{1}, office{2};
    Job job, other;
};

TEST_F(TwoBooks, ASealedSatchelOfAStrangerWaitsIsAcceptedAndOpensWithItsPassphraseOnly) {
    van.open("Ada");
    van.go("Laptops");
    const auto* own = van.window->findChild<QLabel*>();
    for (const auto* label : van.window->findChildren<QLabel*>())
        if (label->accessibleName() == "The key of this laptop") own = label;
    const QString key = own->text();
    const auto satchel = van.handOver(0, 0, "three dry fibres");
    van.close();

    office.open("Mira");
    const std::string before = office.head();
    office.look(satchel);
    office.takeIn("three dry fibres");
    EXPECT_TRUE(office.says("Nobody has accepted the laptop that signed it")) << office.allItSays();
    EXPECT_EQ(office.head(), before) << "nothing of a stranger is in the logbook";
    std::filesystem::remove(satchel);  // the stick goes home

    RealWindow::press(Qt::Key_A);
    EXPECT_TRUE(office.says(key)) << "the key that the van shows is the one to compare";
    RealWindow::press(Qt::Key_A, Qt::ControlModifier);
    RealWindow::type("Van 2");
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(office.settle());
    EXPECT_EQ(office.head(), before) << "sealed: it opens with its passphrase only";

    EXPECT_EQ(whereTheKeysGo(), "Passphrase of the satchel")
        << office.allItSays();
    office.takeIn("three wet fibres");
    EXPECT_TRUE(office.says("passphrase")) << office.allItSays();
    EXPECT_EQ(office.head(), before);
    EXPECT_TRUE(splicesOf(*office.book).empty());

    auto* line = office.window->findChild<TakeInPanel*>()->findChild<QLineEdit*>();
    for (int i = 0; i < 12 && QApplication::focusWidget() != line; ++i) RealWindow::press(Qt::Key_Tab);
    ASSERT_EQ(QApplication::focusWidget(), line);
    RealWindow::press(Qt::Key_A, Qt::ControlModifier);
    office.takeIn("three dry fibres");
    EXPECT_TRUE(office.says("New entries from")) << office.allItSays();
    const auto theirs = splicesOf(*van.book), ours = splicesOf(*office.book);
    ASSERT_EQ(ours.size(), theirs.size());
    for (std::size_t i = 0; i < ours.size(); ++i) {
        EXPECT_EQ(ours[i].arc, theirs[i].arc);
        EXPECT_EQ(ours[i].reading, theirs[i].reading);
    }
    EXPECT_TRUE(office.bench->waitingSatchels()->empty()) << "it waits no longer";
    office.go("Laptops");
    EXPECT_TRUE(office.bench->devices().value().at(1).name == "Van 2");
    office.expectSound();
}

TEST_F(TwoBooks, OfOneJobOnlyThatJobComesAcrossAndTheRestLater) {
    acquaint();
    Van third{3};
    van.open("Ada");
    const auto ofOne = van.handOver(2, 1, {});
    const auto all = van.handOver(0, 0, {});
    van.close();
    third.open("Bo");
    third.look(ofOne);
    third.takeIn();
    RealWindow::press(Qt::Key_A);
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(third.settle());
    const auto some = splicesOf(*third.book);
    ASSERT_EQ(some.size(), 8u) << third.allItSays();
    for (const auto& row : some) EXPECT_EQ(row.arc.job, other.id);
    third.expectSound();
    third.look(all);
    third.takeIn();
    EXPECT_EQ(splicesOf(*third.book).size(), 24u) << third.allItSays();
    third.expectSound();
}

TEST_F(TwoBooks, WhatWasWrittenSinceADayFollowsOnAndTwiceIsOnce) {
    acquaint();
    van.clock.at.ms += 30 * msPerDay;
    SpliceArc late = test::arcOf({van.book->tools().value().back(), {}, job},
                                 makeId<ArcId>(van.clock, van.random), van.clock.now().ms, 2);
    van.open("Ada");
    van.save(late);
    const auto since = van.handOver(1, 0, {});
    van.close();
    Van stranger{4};
    stranger.open("Bo");
    stranger.look(since);
    stranger.takeIn();
    RealWindow::press(Qt::Key_A);
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(stranger.settle());
    EXPECT_TRUE(stranger.says("begins later"))
        << "it has nothing this could follow on: " << stranger.allItSays();
    EXPECT_TRUE(splicesOf(*stranger.book).empty());
    stranger.close();

    office.open("Mira");
    office.look(since);
    office.takeIn();
    EXPECT_TRUE(office.says(": 1; here already")) << office.allItSays();
    EXPECT_EQ(splicesOf(*office.book).size(), 26u);
    const std::string head = office.head();
    office.look(since);
    office.takeIn();
    EXPECT_TRUE(office.says(": 0; here already")) << office.allItSays();
    EXPECT_EQ(office.head(), head);
}

TEST_F(TwoBooks, WhatBothEditedIsListedAndAPersonDecides) {
    acquaint();
    office.open("Mira");
    job.title = "the office's title";
    office.save(job);
    office.close();
    van.open("Ada");
    job.title = "the van's title";
    van.clock.at.ms += msPerDay;
    van.save(job);
    const auto all = van.handOver(0, 0, {});
    van.close();
    office.open("Mira");
    office.look(all);
    office.takeIn();
    EXPECT_TRUE(office.says("Records edited here and there: 1")) << office.allItSays();
    office.go("Edited twice");
    EXPECT_TRUE(office.says("the office's title")) << office.allItSays();
    EXPECT_TRUE(office.says("the van's title"));
    const auto titleShown = [&] {
        const auto jobs = office.book->jobs().value();
        for (const Job& one : jobs)
            if (one.id == job.id) return one.title;
        return std::string();
    };
    EXPECT_EQ(titleShown(), "the van's title") << "the later one shows until somebody decides";
    RealWindow::press(Qt::Key_1);
    ASSERT_TRUE(office.settle());
    EXPECT_EQ(titleShown(), "the office's title");
    EXPECT_TRUE(office.bench->concurrentEdits()->empty());
    int versions = 0;
    const auto history = office.book->historyOf(job.id.uuid).value();
    for (const auto& line : history) versions += line.kind == "job";
    EXPECT_GE(versions, 3) << "both stay in the history";
    const auto back = office.handOver(0, 0, {});
    office.close();
    // The van hears of the decision, once it has accepted the office.
    van.open("Ada");
    van.look(back);
    van.takeIn();
    RealWindow::press(Qt::Key_A);
    RealWindow::press(Qt::Key_Return);
    ASSERT_TRUE(van.settle());
    EXPECT_TRUE(van.bench->concurrentEdits()->empty());
    EXPECT_EQ(van.head(), office.head());
    van.expectSound();
}

}  // namespace
}  // namespace arc::ui
