// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_list.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <exception>
#include <iterator>
#include <memory>
#include <ostream>
#include <utility>

#include "storage/rolling_backup.hpp"

namespace arc::app {
namespace {

constexpr const char* version = "arcw 0.1.0";

/// Where the command-line library leaves what it read.
struct Slot {
    const Command* command;
    CLI::App* app;
    std::string format = "text";
    std::map<std::string, std::vector<std::string>> values;
    std::map<std::string, CLI::Option*> options;
};

void addParameter(Slot& slot, const Parameter& parameter) {
    CLI::Option* option = nullptr;
    if (parameter.takes == Takes::Nothing) {
        option = slot.app->add_flag(parameter.name, parameter.help);
    } else {
        option = slot.app->add_option(parameter.name, slot.values[parameter.name], parameter.help);
        if (parameter.takes == Takes::One) option->expected(1)->allow_extra_args(false);
        if (parameter.takes == Takes::MaybeOne) option->expected(0, 1);
        // A word that looks like a negative number is a value ("--shift -0.5"), never an option.
        if (parameter.takes == Takes::Many) option->expected(1, 1 << 20);
    }
    if (parameter.needed == Needed::Yes) option->required();
    slot.options[parameter.name] = option;
}

Arguments collect(const Slot& slot) {
    Arguments arguments;
    arguments.format = slot.format == "json" ? Format::Json : Format::Text;
    for (const auto& [name, option] : slot.options) {
        if (option->count() == 0) continue;
        const auto values = slot.values.find(name);
        arguments.given[name] = values == slot.values.end() ? std::vector<std::string>{} : values->second;
        // The library puts an empty word for an option that stands alone.
        if (option->get_expected_min() == 0 && arguments.given[name] == std::vector<std::string>{""})
            arguments.given[name].clear();
    }
    return arguments;
}

/// What was written is written; a backup that fails is only told.
void lookAfterBackups(const std::string& book, Environment& environment) {
    NoProgress unwatched;
    const auto made = storage::addBackupIfDue(book, environment.clock, unwatched);
    if (!made) environment.err << "arcw: no backup was made: " << made.error().sentence() << '\n';
}

}  // namespace

std::optional<std::string> Arguments::maybe(const std::string& name) const {
    const auto found = given.find(name);
    if (found == given.end() || found->second.empty()) return std::nullopt;
    return found->second.front();
}

const std::string& Arguments::one(const std::string& name) const {
    return given.at(name).at(0);
}

std::vector<std::string> Arguments::many(const std::string& name) const {
    const auto found = given.find(name);
    return found == given.end() ? std::vector<std::string>{} : found->second;
}

Exit refuse(const Problem& problem, Environment& environment) {
    environment.err << "arcw: " << problem.sentence() << '\n';
    return Exit::WrongUse;
}

std::vector<Command> allCommands() {
    std::vector<Command> all;
    for (auto&& part : {bookCommands(), keepCommands(), intakeCommands(), satchelCommands(), driftCommands(),
                        agreementCommands(), careCommands(), limitsCommands(), closeoutCommands(),
                        spanCommands(), runLengthCommands(), scenarioCommands()})
        all.insert(all.end(), part.begin(), part.end());
    return all;
}

int runArcw(const std::vector<std::string>& arguments, Environment& environment) {
    const std::vector<Command> commands = allCommands();
    CLI::App app{"Arcwright without a window: a fusion-splicing crew's logbook that tells drift from luck.",
                 "arcw"};
    app.set_version_flag("--version", version);
    app.require_subcommand(1);
    std::vector<std::unique_ptr<Slot>> slots;
    for (const Command& command : commands) {
        auto slot = std::make_unique<Slot>();
        slot->command = &command;
        slot->app = app.add_subcommand(command.name, command.help);
        for (const Parameter& parameter : command.parameters) addParameter(*slot, parameter);
        slot->app->add_option("--format", slot->format, "text or json")
            ->check(CLI::IsMember({"text", "json"}));
        slots.push_back(std::move(slot));
    }
    try {
        // The library takes its words last first.
        std::vector<std::string> words(arguments.rbegin(), arguments.rend());
        app.parse(std::move(words));
    } catch (const CLI::ParseError& error) {
        // Help and version are not failures; everything else is wrong use, whatever number the library has
        // for it.
        if (error.get_exit_code() == 0) {
            app.exit(error, environment.out, environment.err);
            return static_cast<int>(Exit::Done);
        }
        environment.err << "arcw: " << error.what() << ". Try: arcw --help\n";
        return static_cast<int>(Exit::WrongUse);
    }
    for (const auto& slot : slots) {
        if (!slot->app->parsed()) continue;
        try {
            const Arguments given = collect(*slot);
            const Exit exit = slot->command->run(given, environment);
            if (slot->command->effect == Effect::WritesBook && exit != Exit::WrongUse)
                lookAfterBackups(given.one("BOOK"), environment);
            return static_cast<int>(exit);
        } catch (const std::exception& error) {
            environment.err << "arcw: something went wrong inside the program: " << error.what()
                            << ". Nothing more was written; please report it.\n";
            return static_cast<int>(Exit::WrongUse);
        }
    }
    return static_cast<int>(Exit::WrongUse);
}

}  // namespace arc::app
