// SPDX-License-Identifier: GPL-3.0-or-later
// Small files other than the logbook: read whole, written durably, hashed in pieces. Never for a logbook:
// opening one outside SQLite drops its locks.
#pragma once
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

enum class FileMode { Normal, OwnerOnly };

/// Refuses what is no regular file (a link, a folder, a device) or larger than `most` bytes.
Result<std::string> readPlainFile(const std::filesystem::path& file, std::uint64_t most);

/// Makes a new file; refuses an existing one. On disk when it returns.
Result<void> writePlainFile(const std::filesystem::path& file, std::string_view bytes, FileMode mode);

/// Makes renames and new files of a folder durable.
Result<void> syncFolder(const std::filesystem::path& folder);

struct FileDigest {
    std::uint64_t bytes = 0;
    std::string sha256;  ///< lower-case hex
};
Result<FileDigest> digestOf(const std::filesystem::path& file, Progress& progress);
std::string sha256Hex(std::string_view bytes);

}  // namespace arc::storage
