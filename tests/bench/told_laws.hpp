// SPDX-License-Identifier: GPL-3.0-or-later
// What a judge knows who is told everything about the simulated logs: the exact law of every reading before a
// fault and at every age of it. Yardsticks for the benches of the charts.
#pragma once
#include <array>
#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

#include "tests/bench/splice_logs.hpp"

namespace arc::bench {

inline constexpr int lossCells = 81,
                     angleCells = 61;           ///< 0.01 dB and 0.1 degrees each, the last holds all above
inline constexpr std::size_t angleClasses = 6;  ///< of what its cleave angles add to a loss

/// A reading in cells. Given its cleave angles a loss is known better, hence their class.
struct Seen {
    int loss = 0, left = 0, right = 0;
    std::size_t angleClass = 0;
};
Seen seenOf(double lossDb, double left, double right);
/// The readings of an arc (index from 0), groove by groove.
std::vector<Seen> seenIn(const SplicerHistory& history, std::size_t arc);

/// Log probabilities of the losses by class of the angles.
using LossLaw = std::array<std::array<double, lossCells>, angleClasses>;
using AngleLaw = std::array<double, angleCells>;

/// What set-up and lot an arc was made with; where it is not known, every reading has one of its own.
struct Circumstances {
    std::optional<double> setUpGain, lotDb;
};

/// Log-likelihood ratios of a fault to none, by the age of the fault in arcs (0 = first changed arc).
class ToldRatios {
  public:
    explicit ToldRatios(const LogSetting& setting, const Circumstances& made = {});

    /// Of one reading made in a groove that has the fault.
    [[nodiscard]] double reading(const Seen& seen, int age) const;
    /// Of an arc whose grooves all have it.
    [[nodiscard]] double arc(const std::vector<Seen>& readings, int age) const;
    [[nodiscard]] bool grows() const { return grows_; }
    [[nodiscard]] int every() const { return every_; }  ///< arcs of age to one law

    static constexpr int longestFault = 1200;  ///< arcs

  private:
    bool grows_ = false;
    int every_ = 1;
    std::vector<std::unique_ptr<LossLaw>> losses_;
    std::vector<AngleLaw> angles_;  ///< of a cleaver's fault: given the angles the loss says nothing more
};

}  // namespace arc::bench
