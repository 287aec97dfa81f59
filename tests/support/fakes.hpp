// SPDX-License-Identifier: GPL-3.0-or-later
// A clock that tests move, random bytes that come again, and a folder that goes away.
#pragma once
#include <filesystem>
#include <stdlib.h>
#include <string>

#include "core/ports.hpp"
#include "core/units/id.hpp"

namespace arc::test {

class FakeClock final : public Clock {
  public:
    explicit FakeClock(std::int64_t startMs = 1'930'000'000'000) : at{startMs, 60} {}
    /// Moves by a millisecond at each look, so that no two moments are the same.
    Instant now() override {
        ++at.ms;
        return at;
    }
    Instant at;
};

/// splitmix64.
class FakeRandom final : public Random {
  public:
    explicit FakeRandom(std::uint64_t seed = 1) : state_(seed) {}
    void fill(std::uint8_t* bytes, std::size_t count) override {
        for (std::size_t i = 0; i < count; ++i) bytes[i] = static_cast<std::uint8_t>(next() >> 24);
    }
    std::uint64_t next() {
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31);
    }
    /// 0 … limit - 1.
    std::uint64_t below(std::uint64_t limit) { return next() % limit; }

  private:
    std::uint64_t state_;
};

class TempFolder {
  public:
    TempFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "arcwright-test-XXXXXX").string();
        path = mkdtemp(name.data());
    }
    ~TempFolder() {
        std::error_code ignored;
        std::filesystem::permissions(path, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path, ignored);
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path / name; }
    std::filesystem::path path;
};

}  // namespace arc::test
