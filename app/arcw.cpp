// SPDX-License-Identifier: GPL-3.0-or-later
#include <iostream>
#include <string>
#include <vector>

#include "app/command_list.hpp"
#include "app/wiring.hpp"

int main(int argc, char** argv) {
    arc::app::SystemClock clock;
    arc::app::SystemRandom random;
    arc::app::Environment environment{std::cout, std::cerr, clock, random};
    return arc::app::runArcw(std::vector<std::string>(argv + 1, argv + argc), environment);
}
