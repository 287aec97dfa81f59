// SPDX-License-Identifier: GPL-3.0-or-later
// What the other splicers of the crew say about a signal: whoever works on the same job sees the same fibre,
// whoever is fed by the same cleaver sees the same cuts.
#pragma once
#include <span>

#include "core/analytics/causes.hpp"
#include "core/analytics/watcher.hpp"

namespace arc::drift {

/// One watched stratum of one splicer.
struct Watched {
    const SplicerHistory* history = nullptr;
    const Watcher* watcher = nullptr;
};

PeerFacts askPeers(const CaseFacts& facts, const SplicerHistory& of, std::span<const Watched> crew);

}  // namespace arc::drift
