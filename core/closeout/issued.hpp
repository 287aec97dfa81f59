// SPDX-License-Identifier: GPL-3.0-or-later
// The final records of a job: numbers, what supersedes what, and numbers that two laptops gave at the same
// time without knowing of each other.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "core/closeout/decisions.hpp"

namespace arc::closeout {

/// One more than the largest; 1 for the first.
int nextNumber(std::span<const IssuedRecord> issued);
/// The number the next one supersedes; none: it is the first.
std::optional<int> latestNumber(std::span<const IssuedRecord> issued);
/// Number of the later record that replaced it.
std::optional<int> supersededBy(const IssuedRecord& record, std::span<const IssuedRecord> issued);
/// Numbers that more than one record bears, ascending.
std::vector<int> numbersGivenTwice(std::span<const IssuedRecord> issued);

}  // namespace arc::closeout
