// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/connection.hpp"

#include <new>
#include <stdexcept>
#include <sys/stat.h>

namespace arc::storage {
namespace {

/// Longest wait for another connection's transaction before we say "busy".
constexpr int busyMs = 5'000;
/// A log left behind by a big import is cut back to nothing at the next clean close.
constexpr int logLimitBytes = 16 << 20;

int flagsFor(Access access) {
    // A connection belongs to one thread; SQLite need not lock it.
    constexpr int noMutex = SQLITE_OPEN_NOMUTEX;
    switch (access) {
        case Access::Create:
            return noMutex | SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE;
        case Access::ReadWrite:
            return noMutex | SQLite::OPEN_READWRITE;
        case Access::ReadOnly:
            return noMutex | SQLite::OPEN_READONLY;
        case Access::Immutable:
            return noMutex | SQLite::OPEN_READONLY | SQLite::OPEN_URI;
    }
    return noMutex | SQLite::OPEN_READONLY;
}

std::string nameFor(const std::filesystem::path& file, Access access) {
    if (access != Access::Immutable) return file.string();
    std::string uri = "file:";
    for (const char c : std::filesystem::absolute(file).string()) {
        static constexpr char digits[] = "0123456789ABCDEF";
        const auto byte = static_cast<unsigned char>(c);
        if (byte <= 0x20 || byte >= 0x7f || c == '%' || c == '?' || c == '#') {
            uri += '%';
            uri += digits[byte >> 4];
            uri += digits[byte & 15];
        } else {
            uri += c;
        }
    }
    return uri + "?immutable=1";
}

}  // namespace

Connection::Connection(const std::filesystem::path& file, Access access)
    : file_(file), access_(access), database_(nameFor(file, access), flagsFor(access), busyMs) {
    sqlite3* const db = database_.getHandle();
    sqlite3_extended_result_codes(db, 1);
    // A book may come from a stranger: nothing stored in it may run.
    for (const int off : {SQLITE_DBCONFIG_TRUSTED_SCHEMA, SQLITE_DBCONFIG_ENABLE_TRIGGER,
                          SQLITE_DBCONFIG_ENABLE_VIEW, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION})
        sqlite3_db_config(db, off, 0, nullptr);
    sqlite3_db_config(db, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_limit(db, SQLITE_LIMIT_LENGTH, 64 << 20);
    sqlite3_limit(db, SQLITE_LIMIT_ATTACHED, 1);
    execute("PRAGMA foreign_keys = ON");
    execute("PRAGMA cell_size_check = ON");
    execute("PRAGMA cache_size = -32768");
    if (access == Access::Immutable || access == Access::ReadOnly) {
        execute("PRAGMA query_only = ON");
        return;
    }
    execute("PRAGMA synchronous = FULL");
    if (number("PRAGMA user_version") > 0 || access == Access::Create) {
        execute("PRAGMA journal_mode = WAL");
        execute("PRAGMA journal_size_limit = " + std::to_string(logLimitBytes));
        // Another program of ours that closes the book must not delete the log that we write into.
        int persist = 1;
        sqlite3_file_control(db, "main", SQLITE_FCNTL_PERSIST_WAL, &persist);
    }
}

Connection::~Connection() {
    for (const auto& [sql, statement] : statements_) sqlite3_finalize(statement);
    for (const auto& [sql, statement] : texts_) sqlite3_finalize(statement);
}

Query Connection::query(const char* sql) {
    return use(statements_[sql], sql);
}

Query Connection::query(const std::string& sql) {
    return use(texts_[sql], sql.c_str());
}

Query Connection::use(sqlite3_stmt*& kept, const char* sql) {
    if (kept == nullptr) {
        const int code =
            sqlite3_prepare_v3(database_.getHandle(), sql, -1, SQLITE_PREPARE_PERSISTENT, &kept, nullptr);
        if (code != SQLITE_OK) throw SQLite::Exception(database_.getHandle(), code);
    }
    if (sqlite3_stmt_busy(kept) != 0) throw std::logic_error("a statement is used inside itself");
    return Query(kept);
}

void Connection::execute(const std::string& sql) {
    database_.exec(sql);
}

std::int64_t Connection::number(const char* sql) {
    Query q = query(sql);
    return q.step() ? q.integer(0) : 0;
}

Connection::FileMark Connection::markOf(const std::filesystem::path& file) {
    struct stat info {};
    if (stat(file.c_str(), &info) != 0) return {};
    return {info.st_dev, info.st_ino};
}

void Connection::rememberFiles() {
    // The log is there from the first read on.
    number("SELECT count(*) FROM sqlite_schema");
    book_ = markOf(file_);
    log_ = markOf(file_.string() + "-wal");
}

bool Connection::filesStillOurs() const {
    return book_ == markOf(file_) && log_ == markOf(file_.string() + "-wal");
}

WriteTransaction::WriteTransaction(Connection& connection) : connection_(connection) {
    connection_.query("BEGIN IMMEDIATE").run();
}

WriteTransaction::~WriteTransaction() {
    // A full disk may have rolled back already.
    if (!open_ || sqlite3_get_autocommit(connection_.database().getHandle()) != 0) return;
    try {
        connection_.query("ROLLBACK").run();
    } catch (const SQLite::Exception&) {
        // Closing the connection rolls back as well.
    }
}

void WriteTransaction::commit() {
    connection_.query("COMMIT").run();
    open_ = false;
}

namespace {
constexpr const char* pageDamage = "a part of the logbook file is damaged";

Problem damagedPage(const std::string& where) {
    return {ProblemCode::Damaged, pageDamage, where,
            "Stop writing into it; \"arcw verify\" tells what is readable and a backup or a rescue "
            "gives a sound logbook"};
}

}  // namespace

bool isPageDamage(const Problem& problem) {
    return problem.code == ProblemCode::Damaged && problem.what == pageDamage;
}

Problem problemOf(const SQLite::Exception& error, const std::filesystem::path& file) {
    const std::string where = file.string();
    switch (error.getErrorCode() & 0xff) {
        case SQLITE_FULL:
            return {ProblemCode::Unavailable, "the disk is full; nothing of this was saved", where,
                    "Free some space and save again"};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {ProblemCode::Unavailable, "the logbook is being written to by other work", where,
                    "Wait until that is done and try again"};
        case SQLITE_READONLY:
        case SQLITE_PERM:
            return {ProblemCode::Refused, "the logbook or its folder cannot be written to", where,
                    "Copy the logbook to a folder you may write to, or open it for reading only"};
        case SQLITE_CORRUPT:
            return damagedPage(where);
        case SQLITE_NOTADB:
            return {ProblemCode::BadInput, "the file is not a logbook", where,
                    "Choose a file made by Arcwright"};
        case SQLITE_CANTOPEN:
            return {ProblemCode::Unavailable, "the logbook cannot be opened", where,
                    "Check that the file and its folder are there and may be read"};
        case SQLITE_IOERR:
            return {ProblemCode::Unavailable, "the disk or stick does not answer; nothing of this was saved",
                    where, "Check that it is plugged in, then open the logbook again"};
        case SQLITE_NOMEM:
            return {ProblemCode::Unavailable, "there is not enough memory", where, "Close other programs"};
        case SQLITE_TOOBIG:
            return {ProblemCode::BadInput, "a value is too big for the logbook", where, ""};
        case SQLITE_ERROR:
            // The format number in the first page: SQLite has no code of its own for it.
            if (std::string_view(error.what()) == "unsupported file format") return damagedPage(where);
            [[fallthrough]];
        default:
            return {ProblemCode::Internal, std::string("the logbook could not do this: ") + error.what(),
                    where, ""};
    }
}

Problem problemOf(const std::exception& error, const std::filesystem::path& file) {
    if (dynamic_cast<const std::bad_alloc*>(&error) != nullptr)
        return {ProblemCode::Unavailable, "there is not enough memory", file.string(),
                "Close other programs"};
    return {ProblemCode::Damaged,
            std::string("the logbook holds something that cannot be read: ") + error.what(), file.string(),
            "\"arcw verify\" tells more"};
}

}  // namespace arc::storage
