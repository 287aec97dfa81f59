// SPDX-License-Identifier: GPL-3.0-or-later
// A writer is killed at random moments, again and again on one logbook: every entry it was told "saved" of is
// there, the journal verifies, and nothing has to be repaired by hand. ARC_KILLS sets the number of rounds.
#include <atomic>
#include <cstdlib>
#include <fcntl.h>
#include <gtest/gtest.h>
#include <set>
#include <signal.h>
#include <string>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

#include "storage/sqlite_logbook.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc {
namespace {

constexpr const char* bookVariable = "ARC_TEST_BOOK";
constexpr const char* seedVariable = "ARC_TEST_SEED";
constexpr int answersTo = 3;  // file descriptor

int roundsOr(int usual) {
    const char* given = std::getenv("ARC_KILLS");
    return given != nullptr ? std::max(1, std::atoi(given)) : usual;
}

/// The writer; does nothing unless a test below starts it as a process of its own.
TEST(HelperProcess, WritesUntilItIsKilled) {
    const char* file = std::getenv(bookVariable);
    if (file == nullptr) return;
    test::FakeClock clock;
    test::FakeRandom random(std::strtoull(std::getenv(seedVariable), nullptr, 10));
    auto book = storage::openLogbook(file, storage::OpenMode::ReadWrite, clock, random);
    if (!book) {
        const std::string sentence = "!" + book.error().sentence() + "\n";
        if (write(answersTo, sentence.data(), sentence.size()) < 0) _exit(3);
        _exit(2);
    }
    test::SmallKit kit;
    kit.splicer = (*book)->tools()->back();
    kit.job = (*book)->jobs()->front();
    for (int i = 0;; ++i) {
        const ArcId id = makeId<ArcId>(clock, random);
        const SpliceArc made = test::arcOf(kit, id, 1'900'000'000'000 + i, i % 3 == 0 ? 12 : 1);
        if (!(*book)->append(made, test::testContext)) _exit(2);
        const std::string line = toText(id.uuid) + "\n";
        if (write(answersTo, line.data(), line.size()) < 0) _exit(3);
    }
}

class Writer {
  public:
    Writer(const std::filesystem::path& book, int seed) {
        int ends[2];
        if (pipe(ends) != 0) return;
        const std::string bookSetting = std::string(bookVariable) + "=" + book.string();
        const std::string seedSetting = std::string(seedVariable) + "=" + std::to_string(seed);
        pid_ = fork();
        if (pid_ == 0) {
            dup2(ends[1], answersTo);
            if (const int quiet = open("/dev/null", O_WRONLY); quiet >= 0) {
                dup2(quiet, 1);
                dup2(quiet, 2);
            }
            char* const environment[] = {const_cast<char*>(bookSetting.c_str()),
                                         const_cast<char*>(seedSetting.c_str()), nullptr};
            char* const words[] = {const_cast<char*>("writer"),
                                   const_cast<char*>("--gtest_filter=HelperProcess.WritesUntilItIsKilled"),
                                   nullptr};
            execve("/proc/self/exe", words, environment);
            _exit(4);
        }
        close(ends[1]);
        from_ = ends[0];
    }
    ~Writer() {
        if (from_ >= 0) close(from_);
    }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    /// Reads answers until `count` came, kills, reads what else had been answered.
    std::vector<std::string> killAfter(std::size_t count, unsigned spin) {
        std::string text;
        char piece[4096];
        const auto lines = [&text] {
            return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
        };
        while (lines() < count) {
            const ssize_t got = read(from_, piece, sizeof piece);
            if (got <= 0) break;
            text.append(piece, static_cast<std::size_t>(got));
        }
        // A random little while, so that the kill falls into any part of a commit.
        std::atomic<unsigned> turns{0};
        while (turns.fetch_add(1) < spin) {
        }
        kill(pid_, SIGKILL);
        waitpid(pid_, nullptr, 0);
        while (true) {
            const ssize_t got = read(from_, piece, sizeof piece);
            if (got <= 0) break;
            text.append(piece, static_cast<std::size_t>(got));
        }
        std::vector<std::string> answered;
        std::size_t from = 0;
        for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', from)) {
            answered.push_back(text.substr(from, end - from));
            from = end + 1;
        }
        return answered;
    }

  private:
    pid_t pid_ = -1;
    int from_ = -1;
};

TEST(KillTest, EveryEntryThatWasAcknowledgedIsThereAndTheJournalVerifies) {
    const test::TempFolder folder;
    const auto file = folder / "crew.arcbook";
    test::FakeClock clock;
    test::FakeRandom random;
    {
        auto book = storage::createLogbook(file, clock, random).value();
        test::addKit(*book, clock, random);
    }
    std::set<std::string> acknowledged;
    const int rounds = roundsOr(50);
    for (int round = 0; round < rounds; ++round) {
        Writer writer(file, 1'000 + round);
        const auto answers =
            writer.killAfter(1 + random.below(8), static_cast<unsigned>(random.below(400'000)));
        ASSERT_FALSE(answers.empty()) << "the writer wrote nothing in round " << round;
        for (const auto& answer : answers) {
            ASSERT_NE(answer.front(), '!') << answer;
            acknowledged.insert(answer);
        }
    }
    auto book = storage::openLogbook(file, storage::OpenMode::ReadWrite, clock, random).value();
    std::size_t found = 0;
    for (const auto& id : acknowledged) {
        const auto made = book->arc(ArcId{*parseUuid(id)}).value();
        ASSERT_TRUE(made) << "an acknowledged splice is lost: " << id;
        ASSERT_EQ(static_cast<int>(made->readings.size()), made->channels);
        ++found;
    }
    EXPECT_EQ(found, acknowledged.size());
    // What was written but never acknowledged may be there too, at most one entry a round.
    EXPECT_LE(book->totals()->arcs, acknowledged.size() + static_cast<std::size_t>(rounds));
    book.reset();
    NoProgress unwatched;
    const auto verdict = storage::verifyBook(file, unwatched);
    EXPECT_TRUE(verdict) << verdict.error().sentence();
}

}  // namespace
}  // namespace arc
