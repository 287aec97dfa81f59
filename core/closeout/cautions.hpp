// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions printed on every closeout record: whoever opens a closure after us reads them there.
#pragma once
#include <array>
#include <string_view>

namespace arc::closeout {

inline constexpr std::array<std::string_view, 5> cautions{
    "Treat every fibre as live: never look into a fibre or connector (IEC 60825-2).",
    "Fibre ends are glass shards: eye protection, a shard bin, no food at the bench.",
    "Splicer electrodes carry high voltage: power off and unplug before touching them.",
    "Alcohol is flammable and an arc ignites gas: ventilate, let it dry, test the air in manholes and pits.",
    "Follow local codes and licensed practice.",
};

}  // namespace arc::closeout
