// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing in a logbook can be changed, removed or put elsewhere without the verifier saying so.
#include "storage/verify.hpp"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "storage/backup.hpp"
#include "tests/support/book_fixture.hpp"

namespace arc::storage {
namespace {

using test::FakeClock;
using test::FakeRandom;
using test::TempFolder;

/// Somebody with a database program.
class Tamperer {
  public:
    explicit Tamperer(const std::filesystem::path& file) { sqlite3_open(file.c_str(), &db_); }
    ~Tamperer() { sqlite3_close(db_); }
    Tamperer(const Tamperer&) = delete;
    Tamperer& operator=(const Tamperer&) = delete;

    bool run(const std::string& sql) {
        return sqlite3_exec(db_, sql.c_str(), nullptr, nullptr, nullptr) == SQLITE_OK;
    }
    std::vector<std::string> list(const std::string& sql) {
        std::vector<std::string> values;
        sqlite3_stmt* statement = nullptr;
        sqlite3_prepare_v2(db_, sql.c_str(), -1, &statement, nullptr);
        while (sqlite3_step(statement) == SQLITE_ROW)
            values.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(statement, 0)));
        sqlite3_finalize(statement);
        return values;
    }
    int changed() { return sqlite3_changes(db_); }

  private:
    sqlite3* db_ = nullptr;
};

class VerifyTest : public ::testing::Test {
  protected:
    void SetUp() override { test::fillEveryTable(file(), folder_.path, clock_, random_); }
    [[nodiscard]] std::filesystem::path file() const { return folder_ / "crew.arcbook"; }
    Result<BookVerdict> verdict() {
        NoProgress unwatched;
        return verifyBook(file(), unwatched);
    }
    /// Does the change, expects it to be found, undoes it. Answers whether the database let it happen.
    bool expectFound(const std::string& change) {
        Tamperer tamperer(file());
        tamperer.run("BEGIN");
        if (!tamperer.run(change) || tamperer.changed() == 0) {
            tamperer.run("ROLLBACK");
            return false;
        }
        tamperer.run("COMMIT");
        const auto found = verdict();
        EXPECT_FALSE(found) << change;
        if (!found) {
            EXPECT_EQ(found.error().code, ProblemCode::Damaged) << change << ": " << found.error().sentence();
        }
        return true;
    }
    /// Work on a fresh copy each time, since a removed row cannot be put back the same.
    void restore() {
        NoProgress unwatched;
        std::filesystem::remove(file().string() + "-wal");
        std::filesystem::remove(file().string() + "-shm");
        std::filesystem::remove(file());
        std::filesystem::copy_file(folder_ / "pristine", file());
    }
    void keepPristine() {
        NoProgress unwatched;
        ASSERT_TRUE(backupBook(file(), folder_ / "pristine", unwatched));
    }

    TempFolder folder_;
    FakeClock clock_;
    FakeRandom random_;
};

TEST_F(VerifyTest, ASoundBookVerifiesAndTellsItsHead) {
    const auto sound = verdict();
    ASSERT_TRUE(sound) << sound.error().sentence();
    EXPECT_EQ(sound->arcs, 2u);
    EXPECT_EQ(sound->readings, 5u);
    EXPECT_EQ(sound->head, openLogbook(file(), OpenMode::ReadOnly, clock_, random_).value()->journalHead());
}

TEST_F(VerifyTest, AChangeInAnyColumnOfAnyRowOfAnyTableIsFound) {
    keepPristine();
    restore();
    ASSERT_TRUE(verdict()) << verdict().error().sentence();
    int tried = 0;
    std::vector<std::string> tables;
    {
        Tamperer look(file());
        tables = look.list("SELECT name FROM sqlite_schema WHERE type = 'table' AND name <> 'headline'");
    }
    ASSERT_EQ(tables.size(), 13u);
    for (const auto& table : tables) {
        std::vector<std::string> columns;
        std::vector<std::string> keys;
        std::string key;
        {
            Tamperer look(file());
            columns = look.list("SELECT name FROM pragma_table_info('" + table + "')");
            key = look.list("SELECT group_concat(name, ' || ''/'' || ') FROM pragma_table_info('" + table +
                            "') WHERE pk > 0")
                      .front();
            keys = look.list("SELECT " + key + " FROM " + table);
        }
        ASSERT_FALSE(keys.empty()) << table;
        for (const auto& column : columns) {
            // First, middle and last row.
            for (const std::size_t i : {std::size_t{0}, keys.size() / 2, keys.size() - 1}) {
                const std::string flip = "UPDATE " + table + " SET " + column + " = CASE typeof(" + column +
                                         ") WHEN 'integer' THEN " + column + " + 1 WHEN 'text' THEN CASE " +
                                         column + " WHEN '' THEN 'x' ELSE substr(" + column + ", 1, length(" +
                                         column + ") - 1) || char(unicode(substr(" + column +
                                         ", -1)) + 1) END WHEN 'blob' THEN CASE hex(substr(" + column +
                                         ", 1, 1)) WHEN 'FF' THEN x'00' ELSE x'FF' END || substr(" + column +
                                         ", 2) ELSE CASE WHEN '" + column +
                                         "' IN ('subject', 'base', 'retry_key') THEN zeroblob(16) WHEN '" +
                                         column + "' = 'place' THEN zeroblob(32) ELSE 1 END END WHERE " +
                                         key + " = '" + keys[i] + "'" +
                                         (key.find("||") == std::string::npos
                                              ? " OR " + key + " = CAST('" + keys[i] + "' AS INTEGER)"
                                              : "");
                // Blobs joined by || become text; put them back.
                std::string sql = flip;
                const auto at = sql.find("WHEN 'blob' THEN CASE");
                const auto end = sql.find(" ELSE CASE WHEN '" + column);
                sql.replace(at, end - at,
                            "WHEN 'blob' THEN CAST(" + sql.substr(at + 17, end - at - 17) + " AS BLOB)");
                if (expectFound(sql)) {
                    ++tried;
                    restore();
                }
            }
        }
    }
    EXPECT_GT(tried, 150);
}

TEST_F(VerifyTest, ARemovedRowOfAnyTableIsFound) {
    keepPristine();
    int tried = 0;
    for (const char* table : {"journal", "record", "arc", "reading", "set_aside", "attachment", "identity",
                              "word", "device", "book", "total"}) {
        for (const char* which : {"ASC", "DESC"}) {
            restore();
            const std::string name(table);
            const bool keyed = name == "arc" || name == "reading";
            const std::string remove =
                keyed ? "DELETE FROM " + name + " WHERE (" + (name == "arc" ? "key" : "arc") +
                            ", journal) IN (SELECT " + (name == "arc" ? "key" : "arc") + ", journal FROM " +
                            name + " ORDER BY 1 " + which + " LIMIT 1)"
                      : "DELETE FROM " + name + " WHERE rowid IN (SELECT rowid FROM " + name +
                            " ORDER BY rowid " + which + " LIMIT 1)";
            tried += expectFound(remove) ? 1 : 0;
        }
    }
    EXPECT_EQ(tried, 22);
}

TEST_F(VerifyTest, TheLastEntryRemovedWithAllItsRowsIsFound) {
    Tamperer tamperer(file());
    const std::string last = tamperer.list("SELECT max(row) FROM journal").front();
    for (const char* table : {"record", "arc", "reading", "set_aside"})
        tamperer.run(std::string("DELETE FROM ") + table + " WHERE journal = " + last);
    tamperer.run("DELETE FROM journal WHERE row = " + last);
    const auto found = verdict();
    ASSERT_FALSE(found);
    EXPECT_NE(found.error().what.find("last journal rows"), std::string::npos) << found.error().sentence();
}

TEST_F(VerifyTest, SwappedJournalRowsAreFound) {
    EXPECT_TRUE(
        expectFound("UPDATE journal SET row = CASE row WHEN 5 THEN -6 ELSE -5 END WHERE row IN (5, 6)"));
    Tamperer(file()).run("UPDATE journal SET row = -row WHERE row < 0");
    ASSERT_FALSE(verdict());
}

TEST_F(VerifyTest, AnAddedRowIsFound) {
    EXPECT_TRUE(
        expectFound("INSERT INTO reading SELECT arc, channel + 8, journal, live, loss_mdb, cleave_left_cdeg, "
                    "cleave_right_cdeg, fibre_a, fibre_b, attempt, state, note, base FROM reading LIMIT 1"));
}

TEST_F(VerifyTest, AnAddedTriggerOrAMissingIndexIsFound) {
    Tamperer tamperer(file());
    ASSERT_TRUE(tamperer.run("CREATE TRIGGER quiet AFTER INSERT ON reading BEGIN SELECT 1; END"));
    EXPECT_FALSE(verdict());
    ASSERT_TRUE(tamperer.run("DROP TRIGGER quiet"));
    EXPECT_TRUE(verdict());
    ASSERT_TRUE(tamperer.run("DROP INDEX journal_retry"));
    EXPECT_FALSE(verdict());
}

TEST_F(VerifyTest, TheProblemNamesTheEntry) {
    Tamperer(file()).run("UPDATE reading SET loss_mdb = 1 WHERE loss_mdb = 250");
    const auto found = verdict();
    ASSERT_FALSE(found);
    EXPECT_NE(found.error().sentence().find("0.25 dB"), std::string::npos) << found.error().sentence();
}

}  // namespace
}  // namespace arc::storage
