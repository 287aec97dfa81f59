// SPDX-License-Identifier: GPL-3.0-or-later
// The event CSV: time, equipment, action, detail.
#include <algorithm>
#include <array>

#include "storage/intake_parts.hpp"

namespace arc::storage {
namespace {

const std::vector<const char*> columnNames{"time", "equipment", "action", "detail", "operator", "arc_count"};
constexpr std::size_t neededColumns = 3;

/// The number right before or after a word of the detail: "after 2 runs", "height 3".
std::optional<int> numberAfter(const std::string& text, const std::string& word) {
    auto at = text.find(word + " ");
    if (at == std::string::npos) return std::nullopt;
    at += word.size() + 1;
    const auto end = text.find_first_not_of("0123456789", at);
    const auto number =
        wholeNumber(std::string_view(text).substr(at, end == std::string::npos ? end : end - at));
    return number && *number <= 1'000 ? std::optional(static_cast<int>(*number)) : std::nullopt;
}
std::optional<int> numberBefore(const std::string& text, const std::string& word) {
    const auto at = text.find(" " + word);
    if (at == std::string::npos || at == 0) return std::nullopt;
    auto from = at;
    while (from > 0 && text[from - 1] >= '0' && text[from - 1] <= '9') --from;
    const auto number = wholeNumber(std::string_view(text).substr(from, at - from));
    return number && *number <= 1'000 ? std::optional(static_cast<int>(*number)) : std::nullopt;
}

/// A calibration counts only when both power and position are said to be adequate; a detail that says nothing
/// of either leaves the result unknown.
std::optional<CalibrationResult> calibrationFrom(const std::string& detail) {
    CalibrationResult result;
    const auto says = [&detail](const char* words) { return detail.find(words) != std::string::npos; };
    if (says("power and position adequate")) {
        result.power = result.position = Adequacy::Adequate;
    } else {
        const bool power = says("power adequate"), noPower = says("power not adequate");
        const bool position = says("position adequate"), noPosition = says("position not adequate");
        if (!power && !noPower && !position && !noPosition) return std::nullopt;
        result.power = power ? Adequacy::Adequate : Adequacy::NotAdequate;
        result.position = position ? Adequacy::Adequate : Adequacy::NotAdequate;
    }
    result.runs = numberBefore(detail, "run").value_or(1);
    result.fibreCount = numberBefore(detail, "fibre").value_or(1);
    if (const auto at = detail.find("G."); at != std::string::npos) {
        auto end = detail.find_first_of(" ,;", at);
        if (end == std::string::npos) end = detail.size();
        result.fibreType = detail.substr(at, end - at);
    }
    return result;
}

std::optional<BladePlace> bladeFrom(const std::string& detail) {
    const auto height = numberAfter(detail, "height");
    const auto position = numberAfter(detail, "position");
    if (!height || !position) return std::nullopt;
    return BladePlace{*height, *position};
}

tl::expected<CareRecord, RowFault> readCare(IntakeFile& file, const std::vector<int>& places) {
    const auto field = [&](std::size_t column) { return std::string(file.field(places[column])); };
    CareRecord care;
    const auto at = parseInstant(field(0));
    if (!at) return tl::unexpected(RowFault{"time", at.error().what});
    care.at = *at;
    const std::string equipment = field(1);
    care.action = columnName(field(2));
    care.detail = field(3);
    care.by = field(4);
    if (equipment.empty()) return tl::unexpected(RowFault{"equipment", "the equipment is missing"});
    static constexpr std::array known{
        action::grooveClean,       action::clampClean,  action::lensClean,  action::arcCalibration,
        action::electrodeReplace,  action::stabilise,   action::diagnostic, action::cleaverClean,
        action::bladeClean,        action::bladeRotate, action::bladeRaise, action::stripperClean,
        action::environmentChange, action::note};
    if (std::find(known.begin(), known.end(), care.action) == known.end())
        return tl::unexpected(
            RowFault{"action", "the action \"" + showable(care.action, 60) + "\" is not known"});
    if (const auto text = field(5); !text.empty()) {
        const auto number = wholeNumber(text);
        if (!number || *number > UINT32_MAX)
            return tl::unexpected(
                RowFault{"arc_count", "\"" + showable(text, 60) + "\" is not a whole number"});
        care.counter = ArcCount{static_cast<std::uint32_t>(*number)};
    }
    if (care.action == action::arcCalibration) care.calibration = calibrationFrom(care.detail);
    if (care.action == action::bladeRotate || care.action == action::bladeRaise)
        care.blade = bladeFrom(care.detail);
    care.tool = ToolId{namedUuid("not known yet")};
    care.id = CareId{care.tool.uuid};
    if (auto valid = validate(care); !valid)
        return tl::unexpected(RowFault{valid.error().where, valid.error().what});
    const auto tool = file.kit.toolFor(equipment, care.action);
    if (!tool) return tl::unexpected(tool.error());
    care.tool = *tool;
    care.id = CareId{namedUuid("care/" + toText(care.tool.uuid) + "/" + std::to_string(care.at.ms) + "/" +
                               care.action + "/" + care.detail)};
    return care;
}

}  // namespace

void takeEvents(IntakeFile& file) {
    const auto places = file.place(columnNames, neededColumns);
    while (file.nextRow()) {
        auto care = readCare(file, places);
        if (!care) {
            file.setAside(care.error());
            continue;
        }
        {
            // In any version, shown or taken back: a person decided about it since.
            Query q = file.connection.query("SELECT 1 FROM record WHERE id = ? AND kind = 'care'");
            if (q.with(care->id.uuid).step()) {
                ++file.count.known;
                continue;
            }
        }
        Batch batch;
        batch.records.push_back({toRecord(*care), {}});
        ++file.count.added;
        file.write(batch, "care", text(*care));
    }
}

}  // namespace arc::storage
