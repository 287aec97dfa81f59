// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/limits.hpp"

#include <cmath>

namespace arc::drift {

double normalCusumLimit(double arl, double k) {
    const auto runLength = [k](double h) {
        const double b = h + 1.166;
        return (std::exp(2 * k * b) - 2 * k * b - 1) / (2 * k * k);
    };
    double low = 0, high = 200;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (runLength(middle) < arl ? low : high) = middle;
    }
    return high;
}

}  // namespace arc::drift
