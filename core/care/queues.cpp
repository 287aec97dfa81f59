// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/queues.hpp"

#include <algorithm>
#include <utility>

#include "core/care/due_parts.hpp"

namespace arc::care {
namespace parts {

DueItem itemFor(const Situation& situation, const Tool& tool, const ActionKey& action, Queue queue,
                Basis basis, const std::string& anchor) {
    DueItem item;
    item.key = toText(tool.id.uuid) + "/" + action + "/" + std::string(word(basis)) + "/" + anchor;
    item.queue = queue;
    item.basis = basis;
    item.tool = tool.id;
    item.toolLabel = tool.label;
    item.action = action;
    std::string what = action;
    if (action == action::stabilise)
        what = "Stabilise electrodes";
    else if (action == action::bladeRaise)
        what = "Raise the blade to its next height";
    else if (action == action::note)
        what = "Look into it and note it";
    else if (const Card* card = situation.deck.find(action))
        what = card->title;
    item.title = what + ", " + tool.label;
    item.since = situation.now;
    return item;
}

}  // namespace parts

namespace {

/// One item per tool and action: the most urgent stays, the reasons of the others are added.
std::vector<DueItem> merged(std::vector<DueItem> items) {
    std::ranges::stable_sort(items, {}, &DueItem::queue);
    std::vector<DueItem> kept;
    for (DueItem& item : items) {
        const auto same = std::ranges::find_if(kept, [&](const DueItem& other) {
            return other.tool == item.tool && other.action == item.action && other.title == item.title;
        });
        if (same == kept.end()) {
            kept.push_back(std::move(item));
            continue;
        }
        if (same->why.find(item.why) == std::string::npos) same->why += "; also: " + item.why;
        if (same->basedOn.find(item.basedOn) == std::string::npos) same->basedOn += "; " + item.basedOn;
        same->since = std::min(same->since, item.since);
    }
    return kept;
}

template <class Row>
void dropAfter(std::vector<Row>& rows, Instant now) {
    std::erase_if(rows, [&](const Row& row) { return row.at > now; });
}

void cutAt(SplicerHistory& history, Instant now) {
    const auto end = std::ranges::upper_bound(history.arcs, now, {}, &HistoryArc::at);
    history.arcs.erase(end, history.arcs.end());
    const std::uint64_t readings =
        history.arcs.empty() ? 0 : history.arcs.back().firstReading + history.arcs.back().readingCount;
    history.readings.resize(std::min<std::size_t>(history.readings.size(), readings));
    dropAfter(history.events, now);
}

}  // namespace

Result<SettingsRead> settingsOf(Logbook& book) {
    SettingsRead read;
    for (const std::string_view key : settingKeys()) {
        const auto value = book.setting(key);
        if (!value) return tl::unexpected(value.error());
        if (!*value || (*value)->empty()) continue;  // taken back: as shipped
        auto with = withSetting(read.settings, key, **value);
        if (with)
            read.settings = *with;
        else
            read.problems.push_back(with.error());
    }
    return read;
}

Result<Situation> gather(Logbook& book, const Deck& deck, Instant now,
                         std::vector<SplicerHistory> histories) {
    Situation situation;
    situation.now = now;
    situation.deck = deck;
    auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    auto pairings = book.pairings();
    if (!pairings) return tl::unexpected(pairings.error());
    auto corrections = book.counterCorrections();
    if (!corrections) return tl::unexpected(corrections.error());
    auto records = book.careRecords(std::nullopt);
    if (!records) return tl::unexpected(records.error());
    auto overrides = book.holdOverrides();
    if (!overrides) return tl::unexpected(overrides.error());
    auto settings = settingsOf(book);
    if (!settings) return tl::unexpected(settings.error());
    situation.settings = settings->settings;
    situation.problems = std::move(settings->problems);
    for (const Tool& tool : *tools) {
        auto lines = book.historyOf(tool.id.uuid);
        if (!lines) return tl::unexpected(lines.error());
        for (JournalLine& line : *lines)
            if (line.kind == "tool" && line.at <= now)
                situation.toolChanges.push_back({tool.id, std::move(line)});
    }
    situation.tools = std::move(*tools);
    situation.pairings = std::move(*pairings);
    situation.corrections = std::move(*corrections);
    situation.records = std::move(*records);
    situation.overrides = std::move(*overrides);
    situation.histories = std::move(histories);
    dropAfter(situation.pairings, now);
    dropAfter(situation.corrections, now);
    dropAfter(situation.records, now);
    dropAfter(situation.overrides, now);
    for (SplicerHistory& history : situation.histories) cutAt(history, now);
    return situation;
}

Result<Situation> gather(Logbook& book, const Deck& deck, Instant now) {
    auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    std::vector<SplicerHistory> histories;
    for (const Tool& tool : *tools) {
        if (!asSplicer(tool)) continue;
        auto history = book.history(tool.id, std::nullopt);
        if (!history) return tl::unexpected(history.error());
        histories.push_back(std::move(*history));
    }
    return gather(book, deck, now, std::move(histories));
}

std::vector<DueItem> dueItems(const Situation& situation, std::span<const drift::SplicerReport> reports) {
    const std::vector<kit::ToolLife> lives = kit::livesOf(situation);
    std::vector<DueItem> items;
    const auto add = [&](std::vector<DueItem> more) { std::ranges::move(more, std::back_inserter(items)); };
    for (const kit::ToolLife& life : lives) {
        if (life.tool.service == Service::OutOfService) continue;
        add(parts::compulsory(situation, life.tool));
        add(parts::byRule(situation, life));
        add(parts::byForecast(situation, life, reports));
    }
    add(parts::bySignal(situation, lives, reports));
    items = merged(std::move(items));
    for (DueItem& item : items)
        for (const HoldOverride& named : situation.overrides)
            if (item.queue == Queue::Hold && named.dueKey == item.key && named.tool == item.tool)
                item.overridden = named;
    std::ranges::stable_sort(items, [](const DueItem& a, const DueItem& b) {
        return std::pair(a.queue, a.since.ms) < std::pair(b.queue, b.since.ms);
    });
    return items;
}

std::vector<DueItem> holdsOf(std::span<const DueItem> items, const Situation& situation, ToolId splicer) {
    const auto cleaver = kit::pairedCleaver(situation.pairings, splicer, situation.now);
    std::vector<DueItem> holds;
    for (const DueItem& item : items)
        if (item.queue == Queue::Hold && (item.tool == splicer || item.tool == cleaver))
            holds.push_back(item);
    return holds;
}

std::vector<OwedStretch> calibrationOwed(const Situation& situation) {
    std::vector<OwedStretch> all;
    for (const SplicerHistory& history : situation.histories) {
        const auto tool = std::ranges::find(situation.tools, history.splicer, &Tool::id);
        if (tool == situation.tools.end()) continue;
        for (OwedStretch& stretch :
             calibrationOwed(*tool, situation.records, history, situation.deck, situation.settings))
            all.push_back(std::move(stretch));
    }
    return all;
}

}  // namespace arc::care
