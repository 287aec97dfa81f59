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
    if (care.calibration) {
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

/// Arcs from the last such action up to and with the last use here; none when the action was never recorded.
Result<std::optional<std::uint64_t>> arcsSince(Logbook& book, const Equipment& item,
                                               const std::vector<CareRecord>& records,
                                               std::string_view action) {
    std::optional<Instant> last;
    for (const CareRecord& care : records)
        if (care.action == action && care.at <= *item.lastUse) last = care.at;
    if (!last) return std::nullopt;
    Result<std::uint64_t> count = book.countArcs(item.tool.id, last->ms, item.lastUse->ms + 1);
    if (!count) return tl::unexpected(count.error());
    return *count;
}

Result<void> fillIn(Logbook& book, Equipment& item, const OwedBy& owed) {
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

    const std::pair<std::string_view, std::optional<std::uint64_t>*> counts[] = {
        {action::electrodeReplace, &item.arcsSinceElectrodes},
        {action::grooveClean, &item.arcsSinceGrooveClean},
        {action::arcCalibration, &item.arcsSinceCalibration}};
    for (const auto& [name, slot] : counts) {
        auto count = arcsSince(book, item, *records, name);
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

std::uint32_t EquipmentList::use(ToolId tool, Instant at) {
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
    if (!item.lastUse || at > *item.lastUse) item.lastUse = at;
    return found->second;
}

Result<std::vector<Equipment>> EquipmentList::withCare(Logbook& book, const OwedBy& owed) {
    for (Equipment& item : m_equipment)
        if (Result<void> filled = fillIn(book, item, owed); !filled) return tl::unexpected(filled.error());
    return std::move(m_equipment);
}

}  // namespace arc::closeout
