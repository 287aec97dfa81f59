// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/mend.hpp"

#include <array>
#include <cstdint>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>

#include "storage/batch_reader.hpp"
#include "storage/connection.hpp"
#include "storage/migrations.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

// The database header is described in SQLite's "Database File Format", section 1.3.
constexpr std::size_t pageBytes = 4'096;  // of every logbook
constexpr std::size_t headerBytes = 100;
constexpr std::string_view magic("SQLite format 3\0", 16);
constexpr std::size_t changeCounterAt = 24, pageCountAt = 28, freePagesAt = 32, freeCountAt = 36,
                      validForAt = 92;

using Page = std::array<char, pageBytes>;

void putNumber(Page& page, std::size_t at, std::uint32_t number) {
    for (std::size_t i = 0; i < 4; ++i) page[at + i] = static_cast<char>(number >> (24 - 8 * i));
}

Result<Page> readFirstPage(const fs::path& file) {
    Page page{};
    std::ifstream in(file, std::ios::binary);
    if (!in.read(page.data(), pageBytes))
        return fail(ProblemCode::BadInput, "the file is not a logbook", file.string(),
                    "Choose a file made by Arcwright");
    return page;
}

Result<Page> firstPageOfANewBook() {
    auto model = PrivateFile::make();
    if (!model) return tl::unexpected(model.error());
    {
        Connection connection(model->path(), Access::Create);
        migrate(connection, embedded_migrations());
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)");
    }
    return readFirstPage(model->path());
}

/// Mends as little as can be: the length, the header, or all of the page.
Page mended(const Page& old, const Page& model, std::uint32_t pages) {
    Page page = model;
    const bool headerHolds = std::string_view(old.data(), magic.size()) == magic;
    constexpr char leafOfATable = 0x0d, innerPageOfATable = 0x05;
    const char kind = old[headerBytes];
    if (kind == leafOfATable || kind == innerPageOfATable)
        std::copy(old.begin() + headerBytes, old.end(), page.begin() + headerBytes);
    if (headerHolds) std::copy_n(old.begin(), headerBytes, page.begin());
    putNumber(page, pageCountAt, pages);
    putNumber(page, changeCounterAt, 1);
    putNumber(page, validForAt, 1);
    putNumber(page, freePagesAt, 0);
    putNumber(page, freeCountAt, 0);
    return page;
}

bool hasAJournal(const fs::path& copy) {
    try {
        Connection connection(copy, Access::ReadOnly);
        if (schemaState(connection) != SchemaState::Current) return false;
        BatchReader reader(connection, BatchReader::Splices::Given);
        for (std::int64_t row = 1; row <= 100; ++row)
            if (reader.tryRow(row) != BatchReader::Extent::Nothing &&
                hashOf(reader.journal()) == reader.journal().hash)
                return true;
    } catch (const std::exception&) {
        // Then it has none.
    }
    return false;
}

}  // namespace

Result<PrivateFile> mendedCopy(const fs::path& book) {
    std::error_code error;
    const auto bytes = fs::file_size(book, error);
    const auto refused = fail(ProblemCode::BadInput, "the file is not a logbook", book.string(),
                              "Choose a file made by Arcwright");
    if (error || bytes < 2 * pageBytes) return refused;
    auto copy = PrivateFile::make();
    if (!copy) return copy;
    // The raw copy drops the locks that this process has on the file: it has none, as SQLite would not open
    // it.
    fs::copy_file(book, copy->path(), fs::copy_options::overwrite_existing, error);
    if (!error && fs::exists(book.string() + "-wal"))
        fs::copy_file(book.string() + "-wal", copy->path().string() + "-wal", error);
    if (error)
        return fail(ProblemCode::Unavailable, "there is no room for a readable copy: " + error.message(),
                    copy->path().string(), "Set TMPDIR to a folder with room");
    const auto old = readFirstPage(copy->path());
    if (!old) return tl::unexpected(old.error());
    auto model = guarded(book, firstPageOfANewBook);
    if (!model) return tl::unexpected(model.error());
    {
        const Page page = mended(*old, *model, static_cast<std::uint32_t>(bytes / pageBytes));
        std::fstream out(copy->path(), std::ios::in | std::ios::out | std::ios::binary);
        out.write(page.data(), pageBytes);
    }
    if (!hasAJournal(copy->path())) return refused;
    return copy;
}

}  // namespace arc::storage
