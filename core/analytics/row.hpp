// SPDX-License-Identifier: GPL-3.0-or-later
// One arc as the charts see it: the raw readings of first attempts, and the scores once a baseline is known.
#pragma once
#include <array>
#include <cstdint>
#include <optional>
#include <span>

#include "core/analytics/stream.hpp"

namespace arc::drift {

inline constexpr int maxGrooves = 16;
/// Shifts, in cells, that the shift scores ask about.
inline constexpr std::array<int, 2> shiftCells{1, 2};

/// The raw part of an arc; which grooves and angles were read is in the masks (bit c - 1 for groove c).
struct RawArc {
    std::uint64_t number = 0;  ///< of the splicer's arcs, from 1
    Instant at;
    std::optional<std::uint32_t> counter;
    std::optional<std::uint32_t> job;      ///< index in the history
    std::optional<std::uint32_t> cleaver;  ///< index in the history
    std::optional<float> celsius;
    std::uint8_t redone = 0;  ///< re-splices made since the arc before, at most 3
    std::uint16_t lossMask = 0, leftMask = 0, rightMask = 0;
    std::array<std::uint16_t, maxGrooves> loss{};           ///< 0.001 dB, capped at 65,535
    std::array<std::uint16_t, maxGrooves> left{}, right{};  ///< 0.01 degree
    [[nodiscard]] bool has(int groove) const { return (lossMask >> groove) & 1U; }
};

/// Scores of one arc, standardised so that each has mean 0 and standard deviation 1 on the baseline.
struct Scores {
    float common = 0;                              ///< mean rank score of the grooves
    std::array<float, shiftCells.size()> shift{};  ///< summed shift scores, one per entry of shiftCells
    float angle = 0;                               ///< mean stretch score of the cleave angles
    float spread = 0;                              ///< log variance of the rank scores within the arc
    std::array<float, maxGrooves> apart{};         ///< what each groove does apart from the arc's mean
};

struct Row {
    RawArc raw;
    Scores score;
};

/// First attempts of an arc. Grooves beyond 16 are left out. Angles and losses are cut at the column's range.
RawArc rawArc(const HistoryArc& arc, std::span<const HistoryReading> readings, std::uint64_t number);

}  // namespace arc::drift
