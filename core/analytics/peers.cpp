// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/peers.hpp"

#include <algorithm>
#include <cmath>

namespace arc::drift {

namespace {

constexpr double jobVariance = 10;  ///< of the set-ups' share that the mean of a job collects

/// Standard errors of a mean level over n arcs, by whichever level statistic shows more.
double strengthOf(double common, double shift, double n, const Model& model) {
    const double ofCommon = common / std::sqrt(n * (1 + jobVariance * model.common.wander));
    const double ofShift = shift / std::sqrt(n * (1 + jobVariance * model.shift[0].wander));
    return std::max(ofCommon, ofShift);
}

std::optional<PeerFacts::Other> onJob(const Watched& peer, JobId job) {
    for (const auto& [index, level] : peer.watcher->jobs()) {
        if (index >= peer.history->jobs.size() || !(peer.history->jobs[index] == job) || level.arcs == 0)
            continue;
        const auto n = static_cast<double>(level.arcs);
        const auto& model = *peer.watcher->model();
        return PeerFacts::Other{peer.history->label, level.arcs,
                                strengthOf(level.common, level.shift, n, model), level.db / n - model.meanDb};
    }
    return std::nullopt;
}

std::optional<PeerFacts::Other> withCleaver(const Watched& peer, ToolId cleaver, Instant since) {
    const auto& model = *peer.watcher->model();
    double n = 0, angle = 0, db = 0, readings = 0;
    for (const auto& row : peer.watcher->window()) {
        if (row.raw.at < since || !row.raw.cleaver || *row.raw.cleaver >= peer.history->cleavers.size() ||
            !(peer.history->cleavers[*row.raw.cleaver] == cleaver))
            continue;
        ++n;
        angle += static_cast<double>(row.score.angle);
        for (int c = 0; c < model.grooves; ++c)
            if (row.raw.has(c)) db += row.raw.loss[c] / 1000.0, ++readings;
    }
    if (n == 0 || readings == 0 || model.tables.angle.empty()) return std::nullopt;
    return PeerFacts::Other{peer.history->label, static_cast<int>(n), angle / std::sqrt(n),
                            db / readings - model.meanDb};
}

}  // namespace

PeerFacts askPeers(const CaseFacts& facts, const SplicerHistory& of, std::span<const Watched> crew) {
    PeerFacts found;
    for (const auto& peer : crew) {
        if (peer.history == &of || peer.watcher->learning()) continue;
        if (facts.jobAtRaise && *facts.jobAtRaise < of.jobs.size())
            if (auto other = onJob(peer, of.jobs[*facts.jobAtRaise])) found.sameJob.push_back(*other);
        if (facts.cleaverAtRaise && *facts.cleaverAtRaise < of.cleavers.size())
            if (auto other = withCleaver(peer, of.cleavers[*facts.cleaverAtRaise], facts.angles.beganTime))
                found.sameCleaver.push_back(*other);
    }
    return found;
}

}  // namespace arc::drift
