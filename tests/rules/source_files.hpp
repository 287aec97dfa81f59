// SPDX-License-Identifier: GPL-3.0-or-later
// Walks the sources of this program for the tests of the house rules.
#pragma once
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "source_dir.hpp"

namespace arc::rules {

struct SourceFile {
    std::string path;  ///< from the top of the sources, with forward slashes: "core/entry.cpp"
    std::vector<std::string> lines;
};

inline bool hasSuffix(const std::filesystem::path& path, const std::vector<std::string>& suffixes) {
    return std::find(suffixes.begin(), suffixes.end(), path.extension().string()) != suffixes.end();
}

/// All files below the folders that end in one of the suffixes, by path.
inline std::vector<SourceFile> sources(const std::vector<std::string>& folders,
                                       const std::vector<std::string>& suffixes) {
    namespace fs = std::filesystem;
    const fs::path top = ARC_SOURCE_DIR;
    std::vector<SourceFile> files;
    for (const auto& folder : folders) {
        if (!fs::exists(top / folder)) continue;
        for (const auto& entry : fs::recursive_directory_iterator(top / folder)) {
            if (!entry.is_regular_file() || !hasSuffix(entry.path(), suffixes)) continue;
            SourceFile file;
            file.path = fs::relative(entry.path(), top).generic_string();
            std::ifstream stream(entry.path(), std::ios::binary);
            for (std::string line; std::getline(stream, line);) file.lines.push_back(line);
            files.push_back(std::move(file));
        }
    }
    std::sort(files.begin(), files.end(), [](const auto& a, const auto& b) { return a.path < b.path; });
    return files;
}

}  // namespace arc::rules
