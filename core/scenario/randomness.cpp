// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/scenario/randomness.hpp"

#include <bit>
#include <cmath>
#include <numbers>

namespace arc::scenario {

std::uint64_t splitmix(std::uint64_t& state) {
    state += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

Randomness::Randomness(std::uint64_t seed, std::string_view stream) {
    std::uint64_t name = 14695981039346656037ULL;  // FNV-1a
    for (const char c : stream) name = (name ^ static_cast<std::uint8_t>(c)) * 1099511628211ULL;
    std::uint64_t filler = seed;
    filler = splitmix(filler) ^ name;
    for (auto& word : state_) word = splitmix(filler);
}

std::uint64_t Randomness::next() {
    const std::uint64_t result = std::rotl(state_[0] + state_[3], 23) + state_[0];
    const std::uint64_t shifted = state_[1] << 17;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= shifted;
    state_[3] = std::rotl(state_[3], 45);
    return result;
}

double Randomness::uniform() {
    return static_cast<double>(next() >> 11) * 0x1.0p-53;
}

double Randomness::uniform(double low, double high) {
    return low + (high - low) * uniform();
}

double Randomness::normal() {
    // The second number of the pair is thrown away: a generator without memory of it is easier to reason
    // about.
    const double u = 1.0 - uniform();
    const double v = uniform();
    return std::sqrt(-2.0 * std::log(u)) * std::cos(2.0 * std::numbers::pi * v);
}

}  // namespace arc::scenario
