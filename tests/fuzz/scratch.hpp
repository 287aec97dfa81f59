// SPDX-License-Identifier: GPL-3.0-or-later
// A folder with an empty logbook for targets that read files, with a clock and a chance that repeat.
#pragma once
#include <cstdlib>
#include <filesystem>
#include <string>
#include <system_error>

#include "core/scenario/randomness.hpp"
#include "storage/sqlite_logbook.hpp"

namespace arc::fuzz {

class FixedClock final : public Clock {
  public:
    [[nodiscard]] Instant now() override { return {1'930'000'000'000, 60}; }
};

class SeededRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override {
        for (std::size_t i = 0; i < count; ++i)
            bytes[i] = static_cast<std::uint8_t>(scenario::splitmix(state_));
    }

  private:
    std::uint64_t state_ = 1;
};

struct Scratch {
    Scratch() {
        std::string pattern = (std::filesystem::temp_directory_path() / "arc-fuzz-XXXXXX").string();
        folder = mkdtemp(pattern.data());
        book = folder / "fuzz.arcbook";
        if (!storage::createLogbook(book, clock, random)) std::abort();
    }
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove_all(folder, ignored);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;

    std::filesystem::path folder, book;
    FixedClock clock;
    SeededRandom random;
};

/// A refusal must say what is wrong, and nothing a file holds may count as a fault of the program.
inline void demandSentence(const Problem& problem) {
    if (problem.what.empty() || problem.code == ProblemCode::Internal) std::abort();
}

}  // namespace arc::fuzz
