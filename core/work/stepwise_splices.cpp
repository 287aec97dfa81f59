// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/stepwise_splices.hpp"

#include <algorithm>
#include <iterator>

namespace arc {
namespace {

constexpr std::int64_t firstStep = 30 * msPerDay;

/// Time of the first row there is in this direction, wherever the clock of this laptop stands.
Result<std::optional<std::int64_t>> firstAt(Logbook& book, const SpliceFilter& filter, PageOrder order) {
    SpliceFilter any;
    any.fromMs = filter.fromMs;
    any.toMs = filter.toMs;
    const auto rows = book.splices(any, order, std::nullopt, 1);
    if (!rows) return tl::unexpected(rows.error());
    if (rows->empty()) return std::optional<std::int64_t>{};
    return std::optional(rows->front().arc.at.ms);
}

}  // namespace

Result<std::vector<SpliceRow>> splicesStepwise(Logbook& book, const SpliceFilter& filter, PageOrder order,
                                               std::optional<PageKey> after, std::size_t limit,
                                               Progress& progress) {
    const bool down = order == PageOrder::NewestFirst;
    const auto end = firstAt(book, filter, down ? PageOrder::OldestFirst : PageOrder::NewestFirst);
    if (!end) return tl::unexpected(end.error());
    std::optional<std::int64_t> begin;
    if (after) {
        begin = after->atMs;
    } else {
        const auto first = firstAt(book, filter, order);
        if (!first) return tl::unexpected(first.error());
        begin = *first;
    }
    std::vector<SpliceRow> rows;
    if (!*end || !begin) return rows;
    std::int64_t step = firstStep;
    // The near edge of a step; both edges of the first one hold its own row.
    std::int64_t at = down ? *begin + 1 : *begin;
    while (true) {
        if (progress.stopRequested())
            return fail(ProblemCode::Cancelled, "the search was stopped; nothing was changed");
        SpliceFilter slice = filter;
        const std::int64_t far = down ? at - step : at + step;
        const bool last = down ? far <= **end : far > **end;
        if (down) {
            slice.toMs = at;
            slice.fromMs = last ? **end : far;
        } else {
            slice.fromMs = at;
            slice.toMs = last ? **end + 1 : far;
        }
        auto page = book.splices(slice, order, after, limit - rows.size());
        if (!page) return page;
        std::ranges::move(*page, std::back_inserter(rows));
        if (last || rows.size() >= limit) return rows;
        after.reset();
        at = far;
        step *= 2;
    }
}

}  // namespace arc
