// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/kit/life.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "core/care/queues.hpp"
#include "core/care/run.hpp"
#include "core/care/words.hpp"

namespace arc::kit {
namespace {

using care::Card;
using care::CountRule;
using care::Deck;
using care::Per;
using care::Situation;

constexpr std::int64_t beginning = INT64_MIN;

std::string unitOf(care::ToolKind kind, Per per) {
    switch (kind) {
        case care::ToolKind::Splicer:
            return per == Per::Use ? "arcs" : "fibres";
        case care::ToolKind::Cleaver:
            return per == Per::Use ? "cleaves" : "fibres cleaved";
        case care::ToolKind::Stripper:
            return per == Per::Use ? "strips" : "fibres stripped";
    }
    return {};
}

std::vector<CareRecord> recordsOf(const Situation& situation, ToolId tool) {
    std::vector<CareRecord> mine;
    for (const CareRecord& record : situation.records)
        if (record.tool == tool) mine.push_back(record);
    std::ranges::stable_sort(mine, {}, &CareRecord::at);
    return mine;
}

/// The counters of a kind of tool in the order of the cards, each with the rule that limits it.
struct Counting {
    care::CounterKey counter;
    const Card* resetBy = nullptr;
    std::optional<CountRule> rule;
};
std::vector<Counting> countersOf(const Deck& deck, care::ToolKind kind) {
    std::vector<Counting> all;
    const auto named = [&](const care::CounterKey& key) -> Counting& {
        const auto known = std::ranges::find(all, key, &Counting::counter);
        if (known != all.end()) return *known;
        all.push_back({key, nullptr, std::nullopt});
        return all.back();
    };
    for (const Card& card : deck.cards) {
        if (card.tool != kind) continue;
        for (const auto& key : card.resets)
            if (Counting& counting = named(key); !counting.resetBy || card.resets.size() == 1)
                counting.resetBy = &card;
        for (const care::DueRule& due : card.when)
            if (const auto* rule = std::get_if<CountRule>(&due.when))
                if (Counting& counting = named(rule->counter);
                    !counting.rule || counting.rule->every < rule->every)
                    counting.rule = *rule;
    }
    return all;
}

std::vector<LifeBar> barsOf(const Situation& situation, const Tool& tool, std::span<const UsePoint> uses) {
    std::vector<LifeBar> bars;
    const care::ToolKind kind = care::kindOf(tool);
    for (const Counting& counting : countersOf(situation.deck, kind)) {
        const Per per = counting.rule ? counting.rule->per : Per::Use;
        LifeBar bar;
        bar.counter = counting.counter;
        bar.title = care::titled(counting.counter);
        bar.unit = unitOf(kind, per);
        if (counting.rule) bar.limit = counting.rule->every;
        if (counting.counter == "electrodes" && situation.settings.electrodeArcs)
            bar.limit = situation.settings.electrodeArcs;
        if (counting.resetBy) bar.action = counting.resetBy->id;
        const CareRecord* last = lastReset(situation, tool, counting.counter);
        if (last) bar.since = last->at;
        bar.used = usesBetween(uses, last ? last->at.ms : beginning, situation.now.ms, per);
        if (kind == care::ToolKind::Stripper)
            bar.certainty = Certainty::Shared;
        else if (!last)
            bar.certainty = Certainty::AtLeast;
        bars.push_back(std::move(bar));
    }
    return bars;
}

BladeLife bladeOf(const Situation& situation, const Cleaver& cleaver, std::span<const CareRecord> records,
                  std::span<const UsePoint> uses) {
    BladeLife life;
    life.positions = cleaver.positions;
    life.heights = cleaver.heights;
    std::map<std::pair<int, int>, std::uint32_t> spent;
    std::set<std::pair<int, int>> visited;
    const auto key = [](BladePlace place) { return std::pair(place.height, place.position); };
    BladePlace place;
    std::int64_t since = beginning;
    for (std::size_t i = 0; i < records.size(); ++i) {
        if (records[i].action != action::bladeRotate && records[i].action != action::bladeRaise) continue;
        spent[key(place)] += usesBetween(uses, since, records[i].at.ms, Per::Fibre);
        visited.insert(key(place));
        since = records[i].at.ms;
        place = bladeNow(cleaver, records.first(i + 1));
        if (records[i].fields.contains(std::string(care::field::newBlade))) {
            spent.clear();
            visited.clear();
            life.fitted = records[i].at;
        }
    }
    spent[key(place)] += usesBetween(uses, since, situation.now.ms, Per::Fibre);
    life.now = place;
    for (int height = 1; height <= cleaver.heights; ++height)
        for (int position = 1; position <= cleaver.positions; ++position) {
            BladeCell cell;
            cell.place = {height, position};
            if (const auto found = spent.find({height, position}); found != spent.end())
                cell.cleaves = found->second;
            if (cell.place == place)
                cell.state = CellState::Now;
            else if (visited.contains({height, position}))
                cell.state = CellState::Spent;
            life.cells.push_back(cell);
        }
    if (place.height >= cleaver.heights) life.standing = BladeStanding::LastHeight;
    if (!nextPlace(cleaver, place)) life.standing = BladeStanding::Exhausted;
    return life;
}

CalibrationLife calibrationOf(const Situation& situation, const Tool& tool,
                              std::span<const CareRecord> records) {
    CalibrationLife life;
    const Splicer& splicer = *asSplicer(tool);
    life.control = splicer.arcControl;
    for (const CareRecord& record : records) {
        if (record.action != action::arcCalibration) continue;
        const auto result = care::resultOf(record);
        life.lastFaults =
            result ? care::faultsOf(*result, splicer, {}) : std::vector<care::CalibrationFault>{};
        if (!care::counts(record, splicer)) continue;
        life.at = record.at;
        life.madeFor = result;
        life.state = result ? care::CalibrationState::Valid : care::CalibrationState::Unproved;
    }
    life.owed = owedNow(situation, tool);
    if (life.owed) life.state = care::CalibrationState::Owed;
    if (life.madeFor && life.owed && life.owed->condition == care::Condition::OtherFibre)
        if (const auto history = std::ranges::find(situation.histories, tool.id, &SplicerHistory::splicer);
            history != situation.histories.end() && !history->arcs.empty())
            life.lastFaults =
                care::faultsOf(*life.madeFor, splicer, care::useOf(history->arcs.back(), *history));
    return life;
}

std::string labelOf(const Situation& situation, ToolId id) {
    const auto tool = std::ranges::find(situation.tools, id, &Tool::id);
    return tool == situation.tools.end() ? std::string("a tool that is gone") : tool->label;
}

std::string careText(const Situation& situation, const CareRecord& record) {
    std::string text = record.action;
    if (const Card* card = situation.deck.find(record.action); card && card->isWhole(record.action))
        text = card->title;
    else if (record.action == action::stabilise)
        text = "Stabilise electrodes";
    if (record.action == action::bladeRaise) text = "Raise the blade to its next height";
    if (care::effectOf(record) == care::Effect::NotReached) text += ": tried, not reached";
    if (record.blade)
        text += ": height " + std::to_string(record.blade->height) + ", position " +
                std::to_string(record.blade->position);
    if (!record.detail.empty()) text += " (" + record.detail + ")";
    if (record.fields.contains(std::string(care::field::skippedGentler))) {
        const auto why = record.fields.find(std::string(care::field::skippedReason));
        text += "; before gentler care" + (why == record.fields.end() ? "" : ": " + why->second);
    }
    return text;
}

std::vector<TimelineLine> timelineOf(const Situation& situation, const Tool& tool,
                                     std::span<const CareRecord> records, std::span<const UsePoint> uses) {
    using Kind = TimelineLine::Kind;
    std::vector<TimelineLine> lines;
    for (const CareRecord& record : records) {
        TimelineLine line{Kind::Care, record.at, careText(situation, record), record.by, record.id, {}};
        if (record.action == action::environmentChange) {
            line.kind = Kind::Environment;
            line.text = "Environment changed" + (record.detail.empty() ? "" : ": " + record.detail);
        }
        if (record.action == action::note) {
            line.kind = Kind::Note;
            line.text = record.detail;
        }
        lines.push_back(std::move(line));
    }
    for (const Pairing& pairing : situation.pairings) {
        if (pairing.splicer == tool.id)
            lines.push_back({Kind::Pairing,
                             pairing.at,
                             "Cleaver " + labelOf(situation, pairing.cleaver) + " from now on",
                             "",
                             {},
                             {}});
        if (pairing.cleaver == tool.id)
            lines.push_back({Kind::Pairing,
                             pairing.at,
                             "Prepares for " + labelOf(situation, pairing.splicer) + " from now on",
                             "",
                             {},
                             {}});
    }
    for (const CounterCorrection& correction : situation.corrections)
        if (correction.tool == tool.id)
            lines.push_back(
                {Kind::Correction,
                 correction.at,
                 "Counter corrected to " + care::grouped(correction.shows.value) + ": " + correction.reason,
                 "",
                 {},
                 {}});
    bool out = false;
    bool known = false;
    for (const care::ToolChange& change : situation.toolChanges) {
        if (change.tool != tool.id) continue;
        const bool nowOut = change.line.text.ends_with("taken out of service");
        std::string text = known ? "Entry changed: " + change.line.text : "Entered in the kit";
        if (nowOut && !out) text = "Taken out of service";
        if (!nowOut && out) text = "Back in service";
        out = nowOut;
        known = true;
        lines.push_back({Kind::Kit, change.line.at, text, change.line.who, {}, {}});
    }
    for (TimelineLine& line : lines) line.usesBefore = usesBetween(uses, beginning, line.at.ms, Per::Use);
    std::ranges::stable_sort(lines, [](const TimelineLine& a, const TimelineLine& b) { return b.at < a.at; });
    return lines;
}

std::optional<ArcCount> counterOf(const Situation& situation, const Tool& tool) {
    std::optional<ArcCount> shows;
    std::int64_t when = beginning;
    const auto history = std::ranges::find(situation.histories, tool.id, &SplicerHistory::splicer);
    if (history != situation.histories.end())
        for (const HistoryArc& arc : history->arcs)
            if (arc.counter) {
                shows = arc.counter;
                when = arc.at.ms;
            }
    for (const CounterCorrection& correction : situation.corrections)
        if (correction.tool == tool.id && correction.at.ms >= when) {
            shows = correction.shows;
            when = correction.at.ms;
        }
    return shows;
}

ToolLife lifeIn(const Situation& situation, const Tool& tool) {
    ToolLife life;
    life.tool = tool;
    const auto records = recordsOf(situation, tool.id);
    const auto uses = usesOf(situation, tool.id);
    if (!uses.empty()) {
        life.uses = uses.back().total;
        const auto history = std::ranges::find(situation.histories, tool.id, &SplicerHistory::splicer);
        const bool arcs = history != situation.histories.end() && !history->arcs.empty();
        if (arcs)
            life.lastUse = history->arcs.back().at;
        else if (!asSplicer(tool))
            life.lastUse = uses.back().at;
    }
    life.counter = counterOf(situation, tool);
    for (const CareRecord& record : records) life.lastCare[record.action] = record;
    life.bars = barsOf(situation, tool, uses);
    if (const Cleaver* cleaver = asCleaver(tool)) {
        life.blade = bladeOf(situation, *cleaver, records, uses);
        life.pairedWith = pairedSplicer(situation.pairings, tool.id, situation.now);
    }
    if (asSplicer(tool)) {
        life.calibration = calibrationOf(situation, tool, records);
        life.pairedWith = pairedCleaver(situation.pairings, tool.id, situation.now);
    }
    life.timeline = timelineOf(situation, tool, records, uses);
    return life;
}

}  // namespace

const CareRecord* lastReset(const Situation& situation, const Tool& tool, const care::CounterKey& counter) {
    const CareRecord* last = nullptr;
    for (const CareRecord& record : situation.records) {
        if (record.tool != tool.id || care::effectOf(record) == care::Effect::NotReached) continue;
        const Card* card = situation.deck.find(record.action);
        if (!card || !card->isWhole(record.action)) continue;
        if (std::ranges::find(card->resets, counter) == card->resets.end()) continue;
        if (!last || last->at <= record.at) last = &record;
    }
    return last;
}

std::optional<care::OwedStretch> owedNow(const Situation& situation, const Tool& tool) {
    const Splicer* splicer = asSplicer(tool);
    const auto history = std::ranges::find(situation.histories, tool.id, &SplicerHistory::splicer);
    if (!splicer) return std::nullopt;
    SplicerHistory empty;
    empty.splicer = tool.id;
    const SplicerHistory& known = history == situation.histories.end() ? empty : *history;
    const auto stretches =
        care::calibrationOwed(tool, situation.records, known, situation.deck, situation.settings);
    if (!stretches.empty() && !stretches.back().to) return stretches.back();
    if (known.arcs.empty()) return std::nullopt;
    const Instant last = known.arcs.back().at;
    const std::int64_t limit = care::limitsFor(*splicer, situation.settings).idleDays * msPerDay;
    if (situation.now.ms - last.ms < limit) return std::nullopt;
    for (const CareRecord& record : situation.records)
        if (record.tool == tool.id && record.at > last && situation.now.ms - record.at.ms < limit &&
            care::counts(record, *splicer))
            return std::nullopt;
    return care::OwedStretch{
        tool.id,
        Instant{last.ms + limit, last.offsetMinutes},
        std::nullopt,
        {},
        care::Condition::IdleStretch,
        care::counted(static_cast<std::uint64_t>((situation.now.ms - last.ms) / msPerDay), "day", "days") +
            " without an arc since " + care::shortDay(last)};
}

std::vector<ToolLife> livesOf(const Situation& situation) {
    std::vector<ToolLife> lives;
    lives.reserve(situation.tools.size());
    for (const Tool& tool : situation.tools) lives.push_back(lifeIn(situation, tool));
    return lives;
}

Result<ToolLife> lifeOf(const Situation& situation, ToolId id) {
    const auto tool = std::ranges::find(situation.tools, id, &Tool::id);
    if (tool == situation.tools.end())
        return fail(ProblemCode::NotFound, "this tool is not in the kit", {}, "Choose one of the kit");
    return lifeIn(situation, *tool);
}

}  // namespace arc::kit
