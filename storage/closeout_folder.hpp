// SPDX-License-Identifier: GPL-3.0-or-later
// The folder a closeout record is handed over in: written beside its place and moved there whole, so that
// nobody ever finds half a record; and verified, by us or by a stranger.
#pragma once
#include <filesystem>
#include <string>

#include "core/closeout/record.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"
#include "storage/device_key.hpp"
#include "storage/export_manifest.hpp"

namespace arc::storage {

inline constexpr const char* manifestName = "manifest.json";
inline constexpr const char* signatureName = "manifest.sig";

/// A record folder under construction. Goes away again unless it is put in place.
class CloseoutStage {
  public:
    /// Refuses a target that holds anything but a draft of a closeout record.
    static Result<CloseoutStage> begin(const std::filesystem::path& target);
    ~CloseoutStage();
    CloseoutStage(CloseoutStage&& other) noexcept;
    CloseoutStage& operator=(CloseoutStage&&) = delete;
    CloseoutStage(const CloseoutStage&) = delete;

    /// Where to write the file of that name.
    [[nodiscard]] std::filesystem::path file(std::string_view name) const;
    /// Writes manifest and signature over all files that are there; answers the manifest's SHA-256.
    Result<std::string> seal(const closeout::Record& record, const DeviceKey& key, Progress& progress);
    /// Moves the sealed folder to its place. Answers that place.
    Result<std::filesystem::path> putInPlace();
    /// Leaves the folder where it was built and answers where that is.
    std::filesystem::path keep();

  private:
    CloseoutStage(std::filesystem::path target, std::filesystem::path folder);
    std::filesystem::path m_target, m_folder;
};

/// What a folder turned out to be.
struct VerifiedCloseout {
    Manifest manifest;
    std::string manifestSha256;
};

/// Whether the folder looks like a closeout record at all (has a manifest).
bool isCloseoutFolder(const std::filesystem::path& folder);

/// Checks signature, every file and that there is no other. The Problem (Damaged) names the first difference.
Result<VerifiedCloseout> verifyCloseout(const std::filesystem::path& folder, Progress& progress);

/// One sentence about a verified record: what it is, how many files, who signed. `config`: where this
/// laptop's key and its list of known devices are.
std::string sentence(const VerifiedCloseout& verified, const std::filesystem::path& config);

}  // namespace arc::storage
