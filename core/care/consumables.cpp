// SPDX-License-Identifier: GPL-3.0-or-later
// Swabs, alcohol, brushes and groove kits ahead (see due_parts.hpp).
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

#include "core/care/due_parts.hpp"
#include "core/care/run.hpp"
#include "core/care/words.hpp"

namespace arc::care::parts {
namespace {

constexpr int days = 28;

int roundsOf(const CareRecord& record) {
    const auto written = record.fields.find(std::string(field::rounds));
    return written == record.fields.end() ? 1 : std::max(1, std::atoi(written->second.c_str()));
}

/// Runs of a card: how many there were, and how many the next four weeks will see.
struct Runs {
    int ever = 0;
    double ahead = 0;
    double rounds = 1;  ///< mean rounds of a run lately
};

/// What the card's rules call for when a tool is used as in the last four weeks.
double calledFor(const Situation& situation, const Card& card, ToolId tool) {
    const auto uses = kit::usesOf(situation, tool);
    const std::int64_t from = situation.now.ms - days * msPerDay;
    std::set<std::int64_t> usedDays;
    for (const kit::UsePoint& point : uses)
        if (point.at.ms > from)
            usedDays.insert((point.at.ms + point.at.offsetMinutes * msPerMinute) / msPerDay);
    double most = 0;
    for (const DueRule& rule : card.when) {
        if (const auto* count = std::get_if<CountRule>(&rule.when))
            most = std::max(
                most, double(kit::usesBetween(uses, from, situation.now.ms, count->per)) / count->every);
        if (const auto* every = std::get_if<DaysRule>(&rule.when))
            most = std::max(most, static_cast<double>(usedDays.size()) / every->every);
    }
    return most;
}

Runs runsOf(const Situation& situation, const Card& card) {
    const std::int64_t from = situation.now.ms - days * msPerDay;
    Runs runs;
    int lately = 0;
    int rounds = 0;
    std::map<ToolId, int> done;
    for (const CareRecord& record : situation.records) {
        if (!card.isWhole(record.action)) continue;
        ++runs.ever;
        if (record.at.ms <= from) continue;
        ++lately;
        ++done[record.tool];
        rounds += roundsOf(record);
    }
    if (lately > 0) runs.rounds = static_cast<double>(rounds) / lately;
    for (const Tool& tool : situation.tools) {
        if (kindOf(tool) != card.tool || tool.service == Service::OutOfService) continue;
        runs.ahead += std::max(double(done[tool.id]), calledFor(situation, card, tool.id));
    }
    return runs;
}

struct Needed {
    double pieces = 0;
    double runs = 0;
};

/// Of what wears: one is due each time the runs in the book pass a multiple of what it lasts.
void addWorn(std::vector<OrderLine>& lines, const Situation& situation, const Material& material,
             const Runs& runs) {
    const int before = runs.ever / material.lasts;
    const int after = static_cast<int>(runs.ever + runs.ahead) / material.lasts;
    if (after <= before) return;
    OrderLine line;
    line.what = material.order.empty() ? material.name : material.order;
    line.pieces = after - before;
    line.forWhat = "the crew";
    line.why = "one lasts about " + counted(static_cast<std::uint64_t>(material.lasts), "run", "runs") +
               "; " + grouped(static_cast<std::uint64_t>(runs.ever)) + " in the logbook, about " +
               grouped(static_cast<std::uint64_t>(std::lround(runs.ahead))) + " in the next " +
               std::to_string(days) + " days";
    const double until = (double(before + 1) * material.lasts - runs.ever) / runs.ahead * days;
    line.neededBy =
        Instant{situation.now.ms + static_cast<std::int64_t>(until * msPerDay), situation.now.offsetMinutes};
    lines.push_back(std::move(line));
}

}  // namespace

std::vector<OrderLine> consumables(const Situation& situation) {
    std::vector<OrderLine> worn;
    std::map<std::pair<std::string, std::string>, Needed> used;  // name, unit
    for (const Card& card : situation.deck.cards) {
        if (card.id == action::electrodeReplace || card.materials.empty()) continue;
        const Runs runs = runsOf(situation, card);
        if (runs.ahead <= 0) continue;
        for (const Material& material : card.materials) {
            if (material.lasts > 0) addWorn(worn, situation, material, runs);
            if (material.uses == 0) continue;
            Needed& needed = used[{material.order.empty() ? material.name : material.order, material.unit}];
            needed.pieces += material.uses * runs.rounds * runs.ahead;
            needed.runs += runs.ahead;
        }
    }
    std::vector<OrderLine> lines;
    for (const auto& [material, needed] : used) {
        OrderLine line;
        line.what = material.first;
        line.unit = material.second;
        line.pieces = static_cast<int>(std::ceil(needed.pieces - 1e-9));
        line.forWhat = "the crew";
        line.why = "for about " +
                   counted(static_cast<std::uint64_t>(std::ceil(needed.runs)), "care", "cares") +
                   " in the next " + std::to_string(days) + " days, as many as the last " +
                   std::to_string(days) + " days had or called for";
        lines.push_back(std::move(line));
    }
    lines.insert(lines.end(), worn.begin(), worn.end());
    return lines;
}

}  // namespace arc::care::parts
