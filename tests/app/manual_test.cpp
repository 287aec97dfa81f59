// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual.hpp"

#include <gtest/gtest.h>
#include <string>

#include "app/command_list.hpp"

namespace arc::app {
namespace {

TEST(Manual, namesEveryCommandAndEveryOption) {
    const auto commands = allCommands();
    const auto page = manualPage(".SH COMMANDS\n.\\\" COMMANDS\n.SH FILES\n", commands);
    const auto completion = bashCompletion(commands);
    ASSERT_GT(commands.size(), 5u);
    for (const auto& command : commands) {
        EXPECT_NE(page.find(".SS \"arcw " + command.name + "\""), std::string::npos) << command.name;
        EXPECT_NE(completion.find("        " + command.name + ") "), std::string::npos) << command.name;
        for (const auto& parameter : command.parameters) {
            if (parameter.name.rfind("--", 0) != 0) continue;
            EXPECT_NE(completion.find(" " + parameter.name), std::string::npos) << parameter.name;
            std::string escaped;
            for (const char c : parameter.name) escaped += c == '-' ? "\\-" : std::string(1, c);
            EXPECT_NE(page.find(escaped), std::string::npos) << parameter.name;
        }
    }
    EXPECT_EQ(page.find("COMMANDS\n.\\\""), std::string::npos);
}

TEST(Manual, textCannotBecomeAnInstruction) {
    const std::vector<Command> commands{
        {"x", ".so /etc/passwd \\n", {{"--long-name", "'quoted", Takes::Many, Needed::No}}, {}}};
    const auto page = manualPage(".\\\" COMMANDS\n", commands);
    EXPECT_NE(page.find("\n\\&.so /etc/passwd \\en\n"), std::string::npos) << page;
    EXPECT_NE(page.find("\n\\&'quoted\n"), std::string::npos);
    EXPECT_NE(page.find("[\\fB\\-\\-long\\-name\\fR \\fILONG\\-NAME\\fR ...]"), std::string::npos);
}

}  // namespace
}  // namespace arc::app
