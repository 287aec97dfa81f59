// SPDX-License-Identifier: GPL-3.0-or-later
// Due by obligation, count, days and condition (see due_parts.hpp).
#include <algorithm>
#include <utility>

#include "core/care/due_parts.hpp"
#include "core/care/words.hpp"

namespace arc::care::parts {
namespace {

std::string titleOf(const Situation& situation, const ActionKey& action) {
    const Card* card = situation.deck.find(action);
    return card ? card->title : action;
}

/// What a card says happens if it is not done, by the first rule that fits.
std::string otherwiseOf(const Situation& situation, const ActionKey& action, const ActionKey& after,
                        std::optional<Condition> condition) {
    const Card* card = situation.deck.find(action);
    std::string any;
    if (!card) return any;
    for (const DueRule& rule : card->when) {
        if (any.empty()) any = rule.otherwise;
        if (const auto* event = std::get_if<EventRule>(&rule.when); event && event->after == after)
            return rule.otherwise;
        if (const auto* on = std::get_if<ConditionRule>(&rule.when);
            on && condition && on->condition == *condition)
            return rule.otherwise;
    }
    return any;
}

/// The instant a count went over its limit.
Instant reachedAt(std::span<const kit::UsePoint> uses, std::int64_t afterMs, std::uint32_t limit, Per per,
                  Instant otherwise) {
    const auto total = [&](const kit::UsePoint& p) { return per == Per::Use ? p.total : p.fibres; };
    std::uint32_t before = 0;
    for (const kit::UsePoint& point : uses) {
        if (point.at.ms <= afterMs) {
            before = total(point);
            continue;
        }
        if (total(point) - before >= limit) return point.at;
    }
    return otherwise;
}

/// Strips of ribbon that sheds, by any splicer's crew.
struct SheddingStrips {
    std::uint32_t count = 0;
    Instant first;        ///< of them
    StrippedSide latest;  ///< what was stripped last
};
SheddingStrips sheddingStrips(const Situation& situation, std::int64_t afterMs) {
    SheddingStrips strips;
    Instant latest;
    for (const SplicerHistory& history : situation.histories)
        for (const HistoryArc& arc : history.arcs) {
            if (arc.at.ms <= afterMs) continue;
            const auto sides = strippedFor(arc, history, situation.settings.ribbon);
            if (!sides) continue;
            for (const StrippedSide& side : *sides) {
                if (!sheds(side.ribbon)) continue;
                if (strips.count == 0 || arc.at < strips.first) strips.first = arc.at;
                if (strips.count == 0 || latest < arc.at) {
                    latest = arc.at;
                    strips.latest = side;
                }
                ++strips.count;
            }
        }
    return strips;
}

/// A condition rule of strippers: a strip of shedding ribbon since the last clean.
std::optional<DueItem> afterStrip(const Situation& situation, const kit::ToolLife& life, const Card& card,
                                  const DueRule& rule) {
    if (kindOf(life.tool) != ToolKind::Stripper) return std::nullopt;
    const CareRecord* last =
        card.resets.empty() ? nullptr : kit::lastReset(situation, life.tool, card.resets.front());
    const SheddingStrips strips = sheddingStrips(situation, last ? last->at.ms : INT64_MIN);
    if (strips.count == 0) return std::nullopt;
    DueItem item = itemFor(situation, life.tool, card.id, rule.queue, Basis::Condition,
                           "web_ribbon@" + (last ? toIso(last->at) : std::string("start")));
    item.since = strips.first;
    item.why = std::string(title(strips.latest.ribbon)) +
               (strips.latest.cable.empty() ? "" : " (cable " + strips.latest.cable + ")") +
               (strips.latest.ribbon == RibbonKind::RibbonisedTubes ? " shed" : " sheds") +
               " fragments at every strip";
    item.basedOn = counted(strips.count, "such strip", "such strips") +
                   " since the last clean, by the crew; after each strip (" + rule.source + ")";
    item.otherwise = rule.otherwise;
    return item;
}

}  // namespace

std::vector<DueItem> compulsory(const Situation& situation, const Tool& tool) {
    std::vector<DueItem> items;
    bool calibration = false;
    for (const Obligation& owed :
         openObligations(tool, situation.records, situation.deck, situation.settings)) {
        const Card* card = situation.deck.find(owed.action);
        const bool splicer = asSplicer(tool) != nullptr;
        DueItem item = itemFor(situation, tool, owed.action, splicer ? Queue::Hold : Queue::NextGap,
                               Basis::Obligation, owed.after + "@" + toIso(owed.since));
        item.since = owed.since;
        item.why =
            "\"" + titleOf(situation, owed.after) + "\" of " + shortTime(owed.since) + " makes it compulsory";
        if (owed.action == action::diagnostic)
            item.why = "\"" + titleOf(situation, owed.after) + "\" did not reach its end by " +
                       shortTime(owed.since) + ", after as many rounds as are allowed";
        item.basedOn = "the care record of " + shortTime(owed.since) +
                       " and nothing after it that closes this (" +
                       (card ? card->source : std::string("common practice")) + ")";
        item.otherwise = otherwiseOf(situation, owed.action, owed.after, std::nullopt);
        if (item.otherwise.empty())
            item.otherwise = "Splices before it are made with a tool nobody has proved.";
        calibration = calibration || owed.action == action::arcCalibration;
        items.push_back(std::move(item));
    }
    if (calibration) return items;
    if (const auto owed = kit::owedNow(situation, tool)) {
        const Basis basis = owed->condition ? Basis::Condition : Basis::Obligation;
        const std::string anchor = owed->condition ? std::string(word(*owed->condition)) : owed->after;
        DueItem item = itemFor(situation, tool, ActionKey(action::arcCalibration), Queue::Hold, basis,
                               anchor + "@" + toIso(owed->from));
        item.since = owed->from;
        item.why = owed->because;
        item.basedOn = "no calibration that counts since " + shortTime(owed->from);
        const Settings limits = limitsFor(*asSplicer(tool), situation.settings);
        if (owed->condition == Condition::EnvironmentJump)
            item.basedOn += "; owed from " + plain(limits.jumpCelsius) + " °C or " +
                            plain(limits.jumpHectopascals) + " hPa on (settings; common practice)";
        if (owed->condition == Condition::OtherFibre)
            item.basedOn +=
                "; a mass splicer is calibrated with as many fibres, and of the type, as it is to "
                "splice (common practice)";
        if (owed->condition == Condition::IdleStretch)
            item.basedOn += "; owed after " +
                            counted(static_cast<std::uint64_t>(limits.idleDays), "day", "days") +
                            " (setting; common practice)";
        item.otherwise = otherwiseOf(situation, item.action, owed->after, owed->condition) +
                         " Splices until then carry \"calibration owed\".";
        items.push_back(std::move(item));
    }
    return items;
}

std::vector<DueItem> byRule(const Situation& situation, const kit::ToolLife& life) {
    std::vector<DueItem> items;
    const ToolKind kind = kindOf(life.tool);
    const auto uses = kit::usesOf(situation, life.tool.id);
    for (const Card& card : situation.deck.cards) {
        if (card.tool != kind) continue;
        for (const DueRule& rule : card.when) {
            if (const auto* count = std::get_if<CountRule>(&rule.when)) {
                if (count->counter == "electrodes") continue;  // with the forecast, see byForecast
                const CareRecord* last = kit::lastReset(situation, life.tool, count->counter);
                const std::int64_t after = last ? last->at.ms : INT64_MIN;
                const std::uint32_t used = kit::usesBetween(uses, after, situation.now.ms, count->per);
                if (used < count->every) continue;
                ActionKey action = card.id;
                if (card.id == action::bladeRotate && life.blade) {
                    if (life.blade->standing == kit::BladeStanding::Exhausted) continue;  // see byForecast
                    if (life.blade->now.position >= life.blade->positions) action = action::bladeRaise;
                }
                DueItem item =
                    itemFor(situation, life.tool, action, rule.queue, Basis::Count,
                            count->counter + "@" + (last ? toIso(last->at) : std::string("start")));
                item.since = reachedAt(uses, after, count->every, count->per, situation.now);
                const auto bar = std::ranges::find(life.bars, count->counter, &kit::LifeBar::counter);
                const std::string unit = bar == life.bars.end() ? "uses" : bar->unit;
                item.why = grouped(used) + " " + unit + ", every " + grouped(count->every);
                item.basedOn =
                    grouped(used) + " " + unit +
                    (last ? " since " + shortTime(last->at) : " in the book, and no such care in it") +
                    "; the card says every " + grouped(count->every) + " (" + rule.source + ")";
                item.otherwise = rule.otherwise;
                items.push_back(std::move(item));
            }
            if (const auto* days = std::get_if<DaysRule>(&rule.when)) {
                const CareRecord* last =
                    card.resets.empty() ? nullptr : kit::lastReset(situation, life.tool, card.resets.front());
                if (uses.empty()) continue;
                const Instant from = last ? last->at : uses.front().at;
                // A tool that lies in its case needs no weekly brush.
                if (kit::usesBetween(uses, last ? from.ms : INT64_MIN, situation.now.ms, Per::Use) == 0)
                    continue;
                const Instant due{from.ms + days->every * msPerDay, from.offsetMinutes};
                if (situation.now < due) continue;
                DueItem item =
                    itemFor(situation, life.tool, card.id, rule.queue, Basis::Time, "days@" + toIso(from));
                item.since = due;
                const auto gone = static_cast<std::uint64_t>((situation.now.ms - from.ms) / msPerDay);
                item.why = counted(gone, "day", "days") + ", every " +
                           counted(static_cast<std::uint64_t>(days->every), "day", "days");
                item.basedOn = (last ? "last done " : "first used ") + shortTime(from) +
                               "; the card says every " +
                               counted(static_cast<std::uint64_t>(days->every), "day", "days") + " (" +
                               rule.source + ")";
                item.otherwise = rule.otherwise;
                items.push_back(std::move(item));
            }
            if (const auto* condition = std::get_if<ConditionRule>(&rule.when);
                condition && condition->condition == Condition::WebRibbonStrip)
                if (auto item = afterStrip(situation, life, card, rule)) items.push_back(std::move(*item));
        }
    }
    return items;
}

}  // namespace arc::care::parts
