// SPDX-License-Identifier: GPL-3.0-or-later
// The manifest of a closeout folder: what belongs to it, with the SHA-256 of each file, where the journal
// stood, and whose key signs it. Written one file a line, so that sed and sha256sum can read it.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/closeout/record.hpp"
#include "core/result.hpp"
#include "storage/device_key.hpp"

namespace arc::storage {

struct ManifestFile {
    std::string name;  ///< letters, digits, dot, dash and underscore; never a path
    std::uint64_t bytes = 0;
    std::string sha256;
};

struct Manifest {
    std::string job;
    std::string state;  ///< "draft" or "final"
    std::optional<int> number;
    std::optional<int> supersedes;
    std::string madeAt;
    std::string journalHead;
    PublicKey device{};
    std::vector<ManifestFile> files;
};

Manifest manifestOf(const closeout::Record& record, const PublicKey& device, std::vector<ManifestFile> files);
std::string toJson(const Manifest& manifest);

/// Refuses what is no manifest of ours, a newer version, doubled names and names that are paths.
Result<Manifest> parseManifest(std::string_view json);

}  // namespace arc::storage
