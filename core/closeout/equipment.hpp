// SPDX-License-Identifier: GPL-3.0-or-later
// The tools of a job and the care state they were in while it was spliced.
#pragma once
#include <unordered_map>
#include <vector>

#include "core/closeout/build.hpp"
#include "core/closeout/record.hpp"
#include "core/logbook.hpp"

namespace arc::closeout {

/// Numbers the tools as they turn up; the number is the index into Record::equipment.
class EquipmentList {
  public:
    explicit EquipmentList(const std::vector<Tool>& tools);
    /// The tool took part in an attempt at that time.
    std::uint32_t use(ToolId tool, Instant at, std::optional<ArcCount> counter);
    /// Fills in care before and during the job and what was owed. Reads care records of these tools only.
    Result<std::vector<Equipment>> withCare(Logbook& book, const OwedBy& owed);

  private:
    const std::vector<Tool>& m_tools;
    std::unordered_map<ToolId, std::uint32_t> m_index;
    std::vector<Equipment> m_equipment;
};

}  // namespace arc::closeout
