// SPDX-License-Identifier: GPL-3.0-or-later
// Power loss and full disks. After a power loss only what was synced is sure; the rest is kept, lost or torn
// at random. ARC_POWER_LOSSES sets the number of runs.
#include <cstdlib>
#include <gtest/gtest.h>

#include "storage/sqlite_logbook.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"
#include "tests/support/weak_disk_impl.hpp"

namespace arc {
namespace {

using test::WeakDisk;

int runsOr(int usual) {
    const char* given = std::getenv("ARC_POWER_LOSSES");
    return given != nullptr ? std::max(1, std::atoi(given)) : usual;
}

struct Outcome {
    int lost = 0;     ///< acknowledged entries that are gone
    int damaged = 0;  ///< books that do not open or verify
    int entries = 0;
};

Outcome losePowerOften(WeakDisk::Syncs syncs, int runs) {
    Outcome outcome;
    for (int run = 0; run < runs; ++run) {
        const test::TempFolder folder;
        const test::TempFolder after;
        test::FakeClock clock;
        test::FakeRandom random(static_cast<std::uint64_t>(run) + 1);
        std::vector<ArcId> acknowledged;
        const auto file = folder / "crew.arcbook";
        {
            WeakDisk disk;
            auto book = storage::createLogbook(file, clock, random).value();
            const auto kit = test::addKit(*book, clock, random);
            // From here on the disk may lie; before that the book was made and put on it.
            disk.setSyncs(syncs);
            const auto count = 1 + random.below(40);
            for (std::uint64_t i = 0; i < count; ++i) {
                const ArcId id = makeId<ArcId>(clock, random);
                EXPECT_TRUE(book->append(test::arcOf(kit, id, 1'900'000'000'000, i % 2 == 0 ? 12 : 1),
                                         test::testContext));
                acknowledged.push_back(id);
            }
            disk.losePower(folder.path, after.path, [&random](std::size_t length) -> std::size_t {
                switch (random.below(3)) {
                    case 0:
                        return 0;
                    case 1:
                        return random.below(length / 512 + 1) * 512;
                    default:
                        return length;
                }
            });
        }
        outcome.entries += static_cast<int>(acknowledged.size());
        const auto left = after / "crew.arcbook";
        auto book = storage::openLogbook(left, storage::OpenMode::ReadWrite, clock, random);
        if (!book) {
            ++outcome.damaged;
            continue;
        }
        for (const ArcId id : acknowledged) {
            const auto made = (*book)->arc(id);
            if (!made || !*made) ++outcome.lost;
        }
        book->reset();
        NoProgress unwatched;
        if (!storage::verifyBook(left, unwatched)) ++outcome.damaged;
    }
    return outcome;
}

TEST(PowerLossTest, LosesNoAcknowledgedEntryAndVerifies) {
    const Outcome outcome = losePowerOften(WeakDisk::Syncs::Honest, runsOr(50));
    EXPECT_EQ(outcome.lost, 0) << "of " << outcome.entries;
    EXPECT_EQ(outcome.damaged, 0);
    EXPECT_GT(outcome.entries, 50);
}

// The same test must be able to fail: syncs that do nothing are what synchronous=OFF asks for.
TEST(PowerLossTest, WithoutSyncsTheSameTestLosesEntries) {
    const Outcome outcome = losePowerOften(WeakDisk::Syncs::Ignored, 10);
    EXPECT_GT(outcome.lost + outcome.damaged, 0);
}

/// Appends until it fails; what was acknowledged must be there, and once there is room again writing goes on.
void fillUp(std::int64_t writes, int code) {
    const test::TempFolder folder;
    test::FakeClock clock;
    test::FakeRandom random(3);
    const auto file = folder / "crew.arcbook";
    WeakDisk disk;
    auto book = storage::createLogbook(file, clock, random).value();
    const auto kit = test::addKit(*book, clock, random);
    std::vector<ArcId> acknowledged;
    disk.failAfter(writes, code);
    for (int i = 0; i < 6; ++i) {
        const ArcId id = makeId<ArcId>(clock, random);
        const auto saved = book->append(test::arcOf(kit, id, 1'900'000'000'000, 12), test::testContext);
        if (saved) {
            acknowledged.push_back(id);
        } else {
            EXPECT_EQ(saved.error().code, ProblemCode::Unavailable) << saved.error().sentence();
            EXPECT_FALSE(saved.error().next.empty());
        }
    }
    disk.work();
    const ArcId later = makeId<ArcId>(clock, random);
    const auto again = book->append(test::arcOf(kit, later, 1'900'000'000'000, 1), test::testContext);
    EXPECT_TRUE(again) << writes << ": " << again.error().sentence();
    acknowledged.push_back(later);
    book.reset();
    book = storage::openLogbook(file, storage::OpenMode::ReadWrite, clock, random).value();
    for (const ArcId id : acknowledged) EXPECT_TRUE(book->arc(id).value()) << "after " << writes << " writes";
    book.reset();
    NoProgress unwatched;
    const auto verdict = storage::verifyBook(file, unwatched);
    EXPECT_TRUE(verdict) << writes << ": " << verdict.error().sentence();
}

TEST(FullDiskTest, AtEveryWriteOfAScenarioNothingAcknowledgedIsLost) {
    for (std::int64_t writes = 0; writes < 90; ++writes) fillUp(writes, SQLITE_FULL);
}

TEST(FullDiskTest, ADiskThatDoesNotAnswerIsSaidAndNothingIsLost) {
    for (std::int64_t writes = 0; writes < 90; writes += 3) fillUp(writes, SQLITE_IOERR_WRITE);
}

}  // namespace
}  // namespace arc
