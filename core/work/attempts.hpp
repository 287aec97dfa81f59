// SPDX-License-Identifier: GPL-3.0-or-later
// Attempt chains: all readings of one fibre pair, in the order they were made, and which of them stands.
// A re-splice destroys the splice before it, so what lies in the closure is the last reading that was not
// voided; the lowest one is kept beside it as what the crew managed at best.
#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/logbook.hpp"
#include "core/work/job.hpp"

namespace arc {

/// Indices into the rows the chains were made from.
struct AttemptChain {
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    std::string fibreA, fibreB;           ///< both empty: the pair was not named
    std::vector<std::size_t> readings;    ///< by time, voided ones included
    std::optional<std::size_t> standing;  ///< last reading that is not voided
    std::optional<std::size_t> best;      ///< lowest loss that is not voided; the earlier of equals
    int attempts = 0;                     ///< readings that are not voided
    bool operator==(const AttemptChain&) const = default;
};

/// Readings of the same job, closure and fibre pair make one chain, whatever their order in `rows`. Without
/// fibre names, a reading with attempt > 1 goes on with the chain of the same splicer, groove and closure.
/// Chains come in the order of their first reading. Cost O(n log n).
std::vector<AttemptChain> attemptChains(std::span<const SpliceRow> rows);

enum class Outcome {
    Accepted,      ///< within the limit per splice
    KeptWithNote,  ///< above it after the last attempt, and the note is there
    NoteMissing,   ///< above it after the last attempt, no note
    Resplice,      ///< above it, attempts left
    OverCeiling,   ///< above what the contract ever accepts
    Voided,        ///< nothing stands
};

/// How the chain ends under the rule of its job. The attempt that counts is the larger of the number written
/// down and the number of readings.
Outcome outcome(const AttemptChain& chain, std::span<const SpliceRow> rows, const AcceptanceRule& rule);

}  // namespace arc
