// SPDX-License-Identifier: GPL-3.0-or-later
// arcw pack and unpack: hand records over to another logbook and take them in.
#include <fstream>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
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
                                {"devices", packed->devices},
                                {"key", storage::fingerprint(key->publicKey)}}
                               .dump()
                        << '\n';
    } else {
        environment.out << "Packed " << packed->entries << " journal rows of " << packed->devices
                        << " devices into " << request.satchel.string() << ", signed with key "
                        << storage::fingerprint(key->publicKey) << ".\n";
    }
    return Exit::Done;
}

std::vector<std::string> sentencesOf(const std::vector<ConcurrentEdits>& list) {
    std::vector<std::string> sentences;
    for (const ConcurrentEdits& edits : list) {
        std::string sentence = "\"" + edits.showing().words + "\" (" + edits.showing().device + ") shows";
        for (const Edit& edit : edits.edits)
            if (edit.versionKey != edits.showing().versionKey)
                sentence +=
                    "; \"" + edit.words + "\" (" + edit.device + ") was written without knowing of it";
        sentences.push_back(std::move(sentence));
    }
    return sentences;
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
    auto keys = storage::acceptedKeys(*config);
    if (!keys) return refuse(keys.error(), environment);
    request.accepted = std::move(*keys);
    NoProgress unwatched;
    const auto taken = storage::unpackSatchel(request, environment.clock, environment.random, unwatched);
    if (!taken) return refuse(taken.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"satchel", request.satchel.string()},
                                {"from", taken->from},
                                {"new", taken->newRows},
                                {"known", taken->knownRows},
                                {"edited_here_and_there", sentencesOf(taken->concurrent)}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else {
        environment.out << "Took in " << taken->newRows << " journal rows from "
                        << storage::showable(taken->from, 80) << "; " << taken->knownRows << " were known.\n";
        for (const auto& sentence : sentencesOf(taken->concurrent))
            environment.out << "  edited here and there: " << storage::showable(sentence, 500) << '\n';
    }
    return taken->concurrent.empty() ? Exit::Done : Exit::SomethingToReport;
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
          passphrase},
         pack},
        {"unpack",
         "Take in: merge a satchel into a logbook",
         {book,
          {"IN", "the satchel", Takes::One, Needed::Yes},
          {"--accept", "take satchels of this device from now on, under this name", Takes::One, Needed::No},
          passphrase},
         unpack},
    };
}

}  // namespace arc::app
