// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/acceptance.hpp"

namespace arc {

std::vector<AcceptanceRule> sampleRules() {
    // Values: common practice, no source. Every contract brings its own.
    AcceptanceRule single;
    single.name = "Sample: single fibre";
    AcceptanceRule ribbon;
    ribbon.name = "Sample: ribbon";
    ribbon.perSplice = Loss{150};
    AcceptanceRule twoWay;
    twoWay.name = "Sample: two-way mean 0.10 dB";
    twoWay.directions = Directions::TwoWay;
    return {single, ribbon, twoWay};
}

AcceptanceRule sampleRuleFor(int fibresPerArc) {
    return sampleRules().at(fibresPerArc > 1 ? 1 : 0);
}

Verdict judge(const AcceptanceRule& rule, Loss loss, int attempt) {
    if (loss > rule.ceiling) return Verdict::OverCeiling;
    if (loss > rule.perSplice)
        return attempt >= rule.attempts ? Verdict::KeepBestWithNote : Verdict::Resplice;
    return loss > rule.average ? Verdict::AcceptHigh : Verdict::Accept;
}

}  // namespace arc
