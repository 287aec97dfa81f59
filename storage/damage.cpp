// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/damage.hpp"

#include <algorithm>
#include <fstream>
#include <system_error>

#include "storage/canonical.hpp"
#include "storage/csv_values.hpp"
#include "storage/intake_parts.hpp"
#include "storage/ledger.hpp"
#include "storage/open_book.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

/// Up to this size all pages are looked at when a book is opened for writing: some ten milliseconds.
constexpr std::uintmax_t wholeCheckBytes = 16 << 20;

fs::path markOf(const fs::path& book) {
    return book.string() + ".damaged";
}

/// Rows that a scan upwards reaches, and where a damaged page stops it, those that one downwards reaches.
std::uint64_t reachable(Connection& connection, const char* upwards, const char* downwards) {
    std::uint64_t seen = 0;
    for (const char* sql : {upwards, downwards}) {
        try {
            Query q = connection.query(sql);
            while (q.step()) ++seen;
            break;
        } catch (const SQLite::Exception&) {
            // The other direction.
        }
    }
    return seen;
}

int askStop(void* progress) {
    return static_cast<Progress*>(progress)->stopRequested() ? 1 : 0;
}

}  // namespace

Problem damageOf(const fs::path& book, const std::string& what) {
    return {ProblemCode::Damaged,
            "the logbook is damaged (" + showable(what, 200) + ") and is open for reading only",
            book.string(), "Restore a backup, or rescue what is readable into a new logbook"};
}

std::optional<Problem> knownDamage(const fs::path& book) {
    std::error_code ignored;
    if (!fs::exists(markOf(book), ignored)) return std::nullopt;
    std::string what;
    std::ifstream in(markOf(book));
    std::getline(in, what);
    return damageOf(book, what.empty() ? "a page cannot be read" : what);
}

void markDamaged(const fs::path& book, const std::string& what) {
    std::error_code ignored;
    if (fs::exists(markOf(book), ignored)) return;
    std::ofstream(markOf(book)) << what << '\n';
}

namespace {

std::optional<std::string> look(Connection& connection) {
    const fs::path& book = connection.file();
    std::error_code error;
    const auto bytes = fs::file_size(book, error);
    const auto logBytes = fs::file_size(book.string() + "-wal", error);
    // With entries still in the log the file itself may be shorter than the book.
    if (error || logBytes == 0) {
        const auto expected = static_cast<std::uint64_t>(connection.number("PRAGMA page_count")) *
                              static_cast<std::uint64_t>(connection.number("PRAGMA page_size"));
        if (bytes < expected) return "the file is cut off";
    }
    for (const char* table : {"identity", "word", "device", "book", "journal", "record", "attachment", "arc",
                              "reading", "set_aside", "total", "headline", "phrase", "mention"})
        connection.query(std::string("SELECT 1 FROM ") + table + " LIMIT 1").step();
    {
        Query q = connection.query(
            "SELECT d.last_hash, j.hash FROM device d LEFT JOIN journal j ON j.device = d.key AND j.seq = "
            "d.last_seq");
        while (q.step()) {
            const Bytes said = q.bytes(0);
            const Bytes is = q.bytes(1);
            if (!std::equal(said.begin(), said.end(), is.begin(), is.end()))
                return "the end of the journal cannot be read";
        }
    }
    if (bytes > wholeCheckBytes) return std::nullopt;
    Query check = connection.query("PRAGMA quick_check(1)");
    if (check.step() && check.text(0) != "ok") return std::string(check.text(0));
    return std::nullopt;
}

}  // namespace

std::optional<std::string> quickLook(Connection& connection) {
    try {
        return look(connection);
    } catch (const SQLite::Exception& error) {
        if (!isPageDamage(problemOf(error, connection.file()))) throw;
        return "a page cannot be read";
    }
}

Result<void> checkPages(const fs::path& book, Progress& progress) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    if (open->mended) return tl::unexpected(*knownDamage(book));
    constexpr int instructionsBetweenAsks = 100'000;
    sqlite3_progress_handler(open->connection->database().getHandle(), instructionsBetweenAsks, askStop,
                             &progress);
    std::optional<std::string> found;
    const auto walked = guarded(book, [&]() -> Result<void> {
        progress.report(0, 0, "Checking the pages");
        found = quickLook(*open->connection);
        if (found) return {};
        Query q = open->connection->query("PRAGMA quick_check(1)");
        if (q.step() && q.text(0) != "ok") found = q.text(0);
        return {};
    });
    if (progress.stopRequested()) return fail(ProblemCode::Cancelled, "the check was stopped", book.string());
    if (!walked && !isPageDamage(walked.error())) return walked;
    if (!walked) found = "a page cannot be read";
    std::error_code ignored;
    if (!found) {
        fs::remove(markOf(book), ignored);
        return {};
    }
    markDamaged(book, *found);
    return tl::unexpected(damageOf(book, *found));
}

Result<std::vector<std::string>> whatIsReadable(const fs::path& book) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    Connection& connection = *open->connection;
    const auto expected = [&connection](const char* sql) -> std::optional<std::uint64_t> {
        try {
            return static_cast<std::uint64_t>(connection.number(sql));
        } catch (const SQLite::Exception&) {
            return std::nullopt;
        }
    };
    struct Part {
        const char* name;
        const char* upwards;
        const char* downwards;
        const char* expected;
    };
    std::vector<std::string> lines;
    for (const Part& part :
         {Part{"journal entries", "SELECT 1 FROM journal ORDER BY row",
               "SELECT 1 FROM journal ORDER BY row DESC", "SELECT sum(last_seq) FROM device"},
          Part{"versions of arcs", "SELECT 1 FROM arc ORDER BY key, journal",
               "SELECT 1 FROM arc ORDER BY key DESC, journal DESC", nullptr},
          Part{"versions of readings", "SELECT 1 FROM reading ORDER BY arc, channel",
               "SELECT 1 FROM reading ORDER BY arc DESC, channel DESC", nullptr},
          Part{"other records", "SELECT 1 FROM record ORDER BY row", "SELECT 1 FROM record ORDER BY row DESC",
               nullptr}}) {
        const std::uint64_t there = reachable(connection, part.upwards, part.downwards);
        const auto all = part.expected != nullptr ? expected(part.expected) : std::nullopt;
        lines.push_back(grouped(there) + (all ? " of " + grouped(*all) : std::string()) + " " + part.name +
                        " can be read");
    }
    return lines;
}

Result<BookState> bookState(const fs::path& book) {
    BookState state;
    if (const auto damaged = knownDamage(book)) {
        state.access = BookAccess::Damaged;
        state.sentence = damaged->sentence();
        if (auto lines = whatIsReadable(book)) state.readable = std::move(*lines);
    } else if (!WriterLock::heldByThisProcess(book)) {
        state.access = BookAccess::OtherProgramWrites;
        state.sentence =
            "The logbook is open for reading only: another program writes into it, or its folder "
            "cannot be written to.";
    }
    return state;
}

}  // namespace arc::storage
