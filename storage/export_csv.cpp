// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/export_csv.hpp"

namespace arc::storage {
namespace {

using closeout::Attempt;
using closeout::ClosureSection;
using closeout::Record;
using closeout::Splice;

constexpr std::string_view header =
    "time,splicer,job,closure,mode,channels,channel,fibre_a,fibre_b,loss_db,cleave_left_deg,cleave_right_deg,"
    "arc_count,temperature_c,humidity_pct,pressure_hpa,operator,attempt,final,verdict,flags,fibre_a_colour,"
    "fibre_b_colour,cleaver,note\r\n";

std::string fixed(std::int64_t value, int places, int least) {
    const bool isNegative = value < 0;
    std::string digits = std::to_string(isNegative ? -value : value);
    const auto width = static_cast<std::size_t>(places) + 1;
    if (digits.size() < width) digits.insert(0, width - digits.size(), '0');
    std::string text = digits.substr(0, digits.size() - static_cast<std::size_t>(places)) + "." +
                       digits.substr(digits.size() - static_cast<std::size_t>(places));
    while (text.back() == '0' && text.size() - text.find('.') - 1 > static_cast<std::size_t>(least))
        text.pop_back();
    return isNegative ? "-" + text : text;
}

class Row {
  public:
    Row& raw(std::string_view value) {
        if (!m_isFirst) m_text += ',';
        m_isFirst = false;
        m_text += value;
        return *this;
    }
    Row& text(std::string_view value) { return raw(csvText(value)); }
    Row& angle(const std::optional<Angle>& value) { return raw(value ? hundredths(value->value) : ""); }
    [[nodiscard]] std::string end() && { return std::move(m_text) + "\r\n"; }

  private:
    std::string m_text;
    bool m_isFirst = true;
};

std::string colour(const closeout::FibreEnd& end) {
    if (!end.place) return {};
    std::string text(word(end.place->fibreLook.colour));
    if (end.place->fibreLook.tracerMarks > 0) text += " with tracer";
    return text;
}

std::string flags(const Splice& splice) {
    std::string text;
    for (const closeout::ExceptionKind kind : splice.flags)
        text += (text.empty() ? "" : ";") + std::string(word(kind));
    return text;
}

std::string row(const Record& record, const ClosureSection& section, const Splice& splice,
                const Attempt& attempt) {
    const bool isFinal = &attempt == &splice.final();
    const Ambient& ambient = attempt.ambient;
    Row line;
    line.raw(toIso(attempt.at))
        .text(record.equipment[attempt.splicer].tool.label)
        .text(record.job.label)
        .text(section.closure ? section.label : "")
        .text(attempt.mode)
        .raw(std::to_string(attempt.channels))
        .raw(std::to_string(attempt.channel))
        .text(splice.a.name)
        .text(splice.b.name)
        .raw(thousandths(attempt.loss.value))
        .angle(attempt.cleaveLeft)
        .angle(attempt.cleaveRight)
        .raw(attempt.counter ? std::to_string(attempt.counter->value) : "")
        .raw(ambient.temperature ? fixed(ambient.temperature->value - 273150, 3, 1) : "")
        .raw(ambient.humidity ? fixed(ambient.humidity->value, 1, 1) : "")
        .raw(ambient.pressure ? fixed(ambient.pressure->value, 2, 1) : "")
        .text(attempt.operatorName)
        .raw(std::to_string(attempt.number))
        .raw(isFinal ? "yes" : "no")
        .raw(isFinal ? word(splice.verdict) : "")
        .raw(isFinal ? flags(splice) : "")
        .raw(colour(splice.a))
        .raw(colour(splice.b))
        .text(attempt.cleaver ? record.equipment[*attempt.cleaver].tool.label : "")
        .text(attempt.note);
    return std::move(line).end();
}

}  // namespace

std::string csvText(std::string_view text) {
    constexpr std::string_view formulaStarts = "=+-@\t\r";
    std::string safe;
    if (!text.empty() && formulaStarts.find(text.front()) != std::string_view::npos) safe = "'";
    safe += text;
    if (safe.find_first_of(",\"\r\n") == std::string::npos) return safe;
    std::string quoted = "\"";
    for (const char c : safe) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + "\"";
}

std::string thousandths(std::int64_t value) {
    return fixed(value, 3, 2);
}

std::string hundredths(std::int64_t value) {
    return fixed(value, 2, 1);
}

std::string splicesCsv(const Record& record) {
    std::string text(header);
    for (const ClosureSection& section : record.closures)
        for (const Splice& splice : section.splices)
            for (const Attempt& attempt : splice.attempts) text += row(record, section, splice, attempt);
    return text;
}

}  // namespace arc::storage
