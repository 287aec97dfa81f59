// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/plot_map.hpp"

#include <algorithm>
#include <cmath>

namespace arc::ui {

double tidyStep(double from, double to, int most) {
    const double rough = (to - from) / std::max(1, most);
    if (!(rough > 1)) return 1;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double times : {1.0, 2.0, 5.0})
        if (power * times >= rough) return power * times;
    return power * 10;
}

}  // namespace arc::ui
