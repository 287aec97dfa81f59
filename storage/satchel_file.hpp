// SPDX-License-Identifier: GPL-3.0-or-later
// The outer form of a satchel: label, signature, payload. Inside storage only.
#pragma once
#include <filesystem>
#include <optional>
#include <string>

#include "storage/private_file.hpp"
#include "storage/satchel.hpp"

namespace arc::storage {

/// Signs and writes; the label's payload and seal fields are filled in here.
Result<void> writeSatchelFile(const std::filesystem::path& satchel, SatchelLabel label,
                              const std::filesystem::path& payload,
                              const std::optional<std::string>& passphrase, const DeviceKey& key,
                              Random& random);

/// The payload of a satchel whose label was read and whose signature holds.
Result<PrivateFile> openPayload(const std::filesystem::path& satchel, const SatchelLabel& label,
                                const std::optional<std::string>& passphrase);

}  // namespace arc::storage
