// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/row.hpp"

#include <algorithm>

namespace arc::drift {

namespace {
std::uint16_t column(std::int32_t value) {
    return static_cast<std::uint16_t>(std::clamp(value, 0, 65535));
}
}  // namespace

RawArc rawArc(const HistoryArc& arc, std::span<const HistoryReading> readings, std::uint64_t number) {
    RawArc raw;
    raw.number = number;
    raw.at = arc.at;
    if (arc.counter) raw.counter = arc.counter->value;
    raw.job = arc.job;
    raw.cleaver = arc.cleaver;
    if (arc.temperature) raw.celsius = static_cast<float>(celsius(*arc.temperature));
    for (const auto& reading : readings) {
        const int groove = reading.channel - 1;
        if (reading.attempt > 1) raw.redone = 1;
        if (reading.attempt > 1 || groove < 0 || groove >= maxGrooves) continue;
        const auto bit = static_cast<std::uint16_t>(1U << groove);
        raw.lossMask |= bit;
        raw.loss[groove] = column(reading.loss.value);
        if (reading.cleaveLeft) {
            raw.leftMask |= bit;
            raw.left[groove] = column(reading.cleaveLeft->value);
        }
        if (reading.cleaveRight) {
            raw.rightMask |= bit;
            raw.right[groove] = column(reading.cleaveRight->value);
        }
    }
    return raw;
}

}  // namespace arc::drift
