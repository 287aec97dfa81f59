// SPDX-License-Identifier: GPL-3.0-or-later
// Which care is done when: before the log, as planned, and by habit.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/scenario/simulate.hpp"
#include "core/scenario/troubles.hpp"

namespace arc::scenario {

/// A care action that is due now.
struct DueCare {
    Instant at;
    CareSetting care;
};

class CareDiary {
  public:
    explicit CareDiary(const Scenario& scenario);

    /// Where electrodes and blades stood when the log begins.
    [[nodiscard]] std::vector<SimulatedCare> beforeTheLog() const;
    /// All that is planned or habitual up to `at` and was not handed out yet.
    std::vector<DueCare> upTo(Instant at, const Uses& uses);
    /// What was planned for after a number of arcs of the splicer or the cleaver of this one.
    std::vector<DueCare> after(const SimulatedArc& arc, const Uses& uses);

  private:
    struct Habit {
        int nextDay = 0;  ///< to be looked at
        std::optional<int> lastDay;
        std::uint64_t lastUses = 0;
    };
    std::optional<DueCare> byHabit(std::size_t index, int day, const Uses& uses);
    DueCare handOut(const CareSetting& care, Instant at);
    [[nodiscard]] BladePlace nextPlace(const std::string& cleaver) const;

    const Scenario& scenario_;
    std::vector<bool> done_;  ///< by planned care
    std::vector<Habit> habits_;
    std::map<std::string, BladePlace> blades_;
};

}  // namespace arc::scenario
