// SPDX-License-Identifier: GPL-3.0-or-later
// Did a care action help: the arcs after it against the arcs before. Before and after are read on what the
// signal complained about - one groove apart from the others, cleave angles, the level - and never from
// before the trouble began or from after the next care.
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <string>

#include "core/analytics/chart_state.hpp"
#include "core/analytics/drift.hpp"
#include "core/analytics/model.hpp"

namespace arc::drift {

inline constexpr int arcsAfterCare = 20;
inline constexpr int arcsBeforeCare = 40;
/// When the next care comes earlier, so many arcs are enough for a verdict.
inline constexpr int leastAfterCare = 8;

/// A verdict on a signal knows the trouble from so many arcs before the care, and waits this long after it
/// when 20 arcs leave open whether it is gone.
inline constexpr int arcsOfTrouble = 300;
inline constexpr int clearBy = 60;

/// The signal a care was to cure.
struct Complaint {
    Statistic statistic = Statistic::Common;
    int index = 0;
    std::uint64_t began = 0;  ///< arc number
    std::string signalKey;
};

/// The effect with its shift (dB) and 95 % interval, wandering between set-ups included, and a verdict once
/// enough arcs were made. `until`: the next care on the same tool, if there was one.
CareEffect judged(CareEffect effect, std::span<const Row> window, const Model& model,
                  const std::optional<Complaint>& complaint, std::optional<Instant> until);

/// Whether the complaint is gone from the first `arcsAfterCare` arcs at or after `at`, or up to `clearBy`
/// when these do not tell; empty while there are too few.
std::optional<CareVerdict> verdictOn(const Complaint& complaint, Instant at, std::span<const Row> window,
                                     const Model& model, std::optional<Instant> until);

}  // namespace arc::drift
