// SPDX-License-Identifier: GPL-3.0-or-later
// arcw queues: what is due and why. arcw care: record, list, cards.
#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/care_view.hpp"
#include "app/command.hpp"
#include "core/care/record_check.hpp"
#include "core/care/run.hpp"
#include "core/care/words.hpp"
#include "storage/care_cards.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using care::DueItem;
using care::Queue;
using nlohmann::ordered_json;

constexpr Queue queues[] = {Queue::Hold, Queue::NextGap, Queue::ShiftEnd, Queue::BenchDay};

Result<Instant> timeGiven(const Arguments& arguments, Environment& environment) {
    const auto text = arguments.maybe("--at");
    if (!text) return environment.clock.now();
    auto at = parseInstant(*text);
    if (!at)
        return fail(ProblemCode::BadInput, "\"" + *text + "\" is not a time", "--at",
                    "Give it as 2031-03-03T07:00+01:00");
    return at;
}

void tell(std::span<const Problem> problems, Environment& environment) {
    for (const Problem& problem : problems) environment.err << "arcw: " << problem.sentence() << '\n';
}

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

std::string viewJson(const CareView& view, std::span<const care::OrderLine> orders) {
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

void viewText(std::ostream& out, const CareView& view, std::span<const care::OrderLine> orders) {
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

Exit runQueues(const Arguments& arguments, Environment& environment) {
    const auto now = timeGiven(arguments, environment);
    if (!now) return refuse(now.error(), environment);
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto view = careView(**book, *now);
    if (!view) return refuse(view.error(), environment);
    tell(view->problems, environment);
    const auto orders = care::toOrder(view->situation, view->reports);
    if (arguments.format == Format::Json)
        environment.out << viewJson(*view, orders);
    else
        viewText(environment.out, *view, orders);
    const bool signal =
        std::ranges::any_of(view->due, [](const DueItem& item) { return item.basis == care::Basis::Signal; });
    return signal ? Exit::SomethingToReport : Exit::Done;
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

/// Options of `record` and the fields of the record they fill.
constexpr std::pair<const char*, const char*> fieldOptions[] = {{"--power", "power"},
                                                                {"--position", "position"},
                                                                {"--fibre-type", "fibre_type"},
                                                                {"--fibre-count", "fibre_count"},
                                                                {"--runs", "runs"},
                                                                {"--blade-height", "blade_height"},
                                                                {"--blade-position", "blade_position"}};

Result<CareRecord> recordGiven(const Arguments& arguments, const care::Situation& situation,
                               Environment& environment) {
    const auto label = arguments.maybe("--tool");
    const auto action = arguments.maybe("--action");
    if (!label || !action)
        return fail(ProblemCode::BadInput, "a care record needs a tool and an action",
                    label ? "--action" : "--tool", "For example: --tool S-01 --action groove_clean");
    const auto tool = std::ranges::find(situation.tools, *label, &Tool::label);
    if (tool == situation.tools.end())
        return fail(ProblemCode::NotFound, "there is no tool \"" + *label + "\" in this logbook", "--tool",
                    "Check the label in the kit");
    CareRecord record;
    record.id = makeId<CareId>(environment.clock, environment.random);
    record.tool = tool->id;
    record.at = situation.now;
    record.action = *action;
    record.by = arguments.maybe("--by").value_or("");
    record.detail = arguments.maybe("--detail").value_or("");
    for (const auto& [option, key] : fieldOptions)
        if (const auto value = arguments.maybe(option)) record.fields[key] = *value;
    if (arguments.has("--new-blade")) record.fields[std::string(care::field::newBlade)] = "yes";
    if (arguments.has("--not-reached")) record.fields[std::string(care::field::outcome)] = "not_reached";
    if (auto good = care::readFields(record); !good) return tl::unexpected(good.error());
    return care::checkedRecord(situation, std::move(record));
}

Exit runRecord(const Arguments& arguments, Environment& environment) {
    const auto at = timeGiven(arguments, environment);
    if (!at) return refuse(at.error(), environment);
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadWrite, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto before = careView(**book, *at);
    if (!before) return refuse(before.error(), environment);
    tell(before->problems, environment);
    auto record = recordGiven(arguments, before->situation, environment);
    if (!record) return refuse(record.error(), environment);
    for (const DueItem& item : before->due)
        if (item.tool == record->tool && item.action == record->action) record->answers.push_back(item.key);
    const auto receipt =
        (*book)->append(Entry{*record}, Context{record->by, "arcw care record", std::nullopt});
    if (!receipt) return refuse(receipt.error(), environment);
    const auto after = careView(**book, *at);
    if (!after) return refuse(after.error(), environment);
    std::vector<DueItem> closed, opened;
    const auto in = [](const std::vector<DueItem>& items, const DueItem& wanted) {
        return std::ranges::any_of(items, [&](const DueItem& item) { return item.key == wanted.key; });
    };
    for (const DueItem& item : before->due)
        if (item.tool == record->tool && !in(after->due, item)) closed.push_back(item);
    for (const DueItem& item : after->due)
        if (item.tool == record->tool && !in(before->due, item)) opened.push_back(item);
    const std::string label = arguments.one("--tool");
    if (arguments.format == Format::Json) {
        ordered_json json{{"saved", toIso(receipt->savedAt)}, {"record", recordJson(*record, label)}};
        json["closed"] = ordered_json::array();
        for (const DueItem& item : closed) json["closed"].push_back(itemJson(item));
        json["now_due"] = ordered_json::array();
        for (const DueItem& item : opened) json["now_due"].push_back(itemJson(item));
        environment.out << json.dump(2) << '\n';
        return Exit::Done;
    }
    environment.out << "Saved: " << record->action << ", " << label << ", " << toIso(record->at) << '\n';
    for (const DueItem& item : closed) environment.out << "  closed: " << item.title << '\n';
    for (const DueItem& item : opened)
        environment.out << "  now due (" << care::title(item.queue) << "): " << item.title << ", " << item.why
                        << '\n';
    return Exit::Done;
}

Exit runList(const Arguments& arguments, Environment& environment) {
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto tools = (*book)->tools();
    if (!tools) return refuse(tools.error(), environment);
    std::optional<ToolId> only;
    if (const auto label = arguments.maybe("--tool")) {
        const auto tool = std::ranges::find(*tools, *label, &Tool::label);
        if (tool == tools->end())
            return refuse(
                Problem{ProblemCode::NotFound, "there is no tool \"" + *label + "\" in this logbook",
                        "--tool", "Check the label in the kit"},
                environment);
        only = tool->id;
    }
    const auto records = (*book)->careRecords(only);
    if (!records) return refuse(records.error(), environment);
    auto list = ordered_json::array();
    for (const CareRecord& record : *records) {
        const auto tool = std::ranges::find(*tools, record.tool, &Tool::id);
        const std::string label = tool == tools->end() ? std::string("?") : tool->label;
        if (arguments.format == Format::Json) {
            list.push_back(recordJson(record, label));
            continue;
        }
        environment.out << toIso(record.at) << "  " << label << "  " << record.action
                        << (care::effectOf(record) == care::Effect::NotReached ? "  (not reached)" : "")
                        << (record.by.empty() ? "" : "  by " + record.by)
                        << (record.detail.empty() ? "" : "  " + record.detail) << '\n';
    }
    if (arguments.format == Format::Json)
        environment.out << ordered_json{{"care", list}}.dump(2) << '\n';
    else if (records->empty())
        environment.out << "No care was recorded yet.\n";
    return Exit::Done;
}

Exit runCards(const Arguments& arguments, Environment& environment) {
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto shelf = storage::cardsInForce(**book);
    if (!shelf) return refuse(shelf.error(), environment);
    tell(shelf->refused, environment);
    auto list = ordered_json::array();
    for (const care::Card& card : shelf->deck.cards) {
        list.push_back({{"action", card.id},
                        {"version", card.version},
                        {"tool", care::word(card.tool)},
                        {"title", card.title},
                        {"minutes", card.minutes},
                        {"steps", card.steps.size()},
                        {"also", card.also},
                        {"obligations", card.obligations},
                        {"resets", card.resets},
                        {"source", card.source}});
        if (arguments.format == Format::Text)
            environment.out << card.id << "  version " << card.version << "  " << card.title << " ("
                            << care::word(card.tool) << ", about " << card.minutes << " min)\n";
    }
    if (arguments.format == Format::Json) environment.out << ordered_json{{"cards", list}}.dump(2) << '\n';
    return shelf->refused.empty() ? Exit::Done : Exit::SomethingToReport;
}

Exit runCare(const Arguments& arguments, Environment& environment) {
    const std::string& what = arguments.one("WHAT");
    if (what == "record") return runRecord(arguments, environment);
    if (what == "list") return runList(arguments, environment);
    if (what == "cards") return runCards(arguments, environment);
    return refuse(Problem{ProblemCode::BadInput, "\"" + what + "\" is none of record, list, cards", "WHAT",
                          "For example: arcw care BOOK record --tool S-01 --action groove_clean"},
                  environment);
}

}  // namespace

std::vector<Command> careCommands() {
    const auto option = [](const char* name, const char* help, Takes takes = Takes::One) {
        return Parameter{name, help, takes, Needed::No};
    };
    return {{"queues",
             "What is due, per queue, with reasons, and what to order.",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              option("--at", "as it was at this time (ISO 8601 with offset or Z); now if left out")},
             runQueues},
            {"care",
             "Record a care action, list those that were done, or list the care cards.",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"WHAT", "record, list or cards", Takes::One, Needed::Yes},
              option("--tool", "label of the tool"),
              option("--action", "care action, the id of its card: groove_clean, arc_calibration, …"),
              option("--at", "when it was done (ISO 8601 with offset or Z); now if left out"),
              option("--by", "who did it"),
              option("--detail", "free words"),
              option("--power", "arc calibration: adequate or not-adequate"),
              option("--position", "arc calibration: adequate or not-adequate"),
              option("--fibre-type", "arc calibration: G.652.D, …"),
              option("--fibre-count", "arc calibration: fibres in it"),
              option("--runs", "arc calibration: how many runs it took"),
              option("--blade-height", "blade work: height it stands at now"),
              option("--blade-position", "blade work: position it stands at now"),
              option("--new-blade", "blade work: a new blade was fitted", Takes::Nothing),
              option("--not-reached", "it was tried and did not get there", Takes::Nothing)},
             runCare}};
}

}  // namespace arc::app
