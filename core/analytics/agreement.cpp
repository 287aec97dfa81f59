// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/agreement.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <utility>

#include "core/analytics/classical_charts.hpp"
#include "core/analytics/run_length.hpp"
#include "core/optics/splice_loss.hpp"
#include "core/stats/normal.hpp"
#include "core/stats/plain_number.hpp"
#include "core/stats/student.hpp"

namespace arc::drift {
namespace {

constexpr double referenceValue = 0.5;
/// Estimates are shown in steps of 0.01 dB: equal differences do not vouch for less scatter than that.
constexpr double roundingDeviationDb = 0.01 / 3.4641016151377544;

struct Found {
    const SpliceArc* arc = nullptr;
    const Reading* reading = nullptr;
};

bool later(const Found& a, const Found& b) {
    if (a.reading->attempt != b.reading->attempt) return a.reading->attempt > b.reading->attempt;
    return a.arc->at.ms > b.arc->at.ms;
}

bool allFinite(std::span<const double> values) {
    return std::all_of(values.begin(), values.end(), [](double x) { return std::isfinite(x); });
}

}  // namespace

std::vector<MeasuredSplice> pairMeasured(std::span<const SpliceArc> arcs,
                                         std::span<const MeasuredLoss> measured) {
    std::map<std::pair<ClosureId, std::string>, Found> last;
    for (const SpliceArc& arc : arcs) {
        if (!arc.closure) continue;
        for (const Reading& reading : arc.readings) {
            if (reading.state != ReadingState::Good) continue;
            const Found found{&arc, &reading};
            for (const std::string* fibre : {&reading.fibreA, &reading.fibreB}) {
                if (fibre->empty()) continue;
                const auto [place, isNew] = last.try_emplace({*arc.closure, *fibre}, found);
                if (!isNew && later(found, place->second)) place->second = found;
            }
        }
    }
    std::vector<MeasuredSplice> pairs;
    for (const MeasuredLoss& loss : measured) {
        const auto both = optics::measuredLoss(loss);
        if (!both || both->ways != optics::Ways::Two || !loss.closure || loss.fibre.empty()) continue;
        const auto found = last.find({*loss.closure, loss.fibre});
        if (found == last.end()) continue;
        const auto [arc, reading] = found->second;
        pairs.push_back({arc->splicer, arc->at, arc->id, reading->channel, loss.wavelengthNm,
                         decibels(reading->loss), both->db});
    }
    std::stable_sort(pairs.begin(), pairs.end(), [](const MeasuredSplice& a, const MeasuredSplice& b) {
        return std::pair(a.at.ms, a.channel) < std::pair(b.at.ms, b.channel);
    });
    return pairs;
}

Result<Agreement> agreement(std::span<const double> differencesDb) {
    if (differencesDb.size() < 3)
        return fail(ProblemCode::BadInput, "agreement needs at least three splices measured from both ends",
                    std::to_string(differencesDb.size()) + " so far", "measure some more");
    if (!allFinite(differencesDb)) return fail(ProblemCode::BadInput, "a difference is not a number");
    Agreement found;
    found.n = static_cast<int>(differencesDb.size());
    const auto n = static_cast<double>(found.n);
    for (const double d : differencesDb) found.meanDb += d / n;
    double squares = 0;
    for (const double d : differencesDb) squares += (d - found.meanDb) * (d - found.meanDb);
    found.deviationDb = std::sqrt(squares / (n - 1));
    const double t = stats::studentQuantile(0.975, n - 1);
    const double half = t * found.deviationDb / std::sqrt(n);
    const double limitHalf = half * std::sqrt(3.0);
    found.lowerDb = found.meanDb - 1.96 * found.deviationDb;
    found.upperDb = found.meanDb + 1.96 * found.deviationDb;
    found.meanInterval = {found.meanDb - half, found.meanDb + half};
    found.lowerInterval = {found.lowerDb - limitHalf, found.lowerDb + limitHalf};
    found.upperInterval = {found.upperDb - limitHalf, found.upperDb + limitHalf};
    return found;
}

Result<DifferenceChart> differenceChart(std::span<const double> differencesDb, double budget) {
    if (!(budget >= 10 && budget <= 1e6))
        return fail(ProblemCode::BadInput, "the false-alarm budget is out of range",
                    stats::plainNumber(budget), "give one false signal per 10 to 1,000,000 splices");
    if (!allFinite(differencesDb)) return fail(ProblemCode::BadInput, "a difference is not a number");
    const auto limit = limitFor(CusumChart{.k = referenceValue, .sides = Sides::Both}, budget);
    if (!limit) return tl::unexpected(limit.error());
    DifferenceChart chart;
    chart.limit = *limit;
    double mean = 0, squares = 0;
    for (std::size_t i = 0; i < differencesDb.size(); ++i) {
        const auto before = static_cast<double>(i);
        const double x = differencesDb[i];
        double score = 0;
        if (i >= 2 && x != mean) {
            const double deviation = std::max(std::sqrt(squares / (before - 1)), roundingDeviationDb);
            const double t = std::sqrt(before / (before + 1)) * (x - mean) / deviation;
            // The upper half by symmetry, so that far scores keep their digits.
            score = std::copysign(stats::normalUpperQuantile(stats::studentCdf(-std::abs(t), before - 1)), t);
        }
        chart.score.push_back(std::clamp(score, -8.0, 8.0));
        const double step = x - mean;
        mean += step / (before + 1);
        squares += step * (x - mean);
    }
    const CusumSeries sums = cusumSeries(chart.score, 0, referenceValue);
    chart.up = sums.up;
    chart.down = sums.down;
    const auto up = firstBeyond(chart.up, chart.limit), down = firstBeyond(chart.down, chart.limit);
    const bool upFirst = up && (!down || *up <= *down);
    chart.signal = upFirst ? up : down;
    if (chart.signal) {
        const std::vector<double>& sum = upFirst ? chart.up : chart.down;
        std::size_t began = *chart.signal;
        while (began > 0 && sum[began - 1] > 0) --began;
        chart.began = began;
    }
    return chart;
}

}  // namespace arc::drift
