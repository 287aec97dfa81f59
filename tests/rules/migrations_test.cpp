// SPDX-License-Identifier: GPL-3.0-or-later
// A migration that was released never changes: logbooks out there were made by it.
#include <array>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <map>
#include <sodium.h>
#include <sstream>
#include <string>

#include "source_dir.hpp"

namespace arc::rules {
namespace {

std::string content(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    EXPECT_TRUE(file) << path;
    return {std::istreambuf_iterator<char>(file), {}};
}

std::string sha256(const std::string& text) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(text.data()), text.size());
    std::string hex(2 * hash.size() + 1, '\0');
    sodium_bin2hex(hex.data(), hex.size(), hash.data(), hash.size());
    hex.pop_back();
    return hex;
}

// FIPS 180-4 example: SHA-256 of "abc".
TEST(Migrations, theHashIsSha256) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Migrations, releasedOnesAreUnchanged) {
    std::istringstream list(content(ARC_SOURCE_DIR "/tests/rules/released_migrations.txt"));
    for (std::string line; std::getline(list, line);) {
        if (line.empty() || line[0] == '#') continue;
        const auto gap = line.find("  ");
        ASSERT_EQ(gap, 64u) << line;
        const std::string name = line.substr(gap + 2);
        EXPECT_EQ(sha256(content(std::string(ARC_SOURCE_DIR "/storage/migrations/") + name)),
                  line.substr(0, 64))
            << name << " was released; write a new migration instead";
    }
}

TEST(Migrations, numbersBeginAtOneWithoutAGap) {
    std::map<int, std::string> numbers;
    for (const auto& entry : std::filesystem::directory_iterator(ARC_SOURCE_DIR "/storage/migrations")) {
        const auto name = entry.path().filename().string();
        if (entry.path().extension() != ".sql") continue;
        ASSERT_GE(name.size(), 6u);
        EXPECT_EQ(name[4], '_') << name << " is not of the form NNNN_name.sql";
        EXPECT_TRUE(numbers.emplace(std::stoi(name.substr(0, 4)), name).second)
            << name << " has a number twice";
    }
    int expected = 1;
    for (const auto& [number, name] : numbers) EXPECT_EQ(number, expected++) << name;
    EXPECT_GT(expected, 1);
}

}  // namespace
}  // namespace arc::rules
