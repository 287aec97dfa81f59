// SPDX-License-Identifier: GPL-3.0-or-later
// Steps through time answer what one question would, whichever end they begin at.
#include "core/work/stepwise_splices.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/memory_logbook.hpp"

namespace arc {
namespace {

RC_GTEST_PROP(StepwiseSplices, PageByPageIsTheWholeAnswerInOrder, ()) {
    test::MemoryLogbook book;
    const auto days = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 4'000));
    int number = 0;
    for (const int day : days) {
        SpliceArc arc;
        arc.id.uuid.bytes[15] = static_cast<std::uint8_t>(++number);
        arc.at.ms = 1'900'000'000'000 + day * msPerDay;
        arc.readings.resize(static_cast<std::size_t>(*rc::gen::inRange(1, 4)));
        for (auto& reading : arc.readings) reading.loss = Loss{*rc::gen::inRange(0, 200)};
        book.arcList.push_back(arc);
    }
    std::ranges::sort(book.arcList, {}, [](const SpliceArc& a) { return a.at.ms; });
    SpliceFilter filter;
    if (*rc::gen::arbitrary<bool>()) filter.lossAbove = Loss{150};
    if (*rc::gen::arbitrary<bool>())
        filter.fromMs = 1'900'000'000'000 + *rc::gen::inRange(0, 4'000) * msPerDay;
    if (*rc::gen::arbitrary<bool>()) filter.toMs = 1'900'000'000'000 + *rc::gen::inRange(0, 4'000) * msPerDay;
    const auto order = *rc::gen::element(PageOrder::OldestFirst, PageOrder::NewestFirst);
    const auto limit = static_cast<std::size_t>(*rc::gen::inRange(1, 20));
    const auto whole = book.splices(filter, order, std::nullopt, 100'000).value();
    std::vector<std::uint64_t> wanted, got;
    for (const auto& row : whole) wanted.push_back(row.row);
    NoProgress quiet;
    std::optional<PageKey> after;
    while (true) {
        const auto page = splicesStepwise(book, filter, order, after, limit, quiet).value();
        RC_ASSERT(page.size() <= limit);
        for (const auto& row : page) got.push_back(row.row);
        if (page.size() < limit) break;
        after = PageKey{page.back().arc.at.ms, page.back().row};
    }
    RC_ASSERT(got == wanted);
}

}  // namespace
}  // namespace arc
