// SPDX-License-Identifier: GPL-3.0-or-later
// Which part is likely at fault: every cause gathers weights of evidence (log odds) from the facts, each with
// a line a supervisor can check by hand; the weights are normalised over the causes.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/case_file.hpp"

namespace arc::drift {

/// What other splicers saw meanwhile.
struct PeerFacts {
    struct Other {
        std::string label;
        int arcs = 0;
        double strength = 0;  ///< mean level score, in standard errors
        double riseDb = 0;
    };
    std::vector<Other> sameJob;      ///< on the job of the begin
    std::vector<Other> sameCleaver;  ///< with the cleaver of the begin, since the begin
};

struct Verdict {
    Cause cause = Cause::Unknown;     ///< Unknown when no weight reaches 0.6
    std::vector<CauseWeight> causes;  ///< "unknown" is luck, or something not modelled
    Explanation since;                ///< the leading cause's account of begin and size
    std::vector<int> grooves;         ///< that stand out, when they are the cause
    ActionKey action;
    std::string headline;
    std::string advice;
};

Verdict decide(const Case& about, const CaseFacts& facts, const PeerFacts& peers, int grooves);

}  // namespace arc::drift
