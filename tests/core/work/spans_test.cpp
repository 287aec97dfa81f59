// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/spans.hpp"

#include <algorithm>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "core/entry.hpp"

namespace arc {
namespace {

template <class AnyId>
AnyId numbered(int n) {
    AnyId id;
    id.uuid.bytes[0] = 1;
    id.uuid.bytes[15] = static_cast<std::uint8_t>(n);
    return id;
}

/// HR-1 to HR-12, in the order a logbook lists labels: HR-1, HR-10, HR-11, HR-12, HR-2, …
SpanGround ground() {
    SpanGround made;
    made.job = numbered<JobId>(1);
    for (int n = 1; n <= 12; ++n) {
        Closure closure;
        closure.id = numbered<ClosureId>(n);
        closure.label = "HR-" + std::to_string(n);
        made.closures.push_back(closure);
    }
    std::ranges::sort(made.closures, {}, &Closure::label);
    Cable cable;
    cable.id = numbered<CableId>(1);
    cable.label = "K-1";
    made.cables.push_back(cable);
    return made;
}

std::vector<ClosureId> closures(std::initializer_list<int> numbers) {
    std::vector<ClosureId> ids;
    for (const int n : numbers) ids.push_back(numbered<ClosureId>(n));
    return ids;
}

TEST(Spans, closuresByListAndRangeGoAlongTheNumbers) {
    const auto at = ground();
    EXPECT_EQ(*closuresFromText("HR-8 to HR-11", at.closures), closures({8, 9, 10, 11}));
    EXPECT_EQ(*closuresFromText(" HR-1 , HR-3;HR-5 to HR-6,", at.closures), closures({1, 3, 5, 6}));
    EXPECT_EQ(*closuresFromText("HR-3 to HR-1", at.closures), closures({3, 2, 1}));
    EXPECT_TRUE(closuresFromText("", at.closures)->empty());
    EXPECT_EQ(closuresFromText("HR-1 to HR-13", at.closures).error().what, "this job has no closure HR-13");
    EXPECT_EQ(closuresFromText("HR-1, nonsense", at.closures).error().what,
              "this job has no closure nonsense");
    EXPECT_EQ(closuresFromText("HR-1 to HR-3, HR-2", at.closures).error().what,
              "closure HR-2 is named twice");
}

RC_GTEST_PROP(SpansProperty, whatIsWrittenIsReadBack, ()) {
    const auto at = ground();
    std::vector<ClosureId> on;
    for (const int n : *rc::gen::unique<std::vector<int>>(rc::gen::inRange(1, 13)))
        on.push_back(numbered<ClosureId>(n));
    const auto text = closuresToText(on, at.closures);
    const auto back = closuresFromText(text, at.closures);
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == on);
}

TEST(Spans, anEndIsAClosureOrHasANameOfItsOwn) {
    const auto at = ground();
    EXPECT_EQ(endFromText(" HR-3 ", at.closures), (SpanEnd{numbered<ClosureId>(3), {}}));
    EXPECT_EQ(endFromText("rack 2", at.closures), (SpanEnd{std::nullopt, "rack 2"}));
    EXPECT_EQ(endToText({numbered<ClosureId>(3), {}}, at.closures), "HR-3");
    EXPECT_EQ(endToText({std::nullopt, "rack 2"}, at.closures), "rack 2");
}

TEST(Spans, csvReadsByColumnNameAllOrNothing) {
    const auto at = ground();
    int next = 0;
    const auto fresh = [&] { return numbered<SpanId>(++next); };
    const auto read = spansFromCsv(
        "span,from,to,cable,length_km,closures\r\n"
        "West,rack 1,HR-3,K-1,12.5,HR-1 to HR-3\r\n"
        "East,HR-3,rack 2,,,\"HR-4, HR-5\"\r\n",
        at, fresh);
    ASSERT_TRUE(read) << read.error().sentence();
    ASSERT_EQ(read->size(), 2u);
    const Span west{numbered<SpanId>(1),
                    at.job,
                    "West",
                    {std::nullopt, "rack 1"},
                    {numbered<ClosureId>(3), {}},
                    numbered<CableId>(1),
                    12.5,
                    closures({1, 2, 3})};
    EXPECT_EQ(read->at(0), west);
    EXPECT_EQ(read->at(1).closures, closures({4, 5}));
    EXPECT_EQ(read->at(1).lengthKm, std::nullopt);
    for (const Span& span : *read) EXPECT_TRUE(validate(span)) << span.label;
    // Semicolons with a decimal comma; a span that is there keeps its identity, the same file changes
    // nothing.
    auto known = at;
    known.spans = *read;
    EXPECT_TRUE(
        spansFromCsv("to;from;span;cable;closures;length_km\nHR-3;rack 1;West;K-1;HR-1 to HR-3;12,5\n", known,
                     fresh)
            ->empty());
    const auto longer =
        spansFromCsv("span;from;to;length_km;closures\nWest;rack 1;HR-3;13;HR-1\n", known, fresh);
    ASSERT_TRUE(longer);
    EXPECT_EQ(longer->at(0).id, west.id);
    EXPECT_EQ(longer->at(0).lengthKm, 13.0);
}

TEST(Spans, csvNamesTheLineThatIsWrong) {
    const auto at = ground();
    int next = 0;
    const auto fresh = [&] { return numbered<SpanId>(++next); };
    const auto problem = [&](std::string_view csv) {
        const auto read = spansFromCsv(csv, at, fresh);
        EXPECT_FALSE(read) << csv;
        return read ? std::string() : read.error().sentence();
    };
    EXPECT_EQ(problem(""),
              "the file is empty. Begin the file with the line span,from,to,cable,length_km,closures.");
    EXPECT_TRUE(problem("span,from\nA,b\n").starts_with("the header has no column to (line 1)"));
    EXPECT_EQ(problem("span,from,to\nA,b,c\n,b,c\n"), "the span has no label (line 3).");
    EXPECT_EQ(problem("span,from,to,closures\nA,b,c,HR-99\n"), "this job has no closure HR-99 (line 2).");
    EXPECT_EQ(problem("span,from,to,length_km\nA,b,c,far\n"), "\"far\" is not a length in km (line 2).");
    EXPECT_EQ(problem("span,from,to,cable\nA,b,c,K-9\n"), "this job has no cable K-9 (line 2).");
    EXPECT_EQ(problem("span,from,to\nA,b,c\nA,d,e\n"), "span A is in the file twice (line 3).");
    EXPECT_TRUE(problem("span,from,to,closures\nA,b,c,HR-1\nB,c,d,HR-1\n")
                    .starts_with("closure HR-1 is on span B already"));
}

TEST(Spans, anEntrySaysWhatIsWrongWithIt) {
    Span span{numbered<SpanId>(1), numbered<JobId>(1), "West", {{}, "rack 1"}, {{}, "rack 2"}, {}, {}, {}};
    EXPECT_TRUE(validate(span));
    EXPECT_EQ(text(span), "Span West with 0 closures");
    const auto field = [](const Span& wrong) {
        const auto valid = validate(wrong);
        return valid ? std::string() : valid.error().where;
    };
    auto wrong = span;
    wrong.to = wrong.from;
    EXPECT_EQ(field(wrong), "to");
    wrong = span;
    wrong.from.name.clear();
    EXPECT_EQ(field(wrong), "from");
    wrong.from.closure = numbered<ClosureId>(1);
    EXPECT_TRUE(validate(wrong));
    wrong.from.name = "rack 1";
    EXPECT_EQ(field(wrong), "from") << "a closure and a name";
    wrong = span;
    wrong.lengthKm = -1;
    EXPECT_EQ(field(wrong), "lengthKm");
    wrong = span;
    wrong.closures = closures({1, 2, 1});
    EXPECT_EQ(field(wrong), "closures");
    wrong = span;
    wrong.label.clear();
    EXPECT_EQ(field(wrong), "label");
}

}  // namespace
}  // namespace arc
