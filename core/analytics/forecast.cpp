// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/forecast.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>
#include <vector>

namespace arc::drift {
namespace {

constexpr std::size_t blockArcs = 50;
constexpr std::size_t fewestBlocks = 6;
constexpr double cappedDb = 0.2;    ///< one failed splice is no wear
constexpr double lotDb = 0.0015;    ///< how far a job's fibre moves the level of a block
constexpr double lifeSpread = 0.2;  ///< of the logarithm: what is believed of a life before anything is seen
constexpr double longestLife = 12'000, lifeStep = 100;
constexpr std::array bends{1.0, 1.5, 2.0};  ///< power of the rise

struct Block {
    double age = 0;  ///< arcs since the exchange, mean
    double db = 0;
    double variance = 0;
};

/// Age of every arc since the last exchange of electrodes.
struct Ages {
    std::size_t first = 0;  ///< index of the first arc on these electrodes
    std::uint32_t atFirst = 0;
    std::optional<std::uint32_t> now;
};

Ages agesOf(const SplicerHistory& history) {
    Ages ages;
    const CareRecord* exchange = nullptr;
    for (const auto& event : history.events)
        if (event.action == action::electrodeReplace && event.tool == history.splicer) exchange = &event;
    if (history.arcs.empty()) return ages;
    if (exchange)
        ages.first =
            static_cast<std::size_t>(std::find_if(history.arcs.begin(), history.arcs.end(),
                                                  [&](const HistoryArc& a) { return a.at > exchange->at; }) -
                                     history.arcs.begin());
    const auto& last = history.arcs.back();
    if (exchange && exchange->counter && last.counter && last.counter->value >= exchange->counter->value) {
        ages.now = last.counter->value - exchange->counter->value;
    } else if (exchange) {
        ages.now = static_cast<std::uint32_t>(history.arcs.size() - ages.first);
    } else if (last.counter) {
        ages.now = last.counter->value;
    }
    if (ages.now && ages.first < history.arcs.size()) {
        const auto count = static_cast<std::uint32_t>(history.arcs.size() - ages.first);
        ages.atFirst = *ages.now > count ? *ages.now - count + 1 : 1;
    }
    return ages;
}

/// Mean of the first attempts of an arc; a failed one counts as far as the cap.
std::optional<double> levelOf(const SplicerHistory& history, const HistoryArc& arc) {
    double sum = 0, n = 0;
    for (std::size_t i = arc.firstReading; i < arc.firstReading + arc.readingCount; ++i) {
        const auto& reading = history.readings[i];
        if (reading.attempt > 1) continue;
        sum += std::min(decibels(reading.loss), cappedDb);
        n += 1;
    }
    if (n == 0) return std::nullopt;
    return sum / n;
}

/// Blocks of the splice mode that was used most.
std::vector<Block> blocksOf(const SplicerHistory& history, const Ages& ages) {
    std::map<std::pair<std::uint32_t, int>, std::size_t> used;
    for (std::size_t i = ages.first; i < history.arcs.size(); ++i)
        ++used[{history.arcs[i].mode, history.arcs[i].channels}];
    if (used.empty()) return {};
    const auto most = std::max_element(used.begin(), used.end(), [](const auto& a, const auto& b) {
                          return a.second < b.second;
                      })->first;
    std::vector<Block> blocks;
    double age = 0, sum = 0, squares = 0, n = 0;
    for (std::size_t i = ages.first; i < history.arcs.size(); ++i) {
        const auto& arc = history.arcs[i];
        if (std::pair(arc.mode, static_cast<int>(arc.channels)) != most) continue;
        const auto db = levelOf(history, arc);
        if (!db) continue;
        age += ages.atFirst + static_cast<double>(i - ages.first);
        sum += *db;
        squares += *db * *db;
        n += 1;
        if (n < blockArcs) continue;
        const double mean = sum / n;
        blocks.push_back({age / n, mean, std::max(0.0, squares / n - mean * mean) / n + lotDb * lotDb});
        age = sum = squares = n = 0;
    }
    return blocks;
}

/// Log-likelihood of a life whose level is `flat` until `bend` and then rises to the spent level at `life`;
/// the flat level that fits best is taken.
double fit(const std::vector<Block>& blocks, double life, double bend, double power) {
    double xx = 0, xy = 0, yy = 0;
    for (const auto& block : blocks) {
        const double risen =
            block.age <= bend ? 0.0 : std::min(1.5, std::pow((block.age - bend) / (life - bend), power));
        // level = flat * (1 - risen) + spent * risen, with the flat level unknown.
        const double x = 1 - risen, y = block.db - spentMeanDb * risen;
        xx += x * x / block.variance;
        xy += x * y / block.variance;
        yy += y * y / block.variance;
    }
    if (xx <= 0) return -0.5 * yy;
    const double flat = std::clamp(xy / xx, 0.0, spentMeanDb);
    return -0.5 * (yy - 2 * flat * xy + flat * flat * xx);
}

struct Weighed {
    double life = 0, weight = 0;
};

double quantileOf(const std::vector<Weighed>& lives, double share) {
    double sum = 0;
    for (const auto& l : lives) {
        if (sum + l.weight >= share) return l.life + lifeStep * ((share - sum) / l.weight - 0.5);
        sum += l.weight;
    }
    return lives.back().life;
}

/// What is left of the belief in each length of life, shortest first; weights add up to 1.
std::vector<Weighed> weigh(const std::vector<Block>& blocks) {
    std::vector<Weighed> lives;
    double best = -1e300;
    std::vector<std::pair<double, double>> found;  // life, log weight
    for (double life = 600; life <= longestLife; life += lifeStep) {
        const double off = std::log(life / plainElectrodeLife) / lifeSpread;
        double top = -1e300;
        std::vector<double> logs;
        for (double share = 0.3; share < 0.95; share += 0.1)
            for (const double power : bends) {
                logs.push_back(fit(blocks, life, share * life, power) - 0.5 * off * off - std::log(life));
                top = std::max(top, logs.back());
            }
        double sum = 0;
        for (const double l : logs) sum += std::exp(l - top);
        found.emplace_back(life, top + std::log(sum));
        best = std::max(best, found.back().second);
    }
    double total = 0;
    for (const auto& [life, log] : found) total += std::exp(log - best);
    for (const auto& [life, log] : found) lives.push_back({life, std::exp(log - best) / total});
    return lives;
}

}  // namespace

ElectrodeForecast forecastElectrodes(const SplicerHistory& history) {
    const Ages ages = agesOf(history);
    ElectrodeForecast forecast;
    forecast.arcsSince = ages.now;
    forecast.plainRuleLeft = std::max(0.0, plainElectrodeLife - ages.now.value_or(0));
    if (!ages.now || *ages.now < earliestForecastArcs) return forecast;
    const auto blocks = blocksOf(history, ages);
    if (blocks.size() < fewestBlocks) return forecast;
    const auto lives = weigh(blocks);
    const auto left = [&](double share) { return std::max(0.0, quantileOf(lives, share) - *ages.now); };
    forecast.arcsLeft = left(0.5);
    forecast.arcsLeftLow = left(0.1);
    forecast.arcsLeftHigh = left(0.9);
    return forecast;
}

}  // namespace arc::drift
