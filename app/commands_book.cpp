// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/command.hpp"
#include "app/verify_path.hpp"
#include "storage/backup.hpp"
#include "storage/demo_book.hpp"
#include "storage/rescue.hpp"
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

/// The last day of the scenario is today, so that what is due is due now.
Exit makeDemo(const Arguments& arguments, Environment& environment) {
    const std::string& book = arguments.one("BOOK");
    auto made = storage::createLogbook(book, environment.clock, environment.random);
    if (!made) return refuse(made.error(), environment);
    const auto filled = storage::fillWithHarrowRidge(**made, environment.clock.now());
    if (!filled) return refuse(filled.error(), environment);
    const auto totals = (*made)->totals();
    if (!totals) return refuse(totals.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out
            << Json{{"logbook", book},      {"scenario", "Harrow Ridge"},   {"invented", true},
                    {"arcs", totals->arcs}, {"readings", totals->readings}, {"care", totals->care}}
                   .dump()
            << '\n';
    } else {
        environment.out << "Made " << book << " with Harrow Ridge, an invented crew: " << totals->arcs
                        << " arcs, " << totals->readings << " readings, " << totals->care
                        << " care records.\n";
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

Exit verify(const Arguments& arguments, Environment& environment) {
    const std::string& path = arguments.one("PATH");
    NoProgress unwatched;
    const auto verdict = verifyPath(path, unwatched);
    const bool differs = !verdict && verdict.error().code == ProblemCode::Damaged;
    if (!verdict && !differs) return refuse(verdict.error(), environment);
    const std::string sentence = verdict ? *verdict : verdict.error().sentence();
    if (arguments.format == Format::Json) {
        environment.out << Json{{"path", path}, {"verifies", verdict.has_value()}, {"sentence", sentence}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else {
        environment.out << sentence << '\n';
    }
    return differs ? Exit::SomethingToReport : Exit::Done;
}

Exit rescue(const Arguments& arguments, Environment& environment) {
    const std::string& into = arguments.one("NEW");
    NoProgress unwatched;
    const auto rescued =
        storage::rescueBook(arguments.one("BOOK"), into, environment.clock, environment.random, unwatched);
    if (!rescued) return refuse(rescued.error(), environment);
    if (arguments.format == Format::Json) {
        environment.out << Json{{"logbook", into},
                                {"whole", rescued->whole},
                                {"partly", rescued->partly},
                                {"lost", rescued->lost},
                                {"losses", rescued->losses}}
                               .dump(-1, ' ', false, Json::error_handler_t::replace)
                        << '\n';
    } else {
        environment.out << "Rescued into " << into << ": " << rescued->whole << " entries whole, "
                        << rescued->partly << " written anew, " << rescued->lost << " lost.\n";
        for (const auto& loss : rescued->losses) environment.out << "  " << loss << '\n';
    }
    return rescued->partly + rescued->lost > 0 ? Exit::SomethingToReport : Exit::Done;
}

}  // namespace

std::vector<Command> bookCommands() {
    const Parameter book{"BOOK", "the logbook", Takes::One, Needed::Yes};
    return {
        {"new", "Make an empty logbook", {book}, makeNew},
        {"demo", "Make a logbook with Harrow Ridge, an invented crew of four splicers", {book}, makeDemo},
        {"backup",
         "Consistent copy of a logbook while it is in use",
         {book, {"DEST", "file to write; must not exist", Takes::One, Needed::Yes}},
         backUp},
        {"verify",
         "Find any change in a logbook, a closeout folder or a satchel",
         {{"PATH", "what to verify", Takes::One, Needed::Yes}},
         verify},
        {"rescue",
         "Take what is readable of a damaged logbook into a new one",
         {book, {"NEW", "logbook to make; must not exist", Takes::One, Needed::Yes}},
         rescue},
    };
}

}  // namespace arc::app
