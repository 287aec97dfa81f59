// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/plan.hpp"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <optional>
#include <set>
#include <utility>

#include "core/work/small_table.hpp"
#include "core/work/trim.hpp"

namespace arc {
namespace {

constexpr int mostFibres = 6'912;

std::vector<std::string_view> split(std::string_view text, std::string_view separators) {
    std::vector<std::string_view> parts;
    std::size_t begin = 0;
    while (true) {
        const auto end = text.find_first_of(separators, begin);
        parts.push_back(trim(text.substr(begin, end == std::string_view::npos ? end : end - begin)));
        if (end == std::string_view::npos) return parts;
        begin = end + 1;
    }
}

/// Digits alone; too long a number answers a value above every limit.
std::optional<int> wholeNumber(std::string_view text) {
    if (text.empty() || text.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    int value = 0;
    for (const char c : text) {
        if (value > mostFibres) return std::numeric_limits<int>::max();
        value = value * 10 + (c - '0');
    }
    return value;
}

tl::unexpected<Problem> wrong(std::string what, std::string where) {
    return fail(ProblemCode::BadInput, std::move(what), std::move(where),
                "Write it like \"1-144 straight\" or \"1-12 to 25-36; 13 to 40\"");
}

Result<int> readFibre(std::string_view text, const std::string& where) {
    const auto number = wholeNumber(text);
    if (!number) return wrong("\"" + std::string(text) + "\" is not a fibre number", where);
    if (*number < 1 || *number > mostFibres)
        return wrong("fibre numbers run from 1 to 6912, not " + std::string(text.substr(0, 12)), where);
    return *number;
}

Result<std::vector<int>> readList(std::string_view text, const std::string& where) {
    std::vector<int> fibres;
    for (const auto item : split(text, ",")) {
        if (item.empty()) return wrong("a fibre number is missing", where);
        const auto dash = item.find('-');
        const auto first = readFibre(trim(item.substr(0, dash)), where);
        if (!first) return tl::unexpected(first.error());
        if (dash == std::string_view::npos) {
            fibres.push_back(*first);
            continue;
        }
        const auto last = readFibre(trim(item.substr(dash + 1)), where);
        if (!last) return tl::unexpected(last.error());
        const int step = *last >= *first ? 1 : -1;
        for (int fibre = *first;; fibre += step) {
            fibres.push_back(fibre);
            if (fibre == *last) break;
        }
        if (fibres.size() > mostFibres) return wrong("more than 6912 fibres in one list", where);
    }
    return fibres;
}

/// Position of a word that stands alone between non-letters.
std::size_t findWord(std::string_view text, std::string_view word) {
    const auto isLetter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        if ((at == 0 || !isLetter(text[at - 1])) && (end == text.size() || !isLetter(text[end]))) return at;
    }
    return std::string_view::npos;
}

Result<SplicePlan> readPart(std::string_view part, const std::string& where) {
    const auto to = findWord(part, "to");
    const auto straight = findWord(part, "straight");
    SplicePlan rows;
    if (to == std::string_view::npos) {
        if (straight != std::string_view::npos) {
            if (!trim(part.substr(straight + 8)).empty())
                return wrong("something follows \"straight\"; parts are separated by a semicolon", where);
            part = part.substr(0, straight);
        }
        const auto fibres = readList(part, where);
        if (!fibres) return tl::unexpected(fibres.error());
        for (const int fibre : *fibres) rows.push_back({fibre, fibre});
        return rows;
    }
    if (findWord(part.substr(to + 2), "to") != std::string_view::npos || straight != std::string_view::npos)
        return wrong("two instructions in one part; parts are separated by a semicolon", where);
    const auto sideA = readList(part.substr(0, to), where + ", side A");
    if (!sideA) return tl::unexpected(sideA.error());
    const auto sideB = readList(part.substr(to + 2), where + ", side B");
    if (!sideB) return tl::unexpected(sideB.error());
    if (sideA->size() != sideB->size())
        return wrong("side A has " + std::to_string(sideA->size()) + " fibres and side B " +
                         std::to_string(sideB->size()),
                     where);
    for (std::size_t i = 0; i < sideA->size(); ++i) rows.push_back({(*sideA)[i], (*sideB)[i]});
    return rows;
}

/// Adds rows to the plan and refuses a fibre that is planned already.
class PlanBuilder {
  public:
    Result<void> add(PlannedSplice row, const std::string& where) {
        if (!seenA_.insert(row.fibreA).second)
            return wrong("fibre " + std::to_string(row.fibreA) + " of side A is planned twice", where);
        if (!seenB_.insert(row.fibreB).second)
            return wrong("fibre " + std::to_string(row.fibreB) + " of side B is planned twice", where);
        plan_.push_back(row);
        return {};
    }
    SplicePlan take() { return std::move(plan_); }

  private:
    std::set<int> seenA_, seenB_;
    SplicePlan plan_;
};

std::string range(int first, int last) {
    return first == last ? std::to_string(first) : std::to_string(first) + "-" + std::to_string(last);
}

}  // namespace

Result<SplicePlan> planFromText(std::string_view text) {
    PlanBuilder builder;
    std::size_t number = 0;
    for (const auto part : split(text, ";\n")) {
        ++number;
        if (part.empty()) continue;
        const std::string where =
            "part " + std::to_string(number) + ", \"" + std::string(part.substr(0, 60)) + "\"";
        const auto rows = readPart(part, where);
        if (!rows) return tl::unexpected(rows.error());
        for (const auto& row : *rows)
            if (const auto added = builder.add(row, where); !added) return tl::unexpected(added.error());
    }
    return builder.take();
}

Result<SplicePlan> planFromCsv(std::string_view csv) {
    const SmallTable table = smallTable(csv);
    if (table.headerLine == 0)
        return fail(ProblemCode::BadInput, "the file is empty", {},
                    "Begin the file with the line fibre_a,fibre_b");
    if (!table.columns.contains("fibre_a") || !table.columns.contains("fibre_b"))
        return fail(ProblemCode::BadInput, "the header has no fibre_a and fibre_b",
                    lineWords(table.headerLine), "Begin the file with the line fibre_a,fibre_b");
    PlanBuilder builder;
    for (const auto& row : table.rows) {
        const std::string where = lineWords(row.line);
        const auto a = table.cell(row, "fibre_a"), b = table.cell(row, "fibre_b");
        if (!a || !b) return wrong("a column is missing", where);
        const auto fibreA = readFibre(*a, where + ", fibre_a");
        if (!fibreA) return tl::unexpected(fibreA.error());
        const auto fibreB = readFibre(*b, where + ", fibre_b");
        if (!fibreB) return tl::unexpected(fibreB.error());
        if (const auto added = builder.add({*fibreA, *fibreB}, where); !added)
            return tl::unexpected(added.error());
    }
    return builder.take();
}

std::string planToText(std::span<const PlannedSplice> plan) {
    std::string text;
    for (std::size_t first = 0; first < plan.size();) {
        std::size_t last = first;
        int stepA = 0, stepB = 0;
        while (last + 1 < plan.size()) {
            const int a = plan[last + 1].fibreA - plan[last].fibreA;
            const int b = plan[last + 1].fibreB - plan[last].fibreB;
            if (std::abs(a) != 1 || std::abs(b) != 1) break;
            if (last > first && (a != stepA || b != stepB)) break;
            stepA = a;
            stepB = b;
            ++last;
        }
        const std::string sideA = range(plan[first].fibreA, plan[last].fibreA);
        const std::string sideB = range(plan[first].fibreB, plan[last].fibreB);
        if (!text.empty()) text += "; ";
        text += sideA == sideB ? sideA + " straight" : sideA + " to " + sideB;
        first = last + 1;
    }
    return text;
}

std::string planToCsv(std::span<const PlannedSplice> plan) {
    std::string text = "fibre_a,fibre_b\r\n";
    for (const auto& row : plan)
        text += std::to_string(row.fibreA) + "," + std::to_string(row.fibreB) + "\r\n";
    return text;
}

Result<void> planFits(std::span<const PlannedSplice> plan, int fibresA, int fibresB, int places) {
    for (const auto& row : plan) {
        if (fibresA > 0 && row.fibreA > fibresA)
            return wrong("cable A has " + std::to_string(fibresA) + " fibres, the plan names fibre " +
                             std::to_string(row.fibreA),
                         "side A");
        if (fibresB > 0 && row.fibreB > fibresB)
            return wrong("cable B has " + std::to_string(fibresB) + " fibres, the plan names fibre " +
                             std::to_string(row.fibreB),
                         "side B");
    }
    if (places > 0 && plan.size() > static_cast<std::size_t>(places))
        return fail(ProblemCode::BadInput,
                    "the plan has " + std::to_string(plan.size()) + " splices and the trays hold " +
                        std::to_string(places),
                    "trays", "Add trays or plan fewer splices");
    return {};
}

}  // namespace arc
