// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/rolling_backup.hpp"

#include <algorithm>
#include <charconv>
#include <string>
#include <system_error>

#include "storage/backup.hpp"
#include "storage/open_book.hpp"
#include "storage/record_json.hpp"
#include "storage/verify.hpp"

namespace arc::storage {
namespace {

namespace fs = std::filesystem;

constexpr std::int64_t msPerHour = 3'600'000;
constexpr std::string_view ending = ".arcbook";

/// "crew-20310303T071500Z.arcbook"; sorts by time.
fs::path nameOf(const fs::path& book, Instant at) {
    std::string stamp = toIso(Instant{at.ms / 1000 * 1000, 0});
    std::erase_if(stamp, [](char c) { return c == '-' || c == ':'; });
    stamp.resize(15);  // without fraction and offset
    return book.stem().string() + "-" + stamp + "Z" + std::string(ending);
}

std::optional<Instant> timeOf(const fs::path& book, const fs::path& copy) {
    const std::string name = copy.filename().string();
    const std::string prefix = book.stem().string() + "-";
    constexpr std::size_t stampLength = 16;
    if (!name.starts_with(prefix) || name.size() != prefix.size() + stampLength + ending.size())
        return std::nullopt;
    const std::string s = name.substr(prefix.size(), stampLength);
    const auto at = parseInstant(s.substr(0, 4) + "-" + s.substr(4, 2) + "-" + s.substr(6, 5) + ":" +
                                 s.substr(11, 2) + ":" + s.substr(13));
    return at ? std::optional(*at) : std::nullopt;
}

std::optional<std::string> settingOf(Connection& connection, std::string_view key) {
    Query q = connection.query("SELECT body FROM record WHERE id = ? AND kind = 'setting' AND live = 1");
    const Uuid id = settingId(key);
    if (!q.with(id).step()) return std::nullopt;
    auto value = fromBody<Setting>(q.text(0)).value;
    return value.empty() ? std::nullopt : std::optional(std::move(value));
}

/// A whole number of at least `least`, else the default.
template <class T>
void read(Connection& connection, std::string_view key, std::int64_t least, T& into) {
    const auto text = settingOf(connection, key);
    std::int64_t value = 0;
    if (text && std::from_chars(text->data(), text->data() + text->size(), value).ec == std::errc() &&
        value >= least)
        into = static_cast<T>(value);
}

std::int64_t numberOf(const fs::path& book, const char* sql) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return 0;
    const auto number =
        guarded(book, [&]() -> Result<std::int64_t> { return open->connection->number(sql); });
    return number.value_or(0);
}

/// The newest stays whatever the bounds say.
void removeOld(const fs::path& book, const BackupPlan& plan, Instant now) {
    const auto copies = backupsOf(book, plan);
    std::uint64_t bytes = 0;
    for (std::size_t i = 0; i < copies.size(); ++i) {
        bytes += copies[i].bytes;
        const bool old = now.ms - copies[i].madeAt.ms > plan.keepDays * msPerDay;
        if (i == 0 || (i < plan.keepCopies && !old && bytes <= plan.keepBytes)) continue;
        std::error_code ignored;
        fs::remove(copies[i].file, ignored);
    }
}

}  // namespace

Result<BackupPlan> backupPlan(const fs::path& book) {
    auto open = openBook(book, OpenMode::ReadOnly);
    if (!open) return tl::unexpected(open.error());
    return guarded(book, [&]() -> Result<BackupPlan> {
        Connection& connection = *open->connection;
        BackupPlan plan;
        plan.folder = settingOf(connection, backup_setting::folder).value_or(book.string() + ".backups");
        std::int64_t hours = 24;
        read(connection, backup_setting::everyHours, 1, hours);
        plan.everyHours = hours;
        if (settingOf(connection, backup_setting::everyHours) == "off") plan.everyHours.reset();
        read(connection, backup_setting::keepCopies, 2, plan.keepCopies);
        read(connection, backup_setting::keepDays, 1, plan.keepDays);
        std::int64_t megabytes = 2'000;
        read(connection, backup_setting::keepMegabytes, 1, megabytes);
        plan.keepBytes = static_cast<std::uint64_t>(megabytes) * 1'000'000;
        return plan;
    });
}

std::vector<BackupCopy> backupsOf(const fs::path& book, const BackupPlan& plan) {
    std::vector<BackupCopy> copies;
    std::error_code error;
    for (auto entry = fs::directory_iterator(plan.folder, error); !error && entry != fs::directory_iterator();
         entry.increment(error)) {
        std::error_code ignored;
        if (const auto at = timeOf(book, entry->path()))
            copies.push_back({entry->path(), *at, entry->file_size(ignored)});
    }
    std::sort(copies.begin(), copies.end(),
              [](const BackupCopy& a, const BackupCopy& b) { return b.madeAt < a.madeAt; });
    return copies;
}

Result<BackupCopy> addBackup(const fs::path& book, const BackupPlan& plan, Clock& clock, Progress& progress) {
    std::error_code error;
    fs::create_directories(plan.folder, error);
    if (error)
        return fail(ProblemCode::Unavailable, "the folder for backups cannot be made: " + error.message(),
                    plan.folder.string(), "Choose another folder in the settings");
    const Instant now = clock.now();
    BackupCopy copy{plan.folder / nameOf(book, now), now, 0};
    if (auto done = backupBook(book, copy.file, progress); !done) return tl::unexpected(done.error());
    copy.bytes = fs::file_size(copy.file, error);
    removeOld(book, plan, now);
    return copy;
}

Result<bool> backupDue(const fs::path& book, const BackupPlan& plan, Clock& clock) {
    if (!plan.everyHours) return false;
    const auto copies = backupsOf(book, plan);
    constexpr const char* madeAt = "SELECT made_ms FROM book";
    constexpr const char* rows = "SELECT max(row) FROM journal";
    const std::int64_t newest = copies.empty() ? numberOf(book, madeAt) : copies.front().madeAt.ms;
    if (clock.now().ms - newest < *plan.everyHours * msPerHour) return false;
    return copies.empty() || numberOf(book, rows) != numberOf(copies.front().file, rows);
}

Result<std::optional<BackupCopy>> addBackupIfDue(const fs::path& book, Clock& clock, Progress& progress) {
    const auto plan = backupPlan(book);
    if (!plan) return tl::unexpected(plan.error());
    const auto due = backupDue(book, *plan, clock);
    if (!due) return tl::unexpected(due.error());
    if (!*due) return std::optional<BackupCopy>();
    return addBackup(book, *plan, clock, progress).map([](BackupCopy copy) {
        return std::optional(std::move(copy));
    });
}

Result<void> restoreBackup(const fs::path& copy, const fs::path& newBook, Progress& progress) {
    const auto verdict = verifyBook(copy, progress);
    if (!verdict) return tl::unexpected(verdict.error());
    return backupBook(copy, newBook, progress);
}

}  // namespace arc::storage
