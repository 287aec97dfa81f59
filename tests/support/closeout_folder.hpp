// SPDX-License-Identifier: GPL-3.0-or-later
// A sealed closeout folder made from a logbook in memory, and the shell as a stranger has it.
#pragma once
#include <array>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <random>
#include <string>
#include <sys/wait.h>
#include <unistd.h>

#include "core/closeout/build.hpp"
#include "storage/closeout_folder.hpp"
#include "storage/export_list.hpp"
#include "storage/plain_file.hpp"
#include "tests/support/closeout_job.hpp"

namespace arc::test {

inline closeout::Record recordOf(Logbook& book) {
    closeout::BuildSettings settings;
    settings.madeAt = at("2031-03-04T17:00:00+01:00");
    NoProgress progress;
    auto record = closeout::build(book, idOf<JobId>(1), settings, progress);
    EXPECT_TRUE(record) << (record ? "" : record.error().sentence());
    return record.value_or(closeout::Record{});
}

/// All exports that need no fonts, sealed and in place.
inline std::filesystem::path sealedFolder(const closeout::Record& record, const std::filesystem::path& folder,
                                          const std::filesystem::path& config) {
    NoProgress progress;
    auto stage = storage::CloseoutStage::begin(folder);
    EXPECT_TRUE(stage) << (stage ? "" : stage.error().sentence());
    for (const storage::CloseoutExport& one : storage::closeoutExports()) {
        auto written = one.write(record, stage->file(one.fileName));
        EXPECT_TRUE(written) << one.fileName << (written ? "" : written.error().sentence());
    }
    auto sealed = stage->seal(record, *storage::deviceKey(config), progress);
    EXPECT_TRUE(sealed) << (sealed ? "" : sealed.error().sentence());
    auto placed = stage->putInPlace();
    EXPECT_TRUE(placed) << (placed ? "" : placed.error().sentence());
    return placed.value_or(folder);
}

struct ShellAnswer {
    int code = -1;
    std::string text;  ///< what it printed, errors too
};

inline ShellAnswer shell(const std::string& command) {
    ShellAnswer answer;
    FILE* pipe = ::popen(("( " + command + "\n) 2>&1").c_str(), "r");
    if (pipe == nullptr) return answer;
    std::array<char, 4096> piece{};
    while (const std::size_t got = std::fread(piece.data(), 1, piece.size(), pipe))
        answer.text.append(piece.data(), got);
    const int status = ::pclose(pipe);
    if (WIFEXITED(status)) answer.code = WEXITSTATUS(status);
    return answer;
}

inline std::string contents(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

enum class Bits { OneOfEachByte, All };

/// Flips bits of a file of a record and expects the verification to notice each; puts all back. Answers how
/// many were flipped.
inline std::size_t flipBits(const std::filesystem::path& path, Bits bits) {
    NoProgress progress;
    std::size_t flips = 0;
    const std::string bytes = contents(path);
    const int file = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
    EXPECT_GE(file, 0);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        for (std::size_t bit = 0; bit < 8; ++bit) {
            if (bits == Bits::OneOfEachByte && bit != i % 8) continue;
            const char flipped = static_cast<char>(bytes[i] ^ (1 << bit));
            EXPECT_EQ(::pwrite(file, &flipped, 1, static_cast<off_t>(i)), 1);
            if (storage::verifyCloseout(path.parent_path(), progress))
                ADD_FAILURE() << path.filename() << ", byte " << i << ", bit " << bit;
            ++flips;
        }
        EXPECT_EQ(::pwrite(file, &bytes[i], 1, static_cast<off_t>(i)), 1);
    }
    ::close(file);
    return flips;
}

/// Flips that many bits of every file, spread by chance, and expects the verification to notice each; puts
/// all back. Answers how many were flipped.
inline std::size_t flipSomeBits(const std::filesystem::path& folder, std::size_t ofEachFile) {
    NoProgress progress;
    std::mt19937 random(20310303);
    std::size_t flips = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const std::string bytes = contents(entry.path());
        const int file = ::open(entry.path().c_str(), O_WRONLY | O_CLOEXEC);
        EXPECT_GE(file, 0);
        for (std::size_t n = 0; n < ofEachFile && !bytes.empty(); ++n) {
            const std::size_t i = random() % bytes.size();
            const char flipped = static_cast<char>(bytes[i] ^ (1 << random() % 8));
            EXPECT_EQ(::pwrite(file, &flipped, 1, static_cast<off_t>(i)), 1);
            if (storage::verifyCloseout(folder, progress))
                ADD_FAILURE() << entry.path().filename() << ", byte " << i;
            EXPECT_EQ(::pwrite(file, &bytes[i], 1, static_cast<off_t>(i)), 1);
            ++flips;
        }
        ::close(file);
    }
    return flips;
}

}  // namespace arc::test
