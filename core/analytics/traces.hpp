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
    /// What was watched: without cleave angles in the book there is no line that says they are fine.
    [[nodiscard]] std::vector<Trace> traces() const;

  private:
    struct Line {
        Trace trace;
        bool watched = false;
    };
    std::vector<Line> lines_;
};

}  // namespace arc::drift
