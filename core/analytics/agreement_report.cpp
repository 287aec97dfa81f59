// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/agreement_report.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "core/optics/splice_loss.hpp"

namespace arc::drift {
namespace {

constexpr std::size_t page = 5000;

/// Every reading spliced in a closure, as arcs of one reading.
Result<void> collect(Logbook& book, ClosureId closure, std::vector<SpliceArc>& arcs) {
    SpliceFilter filter;
    filter.closure = closure;
    std::optional<PageKey> after;
    while (true) {
        auto rows = book.splices(filter, PageOrder::OldestFirst, after, page);
        if (!rows) return tl::unexpected(rows.error());
        for (SpliceRow& row : *rows) {
            row.arc.readings = {row.reading};
            after = PageKey{row.arc.at.ms, row.row};
            arcs.push_back(std::move(row.arc));
        }
        if (rows->size() < page) return {};
    }
}

/// The last cleaning of the camera lenses, which lets the splicer see afresh.
std::optional<Instant> lastLensClean(const std::vector<CareRecord>& care, ToolId splicer) {
    std::optional<Instant> last;
    for (const CareRecord& record : care)
        if (record.tool == splicer && record.action == action::lensClean &&
            (!last || record.at.ms > last->ms))
            last = record.at;
    return last;
}

Result<void> judge(SplicerAgreement& one, const std::vector<CareRecord>& care, double budget) {
    std::vector<double> differences;
    differences.reserve(one.splices.size());
    for (const MeasuredSplice& splice : one.splices) differences.push_back(splice.differenceDb());
    if (auto found = agreement(differences)) one.agreement = *found;
    one.chartSince = lastLensClean(care, one.splicer);
    if (one.chartSince)
        one.chartFrom = static_cast<std::size_t>(
            std::count_if(one.splices.begin(), one.splices.end(),
                          [&](const MeasuredSplice& s) { return s.at.ms < one.chartSince->ms; }));
    auto chart = differenceChart(std::span(differences).subspan(one.chartFrom), budget);
    if (!chart) return tl::unexpected(chart.error());
    one.chart = std::move(*chart);
    return {};
}

}  // namespace

Result<AgreementReport> agreementReport(Logbook& book, double budget) {
    const auto measured = book.measuredLosses(std::nullopt);
    if (!measured) return tl::unexpected(measured.error());
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto care = book.careRecords(std::nullopt);
    if (!care) return tl::unexpected(care.error());
    AgreementReport report;
    std::set<ClosureId> closures;
    int twoWay = 0;
    for (const MeasuredLoss& loss : *measured) {
        const auto both = optics::measuredLoss(loss);
        if (!both) continue;
        ++(both->ways == optics::Ways::Two ? twoWay : report.oneWay);
        if (loss.closure) closures.insert(*loss.closure);
    }
    std::vector<SpliceArc> arcs;
    for (const ClosureId closure : closures)
        if (auto ok = collect(book, closure, arcs); !ok) return tl::unexpected(ok.error());
    std::map<std::pair<ToolId, int>, SplicerAgreement> bySplicer;
    const auto pairs = pairMeasured(arcs, *measured);
    report.unmatched = twoWay - static_cast<int>(pairs.size());
    for (const MeasuredSplice& splice : pairs)
        bySplicer[{splice.splicer, splice.wavelengthNm}].splices.push_back(splice);
    for (auto& entry : bySplicer) {
        SplicerAgreement& one = entry.second;
        std::tie(one.splicer, one.wavelengthNm) = entry.first;
        const auto tool =
            std::find_if(tools->begin(), tools->end(), [&](const Tool& t) { return t.id == one.splicer; });
        if (tool != tools->end()) one.label = tool->label;
        if (auto ok = judge(one, *care, budget); !ok) return tl::unexpected(ok.error());
        report.splicers.push_back(std::move(one));
    }
    std::sort(report.splicers.begin(), report.splicers.end(),
              [](const SplicerAgreement& a, const SplicerAgreement& b) {
                  return std::tie(a.label, a.wavelengthNm) < std::tie(b.label, b.wavelengthNm);
              });
    return report;
}

}  // namespace arc::drift
