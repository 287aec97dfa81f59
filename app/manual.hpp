// SPDX-License-Identifier: GPL-3.0-or-later
// The manual page and the shell completion of arcw, made from the table of commands so that they never tell
// of another program than the one that runs.
#pragma once
#include <span>
#include <string>
#include <string_view>

#include "app/command.hpp"

namespace arc::app {

/// roff source: `page` with the line ".\" COMMANDS" replaced by what the table says.
std::string manualPage(std::string_view page, std::span<const Command> commands);

/// A bash completion of commands, options and their known words.
std::string bashCompletion(std::span<const Command> commands);

}  // namespace arc::app
