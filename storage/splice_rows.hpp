// SPDX-License-Identifier: GPL-3.0-or-later
// Splices as they come out of the arc and reading tables.
#pragma once
#include <string>

#include "core/work/splice.hpp"
#include "storage/query.hpp"

namespace arc::storage {

/// A quantity, or nothing where the column is NULL.
template <class Q>
std::optional<Q> maybe(const Query& q, int column) {
    if (q.isNull(column)) return std::nullopt;
    return Q{static_cast<decltype(Q::value)>(q.integer(column))};
}

/// What arcFrom reads from column `first` on, and the joins it needs; the arc is called `a`, its identity
/// `i`, the operator's word `o`.
const std::string& arcColumns();
const std::string& arcJoins();
inline constexpr int arcColumnCount = 15;
/// Readings are left empty.
SpliceArc arcFrom(const Query& q, int first = 0);

/// What readingFrom reads from column `first` on; the reading is called `r`.
const std::string& readingColumns();
inline constexpr int readingColumnCount = 9;
Reading readingFrom(const Query& q, int first);

}  // namespace arc::storage
