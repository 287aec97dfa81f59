// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/equipment.hpp"

#include <algorithm>
#include <map>

namespace arc::closeout {
namespace {

std::string word(Adequacy adequacy) {
    return adequacy == Adequacy::Adequate ? "adequate" : "not adequate";
}

std::string detailOf(const CareRecord& care) {
    std::string text;
    const auto add = [&text](const std::string& part) {
        if (part.empty()) return;
        if (!text.empty()) text += "; ";
        text += part;
    };
    // The detail of an imported calibration is what its results were read from.
    const bool isSaid = care.cardVersion == 0 && care.detail.find("adequate") != std::string::npos;
    if (care.calibration && !isSaid) {
        const CalibrationResult& result = *care.calibration;
        add("power " + word(result.power) + ", position " + word(result.position));
        add(result.fibreType);
        add(std::to_string(result.fibreCount) + (result.fibreCount == 1 ? " fibre, " : " fibres, ") +
            std::to_string(result.runs) + (result.runs == 1 ? " run" : " runs"));
    }
    if (care.blade)
        add("height " + std::to_string(care.blade->height) + ", position " +
            std::to_string(care.blade->position));
    add(care.detail);
    return text;
}

CareLine lineOf(const CareRecord& care) {
    return {care.action, care.at, care.by, detailOf(care)};
}

/// The splicer's own counter tells more than the book, which may be younger than the care; not when somebody
/// corrected the counter meanwhile.
std::optional<std::uint64_t> byCounter(const Equipment& item, const CareRecord& care,
                                       const std::vector<CounterCorrection>& corrections) {
    if (!care.counter || !item.lastCounter || *item.lastCounter < *care.counter) return std::nullopt;
    const auto isBetween = [&](const CounterCorrection& correction) {
        return correction.tool == item.tool.id && correction.at >= care.at && correction.at <= *item.lastUse;
    };
    if (std::ranges::any_of(corrections, isBetween)) return std::nullopt;
    return item.lastCounter->value - care.counter->value;
}

/// Arcs from the last such action up to and with the last use here; none when the action was never recorded.
Result<std::optional<ArcsSince>> arcsSince(Logbook& book, const Equipment& item,
                                           const std::vector<CareRecord>& records,
                                           const std::vector<CounterCorrection>& corrections,
                                           std::string_view action) {
    const CareRecord* last = nullptr;
    for (const CareRecord& care : records)
        if (care.action == action && care.at <= *item.lastUse) last = &care;
    if (last == nullptr) return std::nullopt;
    if (const auto counted = byCounter(item, *last, corrections))
        return ArcsSince{*counted, kit::Certainty::Exact};
    const auto since = book.countArcs(item.tool.id, last->at.ms, item.lastUse->ms + 1);
    if (!since) return tl::unexpected(since.error());
    const auto earlier = book.countArcs(item.tool.id, 0, last->at.ms);
    if (!earlier) return tl::unexpected(earlier.error());
    return ArcsSince{*since, *earlier > 0 ? kit::Certainty::Exact : kit::Certainty::AtLeast};
}

Result<void> fillIn(Logbook& book, Equipment& item, const std::vector<CounterCorrection>& corrections,
                    const OwedBy& owed) {
    Result<std::vector<CareRecord>> records = book.careRecords(item.tool.id);
    if (!records) return tl::unexpected(records.error());
    std::ranges::stable_sort(*records, {}, &CareRecord::at);
    std::map<ActionKey, CareLine> before;
    for (const CareRecord& care : *records) {
        if (care.at < *item.firstUse)
            before[care.action] = lineOf(care);
        else if (care.at <= *item.lastUse)
            item.during.push_back(lineOf(care));
    }
    for (auto& [action, line] : before) item.before.push_back(std::move(line));
    std::ranges::stable_sort(item.before, {}, &CareLine::at);
    if (asSplicer(item.tool) == nullptr) return {};

    const std::pair<std::string_view, std::optional<ArcsSince>*> counts[] = {
        {action::electrodeReplace, &item.sinceElectrodes},
        {action::grooveClean, &item.sinceGrooveClean},
        {action::arcCalibration, &item.sinceCalibration}};
    for (const auto& [name, slot] : counts) {
        auto count = arcsSince(book, item, *records, corrections, name);
        if (!count) return tl::unexpected(count.error());
        *slot = *count;
    }
    if (owed) {
        auto stretches = owed(item, *records);
        if (!stretches) return tl::unexpected(stretches.error());
        for (care::OwedStretch& stretch : *stretches) {
            const bool beginsTooLate = stretch.from > *item.lastUse;
            const bool endsTooEarly = stretch.to && *stretch.to <= *item.firstUse;
            if (!beginsTooLate && !endsTooEarly) item.owed.push_back(std::move(stretch));
        }
    }
    return {};
}

}  // namespace

EquipmentList::EquipmentList(const std::vector<Tool>& tools) : m_tools(tools) {}

std::uint32_t EquipmentList::use(ToolId tool, Instant at, std::optional<ArcCount> counter) {
    auto found = m_index.find(tool);
    if (found == m_index.end()) {
        found = m_index.emplace(tool, static_cast<std::uint32_t>(m_equipment.size())).first;
        Equipment item;
        const auto known = std::ranges::find(m_tools, tool, &Tool::id);
        if (known != m_tools.end()) {
            item.tool = *known;
        } else {
            item.tool.id = tool;
            item.tool.label = "unknown tool";
        }
        m_equipment.push_back(std::move(item));
    }
    Equipment& item = m_equipment[found->second];
    ++item.splicesHere;
    if (!item.firstUse || at < *item.firstUse) item.firstUse = at;
    if (!item.lastUse || at >= *item.lastUse) {
        item.lastUse = at;
        item.lastCounter = counter;
    }
    return found->second;
}

Result<std::vector<Equipment>> EquipmentList::withCare(Logbook& book, const OwedBy& owed) {
    const auto corrections = book.counterCorrections();
    if (!corrections) return tl::unexpected(corrections.error());
    for (Equipment& item : m_equipment)
        if (auto filled = fillIn(book, item, *corrections, owed); !filled)
            return tl::unexpected(filled.error());
    return std::move(m_equipment);
}

}  // namespace arc::closeout
