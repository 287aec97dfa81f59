// SPDX-License-Identifier: GPL-3.0-or-later
// What may be opened and what is refused; migrations; a backup while in use.
#include "storage/open_book.hpp"

#include <fstream>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "storage/backup.hpp"
#include "storage/ledger.hpp"
#include "storage/migrations.hpp"
#include "storage/verify.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

class OpenBookTest : public ::testing::Test {
  protected:
    std::filesystem::path makeOne() {
        const auto file = folder_ / "crew.arcbook";
        auto book = createLogbook(file, clock_, random_).value();
        test::addKit(*book, clock_, random_);
        return file;
    }
    void raw(const std::filesystem::path& file, const char* sql) {
        sqlite3* db = nullptr;
        sqlite3_open(file.c_str(), &db);
        ASSERT_EQ(sqlite3_exec(db, sql, nullptr, nullptr, nullptr), SQLITE_OK) << sqlite3_errmsg(db);
        sqlite3_close(db);
    }
    Problem refusal(const std::filesystem::path& file, OpenMode mode = OpenMode::ReadWrite) {
        auto answer = openLogbook(file, mode, clock_, random_);
        EXPECT_FALSE(answer);
        return answer ? Problem{} : answer.error();
    }
    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
};

TEST_F(OpenBookTest, ANewerBookIsRefusedAndNothingIsWritten) {
    const auto file = makeOne();
    raw(file, "PRAGMA user_version = 99; PRAGMA journal_mode = DELETE;");
    const auto before = std::filesystem::last_write_time(file);
    for (const auto mode : {OpenMode::ReadWrite, OpenMode::ReadOnly}) {
        const Problem problem = refusal(file, mode);
        EXPECT_EQ(problem.code, ProblemCode::Refused);
        EXPECT_NE(problem.what.find("newer Arcwright"), std::string::npos);
    }
    EXPECT_EQ(std::filesystem::last_write_time(file), before);
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-wal"));
}

TEST_F(OpenBookTest, ForeignFilesAreNoLogbooks) {
    const auto text = folder_ / "text.arcbook";
    std::ofstream(text) << "a shopping list that is long enough to be taken for a database page or two";
    EXPECT_EQ(refusal(text).code, ProblemCode::BadInput);
    const auto other = folder_ / "other.arcbook";
    raw(other, "CREATE TABLE t(x)");
    EXPECT_EQ(refusal(other).code, ProblemCode::BadInput);
    const auto empty = folder_ / "empty.arcbook";
    std::ofstream(empty).close();
    EXPECT_EQ(refusal(empty).code, ProblemCode::BadInput);
    EXPECT_EQ(refusal(folder_ / "nothing.arcbook").code, ProblemCode::NotFound);
    EXPECT_EQ(refusal(folder_.path).code, ProblemCode::BadInput);
}

TEST_F(OpenBookTest, AMissingFolderIsSaid) {
    const auto made = createLogbook(folder_ / "no/such/crew.arcbook", clock_, random_);
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ProblemCode::NotFound);
}

TEST_F(OpenBookTest, AFailingMigrationStepLeavesTheBookAtTheLastGoodSchema) {
    const auto file = folder_ / "m.arcbook";
    Connection connection(file, Access::Create);
    const std::vector<EmbeddedFile> steps{{"0002_bad.sql", "CREATE TABLE b(x); CREATE TABLE b(x);"},
                                          {"0001_good.sql", "CREATE TABLE a(x) STRICT;"}};
    EXPECT_ANY_THROW(migrate(connection, steps));
    EXPECT_EQ(connection.number("PRAGMA user_version"), 0);
    const std::vector<EmbeddedFile> sound{{"0002_more.sql", "CREATE TABLE b(x INTEGER) STRICT;"},
                                          {"0001_good.sql", "CREATE TABLE a(x INTEGER) STRICT;"}};
    migrate(connection, sound);
    EXPECT_EQ(connection.number("PRAGMA user_version"), 2);
    const std::vector<EmbeddedFile> later{
        {"0003_bad.sql", "CREATE TABLE c(x INTEGER) STRICT; SELECT nonsense;"}};
    EXPECT_ANY_THROW(migrate(connection, later));
    EXPECT_EQ(connection.number("PRAGMA user_version"), 2);
    EXPECT_EQ(connection.number("SELECT count(*) FROM sqlite_schema WHERE name = 'c'"), 0);
    EXPECT_NE(sqlite3_get_autocommit(connection.database().getHandle()), 0);
}

TEST_F(OpenBookTest, StoredTriggersAndViewsDoNotRun) {
    const auto file = makeOne();
    raw(file, "CREATE TRIGGER spy AFTER INSERT ON journal BEGIN DELETE FROM record; END");
    auto book = openLogbook(file, OpenMode::ReadWrite, clock_, random_).value();
    ASSERT_TRUE(book->append(Setting{"a", "1"}, test::testContext));
    EXPECT_EQ(book->tools()->size(), 2u);
}

TEST_F(OpenBookTest, ABackupWhileInUseIsWholeAndASecondWriterOfItStartsItsOwnChain) {
    const auto file = makeOne();
    auto book = openLogbook(file, OpenMode::ReadWrite, clock_, random_).value();
    NoProgress unwatched;
    const auto copy = folder_ / "copy.arcbook";
    ASSERT_TRUE(backupBook(file, copy, unwatched));
    EXPECT_FALSE(std::filesystem::exists(copy.string() + "-wal"));
    EXPECT_EQ(backupBook(file, copy, unwatched).error().code, ProblemCode::Refused);
    EXPECT_EQ(verifyBook(copy, unwatched)->head, book->journalHead());
    auto second = openLogbook(copy, OpenMode::ReadWrite, clock_, random_).value();
    ASSERT_TRUE(second->append(Setting{"a", "1"}, test::testContext));
    second.reset();
    EXPECT_EQ(verifyBook(copy, unwatched)->devices, 2u);
}

TEST_F(OpenBookTest, AnAppendAfterEveryCallFindsNoTransactionOpen) {
    const auto file = makeOne();
    Connection connection(file, Access::ReadWrite);
    {
        WriteTransaction abandoned(connection);
        connection.execute("UPDATE total SET care = 7");
    }
    EXPECT_NE(sqlite3_get_autocommit(connection.database().getHandle()), 0);
    EXPECT_EQ(connection.number("SELECT care FROM total"), 0);
}

TEST_F(OpenBookTest, AWrongClockDoesNotBreakTheOrder) {
    const auto file = makeOne();
    clock_.at.ms = 1'960'000'000'000;  // a year ahead
    {
        auto book = openLogbook(file, OpenMode::ReadWrite, clock_, random_).value();
        ASSERT_TRUE(book->append(Setting{"a", "from the future"}, test::testContext));
    }
    clock_.at.ms = 1'930'000'500'000;  // set right again
    auto book = openLogbook(file, OpenMode::ReadWrite, clock_, random_).value();
    ASSERT_TRUE(book->append(Setting{"a", "later"}, test::testContext));
    EXPECT_EQ(book->setting("a").value(), "later");
    book.reset();
    NoProgress unwatched;
    EXPECT_TRUE(verifyBook(file, unwatched));
}

}  // namespace
}  // namespace arc::storage
