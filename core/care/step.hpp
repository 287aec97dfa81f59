// SPDX-License-Identifier: GPL-3.0-or-later
// The steps of a care card: do, inspect, repeat until, record, timer.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/care/record.hpp"

namespace arc::care {

/// Something is done. A swab that wipes `surfaces` pads, chips or faces uses one end, so at most two.
struct DoStep {
    int surfaces = 0;  ///< 0: no swab in this step
    bool operator==(const DoStep&) const = default;
};
/// A look with two outcomes: good goes to `goodTo` (the next step when empty), not yet goes to the next step.
struct InspectStep {
    std::string question;
    std::string goodTo;  ///< id of a later step; may be empty
    bool operator==(const InspectStep&) const = default;
};
/// A look that closes a loop: not yet goes back to `backTo`, at most `rounds` times through; after that the
/// run ends as "tried, not reached" and `thenOwed` is compulsory.
struct RepeatStep {
    std::string question;
    std::string backTo;  ///< id of an earlier step
    int rounds = 4;      ///< 1-9
    ActionKey thenOwed;  ///< may be empty
    bool operator==(const RepeatStep&) const = default;
};
enum class FieldKind { Text, Number, Choice, Photo };
enum class Required { No, Yes };
struct Field {
    std::string key;  ///< rules know: power, position, fibre_type, fibre_count, blade_height, blade_position
    std::string label;
    FieldKind kind = FieldKind::Text;
    Required required = Required::Yes;
    std::optional<double> least, most;  ///< Number only, inclusive; a number is whole unless `unit` says dB
    std::string unit;                   ///< may be empty
    std::vector<std::string> choices;   ///< Choice only, stored as they stand: "adequate", "not_adequate"
    bool operator==(const Field&) const = default;
};
struct RecordStep {
    std::vector<Field> fields;
    bool operator==(const RecordStep&) const = default;
};
/// Waits; `covers` names an action that is done by having waited ("stabilise").
struct TimerStep {
    int minutesSingle = 0;  ///< single-fibre splicers, cleavers, strippers
    int minutesMass = 0;    ///< mass splicers
    ActionKey covers;       ///< may be empty
    bool operator==(const TimerStep&) const = default;
};

struct Step {
    std::string id;    ///< unique in its card, lower case
    std::string text;  ///< one or two sentences to the technician
    std::string hint;  ///< may be empty: why, or what to look out for
    std::variant<DoStep, InspectStep, RepeatStep, RecordStep, TimerStep> what;
    bool operator==(const Step&) const = default;
};
std::string_view kindWord(const Step& step);  ///< "do", "inspect", "repeat_until", "record", "timer"

/// A swab end wipes at most this many pads (common practice).
inline constexpr int surfacesPerSwabEnd = 2;

}  // namespace arc::care
