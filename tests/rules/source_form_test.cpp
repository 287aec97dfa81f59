// SPDX-License-Identifier: GPL-3.0-or-later
// Licence line on top of every source, and no file too long to be read.
#include <gtest/gtest.h>
#include <iostream>
#include <string>
#include <vector>

#include "tests/rules/source_files.hpp"

namespace arc::rules {
namespace {

const std::vector<std::string> allFolders{"app", "core", "storage", "ui", "tests"};

TEST(SourceForm, everySourceNamesItsLicenceOnTop) {
    for (const auto& file : sources(allFolders, {".cpp", ".hpp", ".h", ".cmake", ".sh", ".py"})) {
        // A script may have its interpreter first.
        const std::size_t top = !file.lines.empty() && file.lines[0].rfind("#!", 0) == 0 ? 1 : 0;
        ASSERT_GT(file.lines.size(), top) << file.path << " is empty";
        EXPECT_NE(file.lines[top].find("SPDX-License-Identifier: GPL-3.0-or-later"), std::string::npos)
            << file.path;
    }
}

TEST(SourceForm, everyBuildFileNamesItsLicenceOnTop) {
    for (const auto& file : sources(allFolders, {".txt"})) {
        if (file.path.find("CMakeLists.txt") == std::string::npos) continue;
        ASSERT_FALSE(file.lines.empty()) << file.path;
        EXPECT_NE(file.lines[0].find("SPDX-License-Identifier: GPL-3.0-or-later"), std::string::npos)
            << file.path;
    }
}

// A .cpp over 400 lines or a header over 150 is a question in review; over 800 is a no.
TEST(SourceForm, noSourceIsLongerThan800Lines) {
    for (const auto& file : sources({"app", "core", "storage", "ui"}, {".cpp", ".hpp", ".h"})) {
        const bool header = file.path.size() > 4 && file.path.substr(file.path.size() - 4) != ".cpp";
        const std::size_t question = header ? 150 : 400;
        if (file.lines.size() > question)
            std::cout << "question: " << file.path << " has " << file.lines.size() << " lines\n";
        EXPECT_LE(file.lines.size(), 800u) << file.path;
    }
}

}  // namespace
}  // namespace arc::rules
