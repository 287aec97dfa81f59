// SPDX-License-Identifier: GPL-3.0-or-later
// What was written down as words, read into the members that rules work with.
#include <charconv>
#include <optional>
#include <string>

#include "core/care/run.hpp"

namespace arc::care {
namespace {

std::optional<std::string> take(const CareRecord& record, std::string_view key) {
    const auto found = record.fields.find(std::string(key));
    if (found == record.fields.end() || found->second.empty()) return std::nullopt;
    return found->second;
}

Result<int> whole(const std::string& text, std::string_view key, int least, int most) {
    int number = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    if (read.ec != std::errc{} || read.ptr != end || number < least || number > most)
        return fail(ProblemCode::BadInput,
                    "\"" + text + "\" is not a whole number from " + std::to_string(least) + " to " +
                        std::to_string(most),
                    std::string(key));
    return number;
}

Result<Adequacy> adequacy(const std::string& text, std::string_view key) {
    if (text == "adequate") return Adequacy::Adequate;
    if (text == "not_adequate" || text == "not-adequate" || text == "not adequate")
        return Adequacy::NotAdequate;
    return fail(ProblemCode::BadInput, "\"" + text + "\" is neither adequate nor not-adequate",
                std::string(key), "Write down what the splicer showed");
}

Result<void> readCalibration(CareRecord& record) {
    const auto power = take(record, "power");
    const auto position = take(record, "position");
    if (!power && !position) return {};
    if (!power || !position)
        return fail(ProblemCode::BadInput, "a calibration has two results, arc power and arc position",
                    power ? "position" : "power", "Write down both");
    CalibrationResult result;
    const auto p = adequacy(*power, "power");
    const auto q = adequacy(*position, "position");
    if (!p) return tl::unexpected(p.error());
    if (!q) return tl::unexpected(q.error());
    result.power = *p;
    result.position = *q;
    result.fibreType = take(record, "fibre_type").value_or("");
    if (const auto count = take(record, "fibre_count")) {
        const auto number = whole(*count, "fibre_count", 1, 16);
        if (!number) return tl::unexpected(number.error());
        result.fibreCount = *number;
    }
    const auto runs = take(record, "runs");
    if (const auto text = runs ? runs : take(record, field::rounds)) {
        const auto number = whole(*text, "runs", 1, 99);
        if (!number) return tl::unexpected(number.error());
        result.runs = *number;
    }
    record.calibration = result;
    return {};
}

Result<void> readBlade(CareRecord& record) {
    const auto height = take(record, "blade_height");
    const auto position = take(record, "blade_position");
    const std::string move = take(record, field::move).value_or("");
    if (move == "next_height") record.action = std::string(action::bladeRaise);
    if (move == "new_blade") record.fields[std::string(field::newBlade)] = "yes";
    if (!height && !position) return {};
    if (!height || !position)
        return fail(ProblemCode::BadInput, "a blade stands at a height and a position",
                    height ? "blade_position" : "blade_height", "Write down both");
    const auto h = whole(*height, "blade_height", 1, 9);
    const auto p = whole(*position, "blade_position", 1, 24);
    if (!h) return tl::unexpected(h.error());
    if (!p) return tl::unexpected(p.error());
    record.blade = BladePlace{*h, *p};
    return {};
}

}  // namespace

Result<void> readFields(CareRecord& record) {
    if (record.action == action::arcCalibration) return readCalibration(record);
    if (record.action == action::bladeRotate || record.action == action::bladeRaise) return readBlade(record);
    return {};
}

}  // namespace arc::care
