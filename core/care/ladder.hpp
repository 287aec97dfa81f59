// SPDX-License-Identifier: GPL-3.0-or-later
// Gentle before drastic: which care a signal calls for next, given its ranked causes and what was already
// tried and did not help (common practice).
#pragma once
#include <span>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/record.hpp"

namespace arc::care {

enum class Symptom { Loss, Cleave };
/// Loss: grooves, clamps, lenses, calibration, electrodes, diagnostics. Cleave: pads and anvil, blade, next
/// position, next height.
std::span<const std::string_view> rungs(Symptom symptom);

/// A care done since the signal began, and what came of it.
struct Tried {
    ActionKey action;
    Instant at;
    drift::CareVerdict verdict = drift::CareVerdict::TooEarly;
    int cardVersion = 0;  ///< 0: not by the card, so not inspected: worth doing once more by the card
};

enum class Wait { No, ForVerdict };
struct Advice {
    ActionKey action;  ///< empty: nothing to do to a tool
    Wait wait = Wait::No;
    std::string why;                    ///< "groove 5 alone is up; cleaning on 3 March did not help"
    std::vector<ActionKey> stillAhead;  ///< what comes after, gentle to drastic
};

/// What the electrodes have behind them, to tell a worn pair from a young one.
struct Wear {
    std::optional<std::uint32_t> electrodeArcs;
    std::uint32_t electrodeLife = 5000;
};

/// The next rung. A rung that did not help (no change or worse) when done by its card is not offered again
/// for this signal, nor one that did not help twice; one that helped in part is offered once more.
Advice nextCare(const drift::Signal& signal, std::span<const Tried> tried, const Wear& wear);

}  // namespace arc::care
