// SPDX-License-Identifier: GPL-3.0-or-later
// Electrodes and blades ahead, and the list of what to order (see queues.hpp).
#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <utility>

#include "core/care/due_parts.hpp"
#include "core/care/words.hpp"

namespace arc::care {
namespace parts {

std::optional<double> usesPerDay(const Situation& situation, ToolId tool, Per per) {
    // A splicer's rate is that of the arcs in the book: a counter read after months away is no day's work.
    std::vector<kit::UsePoint> uses;
    const auto history = std::ranges::find(situation.histories, tool, &SplicerHistory::splicer);
    if (history == situation.histories.end()) {
        uses = kit::usesOf(situation, tool);
    } else {
        kit::UsePoint point;
        for (const HistoryArc& arc : history->arcs) {
            point.at = arc.at;
            ++point.total;
            point.fibres += arc.channels;
            uses.push_back(point);
        }
    }
    if (uses.empty()) return std::nullopt;
    const std::int64_t from = uses.back().at.ms - 28 * msPerDay;
    std::set<std::int64_t> days;
    for (const kit::UsePoint& point : uses)
        if (point.at.ms > from) days.insert((point.at.ms + point.at.offsetMinutes * msPerMinute) / msPerDay);
    const double used = kit::usesBetween(uses, from, situation.now.ms, per);
    return used / static_cast<double>(std::max<std::size_t>(1, days.size()));
}

std::optional<ElectrodeLeft> electrodesLeft(const kit::ToolLife& life,
                                            std::span<const drift::SplicerReport> reports) {
    const auto bar = std::ranges::find(life.bars, "electrodes", &kit::LifeBar::counter);
    if (bar == life.bars.end() || !bar->limit) return std::nullopt;
    ElectrodeLeft left;
    left.used = bar->used;
    left.limit = *bar->limit;
    const auto report = std::ranges::find(reports, life.tool.id, &drift::SplicerReport::splicer);
    if (report != reports.end() && bar->certainty == kit::Certainty::AtLeast && report->electrodes.arcsSince)
        left.used = std::max(left.used, *report->electrodes.arcsSince);
    left.arcs = static_cast<double>(left.limit) - left.used;
    if (report != reports.end() && report->electrodes.arcsLeft && *report->electrodes.arcsLeft < left.arcs) {
        left.arcs = *report->electrodes.arcsLeft;
        left.by = ElectrodeLeft::By::Forecast;
        left.low = report->electrodes.arcsLeftLow;
        left.high = report->electrodes.arcsLeftHigh;
    }
    return left;
}

namespace {

std::string leftWords(const ElectrodeLeft& left) {
    const auto whole = [](double v) {
        return grouped(static_cast<std::uint64_t>(std::max(0.0, std::round(v))));
    };
    std::string text = "about " + whole(left.arcs) + " arcs left";
    if (left.low && left.high) text += " (" + whole(*left.low) + "-" + whole(*left.high) + ")";
    return text;
}

std::string electrodeBasis(const ElectrodeLeft& left) {
    std::string text = grouped(left.used) + " arcs since they were new; about " + grouped(left.limit) +
                       " is usual (common practice)";
    if (left.by == ElectrodeLeft::By::Forecast)
        text += "; the loss forecast says " + leftWords(left) + ", 80 % interval";
    return text;
}

const DueRule* electrodeRule(const Situation& situation) {
    if (const Card* card = situation.deck.find(action::electrodeReplace))
        for (const DueRule& rule : card->when)
            if (const auto* count = std::get_if<CountRule>(&rule.when);
                count && count->counter == "electrodes")
                return &rule;
    return nullptr;
}

std::string electrodeAnchor(const kit::ToolLife& life) {
    const auto bar = std::ranges::find(life.bars, "electrodes", &kit::LifeBar::counter);
    return bar != life.bars.end() && bar->since ? toIso(*bar->since) : std::string("start");
}

/// The count a blade position is turned at, and what is used of it.
struct BladeHere {
    std::uint32_t used = 0, limit = 1000;
};
BladeHere bladeHere(const kit::ToolLife& life) {
    BladeHere here;
    const auto bar = std::ranges::find(life.bars, "blade_position", &kit::LifeBar::counter);
    if (bar != life.bars.end()) {
        here.used = bar->used;
        here.limit = bar->limit.value_or(here.limit);
    }
    return here;
}

/// Fibres the blade can still cleave: the rest of this place and all places after it.
double bladeLeft(const kit::ToolLife& life) {
    const BladeHere here = bladeHere(life);
    const auto ahead = std::ranges::count_if(life.blade->cells, [&](const kit::BladeCell& cell) {
        return std::pair(cell.place.height, cell.place.position) >
               std::pair(life.blade->now.height, life.blade->now.position);
    });
    return static_cast<double>(ahead) * here.limit + std::max(0.0, double(here.limit) - double(here.used));
}

}  // namespace

std::vector<DueItem> byForecast(const Situation& situation, const kit::ToolLife& life,
                                std::span<const drift::SplicerReport> reports) {
    std::vector<DueItem> items;
    if (const auto left = asSplicer(life.tool) ? electrodesLeft(life, reports) : std::nullopt) {
        const DueRule* rule = electrodeRule(situation);
        const bool forecast = left->by == ElectrodeLeft::By::Forecast;
        const auto perDay = usesPerDay(situation, life.tool.id, Per::Use);
        const ActionKey replace(action::electrodeReplace);
        if (rule && left->arcs <= 0) {
            DueItem item =
                itemFor(situation, life.tool, replace, rule->queue, forecast ? Basis::Forecast : Basis::Count,
                        "electrodes@" + electrodeAnchor(life));
            item.why = forecast ? "the loss forecast puts their end here"
                                : grouped(left->used) + " arcs of about " + grouped(left->limit);
            item.basedOn = electrodeBasis(*left);
            item.otherwise = rule->otherwise;
            items.push_back(std::move(item));
        } else if (rule && perDay && left->arcs <= *perDay * situation.settings.orderWithinDays) {
            DueItem item = itemFor(situation, life.tool, replace, Queue::BenchDay, Basis::Forecast,
                                   "order@" + electrodeAnchor(life));
            item.title = "Order electrodes for " + life.tool.label;
            item.why = leftWords(*left) + " at " + grouped(static_cast<std::uint64_t>(std::lround(*perDay))) +
                       " arcs a day";
            item.basedOn = electrodeBasis(*left);
            item.otherwise = "They come to their end with no new pair in the case.";
            items.push_back(std::move(item));
        }
    }
    if (life.blade && life.blade->standing != kit::BladeStanding::InUse) {
        const bool exhausted = life.blade->standing == kit::BladeStanding::Exhausted;
        const auto perDay = usesPerDay(situation, life.tool.id, Per::Fibre);
        const double left = bladeLeft(life);
        if (exhausted || (perDay && left <= *perDay * situation.settings.orderWithinDays)) {
            const BladeHere here = bladeHere(life);
            const bool spent = exhausted && here.used >= here.limit;
            DueItem item = itemFor(situation, life.tool, ActionKey(action::bladeRotate),
                                   spent ? Queue::ShiftEnd : Queue::BenchDay, Basis::Forecast,
                                   "blade@" + (life.blade->fitted ? toIso(*life.blade->fitted) : "start"));
            item.title = (spent ? "Fit a new blade, " : "Order a blade for ") + life.tool.label;
            item.why = exhausted
                           ? "the blade stands at its last place"
                           : "about " + grouped(static_cast<std::uint64_t>(left)) + " fibres left on it";
            item.basedOn = "height " + std::to_string(life.blade->now.height) + " of " +
                           std::to_string(life.blade->heights) + ", position " +
                           std::to_string(life.blade->now.position) + " of " +
                           std::to_string(life.blade->positions) + ", " + grouped(here.used) +
                           " fibres cleaved here of about " + grouped(here.limit) + " (common practice)";
            item.otherwise = "There is no fresh edge left: every further cleave is at a dull place.";
            items.push_back(std::move(item));
        }
    }
    return items;
}

}  // namespace parts

namespace {

std::optional<Instant> inDays(const Situation& situation, double days) {
    if (!std::isfinite(days) || days > 3650) return std::nullopt;
    return Instant{situation.now.ms + static_cast<std::int64_t>(std::max(0.0, days) * msPerDay),
                   situation.now.offsetMinutes};
}

std::optional<OrderLine> electrodesFor(const Situation& situation, const kit::ToolLife& life,
                                       std::span<const drift::SplicerReport> reports) {
    const auto left = asSplicer(life.tool) ? parts::electrodesLeft(life, reports) : std::nullopt;
    if (!left) return std::nullopt;
    const auto perDay = parts::usesPerDay(situation, life.tool.id, Per::Use);
    const bool soon = perDay && left->arcs <= *perDay * situation.settings.orderWithinDays;
    if (left->arcs > 0 && !soon) return std::nullopt;
    OrderLine line;
    line.what = "electrodes";
    line.unit = "pair";
    line.forWhat = life.tool.label;
    line.why = parts::leftWords(*left);
    line.neededBy = inDays(situation, perDay && *perDay > 0 ? left->arcs / *perDay : 0);
    return line;
}

std::optional<OrderLine> bladeFor(const Situation& situation, const kit::ToolLife& life) {
    if (!life.blade || life.blade->standing == kit::BladeStanding::InUse) return std::nullopt;
    const auto perDay = parts::usesPerDay(situation, life.tool.id, Per::Fibre);
    const double left = parts::bladeLeft(life);
    const bool soon = perDay && left <= *perDay * situation.settings.orderWithinDays;
    if (life.blade->standing != kit::BladeStanding::Exhausted && !soon) return std::nullopt;
    OrderLine line;
    line.what = "cleaver blade";
    line.forWhat = life.tool.label;
    line.why = "about " + grouped(static_cast<std::uint64_t>(left)) + " fibres left on this blade";
    line.neededBy = inDays(situation, perDay && *perDay > 0 ? left / *perDay : 0);
    return line;
}

}  // namespace

std::vector<OrderLine> toOrder(const Situation& situation, std::span<const drift::SplicerReport> reports) {
    std::vector<OrderLine> lines;
    for (const kit::ToolLife& life : kit::livesOf(situation)) {
        if (life.tool.service == Service::OutOfService) continue;
        if (auto line = electrodesFor(situation, life, reports)) lines.push_back(std::move(*line));
        if (auto line = bladeFor(situation, life)) lines.push_back(std::move(*line));
    }
    std::ranges::move(parts::consumables(situation), std::back_inserter(lines));
    return lines;
}

}  // namespace arc::care
