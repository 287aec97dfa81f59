// SPDX-License-Identifier: GPL-3.0-or-later
// Fills a logbook with the invented scenario "Harrow Ridge".
#pragma once
#include "core/logbook.hpp"
#include "core/scenario/scenario.hpp"

namespace arc::storage {

/// The settings the program carries (sample-data/harrow-ridge.json).
Result<scenario::Scenario> harrowRidge();

/// Six weeks of four splicers that end less than a day before `now`, in one transaction. The setting
/// "book.about" says that everything in it is invented. Meant for an empty logbook.
Result<Receipt> fillWithHarrowRidge(Logbook& book, Instant now);

}  // namespace arc::storage
