// SPDX-License-Identifier: GPL-3.0-or-later
// What vans, tents and USB sticks do to a logbook: each case ends in one clear sentence, and nothing that was
// acknowledged is lost.
#include <algorithm>
#include <clocale>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "app/wiring.hpp"
#include "storage/sqlite_logbook.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"
#include "tests/support/run_arcw.hpp"

namespace arc {
namespace {

namespace fs = std::filesystem;
using storage::OpenMode;

class HardUse : public testing::Test {
  protected:
    /// A closed book with one splice.
    fs::path makeOne(const std::string& name = "crew.arcbook") {
        const fs::path file = folder_ / name;
        auto book = storage::createLogbook(file, clock_, random_).value();
        kit_ = test::addKit(*book, clock_, random_);
        first_ = makeId<ArcId>(clock_, random_);
        EXPECT_TRUE(book->append(splice(first_), test::testContext));
        return file;
    }
    [[nodiscard]] SpliceArc splice(ArcId id) const { return test::arcOf(kit_, id, 1'900'000'000'000, 12); }
    std::unique_ptr<Logbook> open(const fs::path& file, OpenMode mode = OpenMode::ReadWrite) {
        auto book = storage::openLogbook(file, mode, clock_, random_);
        EXPECT_TRUE(book) << book.error().sentence();
        return book ? std::move(*book) : nullptr;
    }
    static void expectClear(const Problem& problem) {
        EXPECT_NE(problem.code, ProblemCode::Internal) << problem.sentence();
        EXPECT_FALSE(problem.what.empty());
        EXPECT_FALSE(problem.next.empty()) << problem.sentence();
    }

    test::TempFolder folder_;
    test::FakeClock clock_;
    test::FakeRandom random_;
    test::SmallKit kit_;
    ArcId first_;
};

/// What `work` says when a user without any special right does it; root may write everywhere.
std::string asPlainUser(const std::function<std::string()>& work) {
    int ends[2];
    if (pipe(ends) != 0) return "no pipe";
    const pid_t child = fork();
    if (child == 0) {
        constexpr uid_t nobody = 65534;
        if (geteuid() == 0 && (setgid(nobody) != 0 || setuid(nobody) != 0)) _exit(2);
        const std::string said = work();
        [[maybe_unused]] const auto written = write(ends[1], said.data(), said.size());
        _exit(0);
    }
    close(ends[1]);
    std::string said;
    char piece[512];
    for (ssize_t got = 0; (got = read(ends[0], piece, sizeof piece)) > 0;)
        said.append(piece, static_cast<std::size_t>(got));
    close(ends[0]);
    waitpid(child, nullptr, 0);
    return said;
}

TEST_F(HardUse, AReadOnlyFolderIsSaidAndTheBookCanStillBeRead) {
    const fs::path file = makeOne();
    fs::permissions(file, fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
    fs::permissions(folder_.path, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::group_read |
                                      fs::perms::group_exec | fs::perms::others_read |
                                      fs::perms::others_exec);
    const auto said = asPlainUser([&] {
        auto writing = storage::openLogbook(file, OpenMode::ReadWrite, clock_, random_);
        if (writing) return std::string("opened for writing");
        auto reading = storage::openLogbook(file, OpenMode::ReadOnly, clock_, random_);
        if (!reading) return "not readable: " + reading.error().sentence();
        const auto arc = (*reading)->arc(first_);
        return writing.error().sentence() + (arc && *arc ? " | the splice is there" : " | no splice");
    });
    EXPECT_NE(said.find("may not be written to"), std::string::npos) << said;
    EXPECT_NE(said.find("the splice is there"), std::string::npos) << said;
}

TEST_F(HardUse, ABookInAFolderWhereNothingMayBeMadeIsNotOpenedForWriting) {
    const fs::path file = makeOne();
    fs::permissions(file, fs::perms::all);
    fs::permissions(folder_.path, fs::perms::all & ~(fs::perms::owner_write | fs::perms::group_write |
                                                     fs::perms::others_write));
    const auto said = asPlainUser([&] {
        auto writing = storage::openLogbook(file, OpenMode::ReadWrite, clock_, random_);
        return writing ? std::string("opened") : writing.error().sentence();
    });
    EXPECT_NE(said, "opened");
    EXPECT_EQ(said.find("nternal"), std::string::npos) << said;
    EXPECT_GT(said.size(), 40u) << said;
}

TEST_F(HardUse, AStickThatIsPulledIsSaidAndWhatWasSavedIsOnIt) {
    const fs::path file = makeOne();
    const fs::path away = folder_ / "away";
    fs::create_directory(away);
    auto book = open(file);
    const ArcId saved = makeId<ArcId>(clock_, random_);
    ASSERT_TRUE(book->append(splice(saved), test::testContext));
    for (const char* end : {"", "-wal", "-shm"})
        if (fs::exists(file.string() + end))
            fs::rename(file.string() + end, away / (file.filename().string() + end));
    const ArcId lost = makeId<ArcId>(clock_, random_);
    const auto answer = book->append(splice(lost), test::testContext);
    ASSERT_FALSE(answer);
    expectClear(answer.error());
    book.reset();
    auto back = open(away / file.filename());
    EXPECT_TRUE(back->arc(first_).value());
    EXPECT_TRUE(back->arc(saved).value());
    // The entry that was refused can be entered again.
    EXPECT_TRUE(back->append(splice(lost), test::testContext));
}

TEST_F(HardUse, AnotherFilePutInThePlaceOfTheBookGetsNothing) {
    const fs::path other = makeOne("other.arcbook");
    const fs::path file = makeOne();
    auto book = open(file);
    const ArcId saved = makeId<ArcId>(clock_, random_);
    ASSERT_TRUE(book->append(splice(saved), test::testContext));
    fs::rename(file, folder_ / "kept");
    for (const char* end : {"-wal", "-shm"})
        if (fs::exists(file.string() + end))
            fs::rename(file.string() + end, folder_ / (std::string("kept") + end));
    fs::copy_file(other, file);
    const ArcId refused = makeId<ArcId>(clock_, random_);
    const auto answer = book->append(splice(refused), test::testContext);
    ASSERT_FALSE(answer);
    expectClear(answer.error());
    EXPECT_FALSE(book->append(splice(makeId<ArcId>(clock_, random_)), test::testContext));
    book.reset();
    EXPECT_EQ(open(file)->totals()->arcs, 1u);
    EXPECT_FALSE(open(file)->arc(refused).value());
    EXPECT_TRUE(open(folder_ / "kept")->arc(saved).value());
    NoProgress unwatched;
    EXPECT_TRUE(storage::verifyBook(file, unwatched));
    EXPECT_TRUE(storage::verifyBook(folder_ / "kept", unwatched));
}

TEST_F(HardUse, ASecondProgramIsToldWhoHoldsTheBook) {
    const fs::path file = makeOne();
    auto book = open(file);
    const auto said = asPlainUser([&] {
        // Another process: the lock is the system's, not a flag of ours.
        auto second = storage::openLogbook(file, OpenMode::ReadWrite, clock_, random_);
        return second ? std::string("opened") : second.error().sentence();
    });
    EXPECT_NE(said, "opened");
    EXPECT_GT(said.size(), 30u) << said;
    EXPECT_TRUE(book->append(splice(makeId<ArcId>(clock_, random_)), test::testContext));
}

TEST_F(HardUse, AnEntryWhoseAnswerWasLostIsRetriedAfterAnotherStartWithoutDoubling) {
    const fs::path file = makeOne();
    const ArcId id = makeId<ArcId>(clock_, random_);
    Context context = test::testContext;
    context.retryKey = makeUuid7(clock_.now(), random_);
    Receipt first;
    {
        auto book = open(file);
        first = book->append(splice(id), context).value();
    }  // the answer never reached the window; it asks again after a new start
    auto book = open(file);
    const auto again = book->append(splice(id), context);
    ASSERT_TRUE(again) << again.error().sentence();
    EXPECT_EQ(again->lastJournalRow, first.lastJournalRow);
    EXPECT_EQ(book->totals()->arcs, 2u);
}

TEST_F(HardUse, AClockThatJumpsBackKeepsTheOrderOfWriting) {
    const fs::path file = makeOne();
    auto book = open(file);
    std::vector<ArcId> written;
    constexpr std::int64_t day = 86'400'000;
    for (const std::int64_t jump : {0 * day, -400 * day, day / 24, -day / 1440}) {
        clock_.at.ms += jump;
        written.push_back(makeId<ArcId>(clock_, random_));
        ASSERT_TRUE(book->append(splice(written.back()), test::testContext));
    }
    const auto lines = book->journal(~std::uint64_t{0} >> 1, 4).value();
    ASSERT_EQ(lines.size(), 4u);
    for (std::size_t i = 1; i < lines.size(); ++i) EXPECT_GT(lines[i - 1].row, lines[i].row);
    book.reset();
    NoProgress unwatched;
    const auto verdict = storage::verifyBook(file, unwatched);
    EXPECT_TRUE(verdict) << verdict.error().sentence();
}

using test::arcw;
using test::Ran;

/// All that `arcw` says of the demo book, and the bytes of its closeout files.
std::string everythingSaid(const fs::path& folder) {
    const std::string book = (folder / "demo.arcbook").string();
    std::string all = arcw({"demo", book}).out;
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"drift", book},
          {"drift", book, "--format", "json"},
          {"queues", book},
          {"queues", book, "--format", "json"},
          {"runlength", "--chart", "cusum", "--k", "0.5", "--h", "4", "--shift", "0"}}) {
        const Ran ran = arcw(words);
        all += ran.out + ran.err;
    }
    const std::string record = (folder / "record").string();
    all += arcw({"closeout", book, "--job", "HR-A", "--out", record}).err;
    for (const char* name : {"splices.csv", "record.json"}) {
        std::ifstream in(fs::path(record) / name, std::ios::binary);
        all.append(std::istreambuf_iterator<char>(in), {});
    }
    for (std::size_t at = 0; (at = all.find(folder.string())) != std::string::npos;)
        all.replace(at, folder.string().size(), "FOLDER");
    return all;
}

/// Where two long texts part, with their surroundings; empty when they are the same. The framework's own
/// comparison of such texts takes all memory there is.
std::string firstDifference(const std::string& one, const std::string& other) {
    if (one == other) return {};
    const auto at = static_cast<std::size_t>(
        std::mismatch(one.begin(), one.end(), other.begin(), other.end()).first - one.begin());
    const std::size_t from = at < 120 ? 0 : at - 120;
    return one.substr(from, 240) + "\n--- against ---\n" + other.substr(std::min(from, other.size()), 240);
}

TEST(HardUseSettings, ALocaleWithDecimalCommaChangesNothingInFilesAndReports) {
    const test::TempFolder plain, comma, locales;
    const std::string plainly = everythingSaid(plain.path);
    EXPECT_GT(plainly.size(), 10'000u);
    ASSERT_EQ(std::system(
                  ("localedef -i de_DE -f UTF-8 " + (locales / "de_DE.UTF-8").string() + " > /dev/null 2>&1")
                      .c_str()),
              0)
        << "the package \"locales\" is missing";
    setenv("LOCPATH", locales.path.c_str(), 1);
    ASSERT_NE(std::setlocale(LC_ALL, "de_DE.UTF-8"), nullptr);
    char number[16];
    std::snprintf(number, sizeof number, "%.1f", 0.5);
    EXPECT_STREQ(number, "0,5") << "the locale is not in force";
    const std::string withComma = everythingSaid(comma.path);
    std::setlocale(LC_ALL, "C");
    unsetenv("LOCPATH");
    EXPECT_EQ(firstDifference(withComma, plainly), "");
}

class TimeZone {
  public:
    explicit TimeZone(const char* name) {
        setenv("TZ", name, 1);
        tzset();
    }
    ~TimeZone() {
        unsetenv("TZ");
        tzset();
    }
};

TEST(HardUseSettings, TheSystemTimeZoneChangesNothingThatIsWrittenDown) {
    std::string first;
    for (const char* zone : {"UTC0", "XST-5:30", "YST+7"}) {
        const TimeZone there(zone);
        const test::TempFolder folder;
        const std::string said = everythingSaid(folder.path);
        if (first.empty()) first = said;
        EXPECT_EQ(firstDifference(said, first), "") << zone;
    }
}

TEST(HardUseSettings, AZoneThatChangesWhileTheProgramRunsIsNoticed) {
    app::SystemClock clock;
    {
        setenv("TZ", "XST-5:30", 1);
        EXPECT_EQ(clock.now().offsetMinutes, 330);
        setenv("TZ", "YST+7", 1);
        EXPECT_EQ(clock.now().offsetMinutes, -420);
        unsetenv("TZ");
        tzset();
    }
}

}  // namespace
}  // namespace arc
