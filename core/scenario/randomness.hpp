// SPDX-License-Identifier: GPL-3.0-or-later
// Random numbers that are the same on every machine and with every standard library: the engine and the
// distributions are ours. Not for secrets.
#pragma once
#include <array>
#include <cstdint>
#include <string_view>

namespace arc::scenario {

/// xoshiro256++ 1.0 (D. Blackman, S. Vigna, ACM Trans. Math. Softw. 47(4), 2021), its state filled by
/// splitmix64. Streams with different names are independent, so that one machine more in a scenario leaves
/// the numbers of the others as they were.
class Randomness {
  public:
    Randomness(std::uint64_t seed, std::string_view stream);
    /// From a state, to check the engine against published numbers.
    explicit Randomness(const std::array<std::uint64_t, 4>& state) : state_(state) {}

    std::uint64_t next();
    /// Uniform in [0, 1), 53 bits.
    double uniform();
    /// Uniform in [low, high).
    double uniform(double low, double high);
    /// Normal with mean 0 and standard deviation 1 (G. E. P. Box, M. E. Muller, Ann. Math. Stat. 29, 1958).
    double normal();

  private:
    std::array<std::uint64_t, 4> state_{};
};

/// One step of splitmix64: advances `state` by the golden gamma and mixes it.
std::uint64_t splitmix(std::uint64_t& state);

}  // namespace arc::scenario
