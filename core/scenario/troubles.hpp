// SPDX-License-Identifier: GPL-3.0-or-later
// Faults from their begin to their cure, what they do to an arc, and the truth about them.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/scenario/physics.hpp"
#include "core/scenario/simulate.hpp"

namespace arc::scenario {

/// Arcs per splicer, and per cleaver they were prepared with.
using Uses = std::map<std::string, std::uint64_t>;

/// What bears on an arc before its fibres are drawn.
struct Burden {
    Conditions common;
    std::vector<double> pushUm;  ///< by groove
};

class Troubles {
  public:
    explicit Troubles(const Scenario& scenario);

    /// Begins what is due with this arc, notes whom it touches and adds what it does.
    void bear(const SimulatedArc& arc, const JobSetting& job, const Wear& worn, const Uses& uses,
              Burden& burden);
    /// What a care action does to the faults of its tool.
    void care(const CareSetting& care, Instant at);
    /// `arcs`: how many every splicer made. What holds at its last arc has no end.
    std::vector<TrueFault> truth(const Uses& arcs) &&;

  private:
    struct Active {
        FaultSetting setting;
        bool begun = false, ended = false;
        std::uint64_t beganAtUse = 0;  ///< arcs of the tool when it began
        std::size_t truth = 0;         ///< index into the truth, once begun
    };
    void begin(const SimulatedArc& arc, const Uses& uses);
    void apply(const Active& fault, const SimulatedArc& arc, const JobSetting& job, const Uses& uses,
               Burden& burden);
    void noteElectrodes(const SimulatedArc& arc, const Wear& worn);
    void noteLot(const SimulatedArc& arc, const JobSetting& job);
    void touch(std::size_t truth, const SimulatedArc& arc);

    std::vector<Active> faults_;
    std::map<std::string, std::size_t> lots_, electrodes_;  ///< job or splicer → index into the truth
    std::vector<TrueFault> truth_;
};

}  // namespace arc::scenario
