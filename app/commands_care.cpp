// SPDX-License-Identifier: GPL-3.0-or-later
// arcw queues: what is due and why. arcw care: record, list, cards.
#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/care_report.hpp"
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
using nlohmann::ordered_json;

/// A card is a page of text; anything larger is some other file.
constexpr std::size_t cardLimit = 1u << 20;

std::vector<ActionKey> actionsOf(std::span<const care::GentlerCare> skipped) {
    std::vector<ActionKey> actions;
    for (const care::GentlerCare& one : skipped) actions.push_back(one.action);
    return actions;
}

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
        environment.out << queuesJson(*view, orders);
    else
        writeQueuesText(environment.out, *view, orders);
    const bool signal =
        std::ranges::any_of(view->due, [](const DueItem& item) { return item.basis == care::Basis::Signal; });
    return signal ? Exit::SomethingToReport : Exit::Done;
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
    const auto skipped = care::skippedGentler(before->situation, before->due, record->tool, record->action);
    care::noteSkipped(record->fields, skipped, arguments.maybe("--reason").value_or(""));
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
    for (const care::GentlerCare& one : skipped)
        environment.err << "arcw: gentler care comes first: " << one.action << ", " << one.why << ".\n";
    if (!skipped.empty())
        environment.err << "arcw: the record is saved as it was done"
                        << (arguments.has("--reason") ? ", with your reason.\n"
                                                      : "; --reason says why, should it be asked.\n");
    if (arguments.format == Format::Json) {
        ordered_json json{{"saved", toIso(receipt->savedAt)}, {"record", recordJson(*record, label)}};
        json["closed"] = ordered_json::array();
        for (const DueItem& item : closed) json["closed"].push_back(itemJson(item));
        json["now_due"] = ordered_json::array();
        for (const DueItem& item : opened) json["now_due"].push_back(itemJson(item));
        json["skipped_gentler"] = actionsOf(skipped);
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

/// The card in force as the file a supervisor edits.
Exit runCard(const Arguments& arguments, Environment& environment) {
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto action = arguments.maybe("--action");
    if (!action)
        return refuse(Problem{ProblemCode::BadInput, "which card is not said", "--action",
                              "For example: arcw care BOOK card --action groove_clean"},
                      environment);
    const auto editions = (*book)->cardEditions();
    if (!editions) return refuse(editions.error(), environment);
    const auto text = storage::cardTextInForce(*editions, *action);
    if (!text) return refuse(text.error(), environment);
    environment.out << *text;
    return Exit::Done;
}

/// A supervisor's edited card comes into force.
Exit runAdopt(const Arguments& arguments, Environment& environment) {
    const auto file = arguments.maybe("--card");
    if (!file)
        return refuse(Problem{ProblemCode::BadInput, "no card file is named", "--card",
                              "For example: arcw care BOOK adopt --card groove_clean.json"},
                      environment);
    std::ifstream in(*file, std::ios::binary);
    std::string text(cardLimit + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (in.gcount() == 0)
        return refuse(
            Problem{ProblemCode::Unavailable, "the file cannot be read or is empty", *file, "Check its name"},
            environment);
    text.resize(static_cast<std::size_t>(in.gcount()));
    if (text.size() > cardLimit)
        return refuse(Problem{ProblemCode::BadInput, "a card is smaller than a megabyte", *file,
                              "Check that it is a card"},
                      environment);
    auto book = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadWrite, environment.clock,
                                     environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto editions = (*book)->cardEditions();
    if (!editions) return refuse(editions.error(), environment);
    // The refusal names the file as it was given.
    if (const auto card = storage::readCard(text, *file); !card) return refuse(card.error(), environment);
    const auto edition =
        storage::editionOf(text, *editions, makeId<EntryId>(environment.clock, environment.random));
    if (!edition) return refuse(edition.error(), environment);
    const auto receipt = (*book)->append(
        Entry{*edition}, Context{arguments.maybe("--by").value_or(""), "arcw care adopt", std::nullopt});
    if (!receipt) return refuse(receipt.error(), environment);
    if (arguments.format == Format::Json)
        environment.out << ordered_json{{"action", edition->action},
                                        {"version", edition->version},
                                        {"saved", toIso(receipt->savedAt)}}
                               .dump(2)
                        << '\n';
    else
        environment.out << "Adopted: " << edition->action << ", version " << edition->version << '\n';
    return Exit::Done;
}

Exit runCare(const Arguments& arguments, Environment& environment) {
    const std::string& what = arguments.one("WHAT");
    if (what == "record") return runRecord(arguments, environment);
    if (what == "list") return runList(arguments, environment);
    if (what == "cards") return runCards(arguments, environment);
    if (what == "card") return runCard(arguments, environment);
    if (what == "adopt") return runAdopt(arguments, environment);
    return refuse(
        Problem{ProblemCode::BadInput, "\"" + what + "\" is none of record, list, cards, card, adopt", "WHAT",
                "For example: arcw care BOOK record --tool S-01 --action groove_clean"},
        environment);
}

}  // namespace

std::vector<Command> careCommands() {
    const auto option = [](const char* name, const char* help, Takes takes = Takes::One) {
        return Parameter{name, help, takes, Needed::No};
    };
    return {
        {"queues",
         "What is due, per queue, with reasons, and what to order.",
         {{"BOOK", "the logbook", Takes::One, Needed::Yes},
          option("--at", "as it was at this time (ISO 8601 with offset or Z); now if left out")},
         runQueues},
        {"care",
         "Record a care action, list those that were done, list or print care cards, adopt an edited one.",
         {{"BOOK", "the logbook", Takes::One, Needed::Yes},
          {"WHAT", "record, list, cards, card or adopt", Takes::One, Needed::Yes},
          option("--tool", "label of the tool"),
          option("--action", "care action, the id of its card: groove_clean, arc_calibration, …"),
          option("--at", "when it was done (ISO 8601 with offset or Z); now if left out"),
          option("--by", "who did it"),
          option("--detail", "free words"),
          option("--reason", "why gentler care was not tried first; kept in the record"),
          option("--power", "arc calibration: adequate or not-adequate"),
          option("--position", "arc calibration: adequate or not-adequate"),
          option("--fibre-type", "arc calibration: G.652.D, …"),
          option("--fibre-count", "arc calibration: fibres in it"),
          option("--runs", "arc calibration: how many runs it took"),
          option("--blade-height", "blade work: height it stands at now"),
          option("--blade-position", "blade work: position it stands at now"),
          option("--card", "adopt: the edited card file"),
          option("--new-blade", "blade work: a new blade was fitted", Takes::Nothing),
          option("--not-reached", "it was tried and did not get there", Takes::Nothing)},
         runCare,
         Effect::WritesBook}};
}

}  // namespace arc::app
