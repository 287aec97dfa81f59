// SPDX-License-Identifier: GPL-3.0-or-later
// Goes through a record and writes down what is out of order; flags the splices concerned.
#pragma once
#include <string>
#include <vector>

#include "core/closeout/record.hpp"

namespace arc::closeout {

/// Judges every splice by the job's rule and lists the exceptions, most serious kind first. `overrides`:
/// those of the tools of this job. Dispositions are given by key; of two, the later one counts.
void findExceptions(Record& record, const std::vector<HoldOverride>& overrides,
                    const std::vector<ExceptionDisposition>& dispositions);

/// The one splice an exception is about; null when it is about several or none.
const Splice* spliceOf(const Record& record, const Exception& exception);

/// "1-4, 7, 9-12": ascending numbers in short.
std::string ranges(std::vector<int> numbers);

}  // namespace arc::closeout
