// SPDX-License-Identifier: GPL-3.0-or-later
// Where the plot begins and ends inside every chart of a column, so that one arc stands under the same arc.
#pragma once
#include "ui/theme/theme.hpp"
#include "ui/widgets/arc_window.hpp"
#include "ui/widgets/plot_map.hpp"

namespace arc::ui {

inline PlotMap plotMap(const ArcWindow& window, int width, const Theme& theme) {
    return {static_cast<double>(theme.px(46)), static_cast<double>(width - theme.px(18)), window.from(),
            window.to()};
}

}  // namespace arc::ui
