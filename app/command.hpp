// SPDX-License-Identifier: GPL-3.0-or-later
// A headless command as a row of a table: what it takes, what it does. Parsing and help are made from the
// table (command_list), so a command file never sees the command-line library.
#pragma once
#include <functional>
#include <iosfwd>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::app {

/// Exit codes that other programs rely on.
enum class Exit {
    Done = 0,
    SomethingToReport = 1,  ///< a signal is open, verification failed, rows were set aside
    WrongUse = 2,           ///< wrong use or unreadable input
};

enum class Format { Text, Json };

/// MaybeOne: the option may stand alone; it is then given without a value.
enum class Takes { Nothing, One, MaybeOne, Many };
enum class Needed { No, Yes };

struct Parameter {
    std::string name;  ///< "BOOK" for a positional, "--since" for an option
    std::string help;
    Takes takes = Takes::One;
    Needed needed = Needed::No;
};

/// What was given on the command line, by parameter name.
struct Arguments {
    std::map<std::string, std::vector<std::string>> given;
    Format format = Format::Text;

    [[nodiscard]] bool has(const std::string& name) const { return given.contains(name); }
    [[nodiscard]] std::optional<std::string> maybe(const std::string& name) const;
    /// Of a needed parameter; throws std::out_of_range when the table did not mark it needed.
    [[nodiscard]] const std::string& one(const std::string& name) const;
    [[nodiscard]] std::vector<std::string> many(const std::string& name) const;
};

/// What a command may touch.
struct Environment {
    std::ostream& out;  ///< results; JSON alone when asked for
    std::ostream& err;  ///< messages for people
    Clock& clock;
    Random& random;
};

/// After a command that wrote into BOOK its rolling backups are looked after.
enum class Effect { Reads, WritesBook };

struct Command {
    std::string name;
    std::string help;
    std::vector<Parameter> parameters;  ///< positionals first, in order
    std::function<Exit(const Arguments&, Environment&)> run;
    Effect effect = Effect::Reads;
};

/// Writes the sentence to err (text) and answers WrongUse.
Exit refuse(const Problem& problem, Environment& environment);

// One function per command file.
std::vector<Command> bookCommands();       ///< new, demo, backup, verify, rescue
std::vector<Command> keepCommands();       ///< backups, conflicts
std::vector<Command> satchelCommands();    ///< pack, unpack
std::vector<Command> intakeCommands();     ///< import
std::vector<Command> driftCommands();      ///< drift
std::vector<Command> agreementCommands();  ///< agreement
std::vector<Command> runLengthCommands();  ///< runlength
std::vector<Command> careCommands();       ///< queues, care
std::vector<Command> limitsCommands();     ///< limits
std::vector<Command> closeoutCommands();   ///< closeout
std::vector<Command> spanCommands();       ///< spans
std::vector<Command> scenarioCommands();   ///< simulate

}  // namespace arc::app
