// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/care/record_check.hpp"

#include <algorithm>
#include <utility>

#include "core/care/run.hpp"
#include "core/care/words.hpp"

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

std::vector<GentlerCare> skippedGentler(const Situation& situation, std::span<const DueItem> due, ToolId tool,
                                        const ActionKey& action) {
    const Card* card = situation.deck.find(action);
    if (!card || card->gentlerFirst.empty() || !card->isWhole(action)) return {};
    const bool asked = std::ranges::any_of(
        due, [&](const DueItem& item) { return item.tool == tool && item.action == action; });
    if (asked) return {};
    std::optional<Instant> since;
    std::string sinceWhat;
    for (const CareRecord& record : situation.records)
        if (record.tool == tool && card->isWhole(record.action) && (!since || *since < record.at)) {
            since = record.at;
            sinceWhat = " since \"" + card->title + "\" of " + shortTime(record.at);
        }
    for (const DueItem& item : due) {
        const bool gentler = std::ranges::find(card->gentlerFirst, item.action) != card->gentlerFirst.end();
        if (item.tool != tool || item.basis != Basis::Signal || !gentler) continue;
        if (since && item.since < *since) continue;
        since = item.since;
        sinceWhat =
            " since the signal of " + shortTime(item.since) + ", which asks for it first: " + item.why;
    }
    std::vector<GentlerCare> skipped;
    for (const ActionKey& gentler : card->gentlerFirst) {
        const bool done = std::ranges::any_of(situation.records, [&](const CareRecord& record) {
            return record.tool == tool && record.action == gentler && (!since || *since < record.at);
        });
        if (!done) skipped.push_back({gentler, "not in the logbook" + sinceWhat});
    }
    return skipped;
}

void noteSkipped(std::map<std::string, std::string>& fields, std::span<const GentlerCare> skipped,
                 const std::string& reason) {
    if (skipped.empty()) return;
    std::string& keys = fields[std::string(field::skippedGentler)];
    keys.clear();
    for (const GentlerCare& one : skipped) keys += (keys.empty() ? "" : ",") + one.action;
    if (!reason.empty()) fields[std::string(field::skippedReason)] = reason;
}

}  // namespace arc::care
