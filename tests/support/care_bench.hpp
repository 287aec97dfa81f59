// SPDX-License-Identifier: GPL-3.0-or-later
// A small crew on one page for tests of care: a mass splicer, a single-fibre splicer, a cleaver, a stripper,
// cards cut down to what the rules read, and a clock that tests move by hand.
#pragma once
#include <string>
#include <vector>

#include "core/care/queues.hpp"

namespace arc::test {

inline constexpr std::int64_t careStart = 1'930'000'000'000;  // a Wednesday in February 2031

inline Instant at(double days) {
    return {careStart + static_cast<std::int64_t>(days * msPerDay), 0};
}

inline Tool toolNamed(const std::string& label, std::variant<Splicer, Cleaver, Stripper> traits) {
    Tool tool;
    tool.id = ToolId{namedUuid("tool/" + label)};
    tool.label = label;
    tool.traits = traits;
    return tool;
}
inline Tool mass() {
    return toolNamed("S-01", Splicer{SplicerKind::MassFusion, 12, ArcControl::Manual});
}
inline Tool single() {
    return toolNamed("S-02", Splicer{SplicerKind::SingleFibre, 1, ArcControl::Manual});
}
inline Tool cleaver() {
    return toolNamed("C-01", Cleaver{16, 3});
}
inline Tool stripper() {
    return toolNamed("R-01", Stripper{});
}

inline care::DueRule every(const std::string& counter, std::uint32_t uses, care::Queue queue,
                           care::Per per = care::Per::Use) {
    return {care::CountRule{counter, uses, per}, queue, "it gets worse", "common practice"};
}

inline care::Card cardNamed(const std::string& id, care::ToolKind tool) {
    care::Card card;
    card.id = id;
    card.tool = tool;
    card.title = id;
    card.cautions = {"It can hurt. Follow local codes and licensed practice."};
    card.steps = {{"look", "Look.", "", care::DoStep{}}};
    card.source = "common practice";
    return card;
}

/// The shipped cards' rules without their words; the shipped ones are walked in tests/storage.
inline care::Deck smallDeck() {
    using namespace care;
    Card grooves = cardNamed("groove_clean", ToolKind::Splicer);
    grooves.resets = {"grooves"};
    grooves.when = {every("grooves", 200, Queue::ShiftEnd)};
    grooves.steps = {{"wipe", "Wipe.", "", DoStep{1}},
                     {"clean", "Look.", "", RepeatStep{"Clean?", "wipe", 4, "diagnostic"}}};
    Card clamps = cardNamed("clamp_clean", ToolKind::Splicer);
    clamps.resets = {"clamps"};
    Card lenses = cardNamed("lens_clean", ToolKind::Splicer);
    lenses.resets = {"lenses"};
    lenses.obligations = {"arc_calibration"};
    Card calibration = cardNamed("arc_calibration", ToolKind::Splicer);
    calibration.resets = {"calibration"};
    calibration.when = {{EventRule{"electrode_replace"}, Queue::Hold, "luck", "common practice"},
                        {ConditionRule{Condition::EnvironmentJump}, Queue::Hold, "step", "common practice"},
                        {ConditionRule{Condition::IdleStretch}, Queue::Hold, "stale", "common practice"}};
    Card electrodes = cardNamed("electrode_replace", ToolKind::Splicer);
    electrodes.resets = {"electrodes"};
    electrodes.obligations = {"stabilise", "arc_calibration"};
    electrodes.also = {"stabilise"};
    electrodes.when = {every("electrodes", 5000, Queue::ShiftEnd)};
    electrodes.steps = {{"out", "Fit.", "", DoStep{}}, {"burn", "Wait.", "", TimerStep{10, 15, "stabilise"}}};
    Card diagnostic = cardNamed("diagnostic", ToolKind::Splicer);
    Card pads = cardNamed("cleaver_clean", ToolKind::Cleaver);
    pads.resets = {"pads"};
    pads.when = {every("pads", 400, Queue::NextGap)};
    Card blade = cardNamed("blade_clean", ToolKind::Cleaver);
    blade.resets = {"blade"};
    Card rotate = cardNamed("blade_rotate", ToolKind::Cleaver);
    rotate.resets = {"blade", "blade_position"};
    rotate.also = {"blade_raise"};
    rotate.when = {every("blade_position", 1000, Queue::ShiftEnd, Per::Fibre)};
    Card strip = cardNamed("stripper_clean", ToolKind::Stripper);
    strip.resets = {"strips"};
    strip.when = {{ConditionRule{Condition::WebRibbonStrip}, Queue::NextGap, "breaks", "common practice"},
                  every("strips", 24, Queue::ShiftEnd)};
    return {{grooves, clamps, lenses, calibration, electrodes, diagnostic, pads, blade, rotate, strip}};
}

inline CareRecord careOf(const Tool& tool, const std::string& action, double day) {
    CareRecord record;
    record.tool = tool.id;
    record.action = action;
    record.at = at(day);
    record.id = CareId{namedUuid("care/" + tool.label + "/" + action + "/" + std::to_string(record.at.ms))};
    return record;
}

inline CareRecord calibrationOf(const Tool& tool, double day, Adequacy power = Adequacy::Adequate,
                                Adequacy position = Adequacy::Adequate, const std::string& type = "G.652.D",
                                int fibres = 0) {
    CareRecord record = careOf(tool, "arc_calibration", day);
    CalibrationResult result{power, position, type, fibres, 1};
    if (fibres == 0) result.fibreCount = asSplicer(tool)->kind == SplicerKind::MassFusion ? 12 : 1;
    record.calibration = result;
    return record;
}

inline SplicerHistory historyOf(const Tool& splicer) {
    SplicerHistory history;
    history.splicer = splicer.id;
    history.label = splicer.label;
    history.modes = {"G.652-G.652"};
    return history;
}

inline HistoryArc& addArc(SplicerHistory& history, double day, int channels) {
    HistoryArc arc;
    arc.at = at(day);
    arc.channels = static_cast<std::uint8_t>(channels);
    history.arcs.push_back(arc);
    return history.arcs.back();
}

/// Arcs evenly over a stretch of days.
inline void addArcs(SplicerHistory& history, double fromDay, double toDay, int count, int channels) {
    for (int i = 0; i < count; ++i) addArc(history, fromDay + (toDay - fromDay) * i / count, channels);
}

inline care::Situation situationAt(double day) {
    care::Situation situation;
    situation.now = at(day);
    situation.tools = {mass(), single(), cleaver(), stripper()};
    situation.histories = {historyOf(mass()), historyOf(single())};
    Pairing pairing;
    pairing.splicer = mass().id;
    pairing.cleaver = cleaver().id;
    pairing.at = at(-1000);
    situation.pairings = {pairing};
    situation.deck = smallDeck();
    return situation;
}

inline const care::DueItem* itemOf(const std::vector<care::DueItem>& items, const Tool& tool,
                                   const std::string& action) {
    for (const care::DueItem& item : items)
        if (item.tool == tool.id && item.action == action) return &item;
    return nullptr;
}

}  // namespace arc::test
