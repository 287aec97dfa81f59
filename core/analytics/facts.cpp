// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/facts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/since.hpp"
#include "core/analytics/surroundings.hpp"

namespace arc::drift {

namespace {

constexpr std::array grooveRamps{1, 20, 40, 80};
constexpr std::array dirtRamps{20, 40, 80};
constexpr std::array stepOnly{1};
constexpr std::array levelRamps{1, 400};
constexpr std::array angleRamps{1, 50, 150};
constexpr std::size_t leastWear = 150;  ///< arcs over which electrode wear shows at the soonest
constexpr double standsOut = 3.5;       ///< standard errors for a groove to be named
constexpr double setUpVariance = 10;  ///< what a stretch of some tens of arcs collects of the set-ups' share

using Column = std::vector<double>;  ///< one score by row

template <class Pick>
Column column(std::span<const Row> window, Pick pick) {
    Column values;
    values.reserve(window.size());
    for (const auto& row : window) values.push_back(static_cast<double>(pick(row)));
    return values;
}

/// Rows of the window between which the begin is looked for.
struct Search {
    std::size_t earliest = 1, latest = 1;
};

Search searchOf(const Case& about, std::span<const Row> window) {
    constexpr std::uint64_t margin = 60;
    Search search;
    for (std::size_t i = 0; i < window.size(); ++i) {
        if (window[i].raw.number + margin <= about.zeroAt) search.earliest = i;
        if (window[i].raw.number <= about.raisedAt) search.latest = i;
    }
    search.latest = std::max<std::size_t>(search.latest, 1);
    search.earliest = std::clamp<std::size_t>(search.earliest, 1, search.latest);
    return search;
}

double meanDb(std::span<const Row> rows, std::optional<int> groove) {
    double sum = 0, n = 0;
    for (const auto& row : rows)
        for (int c = 0; c < maxGrooves; ++c)
            if (row.raw.has(c) && (!groove || *groove == c)) sum += row.raw.loss[c] / 1000.0, ++n;
    return n > 0 ? sum / n : 0;
}

double meanDegrees(std::span<const Row> rows) {
    double sum = 0, n = 0;
    for (const auto& row : rows)
        for (int c = 0; c < maxGrooves; ++c) {
            if ((row.raw.leftMask >> c) & 1U) sum += row.raw.left[c] / 100.0, ++n;
            if ((row.raw.rightMask >> c) & 1U) sum += row.raw.right[c] / 100.0, ++n;
        }
    return n > 0 ? sum / n : 0;
}

Explanation explain(const ChangeFit& fit, std::span<const Row> window) {
    Explanation e;
    e.evidence = fit.evidence;
    e.best = fit.best;
    e.beganAt = window[fit.begin].raw.number;
    e.low = window[fit.low].raw.number;
    e.high = window[fit.high].raw.number;
    e.beganTime = window[fit.begin].raw.at;
    e.ramp = fit.ramp;
    e.arcsSince = static_cast<int>(window.size() - fit.begin);
    // Both means from some tens of arcs: what a person would compare, and what drifts least by itself.
    constexpr std::size_t compared = 200;
    const auto before =
        window.subspan(fit.begin > compared ? fit.begin - compared : 0, std::min(fit.begin, compared));
    const auto after = window.subspan(fit.begin);
    e.beforeDb = meanDb(before, std::nullopt);
    e.afterDb = meanDb(after, std::nullopt);
    e.beforeDeg = meanDegrees(before);
    e.afterDeg = meanDegrees(after);
    return e;
}

std::size_t rowOf(std::span<const Row> window, std::uint64_t number) {
    const auto row = std::lower_bound(window.begin(), window.end(), number,
                                      [](const Row& r, std::uint64_t n) { return r.raw.number < n; });
    return static_cast<std::size_t>(std::min(row, window.end() - 1) - window.begin());
}

/// The level statistics: rank scores and shift scores.
struct LevelColumn {
    Column scores;
    Noise noise;
    double perMdb = 0;
};

/// Good lots of fibre differ, so a level is never known as well as the number of its arcs suggests.
Noise levelNoise(const Learned& learned, const Model& model) {
    const double variance = 1 + setUpVariance * learned.wander;
    const double lots = learned.perMdb * lotsMdb;
    return {variance, variance / (variance / model.arcs + lots * lots)};
}

Noise grooveNoise(const Model& model) {
    return {1.0, model.arcs / std::max(0.1, model.ownWeight)};
}

Noise angleNoise(const Model& model) {
    return {1 + setUpVariance * model.angle.wander, static_cast<double>(model.arcs)};
}

std::vector<LevelColumn> levelColumns(std::span<const Row> window, const Model& model) {
    std::vector<LevelColumn> columns;
    columns.push_back({column(window, [](const Row& r) { return r.score.common; }),
                       levelNoise(model.common, model), model.common.perMdb});
    for (std::size_t s = 0; s < shiftCells.size(); ++s)
        columns.push_back({column(window, [s](const Row& r) { return r.score.shift[s]; }),
                           levelNoise(model.shift[s], model), model.shift[s].perMdb});
    return columns;
}

/// The one in which a change shows best: all explanations are then compared on the same scores.
const LevelColumn& clearest(const std::vector<LevelColumn>& columns, const Search& search) {
    std::size_t best = 0;
    double most = -1;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto fit =
            fitChange(columns[i].scores, search.earliest, search.latest, levelRamps, columns[i].noise);
        if (fit.best > most) most = fit.best, best = i;
    }
    return columns[best];
}

/// Log-likelihood of the best of some directions for the mean of both level statistics over n arcs.
double alongBest(std::span<const Direction> directions, const Direction& mean, double n, const Model& model) {
    // Set-ups make all losses larger or smaller together: noise along that direction.
    const auto& setUp = model.shapes.larger.front();
    const double length = std::max(1e-6, setUp.common * setUp.common);
    const double wander = setUpVariance * model.common.wander / length;
    const double cc = 1 + wander * setUp.common * setUp.common, ss = 1 + wander * setUp.shift * setUp.shift;
    const double cs = model.shapes.correlation + wander * setUp.common * setUp.shift;
    const double determinant = std::max(1e-6, cc * ss - cs * cs);
    const auto product = [&](const Direction& a, const Direction& b) {
        return (ss * a.common * b.common - cs * (a.common * b.shift + a.shift * b.common) +
                cc * a.shift * b.shift) /
               determinant;
    };
    double best = 0;
    for (const auto& d : directions) {
        const double along = product(d, mean), size = product(d, d);
        if (along > 0 && size > 0) best = std::max(best, n * along * along / size / 2);
    }
    return best;
}

double wideningOf(std::span<const Row> after, const Model& model) {
    Direction mean;
    const auto n = static_cast<double>(after.size());
    for (const auto& row : after) mean.common += row.score.common / n, mean.shift += row.score.shift[0] / n;
    return alongBest(model.shapes.larger, mean, n, model) - alongBest(model.shapes.up, mean, n, model);
}

/// The arcs after a signal were not picked for being high: they tell whether what raised it lasts. Another
/// job is another fibre, so the level is followed to the end of the job only.
double lastingOf(const Case& about, const Explanation& raising, std::span<const Row> window,
                 const Model& model) {
    constexpr std::uint64_t followed = 60;
    constexpr double most = 8;
    const bool level = about.statistic == Statistic::Common || about.statistic == Statistic::Shift;
    const auto job = window[rowOf(window, about.raisedAt)].raw.job;
    double was = 0, before = 0, is = 0, after = 0;
    for (const auto& row : window) {
        const auto number = row.raw.number;
        const auto x = seen(about, row, model);
        if (!x || number < raising.beganAt || number > about.raisedAt + followed) continue;
        if (number <= about.raisedAt)
            was += *x, ++before;
        else if (!level || row.raw.job == job)
            is += *x, ++after;
    }
    if (before < 1 || after < 1) return 0;
    const double wander = level ? model.common.wander : 0;
    was /= before;
    return std::clamp(after * was * (is / after - was / 2) / (1 + setUpVariance * wander), -most, 0.0);
}

Column apartColumn(std::span<const Row> window, int first, int count) {
    return column(window, [&](const Row& r) {
        double sum = 0;
        for (int c = first; c < first + count; ++c) sum += r.score.apart[static_cast<std::size_t>(c)];
        return sum / std::sqrt(static_cast<double>(count));
    });
}

/// One groove, or two neighbours: the best of all, its evidence divided among all that were looked at.
ChangeFit fitGrooves(std::span<const Row> window, const Search& search, const Model& model) {
    ChangeFit best;
    best.evidence = -1e9;
    int looked = 0;
    for (int count = 1; count <= (model.grooves > 3 ? 2 : 1); ++count)
        for (int c = 0; c + count <= model.grooves; ++c, ++looked) {
            const auto fit = fitChange(apartColumn(window, c, count), search.earliest, search.latest,
                                       grooveRamps, grooveNoise(model));
            if (fit.evidence > best.evidence) best = fit;
        }
    best.evidence -= std::log(std::max(1, looked));
    return best;
}

void nameGrooves(CaseFacts& facts, std::span<const Row> window, std::size_t begin, const Model& model) {
    const auto before = window.first(begin), after = window.subspan(begin);
    const auto named = [&](int c) {
        return std::any_of(facts.grooves.begin(), facts.grooves.end(),
                           [c](const GrooveFact& g) { return g.groove == c + 1; });
    };
    for (int c = 0; c < model.grooves; ++c) {
        double sum = 0, n = 0;
        for (const auto& row : after)
            if (row.raw.has(c)) sum += row.score.apart[static_cast<std::size_t>(c)], ++n;
        if (n < 5 || sum / std::sqrt(n) < standsOut) continue;
        facts.grooves.push_back(
            {c + 1, meanDb(before, c), meanDb(after, c), static_cast<int>(n), sum / std::sqrt(n)});
    }
    std::stable_sort(facts.grooves.begin(), facts.grooves.end(),
                     [](const GrooveFact& a, const GrooveFact& b) { return a.strength > b.strength; });
    double rise = 0, others = 0;
    for (int c = 0; c < model.grooves; ++c)
        if (!named(c)) rise += meanDb(after, c) - meanDb(before, c), ++others;
    facts.otherGroovesDb = others > 0 ? rise / others : 0;
}

void explainLevel(CaseFacts& facts, std::span<const Row> window, const Search& search, const Model& model,
                  std::span<const CareRecord> events) {
    const auto columns = levelColumns(window, model);
    const auto& level = clearest(columns, search);
    const auto told = [&](const ChangeFit& fit) {
        auto e = explain(fit, window);
        e.riseDb = fit.size / std::max(1e-6, level.perMdb) / 1000;
        return e;
    };
    facts.step = told(fitChange(level.scores, search.earliest, search.latest, stepOnly, level.noise));
    // Wear takes long to show: it did not begin just now.
    const auto wearBegan = window.size() > leastWear ? window.size() - leastWear : 1;
    facts.ramp = told(fitWear(level.scores, 1, std::min(wearBegan, search.latest), level.noise));
    facts.dirt = explain(
        fitChange(columns[0].scores, search.earliest, search.latest, dirtRamps, columns[0].noise), window);
    facts.widening = wideningOf(window.subspan(rowOf(window, facts.step.beganAt)), model);
    auto jobs = jobStretches(window);
    std::erase_if(jobs, [&](const Stretch& s) { return s.from < search.earliest || s.from > search.latest; });
    const auto during = fitStretches(level.scores, jobs, level.noise);
    if (during.evidence > -1e8) facts.job = told(during);
    for (auto& job : jobs) job.to = window.size();
    const auto onwards = fitStretches(level.scores, jobs, level.noise);
    if (onwards.evidence > -1e8) facts.jobOn = told(onwards);
    for (auto& [trigger, row] : triggersIn(window, events)) {
        if (row < search.earliest || row > search.latest) continue;
        // The first splice after it, or one of the next two: entries are rarely to the minute.
        const std::array at{Stretch{row, window.size()}, Stretch{row + 1, window.size()},
                            Stretch{row + 2, window.size()}};
        trigger.step = told(fitStretches(level.scores, at, level.noise));
        facts.triggers.push_back(trigger);
    }
}

}  // namespace

Explanation explainRaise(const Case& about, std::span<const Row> window, const Model& model) {
    if (window.size() < 3) return {};
    const auto search = searchOf(about, window);
    switch (about.statistic) {
        case Statistic::Apart:
        case Statistic::Pair: {
            const int count = about.statistic == Statistic::Pair ? 2 : 1;
            return explain(fitChange(apartColumn(window, about.index, count), search.earliest, search.latest,
                                     grooveRamps, grooveNoise(model)),
                           window);
        }
        case Statistic::Angle:
            return explain(fitChange(column(window, [](const Row& r) { return r.score.angle; }),
                                     search.earliest, search.latest, angleRamps, angleNoise(model)),
                           window);
        case Statistic::Spread:
            return explain(fitChange(column(window, [](const Row& r) { return r.score.spread; }),
                                     search.earliest, search.latest, levelRamps, Noise{}),
                           window);
        case Statistic::Common:
        case Statistic::Shift:
        case Statistic::Respliced:
            break;
    }
    const auto columns = levelColumns(window, model);
    const auto& level =
        columns[about.statistic == Statistic::Shift ? 1 + static_cast<std::size_t>(about.index) : 0];
    return explain(fitChange(level.scores, search.earliest, search.latest, levelRamps, level.noise), window);
}

CaseFacts gatherFacts(const Case& about, std::span<const Row> window, const Model& model,
                      std::span<const CareRecord> events) {
    CaseFacts facts;
    if (window.size() < 3) return facts;
    const auto search = searchOf(about, window);
    facts.raising = explainRaise(about, window, model);
    facts.lasting = lastingOf(about, facts.raising, window, model);
    explainLevel(facts, window, search, model, events);
    if (model.grooves > 1) {
        const auto alone = fitGrooves(window, search, model);
        facts.grooveAlone = explain(alone, window);
        nameGrooves(facts, window, alone.begin, model);
    }
    facts.angleSeen = !model.tables.angle.empty();
    if (facts.angleSeen)
        facts.angles = explain(fitChange(column(window, [](const Row& r) { return r.score.angle; }),
                                         search.earliest, search.latest, angleRamps, angleNoise(model)),
                               window);
    const auto& raised = window[rowOf(window, about.raisedAt)].raw;
    facts.jobAtRaise = raised.job;
    facts.cleaverAtRaise = raised.cleaver;
    facts.counter = raised.counter;
    facts.electrodeArcs = electrodeArcs(events, raised);
    return facts;
}

}  // namespace arc::drift
