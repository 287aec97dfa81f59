// SPDX-License-Identifier: GPL-3.0-or-later
// The life of a tool at a glance, worked out from what was recorded: uses since each care, blade grid,
// calibration, history. Nothing here is stored.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/analytics/stream.hpp"
#include "core/care/card.hpp"
#include "core/care/record.hpp"
#include "core/care/rules.hpp"
#include "core/kit/tool.hpp"

namespace arc::care {
struct Situation;
}

namespace arc::kit {

/// Exact: since a recorded care. AtLeast: the book knows no such care, the uses it holds are a lower bound.
/// Shared: strips are not written down per stripper; the crew's ribbon strips are divided by its strippers.
enum class Certainty { Exact, AtLeast, Shared };

/// One count of uses against its limit.
struct LifeBar {
    care::CounterKey counter;  ///< "electrodes"
    std::string title;         ///< "Electrodes"
    std::string unit;          ///< "arcs", "cleaves", "strips"
    std::uint32_t used = 0;
    Certainty certainty = Certainty::Exact;
    std::optional<std::uint32_t> limit;  ///< of the card's count rule; none: no agreed number
    std::optional<Instant> since;        ///< the care that began it
    std::optional<ActionKey> action;     ///< the care that begins it anew
};

enum class CellState { Untouched, Spent, Now };
/// One position of a blade at one height.
struct BladeCell {
    BladePlace place;
    std::uint32_t cleaves = 0;  ///< fibres cleaved here
    CellState state = CellState::Untouched;
};
enum class BladeStanding { InUse, LastHeight, Exhausted };
struct BladeLife {
    BladePlace now;
    int positions = 16, heights = 3;
    std::vector<BladeCell> cells;  ///< height by height, position by position
    BladeStanding standing = BladeStanding::InUse;
    std::optional<Instant> fitted;  ///< when this blade was fitted, if recorded
};

struct CalibrationLife {
    care::CalibrationState state = care::CalibrationState::NeverDone;
    ArcControl control = ArcControl::Manual;
    std::optional<Instant> at;                       ///< of the last calibration that counts
    std::optional<CalibrationResult> madeFor;        ///< what that one was made for, if it says
    std::optional<care::OwedStretch> owed;           ///< the stretch that is open now
    std::vector<care::CalibrationFault> lastFaults;  ///< why the last one does not count
};

struct TimelineLine {
    enum class Kind { Care, Pairing, Correction, Environment, Note, Kit };  ///< Kit: the tool's own entry
    Kind kind = Kind::Care;
    Instant at;
    std::string text;  ///< "V-grooves cleaned", "Cleaver C-02 from now on"
    std::string by;
    std::optional<CareId> care;
    std::optional<std::uint32_t> usesBefore;  ///< the tool's uses in the book up to then
};

struct ToolLife {
    Tool tool;
    std::optional<ToolId> pairedWith;  ///< splicer: its cleaver now; cleaver: the splicer it prepares for
    std::uint32_t uses = 0;            ///< in the book: arcs, cleaves, strips
    std::optional<ArcCount> counter;   ///< the tool's own counter, last seen or corrected
    std::optional<Instant> lastUse;
    std::vector<LifeBar> bars;
    std::map<ActionKey, CareRecord> lastCare;  ///< last record of each kind
    std::optional<BladeLife> blade;
    std::optional<CalibrationLife> calibration;
    std::vector<TimelineLine> timeline;  ///< newest first
};

/// In the order of Situation::tools.
std::vector<ToolLife> livesOf(const care::Situation& situation);
/// The life of one tool; a Problem when it is not in the kit.
Result<ToolLife> lifeOf(const care::Situation& situation, ToolId tool);

/// Uses of one tool in time order, cumulated; a splicer's own counter is followed where it is known and not
/// corrected meanwhile, so that arcs fired outside the book count too.
struct UsePoint {
    Instant at;
    std::uint32_t total = 0;   ///< uses up to and with this one
    std::uint32_t fibres = 0;  ///< the same, each fibre of a ribbon counted
};
std::vector<UsePoint> usesOf(const care::Situation& situation, ToolId tool);
/// Uses in (afterMs, untilMs].
std::uint32_t usesBetween(std::span<const UsePoint> uses, std::int64_t afterMs, std::int64_t untilMs,
                          care::Per per);

/// The calibration that is owed at Situation::now: an open stretch, or a splicer that has been idle too long
/// and would carry it from its next arc on.
std::optional<care::OwedStretch> owedNow(const care::Situation& situation, const Tool& splicer);
/// The last record that began a counter anew at the tool.
const CareRecord* lastReset(const care::Situation& situation, const Tool& tool,
                            const care::CounterKey& counter);

/// Where the blade stands after the records, and the next place: the next position, then the next height at
/// position 1, none when the blade is used up.
BladePlace bladeNow(const Cleaver& cleaver, std::span<const CareRecord> records);
std::optional<BladePlace> nextPlace(const Cleaver& cleaver, BladePlace now);
/// All positions before height: a rotation goes to the next position, a raise is refused before all positions
/// at this height were used. The sentence says which place is next.
Result<void> checkBladeMove(const Cleaver& cleaver, BladePlace now, std::string_view action, BladePlace to);

/// Which cleaver prepared the fibres of a splicer at an instant, and the other way round.
std::optional<ToolId> pairedCleaver(std::span<const Pairing> pairings, ToolId splicer, Instant at);
std::optional<ToolId> pairedSplicer(std::span<const Pairing> pairings, ToolId cleaver, Instant at);

}  // namespace arc::kit
