// SPDX-License-Identifier: GPL-3.0-or-later
// What core asks of the world outside: the time, random bytes, and somebody who watches long work.
#pragma once
#include <array>
#include <cstdint>
#include <string_view>

#include "core/units/instant.hpp"

namespace arc {

class Clock {
  public:
    virtual ~Clock() = default;
    /// The present instant with the offset of the place the machine is set to.
    [[nodiscard]] virtual Instant now() = 0;
};

class Random {
  public:
    virtual ~Random() = default;
    virtual void fill(std::uint8_t* bytes, std::size_t count) = 0;
};

/// Watches long work. Called from the working thread; both functions must be cheap and must not throw.
class Progress {
  public:
    virtual ~Progress() = default;
    /// `done` of `total` in the same unit (rows, bytes); total 0 = not known.
    virtual void report(std::uint64_t done, std::uint64_t total, std::string_view doing) = 0;
    /// True once the person asked to stop; the work then leaves nothing half done.
    [[nodiscard]] virtual bool stopRequested() const = 0;
};

/// For work nobody watches.
class NoProgress final : public Progress {
  public:
    void report(std::uint64_t, std::uint64_t, std::string_view) override {}
    [[nodiscard]] bool stopRequested() const override { return false; }
};

}  // namespace arc
