// SPDX-License-Identifier: GPL-3.0-or-later
// All headless commands: parse, run, exit code.
#pragma once
#include <string>
#include <vector>

#include "app/command.hpp"

namespace arc::app {

/// Every command of arcw, in the order help shows them.
std::vector<Command> allCommands();

/// `arguments` without the program name. Never throws; the answer is the process exit code (0, 1 or 2).
int runArcw(const std::vector<std::string>& arguments, Environment& environment);

}  // namespace arc::app
