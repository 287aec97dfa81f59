// SPDX-License-Identifier: GPL-3.0-or-later
// Spans as they are written: the ends by label, the closures on them by list and range, several spans as CSV.
#pragma once
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/result.hpp"
#include "core/work/job.hpp"

namespace arc {

/// Closures by list and range, parts with commas or semicolons between: "HR-01 to HR-05, HR-07". A range goes
/// along the labels, numbers in them by size. Empty text: none. The Problem names the part.
Result<std::vector<ClosureId>> closuresFromText(std::string_view text, std::span<const Closure> closures);

/// The shortest text that closuresFromText reads back as the same closures.
std::string closuresToText(std::span<const ClosureId> on, std::span<const Closure> closures);

/// The closure of that label, or an end of that name.
SpanEnd endFromText(std::string_view text, std::span<const Closure> closures);
std::string endToText(const SpanEnd& end, std::span<const Closure> closures);

/// A splice counts once: Conflict when one of the closures is on another of these spans already.
Result<void> spanFits(const Span& span, std::span<const Span> others, std::span<const Closure> closures);

/// What spans are read against.
struct SpanGround {
    JobId job;
    std::vector<Cable> cables;
    std::vector<Closure> closures;
    std::vector<Span> spans;  ///< those of the job; a row with the label of one changes it
};

/// Reads a table with the header span,from,to,cable,length_km,closures (span, from and to needed, order free,
/// others passed over); comma, semicolon or tab; quotes as in RFC 4180; a comma in the length when the
/// columns are not separated by commas. Answers the new and changed spans. All or nothing; the Problem names
/// the line.
Result<std::vector<Span>> spansFromCsv(std::string_view csv, const SpanGround& ground,
                                       const std::function<SpanId()>& newId);

}  // namespace arc
