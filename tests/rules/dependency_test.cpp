// SPDX-License-Identifier: GPL-3.0-or-later
// ui -> core, storage -> core, app wires; core knows the standard library, Boost.Math, Eigen and tl::expected
// only.
#include <gtest/gtest.h>
#include <optional>
#include <string>
#include <vector>

#include "tests/rules/source_files.hpp"

namespace arc::rules {
namespace {

/// What an include line names: `header` as written, own ones with their folder.
struct Include {
    std::string header;
    bool own = false;  ///< written with quotes
};

std::optional<Include> includeOf(const std::string& line) {
    auto at = line.find_first_not_of(" \t");
    if (at == std::string::npos || line[at] != '#') return std::nullopt;
    at = line.find_first_not_of(" \t", at + 1);
    if (at == std::string::npos || line.compare(at, 7, "include") != 0) return std::nullopt;
    const auto open = line.find_first_of("<\"", at);
    if (open == std::string::npos) return std::nullopt;
    const auto close = line.find(line[open] == '<' ? '>' : '"', open + 1);
    if (close == std::string::npos) return std::nullopt;
    return Include{line.substr(open + 1, close - open - 1), line[open] == '"'};
}

bool startsWith(const std::string& text, const std::string& prefix) {
    return text.rfind(prefix, 0) == 0;
}

bool isQt(const std::string& header) {
    return header.size() > 1 && header[0] == 'Q' && header[1] >= 'A' && header[1] <= 'Z';
}

/// "core/entry.cpp:3: <QString>" for every include that `allowed` does not accept.
template <class Allowed>
std::vector<std::string> breaches(const std::vector<std::string>& folders, Allowed allowed) {
    std::vector<std::string> found;
    for (const auto& file : sources(folders, {".cpp", ".hpp", ".h"}))
        for (std::size_t i = 0; i < file.lines.size(); ++i)
            if (const auto include = includeOf(file.lines[i]); include && !allowed(*include))
                found.push_back(file.path + ":" + std::to_string(i + 1) + ": " + include->header);
    return found;
}

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) text += line + "\n";
    return text;
}

/// A header of the standard library has no folder and no suffix; a few of C's have a suffix.
bool isStandard(const std::string& header) {
    return header.find('/') == std::string::npos && header.find('.') == std::string::npos && !isQt(header);
}

TEST(DependencyRule, coreKnowsNothingOfTheOutside) {
    const auto found = breaches({"core"}, [](const Include& include) {
        const auto& h = include.header;
        if (include.own) return startsWith(h, "core/");
        return isStandard(h) || startsWith(h, "boost/math/") || startsWith(h, "Eigen/") ||
               h == "tl/expected.hpp";
    });
    EXPECT_TRUE(found.empty()) << joined(found);
}

TEST(DependencyRule, storageKnowsCoreButNoWindow) {
    const auto found = breaches({"storage"}, [](const Include& include) {
        if (include.own) return startsWith(include.header, "core/") || startsWith(include.header, "storage/");
        return !isQt(include.header) && !startsWith(include.header, "Qt");
    });
    EXPECT_TRUE(found.empty()) << joined(found);
}

TEST(DependencyRule, theWindowKnowsCoreButNoStore) {
    const auto found = breaches({"ui"}, [](const Include& include) {
        const auto& h = include.header;
        if (include.own)
            return startsWith(h, "core/") || startsWith(h, "ui/") ||
                   (h.find('/') == std::string::npos && h.size() > 4 && h.substr(h.size() - 4) == ".moc");
        return h.find("sqlite") == std::string::npos && !startsWith(h, "SQLiteCpp") &&
               !startsWith(h, "nlohmann");
    });
    EXPECT_TRUE(found.empty()) << joined(found);
}

// The time, random bytes and files are handed to core by whoever calls it (core/ports.hpp).
TEST(DependencyRule, coreAsksNoClockNoChanceAndNoFile) {
    const std::vector<std::string> banned{"system_clock", "steady_clock", "random_device",
                                          "std::time(",   "fopen(",       "ifstream",
                                          "ofstream",     "std::mt19937", "getenv("};
    std::vector<std::string> found;
    for (const auto& file : sources({"core"}, {".cpp", ".hpp"}))
        for (std::size_t i = 0; i < file.lines.size(); ++i)
            for (const auto& word : banned)
                if (file.lines[i].find(word) != std::string::npos)
                    found.push_back(file.path + ":" + std::to_string(i + 1) + ": " + word);
    EXPECT_TRUE(found.empty()) << joined(found);
}

TEST(DependencyRule, includeLinesAreReadAsTheyAreWritten) {
    EXPECT_EQ(includeOf("#include <QString>")->header, "QString");
    EXPECT_EQ(includeOf("#  include \"core/entry.hpp\"  // why")->header, "core/entry.hpp");
    EXPECT_TRUE(includeOf("#include \"core/entry.hpp\"")->own);
    EXPECT_FALSE(includeOf("// #include <QString>"));
    EXPECT_TRUE(isQt("QString"));
    EXPECT_FALSE(isQt("Queue"));
    EXPECT_FALSE(sources({"core"}, {".hpp"}).empty()) << "the walk finds nothing, so nothing was checked";
}

}  // namespace
}  // namespace arc::rules
