// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/export_json.hpp"

#include <nlohmann/json.hpp>

#include "core/closeout/cautions.hpp"

namespace arc::storage {
namespace {

using namespace closeout;
using Json = nlohmann::ordered_json;

Json list() {
    return Json::array();
}
template <class T>
Json maybe(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}
Json maybe(const std::optional<Loss>& value) {
    return value ? Json(decibels(*value)) : Json(nullptr);
}
Json maybe(const std::optional<Angle>& value) {
    return value ? Json(degrees(*value)) : Json(nullptr);
}
Json maybe(const std::optional<Instant>& value) {
    return value ? Json(toIso(*value)) : Json(nullptr);
}

Json fibre(const FibreEnd& end) {
    Json json{
        {"name", end.name}, {"number", maybe(end.number)}, {"colour", nullptr},     {"tracer_marks", nullptr},
        {"unit", nullptr},  {"position", nullptr},         {"unit_colour", nullptr}};
    if (!end.place) return json;
    json["colour"] = word(end.place->fibreLook.colour);
    json["tracer_marks"] = end.place->fibreLook.tracerMarks;
    json["unit"] = end.place->unit;
    json["position"] = end.place->position;
    json["unit_colour"] = word(end.place->unitLook.colour);
    return json;
}

Json attempt(const Record& record, const Attempt& a) {
    const auto label = [&](std::uint32_t index) { return record.equipment[index].tool.label; };
    Json json{{"arc", toText(a.arc.uuid)},
              {"channel", a.channel},
              {"attempt", a.number},
              {"time", toIso(a.at)},
              {"loss_db", decibels(a.loss)},
              {"splicer", label(a.splicer)},
              {"cleaver", a.cleaver ? Json(label(*a.cleaver)) : Json(nullptr)},
              {"mode", a.mode},
              {"channels", a.channels},
              {"arc_count", a.counter ? Json(a.counter->value) : Json(nullptr)},
              {"cleave_left_deg", maybe(a.cleaveLeft)},
              {"cleave_right_deg", maybe(a.cleaveRight)}};
    const Ambient& ambient = a.ambient;
    json["temperature_c"] = ambient.temperature ? Json(celsius(*ambient.temperature)) : Json(nullptr);
    json["humidity_pct"] = ambient.humidity ? Json(ambient.humidity->value / 10.0) : Json(nullptr);
    json["pressure_hpa"] = ambient.pressure ? Json(hectopascals(*ambient.pressure)) : Json(nullptr);
    json["operator"] = a.operatorName;
    json["note"] = a.note;
    json["corrected"] = a.correction == Correction::AfterTheFact;
    return json;
}

Json measurement(const Measurement& m) {
    return {{"wavelength_nm", m.wavelengthNm},
            {"loss_a_to_b_db", maybe(m.aToB)},
            {"loss_b_to_a_db", maybe(m.bToA)},
            {"two_way_mean_db", maybe(m.twoWayDb())},
            {"one_way_only", !m.twoWayDb().has_value()},
            {"time", toIso(m.at)},
            {"instrument", m.instrument},
            {"note", m.note}};
}

Json splice(const Record& record, const Splice& s) {
    Json json{{"fibre_a", fibre(s.a)},
              {"fibre_b", fibre(s.b)},
              {"loss_db", decibels(s.final().loss)},
              {"verdict", word(s.verdict)},
              {"judged_by", word(s.judgedBy)},
              {"judged_db", s.judgedDb},
              {"flags", list()},
              {"attempts", list()},
              {"measured", list()}};
    for (const ExceptionKind kind : s.flags) json["flags"].push_back(word(kind));
    for (const Attempt& a : s.attempts) json["attempts"].push_back(attempt(record, a));
    for (const Measurement& m : s.measured) json["measured"].push_back(measurement(m));
    return json;
}

Json averages(const Averages& a) {
    return {{"splices", a.splices},       {"attempts", a.attempts},         {"first_time", a.firstTime},
            {"mean_db", maybe(a.meanDb)}, {"median_db", maybe(a.medianDb)}, {"sd_db", maybe(a.sdDb)},
            {"worst_db", maybe(a.worst)}};
}

Json closure(const Record& record, const ClosureSection& section) {
    Json json{{"label", section.closure ? Json(section.label) : Json(nullptr)},
              {"cable_a", section.cableA},
              {"cable_b", section.cableB},
              {"colour_order_a", section.colourOrderA},
              {"colour_order_b", section.colourOrderB},
              {"plan", nullptr},
              {"averages", averages(section.averages)},
              {"splices", list()},
              {"measured_without_splice", list()}};
    if (section.completeness) {
        const Completeness& found = *section.completeness;
        json["plan"] = {{"planned", found.planned},
                        {"spliced", found.spliced},
                        {"missing", list()},
                        {"unplanned", found.unplanned.size()}};
        for (const PlannedSplice& planned : found.missing)
            json["plan"]["missing"].push_back({{"fibre_a", planned.fibreA}, {"fibre_b", planned.fibreB}});
    }
    for (const Splice& s : section.splices) json["splices"].push_back(splice(record, s));
    for (const auto& [name, m] : section.loose) {
        Json item = measurement(m);
        item["fibre"] = name;
        json["measured_without_splice"].push_back(std::move(item));
    }
    return json;
}

Json careLines(const std::vector<CareLine>& lines) {
    Json json = list();
    for (const CareLine& line : lines)
        json.push_back(
            {{"action", line.action}, {"time", toIso(line.at)}, {"by", line.by}, {"detail", line.detail}});
    return json;
}

const char* kind(const Tool& tool) {
    if (asCleaver(tool) != nullptr) return "cleaver";
    if (asStripper(tool) != nullptr) return "stripper";
    return "splicer";
}

Json since(const std::optional<ArcsSince>& count) {
    if (!count) return nullptr;
    return {{"arcs", count->arcs}, {"at_least", count->certainty == kit::Certainty::AtLeast}};
}

Json equipment(const Equipment& item) {
    Json json{{"label", item.tool.label},
              {"nickname", item.tool.nickname},
              {"kind", kind(item.tool)},
              {"attempts_here", item.splicesHere},
              {"first_use", maybe(item.firstUse)},
              {"last_use", maybe(item.lastUse)},
              {"arcs_since_electrodes", since(item.sinceElectrodes)},
              {"arcs_since_groove_clean", since(item.sinceGrooveClean)},
              {"arcs_since_calibration", since(item.sinceCalibration)},
              {"care_before", careLines(item.before)},
              {"care_during", careLines(item.during)},
              {"calibration_owed", list()}};
    for (const care::OwedStretch& stretch : item.owed)
        json["calibration_owed"].push_back(
            {{"from", toIso(stretch.from)}, {"to", maybe(stretch.to)}, {"because", stretch.because}});
    return json;
}

Json exception(const Exception& e) {
    Json json{{"key", e.key},   {"kind", word(e.kind)}, {"where", e.where},
              {"what", e.what}, {"splices", e.splices}, {"disposition", nullptr}};
    if (e.disposition)
        json["disposition"] = {{"disposition", e.disposition->disposition},
                               {"reason", e.disposition->reason},
                               {"by", e.disposition->by},
                               {"time", toIso(e.disposition->at)}};
    return json;
}

Json budgetLines(const std::vector<BudgetLine>& lines, double total) {
    Json json{{"lines", list()}, {"total_db", total}};
    for (const BudgetLine& line : lines)
        json["lines"].push_back({{"what", line.what},
                                 {"quantity", line.quantity},
                                 {"unit", line.unit},
                                 {"each_db", line.eachDb},
                                 {"total_db", line.totalDb}});
    return json;
}

Json linkBudgets(const SpanSection& span) {
    Json json = list();
    for (const LinkBudget& budget : span.budgets)
        json.push_back({{"wavelength_nm", budget.wavelengthNm},
                        {"allowed", budgetLines(budget.allowed, budget.allowedDb)},
                        {"as_spliced", budgetLines(budget.asSpliced, budget.asSplicedDb)},
                        {"splices_measured_both_ways", budget.measured},
                        {"splices_estimated", budget.estimated}});
    return json;
}

Json spanJson(const Record& record, const SpanSection& span) {
    Json json{{"label", span.kind == SpanKind::Named ? Json(span.label) : Json()},
              {"from", span.from},
              {"to", span.to},
              {"cable", span.cable},
              {"length_km", maybe(span.lengthKm)},
              {"closures", list()},
              {"splices", span.splices},
              {"mean_db", maybe(span.meanDb)},
              {"link_budgets", linkBudgets(span)},
              {"link_budget_note", span.budgetNote}};
    for (const std::size_t at : span.sections) json["closures"].push_back(record.closures[at].label);
    return json;
}

Json whole(const Record& record) {
    const AcceptanceRule& rule = record.job.rule;
    Json json{{"format", "arcwright closeout record"},
              {"version", 1},
              {"state", word(record.state)},
              {"number", maybe(record.number)},
              {"supersedes", maybe(record.supersedes)},
              {"issued_by", record.issuedBy},
              {"made_at", toIso(record.madeAt)},
              {"journal_head", record.journalHead},
              {"verdict", word(record.verdict)},
              {"job", {{"label", record.job.label}, {"title", record.job.title}}}};
    json["rule"] = {{"name", rule.name},
                    {"per_splice_db", decibels(rule.perSplice)},
                    {"average_db", decibels(rule.average)},
                    {"ceiling_db", decibels(rule.ceiling)},
                    {"attempts", rule.attempts},
                    {"directions", rule.directions == Directions::TwoWay ? "two_way" : "one_way"},
                    {"origin", rule.origin == RuleOrigin::Contract ? "contract" : "sample"}};
    json["summary"] = {{"averages", averages(record.averages)},
                       {"first_splice", maybe(record.firstSplice)},
                       {"last_splice", maybe(record.lastSplice)},
                       {"voided_readings", record.voided},
                       {"plan", nullptr}};
    if (record.plan)
        json["summary"]["plan"] = {{"planned", record.plan->planned},
                                   {"spliced", record.plan->spliced},
                                   {"unplanned", record.plan->unplanned}};
    json["histogram"] = {{"bin_width_db", decibels(record.histogram.width)},
                         {"counts", list()},
                         {"beyond", record.histogram.beyond}};
    for (const HistogramBin& bin : record.histogram.bins) json["histogram"]["counts"].push_back(bin.count);
    for (const char* name : {"closures", "equipment", "exceptions", "link_budgets"}) json[name] = list();
    for (const ClosureSection& section : record.closures)
        json["closures"].push_back(closure(record, section));
    for (const Equipment& item : record.equipment) json["equipment"].push_back(equipment(item));
    for (const Exception& e : record.exceptions) json["exceptions"].push_back(exception(e));
    // A job without spans has its one budget where it always was.
    const bool isOne = record.spans.size() == 1 && record.spans.front().kind == SpanKind::WholeJob;
    if (isOne) json["link_budgets"] = linkBudgets(record.spans.front());
    json["link_budget_note"] = isOne ? record.spans.front().budgetNote : "One link budget a span.";
    if (!isOne) {
        json["spans"] = list();
        for (const SpanSection& span : record.spans) json["spans"].push_back(spanJson(record, span));
    }
    json["attachments"] = list();
    for (const AttachedFile& file : record.attachments)
        json["attachments"].push_back({{"file", file.file},
                                       {"name", file.name},
                                       {"media_type", file.mediaType},
                                       {"where", file.where},
                                       {"bytes", file.bytes},
                                       {"sha256", file.sha256}});
    json["cautions"] = cautions;
    return json;
}

}  // namespace

Result<std::string> recordJson(const Record& record) {
    try {
        return whole(record).dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
    } catch (const std::exception& error) {
        return fail(ProblemCode::Internal,
                    std::string("the record cannot be written as JSON: ") + error.what());
    }
}

}  // namespace arc::storage
