// SPDX-License-Identifier: GPL-3.0-or-later
// A reading that was written to the wrong fibre is taken out of that fibre's attempt chain and put where it
// belongs; both chains are numbered anew. Values in, values out: nothing is written here.
#pragma once
#include <string>
#include <vector>

#include "core/result.hpp"
#include "core/work/splice.hpp"

namespace arc {

/// One good reading of a fibre pair, with its arc.
struct ChainLink {
    ArcId arc;
    Instant at;
    Reading reading;
    bool operator==(const ChainLink&) const = default;
};

/// Readings of one fibre pair, ascending by attempt; at most one of each arc.
using Chain = std::vector<ChainLink>;

/// The fibre pair a reading really belongs to, and its groove there.
struct SplitPlace {
    std::string fibreA, fibreB;
    int channel = 1;
};

struct Split {
    Chain from, to;                      ///< as they read afterwards
    std::vector<ReadingChange> changes;  ///< at most one of each arc and groove
    std::vector<ReadingChange> back;     ///< takes them back
};

/// Moves from[which] into `to`, where its time puts it. Attempts behind it move up in `from` and, where they
/// must, down in `to`; what need not change stays as it was written. A reading that changes its groove is
/// voided in the old one. Refused when `to` has a reading of the same arc, or when there is no such reading.
Result<Split> split(const Chain& from, std::size_t which, const Chain& to, const SplitPlace& place);

}  // namespace arc
