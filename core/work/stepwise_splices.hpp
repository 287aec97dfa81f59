// SPDX-License-Identifier: GPL-3.0-or-later
// Reading the splices of a search from one end of time in growing steps, so that a search that finds little
// in a million rows can be stopped on the way.
#pragma once
#include <optional>
#include <vector>

#include "core/logbook.hpp"
#include "core/ports.hpp"

namespace arc {

/// As Logbook::splices; Cancelled when the watcher asks to stop.
Result<std::vector<SpliceRow>> splicesStepwise(Logbook& book, const SpliceFilter& filter, PageOrder order,
                                               std::optional<PageKey> after, std::size_t limit,
                                               Progress& progress);

}  // namespace arc
