// SPDX-License-Identifier: GPL-3.0-or-later
// Arc number ↔ pixel column, without a widget.
#pragma once

namespace arc::ui {

struct PlotMap {
    double left = 0, right = 1;  ///< pixels; right > left
    double from = 0, to = 1;     ///< arc numbers at the two ends; to > from

    [[nodiscard]] double x(double arc) const { return left + (arc - from) / (to - from) * (right - left); }
    [[nodiscard]] double arc(double x) const { return from + (x - left) / (right - left) * (to - from); }
    [[nodiscard]] double arcsPerPixel() const { return (to - from) / (right - left); }
};

/// A step of 1, 2 or 5 times a power of ten that puts at most `most` marks between from and to; at least 1.
double tidyStep(double from, double to, int most);

}  // namespace arc::ui
