// SPDX-License-Identifier: GPL-3.0-or-later
// What is due, in which queue, and why. An item leaves a queue only because a record, a splice or a new chart
// says so; there is no way to tick it off.
#pragma once
#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/analytics/drift.hpp"
#include "core/care/card.hpp"
#include "core/care/due.hpp"
#include "core/care/rules.hpp"
#include "core/kit/life.hpp"
#include "core/logbook.hpp"

namespace arc::care {

/// A version of a tool's own entry: entered, renamed, taken out of service.
struct ToolChange {
    ToolId tool;
    JournalLine line;
};

/// All that queues and lives are worked out from, as it was at `now`; later entries are left out.
struct Situation {
    Instant now;
    std::vector<Tool> tools;
    std::vector<Pairing> pairings;
    std::vector<CounterCorrection> corrections;
    std::vector<CareRecord> records;
    std::vector<HoldOverride> overrides;
    std::vector<ToolChange> toolChanges;  ///< oldest first
    std::vector<SplicerHistory> histories;
    Settings settings;
    Deck deck;
    std::vector<Problem> problems;  ///< settings that could not be read; their defaults are used
};

/// The crew's own limits; one that cannot be read keeps the shipped value and is told.
struct SettingsRead {
    Settings settings;
    std::vector<Problem> problems;
};
Result<SettingsRead> settingsOf(Logbook& book);

/// Reads everything once. Cost: the arcs of the book.
Result<Situation> gather(Logbook& book, const Deck& deck, Instant now);
/// The same from histories the caller has already read for the charts.
Result<Situation> gather(Logbook& book, const Deck& deck, Instant now, std::vector<SplicerHistory> histories);

/// Hold first, then the other queues; within a queue what has been due longest first. One item per tool and
/// action. Tools out of service have none.
std::vector<DueItem> dueItems(const Situation& situation, std::span<const drift::SplicerReport> reports);

/// The items that stop this splicer: its own holds and those of the cleaver it is paired with.
std::vector<DueItem> holdsOf(std::span<const DueItem> items, const Situation& situation, ToolId splicer);

/// What the supervisor should order, from use and forecasts.
struct OrderLine {
    std::string what;  ///< "electrodes", "cleaver blade", "lint-free swabs"
    int pieces = 1;
    std::string unit;     ///< "pair", "ml"; empty: pieces
    std::string forWhat;  ///< "S-01"
    std::string why;      ///< "about 1,000 arcs left (700-1,300) at 80 arcs a day"
    std::optional<Instant> neededBy;
};
std::vector<OrderLine> toOrder(const Situation& situation, std::span<const drift::SplicerReport> reports);

/// "calibration owed" stretches of all splicers.
std::vector<OwedStretch> calibrationOwed(const Situation& situation);

}  // namespace arc::care
