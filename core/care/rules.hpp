// SPDX-License-Identifier: GPL-3.0-or-later
// What one care action does to the others: what it closes, what it owes, and when the arc calibration counts.
// Source of all rules: common practice.
#pragma once
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/analytics/stream.hpp"
#include "core/care/card.hpp"
#include "core/care/record.hpp"
#include "core/care/ribbon.hpp"
#include "core/kit/tool.hpp"

namespace arc::care {

/// Limits a supervisor may change; keys of the logbook's settings beside them.
struct Settings {
    double jumpCelsius = 15;       ///< care.environment_jump_c
    double jumpHectopascals = 50;  ///< care.environment_jump_hpa, about 430 m of altitude
    int idleDays = 14;             ///< care.idle_days without an arc
    /// care.self_calibrating_times: so many times further out lie the limits above for a splicer that adjusts
    /// its arc at each splice; only a drastic change or long disuse makes it owe one.
    int selfCalibratingTimes = 2;
    std::optional<std::uint32_t> electrodeArcs;  ///< care.electrode_arcs; none: what the card says
    int calibrationRuns = 4;                     ///< care.calibration_runs before diagnostics
    double orderWithinDays = 14;                 ///< care.order_days
    RibbonKind ribbon = RibbonKind::Flat;        ///< care.ribbon, where the cable does not say
};
/// The limits as they are for this splicer.
Settings limitsFor(const Splicer& splicer, Settings settings);
/// Reads one setting by its key; refuses a value out of range with a sentence; unknown keys are left alone.
Result<Settings> withSetting(Settings settings, std::string_view key, std::string_view value);
std::span<const std::string_view> settingKeys();
/// As withSetting() reads it; empty for electrodes as the card says, or for an unknown key.
std::string valueOf(const Settings& settings, std::string_view key);

/// Did the action reach what it was for? Unproved: an imported calibration without its two results.
enum class Effect { Reached, Unproved, NotReached };
Effect effectOf(const CareRecord& record);
/// The results of a calibration: as written down, else as its words say them ("power and position adequate
/// after 2 runs, G.652.D, 12 fibres"); none when the words leave one of them open.
std::optional<CalibrationResult> resultOf(const CareRecord& record);
/// Whether the record is one of this action or covered it on the way.
bool covers(const CareRecord& record, std::string_view action);

/// A calibration counts only when both results are adequate and the fibre fits: single-fibre splicers ITU-T
/// G.652 and one fibre; mass splicers the fibre type of the mode and as many fibres as are spliced at once.
enum class CalibrationFault { PowerNotAdequate, PositionNotAdequate, WrongFibreType, WrongFibreCount };
/// What is spliced, as far as it is known: empty members and 0 say nothing.
struct SpliceUse {
    std::string mode;                     ///< "G.652-G.652"
    int channels = 0;                     ///< fibres at once
    std::vector<std::string> fibreTypes;  ///< of the cables: "G.657.A1"
    bool operator==(const SpliceUse&) const = default;
};
SpliceUse useOf(const HistoryArc& arc, const SplicerHistory& history);
/// Why the calibration is not one for this use; without a use, why it is none for this splicer at all.
std::vector<CalibrationFault> faultsOf(const CalibrationResult& result, const Splicer& splicer,
                                       const SpliceUse& use);
std::string_view sentence(CalibrationFault fault);
/// "12 fibres of G.652.D"
std::string madeFor(const CalibrationResult& result);
/// A calibration that closes what was owed: adequate, and with fibre this splicer can be calibrated with.
/// What it was made for is then held against every arc.
bool counts(const CareRecord& record, const Splicer& splicer);
/// The last one that counts; nullptr when there is none.
const CareRecord* lastCalibration(const Tool& splicer, std::span<const CareRecord> records);

enum class CalibrationState { NeverDone, Valid, Unproved, Owed };
/// A stretch of time in which the splices of one splicer carry "calibration owed". An arc at t is in it when
/// from <= t < to.
struct OwedStretch {
    ToolId splicer;
    Instant from;
    std::optional<Instant> to;  ///< none: still owed
    ActionKey after;            ///< the care that owes it; empty: a condition or other fibre
    std::optional<Condition> condition;
    std::string because;  ///< "electrodes replaced and not calibrated since"
};
/// All stretches, oldest first, not overlapping. `records` of this splicer in any order. Other fibre than the
/// arc was calibrated for owes one until there is a calibration, or until the fibre is that one again.
std::vector<OwedStretch> calibrationOwed(const Tool& splicer, std::span<const CareRecord> records,
                                         const SplicerHistory& history, const Deck& deck,
                                         const Settings& settings);
/// The stretch the instant lies in.
const OwedStretch* owedAt(std::span<const OwedStretch> stretches, ToolId splicer, Instant at);

/// What is compulsory for a tool now, first thing first.
struct Obligation {
    ActionKey action;
    ActionKey after;
    Instant since;
    CareId of;  ///< the record that owes it
};
/// Obligations of the deck's cards that no later action closed. Never shortened by anything but a record.
std::vector<Obligation> openObligations(const Tool& tool, std::span<const CareRecord> records,
                                        const Deck& deck, const Settings& settings);

}  // namespace arc::care
