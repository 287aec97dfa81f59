// SPDX-License-Identifier: GPL-3.0-or-later
// A process with digits on the pad is killed without a warning; the next one brings them back.
#include <cstdlib>
#include <gtest/gtest.h>
#include <signal.h>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

#include "tests/support/pad_crew.hpp"
#include "ui/today/loss_pad.hpp"
#include "ui/today/sitting.hpp"
#include "ui/today/today_page.hpp"

namespace arc::ui {
namespace {

constexpr const char* folderVariable = "ARC_TEST_FOLDER";
constexpr int answersTo = 3;  // file descriptor

/// A window over the book of a folder, as a program of its own has it.
struct OpenWindow {
    test::FakeClock clock;
    test::FakeRandom random;
    std::unique_ptr<Logbook> book;
    std::unique_ptr<test::RigBench> bench;
    std::unique_ptr<Session> session;
    std::unique_ptr<TodayPage> page;

    explicit OpenWindow(const std::filesystem::path& folder, std::uint64_t seed) : random(seed) {
        applyTheme(*qApp, Theme{});
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                           QString::fromStdString((folder / "config").string()));
        const auto file = folder / "test.arcbook";
        book = storage::openLogbook(file, storage::OpenMode::ReadWrite, clock, random).value();
        bench = std::make_unique<test::RigBench>(file, clock, random);
        session = std::make_unique<Session>(*book, *bench, clock, random);
        page = std::make_unique<TodayPage>(*session);
        page->show();
    }
};

/// The typist; does nothing unless the test below starts it as a process of its own.
TEST(HelperProcess, TypesAndIsKilled) {
    const char* folder = std::getenv(folderVariable);
    if (folder == nullptr) return;
    OpenWindow window(folder, 77);
    test::typeKeys(&window.page->pad(), "3\r4 0,0");
    if (write(answersTo, "x", 1) != 1) _exit(3);
    while (true) pause();
}

TEST(Draft, WhatAKilledProcessHadTypedIsThereAgain) {
    test::UiRig rig;
    test::makePadCrew(rig, 12);
    rig.book.reset();

    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const std::string folder = std::string(folderVariable) + "=" + (rig.folder / "").string();
    const pid_t typist = fork();
    if (typist == 0) {
        dup2(ends[1], answersTo);
        std::string home = std::string("HOME=") + (std::getenv("HOME") ? std::getenv("HOME") : "/");
        std::string platform = "QT_QPA_PLATFORM=offscreen";
        char* const environment[] = {const_cast<char*>(folder.c_str()), home.data(), platform.data(),
                                     nullptr};
        char* const words[] = {const_cast<char*>("typist"),
                               const_cast<char*>("--gtest_filter=HelperProcess.TypesAndIsKilled"), nullptr};
        execve("/proc/self/exe", words, environment);
        _exit(4);
    }
    close(ends[1]);
    char answer = 0;
    ASSERT_EQ(read(ends[0], &answer, 1), 1) << "the typist did not come up";
    close(ends[0]);
    ASSERT_EQ(kill(typist, SIGKILL), 0);
    int how = 0;
    ASSERT_EQ(waitpid(typist, &how, 0), typist);
    ASSERT_TRUE(WIFSIGNALED(how) && WTERMSIG(how) == SIGKILL);

    OpenWindow window(rig.folder / "", 78);
    LossPad& pad = window.page->pad();
    EXPECT_EQ(pad.pad()->typed(), "0,0");
    EXPECT_EQ(pad.pad()->noted(), std::vector<Loss>{Loss{40}});
    EXPECT_EQ(pad.pad()->done(), 1u) << "what Enter had saved is in the logbook";
    EXPECT_TRUE(pad.hint().contains("not saved"));
    test::typeKeys(&pad, "5\r");
    const auto rows = window.book->splices({}, PageOrder::OldestFirst, std::nullopt, 10).value();
    ASSERT_EQ(rows.size(), 3u);
    EXPECT_EQ(rows[1].reading.loss, Loss{40});
    EXPECT_EQ(rows[2].reading.loss, Loss{50});
    EXPECT_TRUE(rememberedDraft(pad.pad()->setUp().closure).empty());
}

TEST(Draft, EachClosureKeepsItsOwn) {
    test::UiRig rig;
    const ClosureId here = rig.newId<ClosureId>(), there = rig.newId<ClosureId>();
    const Draft first{here, "7", {Loss{40}}, "1"};
    remember(first);
    remember(Draft{there, "1", {}, "2"});
    remember(Draft{there, "1", {}, ""});
    EXPECT_EQ(rememberedDraft(here), first);
    EXPECT_TRUE(rememberedDraft(there).empty());
}

}  // namespace
}  // namespace arc::ui
