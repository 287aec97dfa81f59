// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command.hpp"

namespace arc::app {

std::vector<Command> bookCommands() {
    return {};
}

}  // namespace arc::app
