// SPDX-License-Identifier: GPL-3.0-or-later
// What else is known of the fibres on the pad: losses measured from the ends, and readings that two laptops
// edited without knowing of each other.
#pragma once
#include <QString>

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/handover.hpp"
#include "core/work/pad.hpp"

namespace arc::ui {

struct PadMarks {
    std::map<std::string, std::vector<MeasuredLoss>> measured;  ///< by fibre name, of this closure
    std::set<ArcId> arcs;                                       ///< edited twice as a whole
    std::set<std::pair<ArcId, int>> readings;                   ///< edited twice, by groove
    std::set<Uuid> records;                                     ///< everything edited twice

    [[nodiscard]] bool twice(const pad::Row& row) const;
    /// Measured, but nowhere in both directions.
    [[nodiscard]] bool oneWay(const pad::Row& row) const;
    /// One sentence for the fibre under the hand; empty when there is nothing to say.
    [[nodiscard]] QString sentence(const pad::Row& row) const;

  private:
    [[nodiscard]] const std::vector<MeasuredLoss>* of(const pad::Row& row) const;
};

PadMarks padMarks(ClosureId closure, const std::vector<MeasuredLoss>& losses,
                  const std::vector<ConcurrentEdits>& edits);

}  // namespace arc::ui
