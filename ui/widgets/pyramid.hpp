// SPDX-License-Identifier: GPL-3.0-or-later
// Smallest and largest value of any stretch of a long row in O(log n), so that a chart of a million arcs
// paints one stroke a pixel column and still shows every peak.
#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace arc::ui {

struct MinMax {
    float low, high;
    bool operator==(const MinMax&) const = default;
};

class Pyramid {
  public:
    Pyramid() = default;
    explicit Pyramid(std::span<const float> values);
    /// Over the indices [begin, end); begin < end <= size.
    [[nodiscard]] MinMax over(std::size_t begin, std::size_t end) const;
    [[nodiscard]] std::size_t size() const { return m_levels.empty() ? 0 : m_levels.front().size(); }

  private:
    std::vector<std::vector<MinMax>> m_levels;  ///< each half as long as the one before
};

}  // namespace arc::ui
