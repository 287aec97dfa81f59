// SPDX-License-Identifier: GPL-3.0-or-later
// arcw backups and conflicts: the rolling set of copies, and edits that did not know of each other.
#include <charconv>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "storage/conflicts.hpp"
#include "storage/csv_values.hpp"
#include "storage/rolling_backup.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t shownWords = 200;

void print(const Json& json, Environment& environment) {
    environment.out << json.dump(-1, ' ', false, Json::error_handler_t::replace) << '\n';
}

Json jsonOf(const BackupCopy& copy) {
    return {{"file", copy.file.string()}, {"made_at", toIso(copy.madeAt)}, {"bytes", copy.bytes}};
}

Exit restore(const std::filesystem::path& book, const storage::BackupPlan& plan, const Arguments& arguments,
             Environment& environment) {
    const auto into = arguments.maybe("--into");
    if (!into)
        return refuse({ProblemCode::BadInput, "a backup is restored under a new name", "--into",
                       "Name the logbook to make; the present one is left as it is"},
                      environment);
    const auto copies = storage::backupsOf(book, plan);
    const auto given = arguments.maybe("--restore");
    if (!given && copies.empty())
        return refuse({ProblemCode::NotFound, "there is no backup of this logbook", plan.folder.string(), ""},
                      environment);
    const std::filesystem::path copy = given ? std::filesystem::path(*given) : copies.front().file;
    NoProgress unwatched;
    const auto done = storage::restoreBackup(copy, *into, unwatched);
    if (!done) return refuse(done.error(), environment);
    if (arguments.format == Format::Json) {
        print({{"restored", copy.string()}, {"logbook", *into}}, environment);
    } else {
        environment.out << "Made " << *into << " of the backup " << copy.string() << "; it verifies.\n";
    }
    return Exit::Done;
}

Exit backups(const Arguments& arguments, Environment& environment) {
    const std::filesystem::path book = arguments.one("BOOK");
    auto plan = storage::backupPlan(book);
    if (!plan) {
        // A book that cannot be opened is when its backups are wanted most: look beside it.
        if (!arguments.has("--restore")) return refuse(plan.error(), environment);
        plan = storage::BackupPlan{book.string() + ".backups"};
    }
    if (arguments.has("--restore")) return restore(book, *plan, arguments, environment);
    if (arguments.has("--make")) {
        NoProgress unwatched;
        const auto made = storage::addBackup(book, *plan, environment.clock, unwatched);
        if (!made) return refuse(made.error(), environment);
    }
    const auto copies = storage::backupsOf(book, *plan);
    if (arguments.format == Format::Json) {
        Json list = Json::array();
        for (const auto& copy : copies) list.push_back(jsonOf(copy));
        print({{"folder", plan->folder.string()},
               {"every_hours", plan->everyHours ? Json(*plan->everyHours) : Json()},
               {"keep_copies", plan->keepCopies},
               {"keep_days", plan->keepDays},
               {"keep_bytes", plan->keepBytes},
               {"backups", list}},
              environment);
        return Exit::Done;
    }
    environment.out << copies.size() << " backups in " << plan->folder.string() << "; ";
    if (plan->everyHours) {
        environment.out << "one is made when the newest is older than " << *plan->everyHours << " h, ";
    } else {
        environment.out << "made only when asked for, ";
    }
    environment.out << "at most " << plan->keepCopies << " of the last " << plan->keepDays << " days and "
                    << plan->keepBytes / 1'000'000 << " MB are kept.\n";
    for (const auto& copy : copies)
        environment.out << "  " << toIso(copy.madeAt) << "  " << copy.bytes << " bytes  "
                        << copy.file.filename().string() << '\n';
    return Exit::Done;
}

/// A number from 1 to `most` given with an option.
std::optional<std::size_t> choice(const Arguments& arguments, const char* name, std::size_t most) {
    const auto text = arguments.maybe(name);
    std::size_t number = 0;
    if (!text) return std::nullopt;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), number);
    if (error != std::errc() || end != text->data() + text->size() || number < 1 || number > most)
        return std::nullopt;
    return number - 1;
}

Exit settle(const std::vector<ConcurrentEdits>& list, const Arguments& arguments, Environment& environment) {
    const auto which = choice(arguments, "--settle", list.size());
    if (!which)
        return refuse({ProblemCode::BadInput, "there is no entry of that number in the list", "--settle",
                       "Look at the list with \"arcw conflicts\""},
                      environment);
    const ConcurrentEdits& edits = list[*which];
    const auto keep = choice(arguments, "--keep", edits.edits.size());
    if (!keep)
        return refuse({ProblemCode::BadInput, "say which edit shall show", "--keep",
                       "Give its number, 1 to " + std::to_string(edits.edits.size())},
                      environment);
    const Context context{arguments.maybe("--by").value_or(""), "arcw conflicts", {}};
    const auto done = storage::settleEdits({arguments.one("BOOK"), storage::OpenMode::ReadWrite}, edits,
                                           *keep, context, environment.clock, environment.random);
    if (!done) return refuse(done.error(), environment);
    if (arguments.format == Format::Json) {
        print({{"settled", toText(edits.record)}, {"shows", edits.edits[*keep].words}}, environment);
    } else {
        environment.out << "From now on shows: " << storage::showable(edits.edits[*keep].words, shownWords)
                        << ".\n";
    }
    return Exit::Done;
}

Json jsonOf(const ConcurrentEdits& edits) {
    Json list = Json::array();
    for (const Edit& edit : edits.edits)
        list.push_back({{"at", toIso(edit.at)},
                        {"who", edit.who},
                        {"device", edit.device},
                        {"words", edit.words},
                        {"content", edit.content},
                        {"shows", &edit == &edits.edits.back()}});
    Json json{{"record", toText(edits.record)}, {"kind", edits.kind}};
    if (edits.channel) json["channel"] = *edits.channel;
    json["edits"] = list;
    return json;
}

Json jsonOf(const NumberClash& clash) {
    Json records = Json::array();
    for (const auto& record : clash.records)
        records.push_back({{"by", record.by},
                           {"device", record.device},
                           {"at", toIso(record.at)},
                           {"manifest_sha256", record.manifestSha256}});
    return {{"job", clash.jobLabel},
            {"number", clash.number},
            {"records", records},
            {"superseded_by", clash.supersededBy ? Json(*clash.supersededBy) : Json()}};
}

void tell(const std::vector<ConcurrentEdits>& list, std::ostream& out) {
    std::size_t number = 0;
    for (const ConcurrentEdits& edits : list) {
        out << ++number << ". " << edits.kind;
        if (edits.channel) out << " of groove " << *edits.channel;
        out << ", edited here and there:\n";
        for (std::size_t n = 0; n < edits.edits.size(); ++n) {
            const Edit& edit = edits.edits[n];
            out << "   " << n + 1 << ") " << toIso(edit.at) << " "
                << storage::showable(edit.who.empty() ? "somebody" : edit.who, shownWords) << " on "
                << storage::showable(edit.device, shownWords) << ": "
                << storage::showable(edit.words, shownWords)
                << (edit.content.empty() ? "" : " [" + storage::showable(edit.content, shownWords) + "]")
                << (n + 1 == edits.edits.size() ? "  <- shows\n" : "\n");
        }
    }
}

void tell(const std::vector<NumberClash>& list, std::ostream& out) {
    for (const NumberClash& clash : list) {
        out << "Record no. " << clash.number << " of job " << storage::showable(clash.jobLabel, shownWords)
            << " was issued " << clash.records.size() << " times:\n";
        for (const auto& record : clash.records)
            out << "   " << toIso(record.at) << " by " << storage::showable(record.by, shownWords) << " on "
                << storage::showable(record.device, shownWords) << ", manifest "
                << record.manifestSha256.substr(0, 16) << "...\n";
        out << (clash.supersededBy
                    ? "   superseded by no. " + std::to_string(*clash.supersededBy) + "\n"
                    : std::string("   issue a new record that supersedes them, and say so to who has one\n"));
    }
}

Exit conflicts(const Arguments& arguments, Environment& environment) {
    const std::filesystem::path book = arguments.one("BOOK");
    const auto list = storage::concurrentEditsOf(book);
    if (!list) return refuse(list.error(), environment);
    if (arguments.has("--settle")) return settle(*list, arguments, environment);
    const auto clashes = storage::numberClashesOf(book);
    if (!clashes) return refuse(clashes.error(), environment);
    if (arguments.format == Format::Json) {
        Json edits = Json::array();
        for (const auto& one : *list) edits.push_back(jsonOf(one));
        Json numbers = Json::array();
        for (const auto& one : *clashes) numbers.push_back(jsonOf(one));
        print({{"edits", edits}, {"record_numbers", numbers}}, environment);
    } else {
        tell(*list, environment.out);
        tell(*clashes, environment.out);
        if (list->empty() && clashes->empty())
            environment.out << "No record was edited here and there, and no record number was given twice.\n";
    }
    return list->empty() && clashes->empty() ? Exit::Done : Exit::SomethingToReport;
}

}  // namespace

std::vector<Command> keepCommands() {
    const Parameter book{"BOOK", "the logbook", Takes::One, Needed::Yes};
    return {
        {"backups",
         "The rolling backups: list them, make one now, make a logbook of one",
         {book,
          {"--make", "make one now", Takes::Nothing, Needed::No},
          {"--restore", "this copy, or the newest when no file is named", Takes::MaybeOne, Needed::No},
          {"--into", "logbook to make of it; must not exist", Takes::One, Needed::No}},
         backups},
        {"conflicts",
         "Records that were edited here and there, and record numbers given twice",
         {book,
          {"--settle", "number in the list", Takes::One, Needed::No},
          {"--keep", "number of the edit that shall show", Takes::One, Needed::No},
          {"--by", "who decides", Takes::One, Needed::No}},
         conflicts,
         Effect::WritesBook},
    };
}

}  // namespace arc::app
