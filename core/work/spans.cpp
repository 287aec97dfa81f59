// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/spans.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

#include "core/work/small_table.hpp"
#include "core/work/trim.hpp"

namespace arc {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// "HR-9" before "HR-10".
bool comesBefore(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        if (isDigit(a.front()) && isDigit(b.front())) {
            const auto number = [](std::string_view& text) {
                const auto end = std::min(text.find_first_not_of("0123456789"), text.size());
                std::string_view digits = text.substr(0, end);
                text.remove_prefix(end);
                digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
                return digits;
            };
            const std::string_view left = number(a), right = number(b);
            if (left.size() != right.size()) return left.size() < right.size();
            if (left != right) return left < right;
        } else if (a.front() != b.front()) {
            return a.front() < b.front();
        } else {
            a.remove_prefix(1);
            b.remove_prefix(1);
        }
    }
    return a.empty() && !b.empty();
}

std::vector<const Closure*> inOrder(std::span<const Closure> closures) {
    std::vector<const Closure*> sorted;
    for (const Closure& closure : closures) sorted.push_back(&closure);
    std::ranges::stable_sort(
        sorted, [](const Closure* a, const Closure* b) { return comesBefore(a->label, b->label); });
    return sorted;
}

std::optional<std::size_t> placeOf(const std::vector<const Closure*>& sorted, std::string_view label) {
    const auto found = std::ranges::find_if(sorted, [&](const Closure* c) { return c->label == label; });
    if (found == sorted.end()) return std::nullopt;
    return static_cast<std::size_t>(found - sorted.begin());
}

tl::unexpected<Problem> wrong(std::string what, std::string where = {}) {
    return fail(ProblemCode::BadInput, std::move(what), std::move(where));
}

tl::unexpected<Problem> noClosure(std::string_view label) {
    return fail(ProblemCode::NotFound, "this job has no closure " + std::string(label.substr(0, 60)), "",
                "Write the closures like \"HR-01 to HR-05, HR-07\"");
}

std::optional<double> kilometres(std::string text) {
    std::ranges::replace(text, ',', '.');
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

/// One row of the table as a span; `cell` answers "" for a column that is not there.
Result<Span> spanOf(const std::function<std::string(const char*)>& cell, const SpanGround& ground,
                    const std::function<SpanId()>& newId) {
    Span span;
    span.label = cell("span");
    if (span.label.empty()) return wrong("the span has no label");
    const auto known = std::ranges::find(ground.spans, span.label, &Span::label);
    span.id = known == ground.spans.end() ? newId() : known->id;
    span.job = ground.job;
    span.from = endFromText(cell("from"), ground.closures);
    span.to = endFromText(cell("to"), ground.closures);
    if (const std::string label = cell("cable"); !label.empty()) {
        const auto cable = std::ranges::find(ground.cables, label, &Cable::label);
        if (cable == ground.cables.end())
            return fail(ProblemCode::NotFound, "this job has no cable " + label, "", "Make the cable first");
        span.cable = cable->id;
    }
    if (const std::string length = cell("length_km"); !length.empty()) {
        span.lengthKm = kilometres(length);
        if (!span.lengthKm) return wrong("\"" + length + "\" is not a length in km");
    }
    auto closures = closuresFromText(cell("closures"), ground.closures);
    if (!closures) return tl::unexpected(closures.error());
    span.closures = std::move(*closures);
    return span;
}

}  // namespace

Result<std::vector<ClosureId>> closuresFromText(std::string_view text, std::span<const Closure> closures) {
    const auto sorted = inOrder(closures);
    std::vector<ClosureId> on;
    const auto add = [&](std::size_t at) -> Result<void> {
        if (std::ranges::find(on, sorted[at]->id) != on.end())
            return wrong("closure " + sorted[at]->label + " is named twice");
        on.push_back(sorted[at]->id);
        return {};
    };
    while (!trim(text).empty()) {
        const auto end = text.find_first_of(",;\n");
        const std::string_view part = trim(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (part.empty()) continue;
        std::optional<std::size_t> first = placeOf(sorted, part), last = first;
        if (!first) {
            constexpr std::string_view word = " to ";
            const auto to = part.find(word);
            if (to == std::string_view::npos) return noClosure(part);
            const std::string_view left = trim(part.substr(0, to)),
                                   right = trim(part.substr(to + word.size()));
            first = placeOf(sorted, left);
            last = placeOf(sorted, right);
            if (!first) return noClosure(left);
            if (!last) return noClosure(right);
        }
        for (std::size_t at = *first;; at += *first <= *last ? 1 : -1) {
            if (const auto added = add(at); !added) return tl::unexpected(added.error());
            if (at == *last) break;
        }
    }
    return on;
}

std::string closuresToText(std::span<const ClosureId> on, std::span<const Closure> closures) {
    const auto sorted = inOrder(closures);
    std::vector<std::size_t> places;
    for (const ClosureId id : on)
        for (std::size_t i = 0; i < sorted.size(); ++i)
            if (sorted[i]->id == id) places.push_back(i);
    std::string text;
    for (std::size_t i = 0; i < places.size();) {
        std::size_t last = i;
        while (last + 1 < places.size() && places[last + 1] == places[last] + 1) ++last;
        if (!text.empty()) text += ", ";
        text += sorted[places[i]]->label;
        // Two in a row are a list.
        if (last == i + 1) last = i;
        if (last > i) text += " to " + sorted[places[last]]->label;
        i = last + 1;
    }
    return text;
}

SpanEnd endFromText(std::string_view text, std::span<const Closure> closures) {
    const auto found = std::ranges::find(closures, trim(text), &Closure::label);
    if (found != closures.end()) return {found->id, {}};
    return {std::nullopt, std::string(trim(text))};
}

std::string endToText(const SpanEnd& end, std::span<const Closure> closures) {
    if (!end.closure) return end.name;
    const auto found = std::ranges::find(closures, *end.closure, &Closure::id);
    return found == closures.end() ? std::string() : found->label;
}

Result<void> spanFits(const Span& span, std::span<const Span> others, std::span<const Closure> closures) {
    for (const Span& other : others) {
        if (other.id == span.id) continue;
        for (const ClosureId id : span.closures)
            if (std::ranges::find(other.closures, id) != other.closures.end())
                return fail(
                    ProblemCode::Conflict,
                    "closure " + endToText({id, {}}, closures) + " is on span " + other.label + " already",
                    "", "A splice counts in one span: leave the closure out of one of them");
    }
    return {};
}

Result<std::vector<Span>> spansFromCsv(std::string_view csv, const SpanGround& ground,
                                       const std::function<SpanId()>& newId) {
    const SmallTable table = smallTable(csv);
    const char* const begin = "Begin the file with the line span,from,to,cable,length_km,closures";
    if (table.headerLine == 0) return fail(ProblemCode::BadInput, "the file is empty", {}, begin);
    for (const char* name : {"span", "from", "to"})
        if (!table.columns.contains(name))
            return fail(ProblemCode::BadInput, std::string("the header has no column ") + name,
                        lineWords(table.headerLine), begin);
    std::vector<Span> spans;
    std::vector<Span> all = ground.spans;
    for (const auto& row : table.rows) {
        const std::string where = lineWords(row.line);
        auto span =
            spanOf([&](const char* name) { return table.cell(row, name).value_or(""); }, ground, newId);
        if (!span) return wrong(span.error().what, where);
        if (std::ranges::find(spans, span->label, &Span::label) != spans.end())
            return wrong("span " + span->label + " is in the file twice", where);
        std::erase_if(all, [&](const Span& one) { return one.id == span->id; });
        all.push_back(*span);
        spans.push_back(std::move(*span));
    }
    for (const Span& span : spans)
        if (const auto fits = spanFits(span, all, ground.closures); !fits)
            return tl::unexpected(fits.error());
    std::erase_if(
        spans, [&](const Span& span) { return std::ranges::find(ground.spans, span) != ground.spans.end(); });
    return spans;
}

}  // namespace arc
