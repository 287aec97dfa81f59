// SPDX-License-Identifier: GPL-3.0-or-later
// Reading the newest splices of a search in steps back through time, so that a search that finds little in a
// million rows can be stopped on the way.
#pragma once
#include <optional>
#include <vector>

#include "core/logbook.hpp"
#include "core/ports.hpp"

namespace arc {

/// As Logbook::splices, newest first; Cancelled when the watcher asks to stop.
Result<std::vector<SpliceRow>> newestSplices(Logbook& book, const SpliceFilter& filter,
                                             std::optional<PageKey> after, std::size_t limit,
                                             Progress& progress);

}  // namespace arc
