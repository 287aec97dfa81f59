// SPDX-License-Identifier: GPL-3.0-or-later
// What can still be read of a damaged logbook, in a new one. Entries whose hash still fits keep their place
// in the journal; what is readable after a gap is written anew and says so. The damaged book is not touched.
#pragma once
#include <filesystem>

#include "core/handover.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

Result<RescueCount> rescueBook(const std::filesystem::path& damaged, const std::filesystem::path& rescued,
                               Clock& clock, Random& random, Progress& progress);

}  // namespace arc::storage
