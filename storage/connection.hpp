// SPDX-License-Identifier: GPL-3.0-or-later
// One opened logbook file: pragmas, kept statements, transactions and the guard against a write-ahead log
// that was deleted under us. Belongs to one thread. Throws SQLite::Exception; `guarded` turns that into
// Problems.
//
// The book file must never be opened with anything but SQLite inside our process: closing any other handle of
// it drops SQLite's locks, and then another program may delete the log with our later commits in it.
#pragma once
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <exception>
#include <filesystem>
#include <functional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/result.hpp"
#include "storage/query.hpp"

namespace arc::storage {

/// Marks a file as a logbook ("ARCB").
inline constexpr std::int32_t bookApplicationId = 0x41524342;

enum class Access {
    Create,     ///< must not exist
    ReadWrite,  ///< must exist
    ReadOnly,
    Immutable,  ///< on a medium nobody can write to; SQLite then takes no locks and needs no side files
};

class Connection {
  public:
    Connection(const std::filesystem::path& file, Access access);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// `sql` must be a literal: the statement is kept under its address.
    Query query(const char* sql);
    /// For statements that are put together; kept under their text.
    Query query(const std::string& sql);
    /// One or more statements without values and without rows.
    void execute(const std::string& sql);
    std::int64_t number(const char* sql);

    [[nodiscard]] SQLite::Database& database() { return database_; }
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }
    [[nodiscard]] Access access() const { return access_; }

    /// Remembers which files (book and log) are in use; call once after opening for writing.
    void rememberFiles();
    /// False when the files of these names are not the ones we opened: commits since then are not in the
    /// book.
    [[nodiscard]] bool filesStillOurs() const;

  private:
    struct FileMark {
        std::uint64_t device = 0;
        std::uint64_t inode = 0;
        bool operator==(const FileMark&) const = default;
    };
    static FileMark markOf(const std::filesystem::path& file);
    std::filesystem::path file_;
    Access access_;
    SQLite::Database database_;
    Query use(sqlite3_stmt*& kept, const char* sql);
    std::unordered_map<const char*, sqlite3_stmt*> statements_;
    std::unordered_map<std::string, sqlite3_stmt*> texts_;
    FileMark book_, log_;
};

/// BEGIN IMMEDIATE … COMMIT; rolls back when it goes out of scope uncommitted.
class WriteTransaction {
  public:
    explicit WriteTransaction(Connection& connection);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction&) = delete;
    WriteTransaction& operator=(const WriteTransaction&) = delete;
    void commit();

  private:
    Connection& connection_;
    bool open_ = true;
};

/// One sentence for a person out of what SQLite said.
Problem problemOf(const SQLite::Exception& error, const std::filesystem::path& file);
Problem problemOf(const std::exception& error, const std::filesystem::path& file);
/// Whether SQLite met a damaged page.
bool isPageDamage(const Problem& problem);

/// Runs work that may throw; the edge of this module.
template <class Work>
auto guarded(const std::filesystem::path& file, Work&& work) -> decltype(work()) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        return tl::unexpected(problemOf(error, file));
    } catch (const std::exception& error) {
        return tl::unexpected(problemOf(error, file));
    }
}

}  // namespace arc::storage
