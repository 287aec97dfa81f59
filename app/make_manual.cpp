// SPDX-License-Identifier: GPL-3.0-or-later
// Runs at build time: make_manual PAGE MANUAL COMPLETION.
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

#include "app/command_list.hpp"
#include "app/manual.hpp"

int main(int argc, char** argv) {
    if (argc != 4) {
        std::cerr << "make_manual PAGE MANUAL COMPLETION\n";
        return 2;
    }
    std::ifstream page(argv[1], std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(page), {}};
    const auto commands = arc::app::allCommands();
    std::ofstream manual(argv[2], std::ios::binary), completion(argv[3], std::ios::binary);
    manual << arc::app::manualPage(text, commands);
    completion << arc::app::bashCompletion(commands);
    manual.close();
    completion.close();
    return !text.empty() && manual && completion ? 0 : 2;
}
