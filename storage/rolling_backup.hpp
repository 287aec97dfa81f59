// SPDX-License-Identifier: GPL-3.0-or-later
// The rolling set of backups of a logbook: consistent copies named by their time, bounded by age, number and
// size. The newest copy always stays.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <vector>

#include "core/handover.hpp"

namespace arc::storage {

/// Read from the logbook's own settings, see core/handover.hpp; what is not set or makes no sense takes the
/// default.
struct BackupPlan {
    std::filesystem::path folder;
    std::optional<std::int64_t> everyHours = 24;  ///< nothing: only when asked for
    std::size_t keepCopies = 10;
    std::int64_t keepDays = 60;
    std::uint64_t keepBytes = 2'000'000'000;
};
Result<BackupPlan> backupPlan(const std::filesystem::path& book);

/// Newest first.
std::vector<BackupCopy> backupsOf(const std::filesystem::path& book, const BackupPlan& plan);

/// Makes one, then removes what is beyond the bounds.
Result<BackupCopy> addBackup(const std::filesystem::path& book, const BackupPlan& plan, Clock& clock,
                             Progress& progress);

/// Whether the newest copy (without one: the book itself) is older than the plan allows and the book has rows
/// it has not.
Result<bool> backupDue(const std::filesystem::path& book, const BackupPlan& plan, Clock& clock);

/// Makes one if it is due.
Result<std::optional<BackupCopy>> addBackupIfDue(const std::filesystem::path& book, Clock& clock,
                                                 Progress& progress);

/// Verifies the copy and writes it to a new file. Who writes into that goes on with a chain of his own.
Result<void> restoreBackup(const std::filesystem::path& copy, const std::filesystem::path& newBook,
                           Progress& progress);

}  // namespace arc::storage
