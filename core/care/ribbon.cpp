// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/ribbon.hpp"

namespace arc::care {

std::string_view word(RibbonKind kind) {
    switch (kind) {
        case RibbonKind::Flat:
            return "flat";
        case RibbonKind::WebType:
            return "web";
        case RibbonKind::RibbonisedTubes:
            return "ribbonised";
    }
    return "";
}

std::string_view title(RibbonKind kind) {
    switch (kind) {
        case RibbonKind::Flat:
            return "flat ribbon";
        case RibbonKind::WebType:
            return "web-type ribbon";
        case RibbonKind::RibbonisedTubes:
            return "ribbonised loose tubes";
    }
    return "";
}

bool sheds(RibbonKind kind) {
    return kind != RibbonKind::Flat;
}

RibbonKind ribbonOf(const Cable& cable, RibbonKind otherwise) {
    if (cable.ribbon) return *cable.ribbon;
    return cable.unit == FibreUnit::Tube ? RibbonKind::RibbonisedTubes : otherwise;
}

std::optional<std::array<StrippedSide, 2>> strippedFor(const HistoryArc& arc, const SplicerHistory& history,
                                                       RibbonKind otherwise) {
    if (arc.channels < 2) return std::nullopt;
    std::array<StrippedSide, 2> sides{StrippedSide{otherwise, {}}, StrippedSide{otherwise, {}}};
    if (!arc.closure || *arc.closure >= history.closures.size()) return sides;
    const auto& cables = history.closures[*arc.closure].cables;
    if (cables.empty()) return sides;
    sides[0] = {ribbonOf(cables.front(), otherwise), cables.front().label};
    sides[1] = {ribbonOf(cables.back(), otherwise), cables.back().label};
    return sides;
}

}  // namespace arc::care
