// SPDX-License-Identifier: GPL-3.0-or-later
// From the readings of a job to the splices that lie in its closures.
#pragma once
#include <deque>
#include <functional>
#include <vector>

#include "core/closeout/record.hpp"
#include "core/logbook.hpp"

namespace arc::closeout {

/// Index into Record::equipment of a tool that took part at that time, with its own counter if known.
using EquipmentIndex = std::function<std::uint32_t(ToolId, Instant, std::optional<ArcCount>)>;

/// One section per closure of the job, also those without a splice; readings without a closure come last and
/// without one a first attempt always begins a new splice, since names repeat from closure to closure.
std::vector<ClosureSection> sections(const Job& job, const std::vector<Closure>& closures,
                                     const std::vector<Cable>& cables, std::deque<SpliceRow> rows,
                                     const EquipmentIndex& equipment);

/// Name, number, colour and tube or ribbon; without a cable TIA-598 and units of 12 are taken.
FibreEnd fibreEnd(std::string_view name, const Cable* cable);

}  // namespace arc::closeout
