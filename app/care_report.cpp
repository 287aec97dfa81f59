// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/care_report.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "core/care/words.hpp"

namespace arc::app {
namespace {

using care::DueItem;
using care::Queue;
using nlohmann::ordered_json;

constexpr Queue queues[] = {Queue::Hold, Queue::NextGap, Queue::ShiftEnd, Queue::BenchDay};

}  // namespace

ordered_json itemJson(const DueItem& item) {
    ordered_json json{{"key", item.key},
                      {"queue", care::word(item.queue)},
                      {"basis", care::word(item.basis)},
                      {"tool", item.toolLabel},
                      {"action", item.action},
                      {"title", item.title},
                      {"why", item.why},
                      {"based_on", item.basedOn},
                      {"otherwise", item.otherwise},
                      {"since", toIso(item.since)},
                      {"overridden", nullptr}};
    if (item.overridden)
        json["overridden"] = {{"by", item.overridden->by},
                              {"reason", item.overridden->reason},
                              {"at", toIso(item.overridden->at)}};
    return json;
}

std::string queuesJson(const CareView& view, std::span<const care::OrderLine> orders) {
    ordered_json json;
    json["at"] = toIso(view.situation.now);
    json["queues"] = ordered_json::object();
    for (const Queue queue : queues) {
        auto& list = json["queues"][std::string(care::word(queue))] = ordered_json::array();
        for (const DueItem& item : view.due)
            if (item.queue == queue) list.push_back(itemJson(item));
    }
    json["to_order"] = ordered_json::array();
    for (const care::OrderLine& line : orders)
        json["to_order"].push_back(
            {{"what", line.what},
             {"pieces", line.pieces},
             {"for", line.forWhat},
             {"why", line.why},
             {"needed_by", line.neededBy ? ordered_json(toIso(*line.neededBy)) : ordered_json(nullptr)}});
    json["calibration_owed"] = ordered_json::array();
    for (const care::OwedStretch& stretch : care::calibrationOwed(view.situation)) {
        const auto tool = std::ranges::find(view.situation.tools, stretch.splicer, &Tool::id);
        json["calibration_owed"].push_back(
            {{"splicer", tool == view.situation.tools.end() ? std::string() : tool->label},
             {"from", toIso(stretch.from)},
             {"to", stretch.to ? ordered_json(toIso(*stretch.to)) : ordered_json(nullptr)},
             {"because", stretch.because}});
    }
    return json.dump(2) + "\n";
}

void writeQueuesText(std::ostream& out, const CareView& view, std::span<const care::OrderLine> orders) {
    out << "What is due at " << toIso(view.situation.now) << "\n";
    for (const Queue queue : queues) {
        out << '\n' << care::title(queue) << '\n';
        bool any = false;
        for (const DueItem& item : view.due) {
            if (item.queue != queue) continue;
            any = true;
            out << "  " << item.title << "\n      why: " << item.why << "\n      based on: " << item.basedOn
                << "\n      since: " << care::shortTime(item.since) << "\n      if not: " << item.otherwise
                << '\n';
            if (item.overridden)
                out << "      overridden by " << item.overridden->by << ": " << item.overridden->reason
                    << '\n';
        }
        if (!any) out << "  nothing\n";
    }
    out << "\nTo order\n";
    if (orders.empty()) out << "  nothing\n";
    for (const care::OrderLine& line : orders) {
        out << "  " << line.pieces << (line.unit.empty() ? " x " : " " + line.unit + " of ") << line.what
            << ", " << line.forWhat << ": " << line.why;
        if (line.neededBy) out << "; needed by " << care::shortDay(*line.neededBy);
        out << '\n';
    }
}

ordered_json recordJson(const CareRecord& record, const std::string& label) {
    ordered_json json{{"id", toText(record.id.uuid)},
                      {"time", toIso(record.at)},
                      {"tool", label},
                      {"action", record.action},
                      {"card_version", record.cardVersion},
                      {"by", record.by},
                      {"detail", record.detail},
                      {"reached", care::effectOf(record) != care::Effect::NotReached}};
    if (record.calibration)
        json["calibration"] = {
            {"power", record.calibration->power == Adequacy::Adequate ? "adequate" : "not_adequate"},
            {"position", record.calibration->position == Adequacy::Adequate ? "adequate" : "not_adequate"},
            {"fibre_type", record.calibration->fibreType},
            {"fibre_count", record.calibration->fibreCount},
            {"runs", record.calibration->runs}};
    if (record.blade)
        json["blade"] = {{"height", record.blade->height}, {"position", record.blade->position}};
    if (!record.fields.empty()) json["fields"] = record.fields;
    return json;
}

}  // namespace arc::app
