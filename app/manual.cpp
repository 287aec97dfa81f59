// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual.hpp"

#include <algorithm>

namespace arc::app {
namespace {

constexpr std::string_view placeholder = ".\\\" COMMANDS\n";

bool isOption(const Parameter& parameter) {
    return parameter.name.rfind('-', 0) == 0;
}

/// Text as roff takes it: no control line by accident, hyphens that can be copied.
std::string roff(const std::string& text) {
    std::string escaped;
    for (const char c : text) {
        if (c == '\\') {
            escaped += "\\e";
        } else if (c == '-') {
            escaped += "\\-";
        } else {
            escaped += c == '\n' ? ' ' : c;
        }
    }
    if (!escaped.empty() && (escaped[0] == '.' || escaped[0] == '\'')) escaped.insert(0, "\\&");
    return escaped;
}

/// "--since" → "SINCE", for what an option takes.
std::string valueName(const Parameter& parameter) {
    std::string name = parameter.name.substr(parameter.name.find_first_not_of('-'));
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    return name;
}

std::string usage(const Parameter& parameter) {
    std::string text = isOption(parameter) ? "\\fB" + roff(parameter.name) + "\\fR" : "";
    if (parameter.takes != Takes::Nothing) {
        const std::string value = isOption(parameter) ? valueName(parameter) : parameter.name;
        text += (text.empty() ? "\\fI" : " \\fI") + roff(value) + "\\fR";
        if (parameter.takes == Takes::Many) text += " ...";
    }
    return parameter.needed == Needed::Yes ? text : "[" + text + "]";
}

}  // namespace

std::string manualPage(std::string_view page, std::span<const Command> commands) {
    std::string text;
    for (const auto& command : commands) {
        text += ".SS \"arcw " + roff(command.name) + "\"\n" + roff(command.help) + "\n.PP\n\\fBarcw " +
                roff(command.name) + "\\fR";
        for (const auto& parameter : command.parameters) text += " " + usage(parameter);
        text += " [\\fB\\-\\-format\\fR \\fItext\\fR|\\fIjson\\fR]\n";
        for (const auto& parameter : command.parameters)
            text += ".TP\n" + std::string(isOption(parameter) ? "\\fB" : "\\fI") + roff(parameter.name) +
                    "\\fR\n" + roff(parameter.help) + "\n";
    }
    std::string whole(page);
    const auto at = whole.find(placeholder);
    if (at != std::string::npos) whole.replace(at, placeholder.size(), text);
    return whole;
}

std::string bashCompletion(std::span<const Command> commands) {
    std::string names, cases;
    for (const auto& command : commands) {
        names += " " + command.name;
        std::string options;
        for (const auto& parameter : command.parameters)
            if (isOption(parameter)) options += " " + parameter.name;
        cases += "        " + command.name + ") options=\"--format --help" + options + "\" ;;\n";
    }
    return "# SPDX-License-Identifier: GPL-3.0-or-later\n"
           "# bash completion for arcw; made from its table of commands.\n"
           "_arcw() {\n"
           "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} options=\n"
           "    COMPREPLY=()\n"
           "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
           "        mapfile -t COMPREPLY < <(compgen -W \"" +
           names.substr(names.empty() ? 0 : 1) +
           " --help --version\" -- \"$word\")\n"
           "        return\n"
           "    fi\n"
           "    if [ \"$before\" = --format ]; then\n"
           "        mapfile -t COMPREPLY < <(compgen -W \"text json\" -- \"$word\")\n"
           "        return\n"
           "    fi\n"
           "    case ${COMP_WORDS[1]} in\n" +
           cases +
           "    esac\n"
           "    case $word in\n"
           "        -*) mapfile -t COMPREPLY < <(compgen -W \"$options\" -- \"$word\") ;;\n"
           "        *) mapfile -t COMPREPLY < <(compgen -f -- \"$word\") ;;\n"
           "    esac\n"
           "}\n"
           "complete -o filenames -F _arcw arcw\n";
}

}  // namespace arc::app
