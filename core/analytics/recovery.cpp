// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/recovery.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace arc::drift {

namespace {

double arcMeanDb(const RawArc& arc) {
    double sum = 0, n = 0;
    for (int c = 0; c < maxGrooves; ++c)
        if (arc.has(c)) sum += arc.loss[c] / 1000.0, ++n;
    return n > 0 ? sum / n : 0;
}

}  // namespace

CareEffect judged(CareEffect effect, std::span<const Row> window, const Model& model) {
    const auto split = static_cast<std::size_t>(
        std::lower_bound(window.begin(), window.end(), effect.at,
                         [](const Row& r, const Instant& t) { return r.raw.at < t; }) -
        window.begin());
    const auto before = std::min<std::size_t>(split, arcsBeforeCare),
               after = std::min<std::size_t>(window.size() - split, arcsAfterCare);
    effect.before = static_cast<int>(before);
    effect.after = static_cast<int>(after);
    if (split < window.size()) effect.atArc = window[split].raw.number;
    if (before < 5 || after < 5) return effect;
    std::vector<double> differences;
    double level = 0;
    for (std::size_t j = split; j < split + after; ++j) {
        level += window[j].score.common / static_cast<double>(after);
        for (std::size_t i = split - before; i < split; ++i)
            differences.push_back(arcMeanDb(window[j].raw) - arcMeanDb(window[i].raw));
    }
    std::sort(differences.begin(), differences.end());
    effect.shiftDb = differences[differences.size() / 2];
    const double m = static_cast<double>(before), n = static_cast<double>(after);
    const double half = 1.96 * std::sqrt(m * n * (m + n + 1) / 12);
    const auto low = static_cast<std::size_t>(std::max(0.0, m * n / 2 - half));
    effect.low = differences[low];
    effect.high = differences[differences.size() - 1 - low];
    if (after < arcsAfterCare) return effect;
    const double error = std::sqrt((1 + 10 * model.common.wander) / n);
    if (effect.low > 0)
        effect.verdict = CareVerdict::Worse;
    else if (effect.high >= 0)
        effect.verdict = CareVerdict::NoChange;
    else
        effect.verdict = level < 2 * error ? CareVerdict::Recovered : CareVerdict::Better;
    return effect;
}

}  // namespace arc::drift
