// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/recovery.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace arc::drift {

namespace {

/// Arcs of one set-up share their level: over 20 arcs the wandering's share counts about so many times.
constexpr double sharedArcs = 14;
constexpr double twoSided95 = 1.96;
constexpr double backWithin = 2.5;  ///< standard errors from the baseline that a cure may lie
constexpr double doubt = 2.2;       ///< log-likelihood ratio that leaves one verdict in ten wrong

struct Halves {
    std::span<const Row> before, after;
    bool settled = false;  ///< no arc will be added to `after`
};

/// Arcs looked at on either side of the care.
struct Reach {
    std::size_t before, after;
};
constexpr Reach shown{arcsBeforeCare, arcsAfterCare}, judgedOn{arcsOfTrouble, clearBy};

Halves halves(std::span<const Row> window, Instant at, std::uint64_t began, std::optional<Instant> until,
              Reach reach) {
    const auto first = [&window](Instant t) {
        return static_cast<std::size_t>(
            std::lower_bound(window.begin(), window.end(), t,
                             [](const Row& r, const Instant& i) { return r.raw.at < i; }) -
            window.begin());
    };
    const std::size_t split = first(at);
    std::size_t from = split > reach.before ? split - reach.before : 0;
    while (from + 5 < split && window[from].raw.number < began) ++from;
    std::size_t to = std::min(window.size(), split + reach.after);
    Halves found;
    found.settled = to == split + reach.after;
    if (until && *until > at && first(*until) <= to) {
        to = first(*until);
        found.settled = true;
    }
    found.before = window.subspan(from, split - from);
    found.after = window.subspan(split, to - split);
    return found;
}

bool loneGroove(Statistic s) {
    return s == Statistic::Apart || s == Statistic::Pair;
}

/// dB of what is complained about: the arc's mean, or a groove (or pair) apart from the others.
std::optional<double> arcDb(const RawArc& arc, const std::optional<Complaint>& complaint) {
    double sum = 0, n = 0, own = 0, ownN = 0;
    for (int c = 0; c < maxGrooves; ++c) {
        if (!arc.has(c)) continue;
        const double db = arc.loss[static_cast<std::size_t>(c)] / 1000.0;
        const bool mine =
            complaint && loneGroove(complaint->statistic) &&
            (c == complaint->index || (complaint->statistic == Statistic::Pair && c == complaint->index + 1));
        (mine ? own : sum) += db;
        (mine ? ownN : n) += 1;
    }
    if (ownN > 0) return own / ownN - (n > 0 ? sum / n : 0);
    if (complaint && loneGroove(complaint->statistic)) return std::nullopt;
    if (n == 0) return std::nullopt;
    return sum / n;
}

double wanderOf(Statistic statistic, int index, const Model& model) {
    switch (statistic) {
        case Statistic::Common:
        case Statistic::Respliced:
            return model.common.wander;
        case Statistic::Shift:
            return model.shift[static_cast<std::size_t>(index)].wander;
        case Statistic::Angle:
            return model.angle.wander;
        case Statistic::Spread:
            return model.spread.wander;
        case Statistic::Apart:
        case Statistic::Pair:
            break;
    }
    return 0;  // a groove apart from its arc knows no set-up
}

struct Level {
    double mean = 0;
    double n = 0;
};
Level levelOf(std::span<const Row> rows, const Complaint& complaint, const Model& model) {
    Level level;
    for (const auto& row : rows)
        if (const auto x = seen(complaint, row, model)) level.mean += *x, level.n += 1;
    if (level.n > 0) level.mean /= level.n;
    return level;
}

/// Cured or still there: the likelihoods of both for the arcs after, the trouble's level known from those
/// before.
CareVerdict compared(const Level& before, const Level& after, double wander, bool lastWord) {
    const auto variance = [wander](double n) { return (1 + sharedArcs * wander) / n; };
    const double back = backWithin * std::sqrt(variance(after.n));
    const double change = twoSided95 * std::sqrt(variance(before.n) + variance(after.n));
    const double stillThere = before.mean * (after.mean - before.mean / 2) / variance(after.n);
    if (!lastWord && std::abs(stillThere) < doubt) return CareVerdict::TooEarly;
    if (after.mean > before.mean + change) return CareVerdict::Worse;
    // Back at the baseline: nearer to it than to the trouble, and no further from it than luck takes it.
    if (after.mean < before.mean / 2 && after.mean < back) return CareVerdict::Recovered;
    return after.mean < before.mean - change ? CareVerdict::Better : CareVerdict::NoChange;
}

/// Hodges-Lehmann shift of what is complained about with its interval; the wandering widens it.
void shift(CareEffect& effect, const Halves& half, const std::optional<Complaint>& complaint, double wander) {
    std::vector<double> differences, old;
    for (const auto& row : half.before)
        if (const auto db = arcDb(row.raw, complaint)) old.push_back(*db);
    double n = 0;
    for (const auto& row : half.after) {
        const auto db = arcDb(row.raw, complaint);
        if (!db) continue;
        n += 1;
        for (const double was : old) differences.push_back(*db - was);
    }
    if (differences.empty()) return;
    std::sort(differences.begin(), differences.end());
    const auto m = static_cast<double>(old.size());
    const std::size_t last = differences.size() - 1;
    effect.shiftDb = 0.5 * (differences[last / 2] + differences[(last + 1) / 2]);
    const double spread = twoSided95 * std::sqrt(m * n * (m + n + 1) / 12 * (1 + sharedArcs * wander));
    const auto low = std::min(static_cast<std::size_t>(std::max(0.0, m * n / 2 - spread)), last / 2);
    effect.low = differences[low];
    effect.high = differences[last - low];
}

void keepOneJob(Halves& half) {
    if (half.after.empty()) return;
    const auto job = half.after.front().raw.job;
    std::size_t from = half.before.size();
    while (from > 0 && half.before[from - 1].raw.job == job) --from;
    half.before = half.before.subspan(from);
    std::size_t to = 0;
    while (to < half.after.size() && half.after[to].raw.job == job) ++to;
    if (to < half.after.size()) half.settled = true;
    half.after = half.after.first(to);
}

bool enough(const Halves& half) {
    return half.before.size() >= 5 && half.settled && half.after.size() >= leastAfterCare;
}

CareVerdict judge(const Complaint& complaint, const Halves& half, const Model& model) {
    return compared(levelOf(half.before, complaint, model), levelOf(half.after, complaint, model),
                    wanderOf(complaint.statistic, complaint.index, model), half.settled);
}

}  // namespace

CareEffect judged(CareEffect effect, std::span<const Row> window, const Model& model,
                  const std::optional<Complaint>& complaint, std::optional<Instant> until) {
    auto half = halves(window, effect.at, complaint ? complaint->began : 0, until, shown);
    // Without a signal to cure, another job's fibre would be taken for the work of the care.
    if (!complaint) keepOneJob(half);
    if (complaint) effect.signalKey = complaint->signalKey;
    effect.before = static_cast<int>(half.before.size());
    effect.after = static_cast<int>(half.after.size());
    if (!half.after.empty()) effect.atArc = half.after.front().raw.number;
    if (half.before.size() < 5 || half.after.size() < 5) return effect;
    const double wander =
        complaint ? wanderOf(complaint->statistic, complaint->index, model) : model.common.wander;
    shift(effect, half, complaint, wander);
    if (!enough(half)) return effect;
    if (complaint) {
        effect.verdict =
            judge(*complaint, halves(window, effect.at, complaint->began, until, judgedOn), model);
        return effect;
    }
    // Nothing was complained about: it did something only if the losses say so.
    effect.verdict = effect.low > 0    ? CareVerdict::Worse
                     : effect.high < 0 ? CareVerdict::Better
                                       : CareVerdict::NoChange;
    return effect;
}

std::optional<CareVerdict> verdictOn(const Complaint& complaint, Instant at, std::span<const Row> window,
                                     const Model& model, std::optional<Instant> until) {
    if (!enough(halves(window, at, complaint.began, until, shown))) return std::nullopt;
    return judge(complaint, halves(window, at, complaint.began, until, judgedOn), model);
}

}  // namespace arc::drift
