// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/closeout/spans.hpp"

#include <algorithm>
#include <set>

#include "core/work/spans.hpp"

namespace arc::closeout {
namespace {

constexpr const char* budgetAssumes =
    "As spliced: the mean of both directions where a splice was measured, else the splicer's estimate. "
    "Attenuation and connector loss are assumed values, not measured here.";

/// A connector sits at every end that is not a closure; a link has two ends.
LinkAssumptions atEnds(LinkAssumptions assumptions, const Span& span) {
    const int open = (span.from.closure ? 0 : 1) + (span.to.closure ? 0 : 1);
    assumptions.connectors = (assumptions.connectors * open + 1) / 2;
    return assumptions;
}

void addBudget(SpanSection& section, const Record& record, const LinkAssumptions& assumptions, int splices,
               const std::string& path) {
    auto budgets = linkBudgets(assumptions, section.lengthKm.value_or(0), splices, record.job.rule,
                               [&](int nm) { return splicedMean(record, section.sections, nm); });
    if (!budgets) {
        section.budgetNote = "No link budget: " + budgets.error().sentence();
        return;
    }
    section.budgets = std::move(*budgets);
    section.budgetNote = path + budgetAssumes;
}

bool isSpliced(const Record& record, const std::vector<std::size_t>& sections) {
    return std::ranges::any_of(sections, [&](std::size_t i) { return !record.closures[i].splices.empty(); });
}

SpanSection wholeJob(const Record& record, const std::vector<Cable>& cables,
                     const LinkAssumptions& assumptions) {
    SpanSection whole;
    int splices = 0;
    for (std::size_t i = 0; i < record.closures.size(); ++i) {
        whole.sections.push_back(i);
        if (record.closures[i].closure && !record.closures[i].splices.empty()) ++splices;
    }
    double lengthKm = 0;
    for (const Cable& cable : cables) {
        if (!cable.lengthKm) {
            whole.budgetNote = "No link budget: the length of cable " + cable.label + " is not written down.";
            return whole;
        }
        lengthKm += *cable.lengthKm;
    }
    if (cables.empty() || !isSpliced(record, whole.sections)) {
        whole.budgetNote = cables.empty() ? "No link budget: no cable of this job is written down."
                                          : "No link budget: nothing is spliced yet.";
        return whole;
    }
    whole.lengthKm = lengthKm;
    addBudget(whole, record, assumptions, splices,
              "One fibre through all cables and closures of the job in line. ");
    return whole;
}

SpanSection named(const Record& record, const Span& span, const std::vector<Cable>& cables,
                  const std::vector<Closure>& closures, const LinkAssumptions& assumptions) {
    SpanSection section;
    section.kind = SpanKind::Named;
    section.label = span.label;
    section.from = endToText(span.from, closures);
    section.to = endToText(span.to, closures);
    section.lengthKm = span.lengthKm;
    if (const auto cable = std::ranges::find_if(cables, [&](const Cable& c) { return span.cable == c.id; });
        cable != cables.end()) {
        section.cable = cable->label;
        if (!section.lengthKm) section.lengthKm = cable->lengthKm;
    }
    for (std::size_t i = 0; i < record.closures.size(); ++i)
        if (const auto& id = record.closures[i].closure;
            id && std::ranges::find(span.closures, *id) != span.closures.end())
            section.sections.push_back(i);
    if (!section.lengthKm) {
        section.budgetNote = "No link budget: the length of span " + span.label + " is not written down.";
        return section;
    }
    if (!isSpliced(record, section.sections)) {
        section.budgetNote = "No link budget: nothing is spliced yet.";
        return section;
    }
    addBudget(section, record, atEnds(assumptions, span), static_cast<int>(section.sections.size()),
              "One fibre from " + section.from + " to " + section.to + ". ");
    return section;
}

}  // namespace

SplicedMean splicedMean(const Record& record, const std::vector<std::size_t>& sections, int wavelengthNm) {
    SplicedMean mean;
    double sum = 0;
    for (const std::size_t i : sections) {
        for (const Splice& splice : record.closures[i].splices) {
            std::optional<double> both;
            // Measured again: the latest counts.
            std::optional<Instant> at;
            for (const Measurement& measured : splice.measured) {
                const auto db = measured.twoWayDb();
                if (!db || measured.wavelengthNm != wavelengthNm || (at && measured.at < *at)) continue;
                both = db;
                at = measured.at;
            }
            ++(both ? mean.measured : mean.estimated);
            sum += both ? *both : decibels(splice.final().loss);
        }
    }
    const auto count = mean.measured + mean.estimated;
    if (count > 0) mean.db = sum / static_cast<double>(count);
    return mean;
}

std::vector<SpanSection> spanSections(const Record& record, const std::vector<Span>& spans,
                                      const std::vector<Cable>& cables, const std::vector<Closure>& closures,
                                      const LinkAssumptions& assumptions) {
    if (spans.empty()) return {wholeJob(record, cables, assumptions)};
    std::vector<SpanSection> sections;
    std::set<std::size_t> placed;
    for (const Span& span : spans) {
        sections.push_back(named(record, span, cables, closures, assumptions));
        placed.insert(sections.back().sections.begin(), sections.back().sections.end());
    }
    SpanSection rest;
    rest.kind = SpanKind::Rest;
    rest.budgetNote = "No link budget: these closures are on no span.";
    for (std::size_t i = 0; i < record.closures.size(); ++i)
        if (!placed.contains(i)) rest.sections.push_back(i);
    if (!rest.sections.empty()) sections.push_back(std::move(rest));
    return sections;
}

}  // namespace arc::closeout
