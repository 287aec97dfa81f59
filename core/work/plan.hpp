// SPDX-License-Identifier: GPL-3.0-or-later
// The splice plan of a closure: which fibre of side A meets which of side B. Written by range or as CSV.
#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.hpp"
#include "core/work/job.hpp"

namespace arc {

using SplicePlan = std::vector<PlannedSplice>;

/// Reads a plan by range. Parts are separated by ";" or a new line; each part is
///   LIST straight     every fibre to the same number ("1-144 straight"; the word may be left out)
///   LIST to LIST      first to first, second to second ("1-12 to 25-36", "1,3,5 to 2,4,6", "1-12 to 12-1")
/// A LIST is numbers and ranges with commas between; a range may run downwards. Numbers 1-6912. The Problem
/// names the part. No fibre may be planned twice on one side.
Result<SplicePlan> planFromText(std::string_view text);

/// Reads "fibre_a,fibre_b" rows with a header row; comma, semicolon or tab. Order of columns free, others are
/// passed over, blank lines too. The Problem names the line.
Result<SplicePlan> planFromCsv(std::string_view csv);

/// The shortest text by range that planFromText reads back as the same plan, in the same order.
std::string planToText(std::span<const PlannedSplice> plan);

/// "fibre_a,fibre_b" with CRLF line ends (RFC 4180).
std::string planToCsv(std::span<const PlannedSplice> plan);

/// Whether the cables have these fibres and the trays the room. A count of 0 or less means not known.
Result<void> planFits(std::span<const PlannedSplice> plan, int fibresA, int fibresB, int places);

}  // namespace arc
