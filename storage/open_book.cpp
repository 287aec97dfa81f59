// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/open_book.hpp"

#include <system_error>
#include <unistd.h>

#include "storage/backup.hpp"
#include "storage/damage.hpp"
#include "storage/ledger.hpp"
#include "storage/mend.hpp"
#include "storage/migrations.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

Result<void> checkSchema(Connection& connection) {
    const std::string where = connection.file().string();
    switch (schemaState(connection)) {
        case SchemaState::NotALogbook:
            return fail(ProblemCode::BadInput, "the file is not a logbook", where,
                        "Choose a file made by Arcwright");
        case SchemaState::Newer:
            return fail(ProblemCode::Refused,
                        "the logbook was written by a newer Arcwright (schema " +
                            std::to_string(connection.number("PRAGMA user_version")) + ", this one knows " +
                            std::to_string(newestSchema()) + "); nothing was changed",
                        where, "Install the newer program");
        case SchemaState::Older:
        case SchemaState::Current:
            return {};
    }
    return {};
}

/// Nobody can write in the folder: SQLite cannot keep its side files there.
bool folderIsReadOnly(const fs::path& book) {
    std::error_code error;
    const fs::path real = fs::canonical(book, error);
    return !error && access(real.parent_path().c_str(), W_OK) != 0;
}

Result<OpenBook> openForReading(const fs::path& book) {
    OpenBook open;
    std::error_code ignored;
    const auto logBytes = fs::file_size(book.string() + "-wal", ignored);
    const bool logHolds = !ignored && logBytes > 0;
    if (folderIsReadOnly(book) && !fs::exists(book.string() + "-shm", ignored)) {
        if (logHolds)
            return fail(
                ProblemCode::Refused,
                "the logbook lies in a folder that cannot be written to and its last entries are still in "
                "the file beside it (\"-wal\")",
                book.string(), "Copy both files together to a folder you may write to and open it there");
        open.connection = std::make_unique<Connection>(book, Access::Immutable);
    } else {
        open.connection = std::make_unique<Connection>(book, Access::ReadOnly);
    }
    if (auto checked = checkSchema(*open.connection); !checked) return tl::unexpected(checked.error());
    if (schemaState(*open.connection) == SchemaState::Older)
        return fail(ProblemCode::Refused, "the logbook has an older schema and is opened for reading only",
                    book.string(), "Open it once for writing; it is brought up to date then");
    return open;
}

Result<OpenBook> openForWriting(const fs::path& book, OpenMode mode) {
    OpenBook open;
    if (mode == OpenMode::ReadWrite) {
        auto lock = WriterLock::take(book);
        if (!lock) return tl::unexpected(lock.error());
        open.lock.emplace(std::move(*lock));
    } else if (!WriterLock::heldByThisProcess(book)) {
        return fail(ProblemCode::Internal, "a second writer was asked for without a first", book.string());
    }
    {
        // A newer book or a foreign file is looked at without being written to.
        Connection look(book, Access::ReadOnly);
        if (auto checked = checkSchema(look); !checked) return tl::unexpected(checked.error());
    }
    if (mode == OpenMode::ReadWrite && knownDamage(book)) {
        // Perhaps a sound file was put in its place.
        NoProgress unwatched;
        if (auto sound = checkPages(book, unwatched); !sound) return tl::unexpected(sound.error());
    }
    open.connection = std::make_unique<Connection>(book, Access::ReadWrite);
    if (schemaState(*open.connection) == SchemaState::Older) {
        const auto number = open.connection->number("PRAGMA user_version");
        const fs::path beside = book.string() + ".schema-" + std::to_string(number) + ".bak";
        NoProgress unwatched;
        if (!fs::exists(beside)) {
            auto kept = copyBook(*open.connection, beside, unwatched);
            if (!kept) return tl::unexpected(kept.error());
        }
        migrate(*open.connection, embedded_migrations());
    }
    if (const auto found = quickLook(*open.connection)) {
        markDamaged(book, *found);
        return tl::unexpected(damageOf(book, *found));
    }
    open.connection->rememberFiles();
    return open;
}

/// What may be damage, and not a refusal for another reason.
bool looksDamaged(const Problem& problem) {
    return problem.code == ProblemCode::Damaged || problem.code == ProblemCode::BadInput;
}

Result<OpenBook> openMended(const fs::path& book, const Problem& otherwise) {
    auto copy = mendedCopy(book);
    if (!copy) return tl::unexpected(otherwise);
    markDamaged(book, "the file is cut off, or its first page cannot be read");
    OpenBook open;
    open.mended.emplace(std::move(*copy));
    open.connection = std::make_unique<Connection>(open.mended->path(), Access::ReadOnly);
    return open;
}

}  // namespace

Result<OpenBook> openBook(const fs::path& book, OpenMode mode) {
    const auto refused = guarded(book, [&]() -> Result<void> {
        std::error_code ignored;
        if (!fs::exists(book, ignored))
            return fail(ProblemCode::NotFound, "there is no such logbook", book.string(),
                        "Make one with \"arcw new\"");
        if (fs::is_directory(book, ignored))
            return fail(ProblemCode::BadInput, "this is a folder, not a logbook", book.string());
        if (access(book.c_str(), R_OK) != 0)
            return fail(ProblemCode::Refused, "the logbook may not be read", book.string(),
                        "Ask its owner for the right to read it");
        if (mode != OpenMode::ReadOnly && access(book.c_str(), W_OK) != 0)
            return fail(ProblemCode::Refused, "the logbook may not be written to", book.string(),
                        "Open it for reading only, or copy it to a folder you may write to");
        return {};
    });
    if (!refused) return tl::unexpected(refused.error());
    auto open = guarded(book, [&]() -> Result<OpenBook> {
        return mode == OpenMode::ReadOnly ? openForReading(book) : openForWriting(book, mode);
    });
    if (open || !looksDamaged(open.error())) return open;
    const auto mend = [&] { return openMended(book, open.error()); };
    if (mode == OpenMode::ReadOnly) return guarded(book, mend);
    if (!knownDamage(book)) static_cast<void>(guarded(book, mend));
    return tl::unexpected(knownDamage(book).value_or(open.error()));
}

Result<OpenBook> makeEmptyBook(const fs::path& book) {
    std::error_code ignored;
    if (fs::exists(book, ignored))
        return fail(ProblemCode::Refused, "there is a file of that name already", book.string(),
                    "Choose another name");
    if (!fs::is_directory(book.has_parent_path() ? book.parent_path() : fs::path("."), ignored))
        return fail(ProblemCode::NotFound, "the folder for the logbook does not exist",
                    book.parent_path().string(), "Make the folder first");
    return guarded(book, [&]() -> Result<OpenBook> {
        OpenBook open;
        auto lock = WriterLock::take(book);
        if (!lock) return tl::unexpected(lock.error());
        open.lock.emplace(std::move(*lock));
        open.connection = std::make_unique<Connection>(book, Access::Create);
        migrate(*open.connection, embedded_migrations());
        open.connection->rememberFiles();
        return open;
    });
}

Result<OpenBook> makeBook(const fs::path& book, Clock& clock, Random& random) {
    auto open = makeEmptyBook(book);
    if (!open) return open;
    const auto begun = guarded(book, [&]() -> Result<void> {
        WriteTransaction transaction(*open->connection);
        Ledger(*open->connection, clock, random).begin();
        transaction.commit();
        return {};
    });
    if (begun) return open;
    open->connection.reset();
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm"}) fs::remove(book.string() + suffix, ignored);
    return tl::unexpected(begun.error());
}

std::unique_ptr<Connection> reopen(const Connection& connection) {
    auto again = std::make_unique<Connection>(
        connection.file(), connection.access() == Access::Create ? Access::ReadWrite : connection.access());
    again->number("SELECT count(*) FROM book");
    again->rememberFiles();
    return again;
}

Uuid bookId(Connection& connection) {
    Query q = connection.query("SELECT id FROM book");
    return q.step() ? q.uuid(0) : Uuid{};
}

}  // namespace arc::storage
