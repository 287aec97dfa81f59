// SPDX-License-Identifier: GPL-3.0-or-later
// Acceptance rules are data of each contract: there is no agreed limit in the trade. The shipped ones are
// samples and say so (values: common practice).
#pragma once
#include <string>
#include <vector>

#include "core/units/quantity.hpp"

namespace arc {

enum class Directions { OneWay, TwoWay };
enum class RuleOrigin { Sample, Contract };

struct AcceptanceRule {
    std::string name;     ///< "Sample: single fibre"
    Loss perSplice{100};  ///< estimated loss a splice may have before it is re-spliced
    Loss average{50};     ///< mean over a span
    Loss ceiling{300};    ///< never accepted above this, whatever the note says
    int attempts = 3;     ///< after this many the best may be kept with a note
    Directions directions = Directions::OneWay;
    RuleOrigin origin = RuleOrigin::Sample;
    bool operator==(const AcceptanceRule&) const = default;
};

/// The samples: single fibre 0.10 dB, ribbon 0.15 dB; average 0.05, ceiling 0.30, three attempts.
std::vector<AcceptanceRule> sampleRules();
/// The sample that a new job begins with: the one for ribbons when an arc joins more than one fibre.
AcceptanceRule sampleRuleFor(int fibresPerArc);

enum class Verdict { Accept, AcceptHigh, Resplice, KeepBestWithNote, OverCeiling };

/// What to do with one reading: `attempt` is 1-based. AcceptHigh: within the splice limit but above the
/// average limit.
Verdict judge(const AcceptanceRule& rule, Loss loss, int attempt);

}  // namespace arc
