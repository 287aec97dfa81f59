// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/facts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analytics/since.hpp"

namespace arc::drift {

namespace {

constexpr std::array grooveRamps{1, 10, 20, 40, 80};
constexpr std::array stepOnly{1};
constexpr std::array levelRamps{1, 400, 800};
constexpr std::array openRamps{400, 800};
constexpr std::array angleRamps{1, 40, 150};
constexpr double standsOut = 4.0;  ///< standard errors for a groove to be named

/// Set-up wandering makes neighbouring level scores hang together: their effective noise variance.
double levelVariance(const Model& model) {
    return 1 + 10 * model.common.wander;
}

template <class Pick>
std::vector<double> column(std::span<const Row> window, Pick pick) {
    std::vector<double> values;
    values.reserve(window.size());
    for (const auto& row : window) values.push_back(pick(row));
    return values;
}

std::size_t latestBegin(const Case& about, std::span<const Row> window) {
    std::size_t latest = 1;
    for (std::size_t i = 0; i < window.size(); ++i)
        if (window[i].raw.number <= about.raisedAt) latest = i;
    return std::max<std::size_t>(latest, 1);
}

bool isLevel(const Case& about) {
    return about.statistic != Statistic::Apart && about.statistic != Statistic::Pair;
}

ChangeFit levelFit(const Case& about, std::span<const Row> window, const Model& model,
                   std::span<const int> ramps) {
    const auto latest = latestBegin(about, window);
    auto best = fitChange(column(window, [](const Row& r) { return double(r.score.common); }), latest, ramps,
                          levelVariance(model));
    for (std::size_t s = 0; s < shiftCells.size(); ++s) {
        const auto fit = fitChange(column(window, [s](const Row& r) { return double(r.score.shift[s]); }),
                                   latest, ramps, levelVariance(model));
        if (fit.gain > best.gain) best = fit;
    }
    return best;
}

ChangeFit grooveFit(const Case& about, std::span<const Row> window, const std::vector<int>& grooves) {
    const auto values = column(window, [&](const Row& r) {
        double sum = 0;
        for (const int g : grooves) sum += r.score.apart[static_cast<std::size_t>(g)];
        return sum / std::sqrt(static_cast<double>(grooves.size()));
    });
    return fitChange(values, latestBegin(about, window), grooveRamps, 1.0);
}

ChangeFit angleFit(const Case& about, std::span<const Row> window) {
    return fitChange(column(window, [](const Row& r) { return double(r.score.angle); }),
                     latestBegin(about, window), angleRamps, 1.0);
}

std::vector<int> raisingGrooves(const Case& about) {
    if (about.statistic == Statistic::Pair) return {about.index, about.index + 1};
    return {about.index};
}

ChangeFit fitOf(const Case& about, std::span<const Row> window, const Model& model) {
    if (!isLevel(about)) return grooveFit(about, window, raisingGrooves(about));
    if (about.statistic == Statistic::Angle) return angleFit(about, window);
    return levelFit(about, window, model, levelRamps);
}

double meanDb(std::span<const Row> rows, std::optional<int> groove) {
    double sum = 0, n = 0;
    for (const auto& row : rows)
        for (int c = 0; c < maxGrooves; ++c)
            if (row.raw.has(c) && (!groove || *groove == c)) sum += row.raw.loss[c] / 1000.0, ++n;
    return n > 0 ? sum / n : 0;
}

double meanAngle(std::span<const Row> rows) {
    double sum = 0, n = 0;
    for (const auto& row : rows)
        for (int c = 0; c < maxGrooves; ++c) {
            if ((row.raw.leftMask >> c) & 1U) sum += row.raw.left[c] / 100.0, ++n;
            if ((row.raw.rightMask >> c) & 1U) sum += row.raw.right[c] / 100.0, ++n;
        }
    return n > 0 ? sum / n : 0;
}

void addGrooves(CaseFacts& facts, std::span<const Row> before, std::span<const Row> after,
                const Model& model) {
    for (int c = 0; c < model.grooves && model.grooves > 1; ++c) {
        double sum = 0, n = 0;
        for (const auto& row : after)
            if (row.raw.has(c)) sum += row.score.apart[c], ++n;
        if (n < 5) continue;
        const double strength = sum / std::sqrt(n);
        if (strength < standsOut) continue;
        facts.grooves.push_back({c + 1, meanDb(before, c), meanDb(after, c), static_cast<int>(n), strength});
    }
    std::sort(facts.grooves.begin(), facts.grooves.end(),
              [](const GrooveFact& a, const GrooveFact& b) { return a.strength > b.strength; });
    double sum = 0, n = 0;
    for (int c = 0; c < model.grooves; ++c) {
        const bool named = std::any_of(facts.grooves.begin(), facts.grooves.end(),
                                       [c](const GrooveFact& g) { return g.groove == c + 1; });
        if (named) continue;
        sum += meanDb(after, c) - meanDb(before, c);
        ++n;
    }
    facts.otherGroovesDb = n > 0 ? sum / n : 0;
}

void addSurroundings(CaseFacts& facts, std::span<const Row> window, std::size_t begin, std::size_t low,
                     std::size_t high, std::span<const CareRecord> events) {
    const auto& row = window[begin];
    facts.counter = row.raw.counter;
    facts.job = row.raw.job;
    for (std::size_t i = 1; i < window.size(); ++i) {
        if (window[i].raw.job == window[i - 1].raw.job) continue;
        const auto distance = static_cast<std::int64_t>(begin) - static_cast<std::int64_t>(i);
        if (!facts.arcsFromJobStart || std::abs(distance) < std::abs(*facts.arcsFromJobStart))
            facts.arcsFromJobStart = distance;
        if (i >= low && i <= high) facts.jobStartInInterval = true;
    }
    const std::size_t first = low >= 5 ? low - 5 : 0, last = std::min(window.size() - 1, high + 2);
    for (std::size_t i = first + 1; i <= last; ++i)
        facts.idleHours = std::max(
            facts.idleHours, static_cast<double>(window[i].raw.at.ms - window[i - 1].raw.at.ms) / msPerHour);
    const auto celsius = [&](std::size_t from, std::size_t to) -> std::optional<double> {
        double sum = 0, n = 0;
        for (std::size_t i = from; i < to; ++i)
            if (window[i].raw.celsius) sum += *window[i].raw.celsius, ++n;
        return n > 0 ? std::optional(sum / n) : std::nullopt;
    };
    facts.celsiusBefore = celsius(low >= 12 ? low - 12 : 0, low);
    facts.celsiusAfter = celsius(std::min(begin + 1, window.size() - 1), std::min(window.size(), begin + 12));
    for (const auto& event : events) {
        const auto at = std::lower_bound(window.begin(), window.end(), event.at,
                                         [](const Row& r, const Instant& t) { return r.raw.at < t; });
        const auto arcs = static_cast<std::int64_t>(begin) - (at - window.begin());
        if (std::abs(arcs) <= 60) facts.events.push_back({event.action, event.at, arcs});
        if (event.action == action::electrodeReplace && event.at <= row.raw.at) {
            if (event.counter && row.raw.counter && *row.raw.counter >= event.counter->value)
                facts.electrodeArcs = *row.raw.counter - event.counter->value;
        }
    }
}

}  // namespace

std::size_t beginOf(const Case& about, std::span<const Row> window, const Model& model) {
    return fitOf(about, window, model).begin;
}

CaseFacts gatherFacts(const Case& about, std::span<const Row> window, const Model& model,
                      std::span<const CareRecord> events) {
    CaseFacts facts;
    if (window.size() < 3) return facts;
    auto fit = fitOf(about, window, model);
    if (fit.gain <= 0) fit.begin = fit.low = fit.high = latestBegin(about, window);
    const auto before = window.first(fit.begin), after = window.subspan(fit.begin);
    facts.beganAt = window[fit.begin].raw.number;
    facts.low = window[fit.low].raw.number;
    facts.high = window[fit.high].raw.number;
    facts.beganTime = window[fit.begin].raw.at;
    facts.arcsSince = static_cast<int>(after.size());
    facts.beforeDb = meanDb(before, std::nullopt);
    facts.afterDb = meanDb(after, std::nullopt);
    facts.ramp = fit.ramp;
    facts.stepGain = levelFit(about, window, model, stepOnly).gain;
    facts.rampGain = levelFit(about, window, model, openRamps).gain;
    double common = 0;
    for (const auto& row : after) common += row.score.common;
    facts.commonStrength = common / std::sqrt(static_cast<double>(after.size()) * levelVariance(model));
    facts.rankGain = fitChange(column(window, [](const Row& r) { return double(r.score.common); }),
                               latestBegin(about, window), stepOnly, levelVariance(model))
                         .gain;
    facts.shiftGain = fitChange(column(window, [](const Row& r) { return double(r.score.shift[0]); }),
                                latestBegin(about, window), stepOnly, levelVariance(model))
                          .gain;
    addGrooves(facts, before, after, model);
    if (!model.tables.angle.empty()) {
        double sum = 0, n = 0;
        for (const auto& row : after)
            if (row.raw.leftMask | row.raw.rightMask) sum += row.score.angle, ++n;
        if (n > 0) facts.angleStrength = sum / std::sqrt(n);
        facts.angleBeforeDeg = meanAngle(before);
        facts.angleAfterDeg = meanAngle(after);
    }
    addSurroundings(facts, window, fit.begin, fit.low, fit.high, events);
    return facts;
}

}  // namespace arc::drift
