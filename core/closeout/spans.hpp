// SPDX-License-Identifier: GPL-3.0-or-later
// The spans of a job in its closeout record: which closures are on which, and what one fibre from end to end
// may lose and is expected to lose.
#pragma once
#include <vector>

#include "core/closeout/record.hpp"
#include "core/work/job.hpp"

namespace arc::closeout {

/// One section a span, in their order; a job without spans is one. What lies on no span of a job that has
/// some comes last, without a budget. A closure that two spans name counts in both. Means are not filled in.
std::vector<SpanSection> spanSections(const Record& record, const std::vector<Span>& spans,
                                      const std::vector<Cable>& cables, const std::vector<Closure>& closures,
                                      const LinkAssumptions& assumptions);

/// The mean splice of these sections at one wavelength: the mean of both directions where a splice has one,
/// else the estimate of its last attempt. A one-way value never counts.
SplicedMean splicedMean(const Record& record, const std::vector<std::size_t>& sections, int wavelengthNm);

}  // namespace arc::closeout
