// SPDX-License-Identifier: GPL-3.0-or-later
// How the fibres of an arc were stripped: by the cables that were worked. Source: common practice.
#pragma once
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/analytics/stream.hpp"
#include "core/work/job.hpp"

namespace arc::care {

std::string_view word(RibbonKind kind);   ///< "flat", "web", "ribbonised"
std::string_view title(RibbonKind kind);  ///< "flat ribbon", "web-type ribbon", "ribbonised loose tubes"
/// Fragments are left in the stripper at every strip.
bool sheds(RibbonKind kind);

/// What a cable's fibres are when several are stripped together: as it says itself; loose tubes can only have
/// been ribbonised by hand; a ribbon cable that does not say is as `otherwise` has it.
RibbonKind ribbonOf(const Cable& cable, RibbonKind otherwise);

/// One side of an arc of several fibres.
struct StrippedSide {
    RibbonKind ribbon = RibbonKind::Flat;
    std::string cable;  ///< label; empty when no cable is known
};
/// Both sides of an arc; none when it joined single fibres. A side whose cable is not known is as the other.
std::optional<std::array<StrippedSide, 2>> strippedFor(const HistoryArc& arc, const SplicerHistory& history,
                                                       RibbonKind otherwise);

}  // namespace arc::care
