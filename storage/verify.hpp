// SPDX-License-Identifier: GPL-3.0-or-later
// Walks a logbook and finds any changed, removed or reordered row: pages, schema, the hash chain of each
// device, the content under each journal row, which version shows, and the counted totals.
#pragma once
#include <cstdint>
#include <filesystem>
#include <string>

#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::storage {

struct BookVerdict {
    std::uint64_t journalRows = 0, devices = 0, arcs = 0, readings = 0;
    std::uint64_t headlines = 0;  ///< journal rows without their content
    std::string head;             ///< as on a closeout
    /// "The logbook verifies: …"
    [[nodiscard]] std::string sentence() const;
};

/// The Problem (Damaged) names the first thing that differs. Opens for reading only; the book may be in use.
Result<BookVerdict> verifyBook(const std::filesystem::path& book, Progress& progress);

}  // namespace arc::storage
