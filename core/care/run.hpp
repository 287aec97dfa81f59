// SPDX-License-Identifier: GPL-3.0-or-later
// A guided run of a care card: cautions, materials, then one step at a time. The state is the CareRun value,
// which is written to the logbook after every input, so that a run goes on after a crash at the same step.
// Pure functions: the same state and input give the same next state.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/care/card.hpp"
#include "core/care/record.hpp"
#include "core/kit/tool.hpp"
#include "core/result.hpp"

namespace arc::care {

// Inputs.
struct Acknowledge {};  ///< cautions read, or materials at hand
struct Done {
    Instant at;  ///< a timer step refuses it before its time is over
};
struct StartTimer {
    Instant at;
};
enum class Outcome { Good, NotYet };
struct Answer {
    Outcome outcome;
};
struct WriteDown {
    std::map<std::string, std::string> fields;  ///< by Field::key; a field left out is not known
};
struct Back {};  ///< one screen back, to read again or mend a field; going forward again counts nothing twice
using Input = std::variant<Acknowledge, Done, StartTimer, Answer, WriteDown, Back>;

enum class ScreenKind { Cautions, Materials, Step, Finished };

/// What is to be shown now.
struct Screen {
    ScreenKind kind = ScreenKind::Cautions;
    const Step* step = nullptr;  ///< only of kind Step; lives as long as the card
    int number = 0, of = 0;      ///< step number from 1, and how many
    int round = 1, rounds = 1;   ///< of the loop the step is in
    int swabEnd = 0;             ///< > 0: use this swab end (counted from 1, two to a swab); never a used one
    int swabEndsUsed = 0;        ///< so far
    std::optional<Instant> timerEnd;  ///< once the timer of this step was started
    int timerMinutes = 0;             ///< for this tool
    bool readingBack = false;         ///< a step that was done already: Done goes forward
};

/// A new run. Answers are the keys of due items or signals it is done for. Refused when the card is for
/// another kind of tool.
Result<CareRun> start(const Card& card, const Tool& tool, CareId id, Instant at, const std::string& by,
                      std::vector<std::string> answers);
/// Refused when the run belongs to another card or version, or its step does not exist.
Result<void> canResume(const Card& card, const Tool& tool, const CareRun& run);

Screen screenOf(const Card& card, const Tool& tool, const CareRun& run);
/// The state after the input; a Problem says what is missing and leaves the run as it was.
Result<CareRun> advance(const Card& card, const Tool& tool, CareRun run, const Input& input);
CareRun abandoned(CareRun run);
/// The run's last state; append it together with its record.
CareRun finished(CareRun run);

/// The record of a run whose screen is Finished; refused before. `counter` is the tool's own counter if
/// known.
Result<CareRecord> recordOf(const Card& card, const Tool& tool, const CareRun& run, Instant at,
                            std::optional<ArcCount> counter);
/// Fills `calibration` and `blade` of a record from its fields (power, position, fibre_type, fibre_count,
/// runs, blade_height, blade_position); used by the run and by the command line alike.
Result<void> readFields(CareRecord& record);

/// Fields the run itself writes.
namespace field {
inline constexpr std::string_view outcome = "outcome";  ///< "reached" or "not_reached"
inline constexpr std::string_view covers = "covers";    ///< actions done on the way, by comma: "stabilise"
inline constexpr std::string_view swabEnds = "swab_ends";
inline constexpr std::string_view rounds = "rounds";  ///< of the longest loop
inline constexpr std::string_view move = "move";      ///< next_position, next_height or new_blade
/// Gentler care that was not tried first, by comma, and why not.
inline constexpr std::string_view skippedGentler = "skipped_gentler";
inline constexpr std::string_view skippedReason = "skipped_reason";
inline constexpr std::string_view newBlade = "new_blade";  ///< "yes": a fresh blade was fitted
}  // namespace field

}  // namespace arc::care
