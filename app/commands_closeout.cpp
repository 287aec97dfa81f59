// SPDX-License-Identifier: GPL-3.0-or-later
// arcw closeout: what the record of a job would say, decisions on its exceptions, and the record folder.
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/closeout_report.hpp"
#include "app/command.hpp"
#include "storage/closeout_folder.hpp"
#include "storage/device_key.hpp"
#include "storage/plain_file.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;
using closeout::Record;

/// Terminals obey escape codes in text; names in a logbook come from files of others.
std::string printable(std::string_view text) {
    std::string safe;
    for (const char c : text) safe += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? '?' : c;
    return safe;
}

Json toJson(const Record& record) {
    Json json{{"job", record.job.label},
              {"state", closeout::word(record.state)},
              {"number", record.number ? Json(*record.number) : Json(nullptr)},
              {"verdict", closeout::word(record.verdict)},
              {"splices", closeout::spliceCount(record)},
              {"attempts", record.averages.attempts},
              {"mean_db", record.averages.meanDb ? Json(*record.averages.meanDb) : Json(nullptr)},
              {"planned", record.plan ? Json(record.plan->planned) : Json(nullptr)},
              {"planned_and_spliced", record.plan ? Json(record.plan->spliced) : Json(nullptr)},
              {"open_exceptions", closeout::openExceptions(record)},
              {"exceptions", Json::array()}};
    for (const closeout::Exception& exception : record.exceptions)
        json["exceptions"].push_back({{"key", exception.key},
                                      {"kind", closeout::word(exception.kind)},
                                      {"where", exception.where},
                                      {"what", exception.what},
                                      {"decided", closeout::isDecided(exception)}});
    return json;
}

void printExceptions(const Record& record, std::ostream& out) {
    for (const closeout::Exception& exception : record.exceptions) {
        out << (closeout::isDecided(exception) ? "  decided  " : "  open     ") << printable(exception.key)
            << '\n'
            << "           " << printable(exception.what) << '\n';
        if (exception.disposition)
            out << "           " << printable(exception.disposition->disposition) << " by "
                << printable(exception.disposition->by) << ": " << printable(exception.disposition->reason)
                << '\n';
    }
}

void printSummary(const Record& record, std::ostream& out) {
    out << "Job " << printable(record.job.label) << ": " << closeout::title(record.verdict) << ". "
        << closeout::spliceCount(record) << " splices";
    if (record.plan) out << ", " << record.plan->spliced << " of " << record.plan->planned << " planned";
    out << "; " << record.exceptions.size() << " exceptions, " << closeout::openExceptions(record)
        << " open\n";
}

std::string dumped(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Exit show(Logbook& book, JobId job, const Arguments& arguments, Environment& environment) {
    NoProgress progress;
    const auto record =
        closeoutRecord(book, job, closeout::RecordState::Draft, "", environment.clock, progress);
    if (!record) return refuse(record.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << dumped(toJson(*record));
    } else {
        printSummary(*record, environment.out);
        printExceptions(*record, environment.out);
    }
    return closeout::openExceptions(*record) > 0 ? Exit::SomethingToReport : Exit::Done;
}

Exit decide(Logbook& book, JobId job, const Arguments& arguments, Environment& environment) {
    const auto keys =
        decideExceptions(book, job, arguments.one("--dispose"), arguments.maybe("--as").value_or("accepted"),
                         arguments.maybe("--reason").value_or(""), arguments.maybe("--by").value_or(""),
                         environment.clock, environment.random);
    if (!keys) return refuse(keys.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << dumped(Json{{"decided", *keys}});
    } else {
        for (const std::string& key : *keys) environment.out << "decided  " << printable(key) << '\n';
    }
    return Exit::Done;
}

Exit write(Logbook& book, CloseoutRequest request, const Arguments& arguments, Environment& environment) {
    NoProgress progress;
    auto written = writeCloseoutFolder(book, request, environment.clock, environment.random, progress);
    if (!written) {
        const bool hasOpen =
            written.error().code == ProblemCode::Refused && request.state == closeout::RecordState::Final;
        refuse(written.error(), environment);
        if (!hasOpen) return Exit::WrongUse;
        if (arguments.format == Format::Json) show(book, request.job, arguments, environment);
        return Exit::SomethingToReport;
    }
    if (arguments.format == Format::Json) {
        Json json = toJson(written->record);
        json["folder"] = written->folder.string();
        json["files"] = written->files;
        json["manifest_sha256"] = written->manifestSha256;
        environment.out << dumped(json);
        return Exit::Done;
    }
    printSummary(written->record, environment.out);
    environment.out << (written->record.number ? "Final record no. " + std::to_string(*written->record.number)
                                               : std::string("Draft"))
                    << " in " << printable(written->folder.string()) << '\n';
    return Exit::Done;
}

Exit runCloseout(const Arguments& arguments, Environment& environment) {
    const bool isFinal = arguments.has("--final"), isDecision = arguments.has("--dispose");
    std::optional<closeout::PaperSize> paper;
    if (const auto given = arguments.maybe("--paper")) {
        paper = closeout::paperNamed(*given);
        if (!paper)
            return refuse({ProblemCode::BadInput, "the paper is a4 or letter", "--paper " + *given, ""},
                          environment);
    }
    std::optional<closeout::PageLanguage> language;
    if (const auto given = arguments.maybe("--language")) {
        language = closeout::pageLanguageNamed(*given);
        if (!language)
            return refuse({ProblemCode::BadInput, "the pages speak en or es", "--language " + *given, ""},
                          environment);
    }
    if (isFinal && !arguments.has("--out"))
        return refuse({ProblemCode::BadInput, "a final record needs a folder", "--final", "Add --out DIR"},
                      environment);
    if (isFinal && arguments.maybe("--by").value_or("").empty())
        return refuse({ProblemCode::BadInput, "a final record needs the name of who issues it", "--final",
                       "Add --by NAME"},
                      environment);
    if (isDecision && arguments.has("--out"))
        return refuse({ProblemCode::BadInput, "deciding and writing are two steps", "--dispose, --out",
                       "Decide first, then write the record"},
                      environment);
    const auto mode = isFinal || isDecision ? storage::OpenMode::ReadWrite : storage::OpenMode::ReadOnly;
    auto book = storage::openLogbook(arguments.one("BOOK"), mode, environment.clock, environment.random);
    if (!book) return refuse(book.error(), environment);
    const auto job = closeout::jobLabelled(**book, arguments.one("--job"));
    if (!job) return refuse(job.error(), environment);
    if (isDecision) return decide(**book, job->id, arguments, environment);
    if (!arguments.has("--out")) return show(**book, job->id, arguments, environment);
    CloseoutRequest request;
    request.job = job->id;
    request.state = isFinal ? closeout::RecordState::Final : closeout::RecordState::Draft;
    request.issuedBy = arguments.maybe("--by").value_or("");
    request.paper = paper;
    request.language = language;
    request.folder = arguments.one("--out");
    return write(**book, request, arguments, environment);
}

/// A key from somebody's device.pem, or the one that signed a closeout folder.
Result<storage::PublicKey> keyFrom(const std::filesystem::path& path) {
    if (storage::isCloseoutFolder(path)) {
        NoProgress progress;
        return storage::verifyCloseout(path, progress).map([](const storage::VerifiedCloseout& verified) {
            return verified.manifest.device;
        });
    }
    constexpr std::uint64_t most = 4096;
    const auto text = storage::readPlainFile(path, most);
    if (!text) return tl::unexpected(text.error());
    if (const auto key = storage::fromPem(*text)) return *key;
    return fail(ProblemCode::BadInput, "the file holds no public key of a device", path.string(),
                "Take the device.pem of the other laptop, or a closeout folder it signed");
}

Exit runDevices(const Arguments& arguments, Environment& environment) {
    const auto config = storage::configFolder();
    if (!config) return refuse(config.error(), environment);
    if (const auto path = arguments.maybe("--accept")) {
        const auto key = keyFrom(*path);
        if (!key) return refuse(key.error(), environment);
        const auto done = storage::acceptDevice(*config, *key, arguments.maybe("--name").value_or(""));
        if (!done) return refuse(done.error(), environment);
    }
    const auto own = storage::deviceKey(*config);
    if (!own) return refuse(own.error(), environment);
    const auto known = storage::knownDevices(*config);
    if (!known) return refuse(known.error(), environment);
    if (arguments.format == Format::Json) {
        Json json{{"fingerprint", storage::fingerprint(own->publicKey)},
                  {"public_key", storage::toDerBase64(own->publicKey)},
                  {"public_key_file", (*config / "device.pem").string()},
                  {"known", Json::array()}};
        for (const storage::KnownDevice& device : *known)
            json["known"].push_back({{"name", device.name},
                                     {"fingerprint", storage::fingerprint(device.key)},
                                     {"public_key", storage::toDerBase64(device.key)}});
        environment.out << dumped(json);
        return Exit::Done;
    }
    environment.out << "This device: " << storage::fingerprint(own->publicKey) << "; hand out "
                    << (*config / "device.pem").string() << '\n';
    for (const storage::KnownDevice& device : *known)
        environment.out << "Known:       " << storage::fingerprint(device.key) << "  "
                        << printable(device.name) << '\n';
    return Exit::Done;
}

}  // namespace

std::vector<Command> closeoutCommands() {
    return {{"devices",
             "This device's key and the devices whose signatures are known by name",
             {{"--accept",
               "device.pem of another laptop, or a closeout folder it signed; compare the fingerprint first"},
              {"--name", "what to call that device"}},
             runDevices},
            {"closeout",
             "Show, decide on or write the closeout record of a job",
             {{"BOOK", "the logbook", Takes::One, Needed::Yes},
              {"--job", "label of the job", Takes::One, Needed::Yes},
              {"--out", "write the record into this folder; without it the exceptions are listed"},
              {"--paper", "a4 or letter; without it the crew's choice in the logbook, else a4"},
              {"--language", "of the pages: en or es; without it the crew's choice in the logbook, else en"},
              {"--final", "issue a numbered record; every exception must be decided on", Takes::Nothing},
              {"--by", "name of who decides or issues"},
              {"--dispose",
               "decide on the exception with this key; a * at its end takes all open ones that begin so"},
              {"--as", "the decision: accepted (default), rejected, or words of your own"},
              {"--reason", "why"}},
             runCloseout,
             Effect::WritesBook}};
}

}  // namespace arc::app
