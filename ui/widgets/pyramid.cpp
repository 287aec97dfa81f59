// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/pyramid.hpp"

#include <algorithm>
#include <limits>

namespace arc::ui {
namespace {

MinMax join(MinMax a, MinMax b) {
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

}  // namespace

Pyramid::Pyramid(std::span<const float> values) {
    if (values.empty()) return;
    std::vector<MinMax> base;
    base.reserve(values.size());
    for (const float v : values) base.push_back({v, v});
    m_levels.push_back(std::move(base));
    while (m_levels.back().size() > 1) {
        const auto& below = m_levels.back();
        std::vector<MinMax> level;
        level.reserve((below.size() + 1) / 2);
        for (std::size_t i = 0; i < below.size(); i += 2)
            level.push_back(i + 1 < below.size() ? join(below[i], below[i + 1]) : below[i]);
        m_levels.push_back(std::move(level));
    }
}

MinMax Pyramid::over(std::size_t begin, std::size_t end) const {
    MinMax found{std::numeric_limits<float>::infinity(), -std::numeric_limits<float>::infinity()};
    // Odd ends are taken on each level, the even middle goes one level up.
    for (std::size_t level = 0; begin < end; ++level, begin /= 2, end /= 2) {
        if (begin % 2 == 1) found = join(found, m_levels[level][begin++]);
        if (end % 2 == 1 && begin < end) found = join(found, m_levels[level][--end]);
    }
    return found;
}

}  // namespace arc::ui
