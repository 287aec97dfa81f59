// SPDX-License-Identifier: GPL-3.0-or-later
// What was done to a tool, and by which card.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/id.hpp"
#include "core/units/instant.hpp"
#include "core/units/quantity.hpp"

namespace arc {

/// Key of a care action: the id of its care card and the `action` of the event CSV. New actions come as card
/// files, so this is text; the ones that rules in core know by name are below.
using ActionKey = std::string;

namespace action {
inline constexpr std::string_view grooveClean = "groove_clean";
inline constexpr std::string_view clampClean = "clamp_clean";
inline constexpr std::string_view lensClean = "lens_clean";
inline constexpr std::string_view arcCalibration = "arc_calibration";
inline constexpr std::string_view electrodeReplace = "electrode_replace";
inline constexpr std::string_view stabilise = "stabilise";
inline constexpr std::string_view diagnostic = "diagnostic";
inline constexpr std::string_view cleaverClean = "cleaver_clean";
inline constexpr std::string_view bladeClean = "blade_clean";
inline constexpr std::string_view bladeRotate = "blade_rotate";
inline constexpr std::string_view bladeRaise = "blade_raise";
inline constexpr std::string_view stripperClean = "stripper_clean";
inline constexpr std::string_view environmentChange = "environment_change";
inline constexpr std::string_view note = "note";
}  // namespace action

enum class Adequacy { Adequate, NotAdequate };

struct CalibrationResult {
    Adequacy power = Adequacy::NotAdequate;
    Adequacy position = Adequacy::NotAdequate;
    std::string fibreType;  ///< "G.652.D"
    int fibreCount = 1;
    int runs = 1;  ///< how many runs it took
    bool operator==(const CalibrationResult&) const = default;
};

/// Where a cleaver's blade stands.
struct BladePlace {
    int height = 1;    ///< 1-based
    int position = 1;  ///< 1-based, at this height
    bool operator==(const BladePlace&) const = default;
};

struct CareRecord {
    CareId id;
    ToolId tool;
    Instant at;
    ActionKey action;
    int cardVersion = 0;                           ///< 0: not done by a card (imported, typed)
    std::string detail;                            ///< free words
    std::string by;                                ///< crew label of who did it
    std::optional<CalibrationResult> calibration;  ///< only of an arc calibration
    std::optional<BladePlace> blade;               ///< where the blade stands now; only of blade work
    std::optional<ArcCount> counter;               ///< the tool's counter when it was done, if known
    std::map<std::string, std::string> fields;     ///< what the card asked to be written down
    std::vector<std::string> answers;              ///< keys of due items and signals this was done for
    bool operator==(const CareRecord&) const = default;
};

/// A guided run of a card that is not finished: where it stands, so that it goes on after a crash.
enum class RunState { Open, Finished, Abandoned };
struct CareRun {
    CareId id;  ///< the finished record takes this id
    ToolId tool;
    ActionKey action;
    int cardVersion = 0;
    Instant startedAt;
    std::string by;
    int step = 0;                               ///< index of the step that is on the screen
    std::map<std::string, int> repeats;         ///< step id → how often it was done
    std::map<std::string, std::string> fields;  ///< what was written down so far
    std::vector<std::string> answers;
    RunState state = RunState::Open;
    bool operator==(const CareRun&) const = default;
};

/// A supervisor's edited care card; the record of each care keeps the version it was done with.
struct CardEdition {
    EntryId id;
    ActionKey action;
    int version = 1;
    std::string json;  ///< the whole card file
    bool operator==(const CardEdition&) const = default;
};

/// Somebody went on splicing though the tool was on hold: who, why, which item.
struct HoldOverride {
    EntryId id;
    ToolId tool;
    std::string dueKey;
    std::string by;
    std::string reason;
    Instant at;
    bool operator==(const HoldOverride&) const = default;
};

}  // namespace arc
