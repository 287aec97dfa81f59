// SPDX-License-Identifier: GPL-3.0-or-later
// The machine's own clock and random bytes, for both programs.
#pragma once
#include "core/ports.hpp"

namespace arc::app {

class SystemClock final : public Clock {
  public:
    [[nodiscard]] Instant now() override;
};

class SystemRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override;
};

}  // namespace arc::app
