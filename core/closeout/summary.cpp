// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/summary.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/optics/splice_loss.hpp"

namespace arc::closeout {

Averages average(std::span<const Loss> losses, std::size_t attempts, std::size_t firstTime) {
    Averages result;
    result.splices = losses.size();
    result.attempts = attempts;
    result.firstTime = firstTime;
    if (losses.empty()) return result;
    std::int64_t sum = 0;
    for (const Loss loss : losses) sum += loss.value;
    const auto n = static_cast<double>(losses.size());
    const double mean = static_cast<double>(sum) / n;
    result.meanDb = mean / 1000.0;
    result.worst = *std::ranges::max_element(losses);
    std::vector<Loss> sorted(losses.begin(), losses.end());
    std::ranges::sort(sorted);
    const std::size_t half = sorted.size() / 2;
    result.medianDb = sorted.size() % 2 == 1 ? decibels(sorted[half])
                                             : (decibels(sorted[half - 1]) + decibels(sorted[half])) / 2.0;
    if (losses.size() > 1) {
        double squares = 0;
        for (const Loss loss : losses) squares += (loss.value - mean) * (loss.value - mean);
        result.sdDb = std::sqrt(squares / (n - 1)) / 1000.0;
    }
    return result;
}

Histogram histogram(std::span<const Loss> losses, Loss limit) {
    Histogram result;
    const std::int32_t end = std::clamp((2 * limit.value + 9) / 10 * 10, 100, 600);
    for (std::int32_t from = 0; from < end; from += result.width.value)
        result.bins.push_back({Loss{from}, Loss{from + result.width.value}, 0});
    for (const Loss loss : losses) {
        if (loss.value >= end)
            ++result.beyond;
        else
            ++result.bins[static_cast<std::size_t>(std::max(loss.value, 0) / result.width.value)].count;
    }
    return result;
}

namespace {

std::vector<BudgetLine> linesOf(const optics::Link& link, const optics::LinkBudget& budget) {
    return {{"fibre", link.lengthKm, "km", link.fibreDbPerKm, budget.fibreDb},
            {"splices", static_cast<double>(link.splices), "pieces", link.spliceDb, budget.splicesDb},
            {"connectors", static_cast<double>(link.connections), "pieces", link.connectionDb,
             budget.connectionsDb}};
}

}  // namespace

Result<std::vector<LinkBudget>> linkBudgets(const LinkAssumptions& assumptions, double lengthKm, int splices,
                                            const AcceptanceRule& rule,
                                            const std::function<SplicedMean(int wavelengthNm)>& asSpliced) {
    std::vector<LinkBudget> budgets;
    for (const auto& [wavelengthNm, dbPerKm] : assumptions.attenuation) {
        optics::Link link{lengthKm,
                          splices,
                          assumptions.connectors,
                          dbPerKm,
                          decibels(rule.perSplice),
                          assumptions.dbPerConnector};
        const auto allowed = optics::linkBudget(link);
        if (!allowed) return tl::unexpected(allowed.error());
        const SplicedMean mean = asSpliced(wavelengthNm);
        LinkBudget budget{wavelengthNm,  linesOf(link, *allowed), allowed->totalDb(), {}, 0,
                          mean.measured, mean.estimated};
        link.spliceDb = mean.db;
        const auto spliced = optics::linkBudget(link);
        if (!spliced) return tl::unexpected(spliced.error());
        budget.asSpliced = linesOf(link, *spliced);
        budget.asSplicedDb = spliced->totalDb();
        budgets.push_back(std::move(budget));
    }
    return budgets;
}

}  // namespace arc::closeout
