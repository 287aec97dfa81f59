// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/backup.hpp"

#include <SQLiteCpp/Backup.h>
#include <chrono>
#include <fcntl.h>
#include <string>
#include <system_error>
#include <thread>
#include <unistd.h>

#include "storage/open_book.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

constexpr int pagesPerStep = 4'096;  // 16 MB between two looks at "stop"
constexpr int waitMs = 50;
constexpr int mostWaits = 1'200;

/// SQLite syncs the copy's content; its name has to be on disk as well.
void syncFolder(const fs::path& folder) {
    const int descriptor = open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return;
    fsync(descriptor);
    close(descriptor);
}

Result<void> run(Connection& from, const fs::path& file, Progress& progress) {
    SQLite::Database copy(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    {
        SQLite::Backup backup(copy, from.database());
        int waits = 0;
        while (true) {
            const int code = backup.executeStep(pagesPerStep);
            if (code == SQLITE_DONE) break;
            const auto total = static_cast<std::uint64_t>(backup.getTotalPageCount());
            progress.report(total - static_cast<std::uint64_t>(backup.getRemainingPageCount()), total,
                            "Copying the logbook");
            if (progress.stopRequested())
                return fail(ProblemCode::Cancelled, "the copy was stopped; nothing was left behind");
            if (code == SQLITE_BUSY || code == SQLITE_LOCKED) {
                if (++waits > mostWaits)
                    return fail(ProblemCode::Unavailable, "the logbook stayed busy for a minute",
                                from.file().string(), "Try again later");
                std::this_thread::sleep_for(std::chrono::milliseconds(waitMs));
            }
        }
    }
    // Whoever goes on writing in the copy starts a chain of his own; one file without side files, so that it
    // can be carried away.
    copy.exec("PRAGMA journal_mode = DELETE");
    return {};
}

}  // namespace

Result<void> copyBook(Connection& from, const fs::path& destination, Progress& progress) {
    std::error_code ignored;
    if (fs::exists(destination, ignored))
        return fail(ProblemCode::Refused, "there is a file of that name already", destination.string(),
                    "Choose another name for the copy");
    const fs::path unfinished = destination.string() + ".unfinished";
    fs::remove(unfinished, ignored);
    auto done = guarded(destination, [&] { return run(from, unfinished, progress); });
    if (!done) {
        for (const char* suffix : {"", "-wal", "-shm", "-journal"})
            fs::remove(unfinished.string() + suffix, ignored);
        return done;
    }
    std::error_code error;
    fs::rename(unfinished, destination, error);
    if (error)
        return fail(ProblemCode::Unavailable, "the copy could not get its name: " + error.message(),
                    destination.string());
    syncFolder(destination.has_parent_path() ? destination.parent_path() : fs::path("."));
    return {};
}

Result<void> backupBook(const fs::path& book, const fs::path& destination, Progress& progress) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return copyBook(*open->connection, destination, progress);
}

}  // namespace arc::storage
