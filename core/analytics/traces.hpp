// SPDX-License-Identifier: GPL-3.0-or-later
// Writes down where the charts stand after each arc, for drawing.
#pragma once
#include <vector>

#include "core/analytics/watcher.hpp"

namespace arc::drift {

class TraceRecorder {
  public:
    /// After the watcher took the arc.
    void note(const Watcher& watcher, std::uint64_t arcNumber);
    [[nodiscard]] const std::vector<Trace>& traces() const { return traces_; }

  private:
    std::vector<Trace> traces_;
};

}  // namespace arc::drift
