// SPDX-License-Identifier: GPL-3.0-or-later
// The outer form of a satchel: label, signature, payload. Inside storage only.
#pragma once
#include <filesystem>
#include <optional>
#include <string>

#include "storage/satchel.hpp"

namespace arc::storage {

/// A file in the folder for temporary files that only its owner can read; gone with the object.
class PrivateFile {
  public:
    static Result<PrivateFile> make();
    ~PrivateFile();
    PrivateFile(PrivateFile&& other) noexcept;
    PrivateFile& operator=(PrivateFile&&) = delete;
    PrivateFile(const PrivateFile&) = delete;
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    explicit PrivateFile(std::filesystem::path path) : path_(std::move(path)) {}
    std::filesystem::path path_;
};

/// Signs and writes; the label's payload and seal fields are filled in here.
Result<void> writeSatchelFile(const std::filesystem::path& satchel, SatchelLabel label,
                              const std::filesystem::path& payload,
                              const std::optional<std::string>& passphrase, const DeviceKey& key,
                              Random& random);

/// The payload of a satchel whose label was read and whose signature holds.
Result<PrivateFile> openPayload(const std::filesystem::path& satchel, const SatchelLabel& label,
                                const std::optional<std::string>& passphrase);

}  // namespace arc::storage
