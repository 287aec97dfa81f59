// SPDX-License-Identifier: GPL-3.0-or-later
// What can still be read of a damaged logbook, in a new one. Entries whose hash still fits keep their place
// in the journal; what is readable after a gap is written anew and says so. The damaged book is not touched.
#pragma once
#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

struct Rescued {
    std::uint64_t whole = 0;          ///< journal rows that are as they were
    std::uint64_t partly = 0;         ///< journal rows of which something could be read
    std::uint64_t lost = 0;           ///< journal rows of which nothing could be read
    std::vector<std::string> losses;  ///< the first 100 that are not whole, with time and words
};

Result<Rescued> rescueBook(const std::filesystem::path& damaged, const std::filesystem::path& rescued,
                           Clock& clock, Random& random, Progress& progress);

}  // namespace arc::storage
