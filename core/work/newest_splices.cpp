// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/newest_splices.hpp"

#include <algorithm>
#include <iterator>

namespace arc {
namespace {

constexpr std::int64_t firstStep = 30 * msPerDay;

}  // namespace

Result<std::vector<SpliceRow>> newestSplices(Logbook& book, const SpliceFilter& filter,
                                             std::optional<PageKey> after, std::size_t limit,
                                             Progress& progress) {
    std::vector<SpliceRow> rows;
    SpliceFilter slice = filter;
    std::int64_t step = firstStep;
    // The first step begins at the newest row there is, wherever the clock of this laptop stands.
    if (!after) {
        SpliceFilter any;
        any.toMs = filter.toMs;
        const auto newest = book.splices(any, PageOrder::NewestFirst, std::nullopt, 1);
        if (!newest || newest->empty()) return newest;
        slice.fromMs = newest->front().arc.at.ms - step;
    } else {
        slice.fromMs = after->atMs - step;
    }
    while (true) {
        if (progress.stopRequested())
            return fail(ProblemCode::Cancelled, "the search was stopped; nothing was changed");
        const bool last = (filter.fromMs && *slice.fromMs <= *filter.fromMs) || *slice.fromMs <= 0;
        if (last) slice.fromMs = filter.fromMs;
        auto page = book.splices(slice, PageOrder::NewestFirst, after, limit - rows.size());
        if (!page) return page;
        std::ranges::move(*page, std::back_inserter(rows));
        if (last || rows.size() >= limit) return rows;
        after.reset();
        slice.toMs = slice.fromMs;
        step *= 2;
        slice.fromMs = *slice.toMs - step;
    }
}

}  // namespace arc
