// SPDX-License-Identifier: GPL-3.0-or-later
// Satchels of devices nobody has accepted yet: copied to the folder "NAME.waiting" beside the logbook, so
// that the stick can go, and left unopened until somebody accepts the device.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "core/handover.hpp"
#include "storage/device_key.hpp"
#include "storage/satchel.hpp"

namespace arc::storage {

/// This machine's own key, and those somebody accepted.
Result<std::vector<PublicKey>> acceptedKeys(const std::filesystem::path& config);

/// This machine first, then the accepted ones by name, then the signers of satchels that wait.
Result<std::vector<Device>> devicesAround(const std::filesystem::path& config,
                                          const std::filesystem::path& book);

/// Takes in what comes from an accepted device; the rest waits.
Result<SatchelAnswer> takeOrKeep(UnpackRequest request, const std::filesystem::path& config, Clock& clock,
                                 Random& random, Progress& progress);

Result<std::vector<WaitingSatchel>> waitingSatchels(const std::filesystem::path& book);
/// Refused for a file that does not wait beside this book.
Result<void> discardSatchel(const std::filesystem::path& book, const std::filesystem::path& satchel);

}  // namespace arc::storage
