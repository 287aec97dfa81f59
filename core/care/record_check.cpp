// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/record_check.hpp"

#include <algorithm>
#include <cstdint>
#include <utility>

#include "core/care/run.hpp"

namespace arc::care {
namespace {

Result<CareRecord> checkedCalibration(CareRecord record) {
    if (!record.calibration)
        return fail(ProblemCode::BadInput, "a calibration without its results proves nothing",
                    "power, position",
                    "Write down arc power and arc position, each adequate or not-adequate");
    if (record.calibration->fibreType.empty())
        return fail(ProblemCode::BadInput, "the fibre of the calibration is not named", "fibre_type",
                    "Write down its type, for example G.652.D, and how many fibres");
    return record;
}

Result<CareRecord> checkedBlade(const Situation& situation, const Cleaver& cleaver, CareRecord record) {
    std::vector<CareRecord> before;
    for (const CareRecord& other : situation.records)
        if (other.tool == record.tool && other.id != record.id && other.at <= record.at)
            before.push_back(other);
    const BladePlace now = kit::bladeNow(cleaver, before);
    if (record.fields.contains(std::string(field::newBlade))) {
        if (!record.blade) record.blade = BladePlace{};
        if (!(*record.blade == BladePlace{}))
            return fail(ProblemCode::Refused, "a new blade begins at height 1, position 1", "blade_position",
                        "Set it there");
        return record;
    }
    const auto next = kit::nextPlace(cleaver, now);
    if (!record.blade) record.blade = next.value_or(now);
    if (auto good = kit::checkBladeMove(cleaver, now, record.action, *record.blade); !good)
        return tl::unexpected(good.error());
    return record;
}

}  // namespace

Result<CareRecord> checkedRecord(const Situation& situation, CareRecord record) {
    const auto tool = std::ranges::find(situation.tools, record.tool, &Tool::id);
    if (tool == situation.tools.end())
        return fail(ProblemCode::NotFound, "this tool is not in the kit", {}, "Choose one of the kit");
    if (record.action == action::note) {
        if (record.detail.empty())
            return fail(ProblemCode::BadInput, "a note needs words", "detail", "Say what was seen");
        return record;
    }
    if (record.action == action::environmentChange) {
        if (asSplicer(*tool)) return record;
        return fail(ProblemCode::Refused, "an environment change is noted at a splicer", tool->label);
    }
    const Card* card = situation.deck.find(record.action);
    if (!card)
        return fail(ProblemCode::NotFound, "there is no care called \"" + record.action + "\"", "action",
                    "See the list of care cards");
    if (card->tool != kindOf(*tool))
        return fail(ProblemCode::Refused,
                    "\"" + card->title + "\" is care of a " + std::string(word(card->tool)), tool->label,
                    "Choose another tool or action");
    if (record.action == action::arcCalibration) return checkedCalibration(std::move(record));
    if (record.action == action::bladeRotate || record.action == action::bladeRaise)
        return checkedBlade(situation, *asCleaver(*tool), std::move(record));
    return record;
}

std::vector<ActionKey> skippedGentler(const Situation& situation, std::span<const DueItem> due, ToolId tool,
                                      const ActionKey& action) {
    const Card* card = situation.deck.find(action);
    if (!card || card->gentlerFirst.empty() || !card->isWhole(action)) return {};
    const bool planned = std::ranges::any_of(due, [&](const DueItem& item) {
        return item.tool == tool && item.action == action && item.basis != Basis::Signal;
    });
    if (planned) return {};
    std::int64_t since = INT64_MIN;
    for (const CareRecord& record : situation.records)
        if (record.tool == tool && card->isWhole(record.action)) since = std::max(since, record.at.ms);
    std::vector<ActionKey> skipped;
    for (const ActionKey& gentler : card->gentlerFirst) {
        const bool done = std::ranges::any_of(situation.records, [&](const CareRecord& record) {
            return record.tool == tool && record.action == gentler && record.at.ms > since;
        });
        if (!done) skipped.push_back(gentler);
    }
    return skipped;
}

}  // namespace arc::care
