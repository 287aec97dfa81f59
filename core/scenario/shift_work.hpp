// SPDX-License-Identifier: GPL-3.0-or-later
// The order of the work: which fibres lie in a splicer next, and when.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/scenario/randomness.hpp"
#include "core/scenario/scenario.hpp"

namespace arc::scenario {

/// A splicer in its work. Refers to the scenario.
struct Workplace {
    Workplace(const Scenario& scenario, const Machine& splicer, std::uint64_t seed);

    const Machine* machine;
    Randomness random;
    std::uint32_t counter, electrodeArcs;
    std::uint64_t number = 0;  ///< arcs made in the log
    double setupGain = 1;
    int arcsInSetup = 0;
    std::vector<const Assignment*> work;  ///< by day
    std::size_t assignment = 0, closure = 0;
    int day = -1, arcsToday = 0;
    Instant next;
    bool finished = false;
    std::vector<PlannedSplice> group;  ///< fibres under the cover
    int attempt = 1;
    std::string lastClosure;

    [[nodiscard]] const Assignment& now() const { return *work[assignment]; }
    [[nodiscard]] const std::string& closureLabel() const { return now().closures[closure]; }
};

/// Hands out the fibres of the closures, which may be shared, day by day.
class ShiftWork {
  public:
    explicit ShiftWork(const Scenario& scenario);

    /// Moves on to the next arc: the same fibres again while there are any under the cover, else the next
    /// ones, the next closure, day or assignment.
    void advance(Workplace& place);
    [[nodiscard]] const JobSetting& jobOf(const std::string& closure) const {
        return *closures_.at(closure).job;
    }

  private:
    struct OpenClosure {
        const JobSetting* job = nullptr;
        std::vector<PlannedSplice> rows;
        std::size_t next = 0;
    };
    double pause(Workplace& place) const;
    bool takeFibres(Workplace& place);
    void giveBack(Workplace& place);
    void nextAssignment(Workplace& place) const;

    const Scenario& scenario_;
    std::map<std::string, OpenClosure> closures_;
};

}  // namespace arc::scenario
