// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged logbook opens for reading only by itself, says what is readable, and is rescued: whatever page, a
// cut-off file, a lost header.
#include "storage/damage.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <map>

#include "storage/rescue.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

constexpr std::uintmax_t pageBytes = 4096;

class DamageTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = createLogbook(file(), clock_, random_).value();
        const auto kit = test::addKit(*book, clock_, random_);
        for (int i = 0; i < 300; ++i) {
            ids_.push_back(makeId<ArcId>(clock_, random_));
            const Entry entry = test::arcOf(kit, ids_.back(), 1'900'000'000'000 + i, 12);
            ASSERT_TRUE(book->append(entry, test::testContext));
        }
        book.reset();
        Connection connection(file(), Access::ReadWrite);
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)");
        Query q = connection.query("SELECT name, rootpage FROM sqlite_schema WHERE rootpage > 0");
        while (q.step()) roots_[std::string(q.text(0))] = static_cast<std::uintmax_t>(q.integer(1));
    }
    [[nodiscard]] std::filesystem::path file() const { return folder_ / "crew.arcbook"; }
    /// Nobody has the book open.
    void overwrite(std::uintmax_t at, std::size_t bytes, char with) {
        std::fstream disk(file(), std::ios::in | std::ios::out | std::ios::binary);
        disk.seekp(static_cast<std::streamoff>(at));
        disk << std::string(bytes, with);
    }
    void damagePage(std::uintmax_t page) { overwrite((page - 1) * pageBytes, pageBytes, '\x5a'); }
    enum class Leaf { First, Middle };
    /// A leaf below a root.
    std::uintmax_t leafOf(const std::string& name, Leaf which = Leaf::First) {
        std::uintmax_t page = roots_.at(name);
        std::ifstream disk(file(), std::ios::binary);
        for (;;) {
            std::string bytes(pageBytes, '\0');
            disk.seekg(static_cast<std::streamoff>((page - 1) * pageBytes));
            disk.read(bytes.data(), pageBytes);
            const auto byte = [&bytes](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
            // Inner pages of tables and of indices, SQLite's file format 1.6.
            if (byte(0) != 0x05 && byte(0) != 0x02) return page;
            const std::size_t cells = byte(3) * 256u + byte(4);
            const std::size_t at = 12 + 2 * (which == Leaf::Middle ? cells / 2 : 0);
            const std::size_t cell = byte(at) * 256u + byte(at + 1);
            page =
                byte(cell) * 16'777'216u + byte(cell + 1) * 65'536u + byte(cell + 2) * 256u + byte(cell + 3);
        }
    }
    /// For writing it is refused with a sentence; for reading it opens and tells how much is left.
    void expectReadOnlyAndRescuable(std::size_t atLeast) {
        const auto writing = openLogbook(file(), OpenMode::ReadWrite, clock_, random_);
        ASSERT_FALSE(writing);
        EXPECT_EQ(writing.error().code, ProblemCode::Damaged) << writing.error().sentence();
        EXPECT_NE(writing.error().sentence().find("rescue"), std::string::npos);
        const auto reading = openLogbook(file(), OpenMode::ReadOnly, clock_, random_);
        ASSERT_TRUE(reading) << reading.error().sentence();
        const auto state = bookState(file()).value();
        EXPECT_EQ(state.access, BookAccess::Damaged);
        EXPECT_FALSE(state.sentence.empty());
        EXPECT_EQ(state.readable.size(), 4u);
        NoProgress unwatched;
        const auto fresh = folder_ / "rescued.arcbook";
        const auto rescued = rescueBook(file(), fresh, clock_, random_, unwatched);
        ASSERT_TRUE(rescued) << rescued.error().sentence();
        const auto verdict = verifyBook(fresh, unwatched);
        EXPECT_TRUE(verdict) << verdict.error().sentence();
        EXPECT_GE(found(fresh), atLeast);
        EXPECT_TRUE(openLogbook(fresh, OpenMode::ReadWrite, clock_, random_));
    }
    std::size_t found(const std::filesystem::path& book) {
        return test::wholeArcs(book, ids_, clock_, random_);
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
    std::vector<ArcId> ids_;
    std::map<std::string, std::uintmax_t> roots_;
};

TEST_F(DamageTest, ASoundBookIsForWriting) {
    auto book = openLogbook(file(), OpenMode::ReadWrite, clock_, random_);
    ASSERT_TRUE(book);
    EXPECT_EQ(bookState(file())->access, BookAccess::Writing);
    book->reset();
    EXPECT_EQ(bookState(file())->access, BookAccess::OtherProgramWrites);
    NoProgress unwatched;
    EXPECT_TRUE(checkPages(file(), unwatched));
}

TEST_F(DamageTest, APageInTheMiddleOfTheSplices) {
    damagePage(leafOf("reading"));
    expectReadOnlyAndRescuable(200);
}
TEST_F(DamageTest, APageOfAnIndex) {
    damagePage(leafOf("arc_splicer"));
    expectReadOnlyAndRescuable(300);
}
TEST_F(DamageTest, APageOfTheIndexOfIdentities) {
    damagePage(leafOf("sqlite_autoindex_identity_1"));
    expectReadOnlyAndRescuable(150);
}
TEST_F(DamageTest, APageOfTheJournal) {
    damagePage(leafOf("journal"));
    expectReadOnlyAndRescuable(250);
}
TEST_F(DamageTest, TheRootOfTheDevices) {
    damagePage(roots_.at("device"));
    const auto writing = openLogbook(file(), OpenMode::ReadWrite, clock_, random_);
    ASSERT_FALSE(writing);
    EXPECT_EQ(writing.error().code, ProblemCode::Damaged);
}
TEST_F(DamageTest, AFileThatIsCutOff) {
    std::filesystem::resize_file(file(), std::filesystem::file_size(file()) * 3 / 4 / pageBytes * pageBytes);
    expectReadOnlyAndRescuable(50);
}
TEST_F(DamageTest, AHeaderOfZeroes) {
    overwrite(0, 100, '\0');
    expectReadOnlyAndRescuable(300);
}
TEST_F(DamageTest, AFirstPageOfRubbish) {
    damagePage(1);
    expectReadOnlyAndRescuable(300);
}

/// Too large to be looked at whole before it opens.
class BigDamageTest : public DamageTest {
  protected:
    void SetUp() override {
        DamageTest::SetUp();
        auto book = openLogbook(file(), OpenMode::ReadWrite, clock_, random_).value();
        const auto tool = book->tools()->front().id;
        CareRecord care;
        care.id = makeId<CareId>(clock_, random_);
        care.tool = tool;
        care.at = {1'900'000'000'000, 0};
        care.action = "groove_clean";
        ASSERT_TRUE(book->append(care, test::testContext));
        for (int i = 0; i < 3; ++i) {
            const Attachment photo{makeId<EntryId>(clock_, random_), care.id.uuid, "p.jpg", "image/jpeg",
                                   std::string(7 << 20, static_cast<char>('a' + i))};
            ASSERT_TRUE(book->append(photo, test::testContext));
        }
        book.reset();
        Connection(file(), Access::ReadWrite).execute("PRAGMA wal_checkpoint(TRUNCATE)");
        ASSERT_GT(std::filesystem::file_size(file()), 16u << 20);
        damagePage(leafOf("reading", Leaf::Middle));
    }
};

TEST_F(BigDamageTest, APageMetWhileReadingEndsInASentenceAndFromThenOnItIsForReadingOnly) {
    auto book = openLogbook(file(), OpenMode::ReadWrite, clock_, random_);
    ASSERT_TRUE(book) << "it is not looked at whole before it opens";
    EXPECT_FALSE(knownDamage(file()));
    const auto met = (*book)->splices({}, PageOrder::OldestFirst, {}, 10'000);
    ASSERT_FALSE(met);
    EXPECT_EQ(met.error().code, ProblemCode::Damaged) << met.error().sentence();
    EXPECT_NE(met.error().sentence().find("a part of the logbook file is damaged"), std::string::npos);
    EXPECT_NE(met.error().sentence().find("rescue"), std::string::npos);
    const auto saved = (*book)->append(Setting{"a", "1"}, test::testContext);
    ASSERT_FALSE(saved) << "nothing is acknowledged in a damaged logbook";
    EXPECT_EQ(saved.error().code, ProblemCode::Damaged);
    book->reset();
    expectReadOnlyAndRescuable(200);
}

TEST_F(BigDamageTest, TheCheckAfterOpeningFindsAPageNobodyRead) {
    auto book = openLogbook(file(), OpenMode::ReadWrite, clock_, random_);
    ASSERT_TRUE(book);
    NoProgress unwatched;
    const auto checked = checkPages(file(), unwatched);
    ASSERT_FALSE(checked);
    EXPECT_EQ(checked.error().code, ProblemCode::Damaged) << checked.error().sentence();
    EXPECT_EQ(bookState(file())->access, BookAccess::Damaged);
    EXPECT_FALSE((*book)->append(Setting{"a", "1"}, test::testContext));
    book->reset();
    expectReadOnlyAndRescuable(200);
}

TEST_F(DamageTest, NothingIsAcknowledgedOnceItIsKnown) {
    auto book = openLogbook(file(), OpenMode::ReadWrite, clock_, random_).value();
    markDamaged(file(), "a page cannot be read");
    const auto saved = book->append(Setting{"a", "1"}, test::testContext);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ProblemCode::Damaged);
    EXPECT_EQ(bookState(file())->access, BookAccess::Damaged);
}

TEST_F(DamageTest, ASoundFileInItsPlaceLiftsTheMark) {
    const auto good = folder_ / "good";
    std::filesystem::copy_file(file(), good);
    damagePage(leafOf("arc"));
    ASSERT_FALSE(openLogbook(file(), OpenMode::ReadWrite, clock_, random_));
    std::filesystem::copy_file(good, file(), std::filesystem::copy_options::overwrite_existing);
    for (const char* side : {"-wal", "-shm"}) std::filesystem::remove(file().string() + side);
    EXPECT_TRUE(openLogbook(file(), OpenMode::ReadWrite, clock_, random_));
    EXPECT_FALSE(knownDamage(file()));
}

TEST_F(DamageTest, AFileThatNeverWasALogbookIsNotMended) {
    const auto other = folder_ / "holiday.arcbook";
    std::ofstream(other, std::ios::binary) << std::string(10 * pageBytes, 'x');
    for (const auto mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const auto answer = openLogbook(other, mode, clock_, random_);
        ASSERT_FALSE(answer);
        EXPECT_EQ(answer.error().code, ProblemCode::BadInput) << answer.error().sentence();
    }
    EXPECT_FALSE(knownDamage(other));
}

}  // namespace
}  // namespace arc::storage
