// SPDX-License-Identifier: GPL-3.0-or-later
// arcw pack and unpack: hand records over to another logbook and take them in.
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "core/care/words.hpp"
#include "core/closeout/build.hpp"
#include "storage/csv_values.hpp"
#include "storage/device_key.hpp"
#include "storage/satchel.hpp"
#include "storage/waiting_satchels.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;

/// From a file, because a word on the command line is seen by everybody on the machine.
Result<std::optional<std::string>> passphraseFrom(const Arguments& arguments) {
    const auto file = arguments.maybe("--passphrase-file");
    if (!file) return std::optional<std::string>();
    std::ifstream in(*file);
    std::string line;
    if (!std::getline(in, line) || line.empty())
        return fail(ProblemCode::BadInput, "the passphrase file cannot be read or is empty", *file,
                    "Write the passphrase on its first line");
    return std::optional(line);
}

Exit pack(const Arguments& arguments, Environment& environment) {
    PackOrder request;
    request.satchel = arguments.one("OUT");
    if (const auto since = arguments.maybe("--since")) {
        const auto at = parseInstant(*since);
        if (!at) return refuse(at.error(), environment);
        request.since = *at;
    }
    if (const auto label = arguments.maybe("--job")) {
        if (request.since)
            return refuse({ProblemCode::BadInput, "a satchel is of one job or since a time, not both",
                           "--job", "Leave one of them out"},
                          environment);
        auto open = storage::openLogbook(arguments.one("BOOK"), storage::OpenMode::ReadOnly,
                                         environment.clock, environment.random);
        if (!open) return refuse(open.error(), environment);
        const auto job = closeout::jobLabelled(**open, *label);
        if (!job) return refuse(job.error(), environment);
        request.job = job->id;
    }
    const auto passphrase = passphraseFrom(arguments);
    if (!passphrase) return refuse(passphrase.error(), environment);
    request.passphrase = *passphrase;
    const auto key = storage::configFolder().and_then(storage::deviceKey);
    if (!key) return refuse(key.error(), environment);
    NoProgress unwatched;
    const auto packed = storage::packSatchel(arguments.one("BOOK"), request, *key, environment.clock,
                                             environment.random, unwatched);
    if (!packed) return refuse(packed.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"satchel", request.satchel.string()},
                                {"journal_rows", packed->entries},
                                {"headlines", packed->headlines},
                                {"devices", packed->devices},
                                {"key", storage::fingerprint(key->publicKey)}}
                               .dump()
                        << '\n';
    } else {
        environment.out << "Packed " << packed->entries << " journal rows "
                        << (packed->headlines > 0 ? "and " + std::to_string(packed->headlines) + " headlines "
                                                  : std::string())
                        << "of " << care::counted(packed->devices, "device", "devices") << " into "
                        << request.satchel.string() << ", signed with key "
                        << storage::fingerprint(key->publicKey) << ".\n";
    }
    return Exit::Done;
}

Exit tellWaiting(const WaitingSatchel& waiting, const Arguments& arguments, Environment& environment) {
    if (arguments.format == Format::Json) {
        environment.out << Json{{"satchel", arguments.one("IN")},
                                {"waiting", waiting.file.string()},
                                {"from", waiting.from.name},
                                {"key", waiting.from.fingerprint}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else {
        environment.out << "The satchel comes from a device that is not accepted yet: \""
                        << storage::showable(waiting.from.name, 80) << "\", key " << waiting.from.fingerprint
                        << ". Nothing was taken in; it waits as " << waiting.file.string()
                        << ".\nCompare the key with its owner, then: arcw unpack " << arguments.one("BOOK")
                        << " " << waiting.file.string() << " --accept NAME\n";
    }
    return Exit::SomethingToReport;
}

Exit unpack(const Arguments& arguments, Environment& environment) {
    storage::UnpackRequest request;
    request.book = arguments.one("BOOK");
    request.satchel = arguments.one("IN");
    const auto passphrase = passphraseFrom(arguments);
    if (!passphrase) return refuse(passphrase.error(), environment);
    request.passphrase = *passphrase;
    const auto config = storage::configFolder();
    if (!config) return refuse(config.error(), environment);
    if (const auto name = arguments.maybe("--accept")) {
        const auto label = storage::readSatchelLabel(request.satchel);
        if (!label) return refuse(label.error(), environment);
        const auto accepted = storage::acceptDevice(*config, label->signer, *name);
        if (!accepted) return refuse(accepted.error(), environment);
    }
    NoProgress unwatched;
    const auto answer =
        storage::takeOrKeep(std::move(request), *config, environment.clock, environment.random, unwatched);
    if (!answer) return refuse(answer.error(), environment);
    if (const auto* waiting = std::get_if<WaitingSatchel>(&*answer))
        return tellWaiting(*waiting, arguments, environment);
    const auto& taken = std::get<TakenIn>(*answer);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"satchel", arguments.one("IN")},
                                {"from", taken.from.name},
                                {"new", taken.newEntries},
                                {"known", taken.knownEntries},
                                {"edited_here_and_there", taken.toLookAt}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else {
        environment.out << "Took in " << taken.newEntries << " journal rows from "
                        << storage::showable(taken.from.name, 80) << "; " << taken.knownEntries
                        << " were known.\n";
        if (taken.toLookAt > 0)
            environment.out << taken.toLookAt << " records were edited here and there; \"arcw conflicts "
                            << arguments.one("BOOK") << "\" lists them.\n";
    }
    return taken.toLookAt == 0 ? Exit::Done : Exit::SomethingToReport;
}

}  // namespace

std::vector<Command> satchelCommands() {
    const Parameter book{"BOOK", "the logbook", Takes::One, Needed::Yes};
    const Parameter passphrase{"--passphrase-file", "file whose first line is the passphrase", Takes::One,
                               Needed::No};
    return {
        {"pack",
         "Hand over: write a signed satchel for another logbook",
         {book,
          {"OUT", "satchel to write; must not exist", Takes::One, Needed::Yes},
          {"--since", "only entries written at or after this time", Takes::One, Needed::No},
          {"--job", "one job with its tools and their care", Takes::One, Needed::No},
          passphrase},
         pack},
        {"unpack",
         "Take in: merge a satchel into a logbook",
         {book,
          {"IN", "the satchel", Takes::One, Needed::Yes},
          {"--accept", "take satchels of this device from now on, under this name", Takes::One, Needed::No},
          passphrase},
         unpack,
         Effect::WritesBook},
    };
}

}  // namespace arc::app
