// SPDX-License-Identifier: GPL-3.0-or-later
// Tells a copy of a logbook from the file it was copied from: this machine and this file.
#pragma once
#include <filesystem>
#include <string>

#include "storage/canonical.hpp"

namespace arc::storage {

/// The same for as long as the file stays on this machine; another for a copy of it.
Digest placeOf(const std::filesystem::path& file);

/// Name of this machine, for people.
std::string machineName();

}  // namespace arc::storage
