// SPDX-License-Identifier: GPL-3.0-or-later
// A care card as a value: when a care action is due, what it needs, how it is done step by step, what it
// resets and what it makes compulsory next. Cards are data (resources/care/*.json); storage/care_cards reads
// them.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/care/due.hpp"
#include "core/care/record.hpp"
#include "core/care/step.hpp"
#include "core/kit/tool.hpp"
#include "core/result.hpp"

namespace arc::care {

enum class ToolKind { Splicer, Cleaver, Stripper };
std::string_view word(ToolKind kind);  ///< "splicer", "cleaver", "stripper"
ToolKind kindOf(const Tool& tool);

/// Name of a count of uses that begins anew when a card that names it under `resets` is done: "electrodes",
/// "grooves". A splicer's uses are arcs, a cleaver's cleaves, a stripper's strips.
using CounterKey = std::string;

enum class Condition {
    EnvironmentJump,  ///< temperature or pressure far from where the arc was calibrated
    IdleStretch,      ///< days without an arc
    WebRibbonStrip,   ///< a strip of web-type ribbon or of ribbonised loose tubes
    OtherFibre,       ///< fibres of another type or number than the arc was calibrated for
};
/// "environment_jump", "idle_stretch", "web_ribbon_strip", "other_fibre"
std::string_view word(Condition condition);

/// A ribbon cleave is one use of a cleaver's pads, and as many of its blade as there are fibres.
enum class Per { Use, Fibre };
std::string_view word(Per per);  ///< "use", "fibre"
struct CountRule {
    CounterKey counter;
    std::uint32_t every = 1;  ///< uses, at least 1
    Per per = Per::Use;
    bool operator==(const CountRule&) const = default;
};
struct DaysRule {
    int every = 1;  ///< days since this care was last done, counted only while the tool is used
    bool operator==(const DaysRule&) const = default;
};
struct ConditionRule {
    Condition condition = Condition::EnvironmentJump;
    bool operator==(const ConditionRule&) const = default;
};
/// Due when another care was recorded and this one not since: the counterpart of an obligation.
struct EventRule {
    ActionKey after;
    bool operator==(const EventRule&) const = default;
};

struct DueRule {
    std::variant<CountRule, DaysRule, ConditionRule, EventRule> when;
    Queue queue = Queue::ShiftEnd;
    std::string otherwise;  ///< what happens if it is not done
    std::string source;     ///< "common practice" or a standard
    bool operator==(const DueRule&) const = default;
};

struct Material {
    std::string name;   ///< "lint-free swabs"
    int uses = 0;       ///< pieces used by one run, for the order list; 0: not counted
    std::string unit;   ///< of `uses`, "ml"; empty: pieces
    int lasts = 0;      ///< runs one piece is good for, of what wears; 0: not counted
    std::string order;  ///< what it is ordered as, "groove kit"; empty: by its name
    bool operator==(const Material&) const = default;
};

struct Card {
    ActionKey id;
    int version = 1;
    ToolKind tool = ToolKind::Splicer;
    std::string title;            ///< "Clean V-grooves"
    std::string purpose;          ///< one sentence
    int minutes = 5;              ///< about how long it takes
    std::vector<ActionKey> also;  ///< further keys this card records: blade_rotate also blade_raise
    std::vector<DueRule> when;
    std::vector<std::string> cautions;
    std::vector<Material> materials;
    std::vector<Step> steps;
    std::vector<ActionKey> obligations;  ///< compulsory next, in this order
    std::vector<CounterKey> resets;
    std::vector<ActionKey> gentlerFirst;  ///< to be tried before this one
    std::string source;                   ///< "common practice" or a standard
    bool operator==(const Card&) const = default;

    [[nodiscard]] const Step* step(std::string_view stepId) const;
    /// The record is of this card done whole (its id, or a variant among `also`); a part that a timer step
    /// covers is not.
    [[nodiscard]] bool isWhole(std::string_view action) const;
};

/// Rules of a card taken alone: unique step ids, loops that end, at most two surfaces per swab end, cautions
/// first and each ending with the deferral to local codes. Problem::where names the member, as a JSON
/// pointer.
Result<void> check(const Card& card);

/// All cards in force. Obligations and `gentlerFirst` must name cards (or `also` keys) of the deck, without a
/// circle: checkDeck.
struct Deck {
    std::vector<Card> cards;
    /// The card with this id, or the one that also records it; nullptr when there is none.
    [[nodiscard]] const Card* find(std::string_view action) const;
};
Result<void> checkDeck(const Deck& deck);

/// Every caution ends with this sentence.
inline constexpr std::string_view cautionEnding = "Follow local codes and licensed practice.";

}  // namespace arc::care
