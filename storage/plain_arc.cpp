// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/plain_arc.hpp"

#include <algorithm>
#include <string_view>

namespace arc::storage {
namespace {

bool isPlainLine(std::string_view text) {
    constexpr std::size_t shortEnough = 60;
    return text.size() <= shortEnough &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c < 0x7f; });
}

}  // namespace

bool plainlyFine(const SpliceArc& arc) {
    const auto within = [](const auto& quantity, int low, int high) {
        return !quantity || (quantity->value >= low && quantity->value <= high);
    };
    const Reading& r = arc.readings.front();
    return arc.at.ms > 0 && arc.at.ms < 253'000'000'000'000 && (arc.channels == 1 || arc.channels == 12) &&
           r.channel >= 1 && r.channel <= arc.channels && r.loss.value >= 0 && r.loss.value <= 10'000 &&
           r.attempt >= 1 && r.attempt <= 20 && within(r.cleaveLeft, 0, 4'000) &&
           within(r.cleaveRight, 0, 4'000) && within(arc.ambient.temperature, 233'150, 333'150) &&
           within(arc.ambient.humidity, 0, 1'000) && within(arc.ambient.pressure, 60'000, 105'000) &&
           isPlainLine(arc.mode) && isPlainLine(arc.operatorName) && isPlainLine(r.fibreA) &&
           isPlainLine(r.fibreB);
}

}  // namespace arc::storage
