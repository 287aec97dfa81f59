// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "storage/backup.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::app {
namespace {

using Json = nlohmann::ordered_json;

Exit makeNew(const Arguments& arguments, Environment& environment) {
    const std::string& book = arguments.one("BOOK");
    auto made = storage::createLogbook(book, environment.clock, environment.random);
    if (!made) return refuse(made.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"logbook", book}}.dump() << '\n';
    } else {
        environment.out << "Made the empty logbook " << book << ".\n";
    }
    return Exit::Done;
}

Exit backUp(const Arguments& arguments, Environment& environment) {
    const std::string& destination = arguments.one("DEST");
    NoProgress unwatched;
    auto done = storage::backupBook(arguments.one("BOOK"), destination, unwatched);
    if (!done) return refuse(done.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"backup", destination}}.dump() << '\n';
    } else {
        environment.out << "Copied the logbook to " << destination << ".\n";
    }
    return Exit::Done;
}

}  // namespace

std::vector<Command> bookCommands() {
    const Parameter book{"BOOK", "the logbook", Takes::One, Needed::Yes};
    return {
        {"new", "Make an empty logbook", {book}, makeNew},
        {"backup",
         "Consistent copy of a logbook while it is in use",
         {book, {"DEST", "file to write; must not exist", Takes::One, Needed::Yes}},
         backUp},
    };
}

}  // namespace arc::app
