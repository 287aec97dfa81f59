// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/span_table.hpp"

#include <QFont>

#include <algorithm>

#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

QString budget(const std::vector<closeout::LinkBudget>& budgets, std::size_t which) {
    if (which >= budgets.size()) return QStringLiteral("–");
    const auto& one = budgets[which];
    const QString figures =
        SpanTable::tr("%1 of %2").arg(text::number(one.asSplicedDb, 2), text::number(one.allowedDb, 2));
    return one.asSplicedDb > one.allowedDb + 1e-9
               ? QStringLiteral("▲ %1, %2").arg(figures, SpanTable::tr("over"))
               : figures;
}

/// Wavelengths differ in what was measured, so each is named.
QString measured(const std::vector<closeout::LinkBudget>& budgets) {
    QStringList said;
    for (const auto& one : budgets)
        if (one.measured > 0)
            said << SpanTable::tr("%1 nm: %2 measured both ways, %3 estimated")
                        .arg(one.wavelengthNm)
                        .arg(one.measured)
                        .arg(one.estimated);
    return said.isEmpty() ? SpanTable::tr("estimated only") : said.join(QStringLiteral(" · "));
}

}  // namespace

void SpanTable::show(closeout::Record record) {
    beginResetModel();
    m_record = std::move(record);
    m_places.clear();
    for (std::size_t s = 0; s < m_record.spans.size(); ++s) {
        m_places.push_back({s, {}});
        for (const std::size_t section : m_record.spans[s].sections) m_places.push_back({s, section});
    }
    endResetModel();
}

int SpanTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_places.size());
}

int SpanTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCountAll;
}

const closeout::SpanSection* SpanTable::spanAt(int row) const {
    if (row < 0 || row >= rowCount()) return nullptr;
    return &m_record.spans[m_places[static_cast<std::size_t>(row)].span];
}

QString SpanTable::average(const closeout::SpanSection& span) const {
    if (!span.meanDb) return QStringLiteral("–");
    const QString mean = text::meanLoss(*span.meanDb);
    return closeout::isOverAverage(span, m_record.job.rule) ? QStringLiteral("▲ %1, %2").arg(mean, tr("over"))
                                                            : mean;
}

QString SpanTable::spanCell(const closeout::SpanSection& span, int column) const {
    int planned = 0, spliced = 0;
    for (const std::size_t at : span.sections)
        if (const auto& found = m_record.closures[at].completeness) {
            planned += found->planned;
            spliced += found->spliced;
        }
    switch (column) {
        case Name:
            return span.kind == closeout::SpanKind::WholeJob ? tr("the whole job, one span")
                   : span.kind == closeout::SpanKind::Rest   ? tr("on no span")
                                                             : text::words(span.label);
        case Where:
            return span.kind == closeout::SpanKind::Named
                       ? tr("%1 to %2").arg(text::words(span.from), text::words(span.to))
                       : QString();
        case Length:
            return span.lengthKm ? text::number(*span.lengthKm, 2) : QString();
        case Done:
            return planned > 0
                       ? tr("%1 of %2")
                             .arg(text::number(std::int64_t{spliced}), text::number(std::int64_t{planned}))
                       : text::number(static_cast<std::int64_t>(span.splices));
        case Average:
            return average(span);
        case FirstBudget:
            return budget(span.budgets, 0);
        case SecondBudget:
            return budget(span.budgets, 1);
        default:
            return span.budgets.empty() ? text::spoken(span.budgetNote) : measured(span.budgets);
    }
}

QString SpanTable::closureCell(const closeout::ClosureSection& section, int column) const {
    std::size_t oneWay = 0, twoWay = 0;
    for (const auto& splice : section.splices) {
        const bool both =
            std::ranges::any_of(splice.measured, [](const auto& m) { return m.twoWayDb().has_value(); });
        if (both) ++twoWay;
        if (!both && !splice.measured.empty()) ++oneWay;
    }
    switch (column) {
        case Name:
            return QStringLiteral("    ") + (section.closure ? text::words(section.label) : tr("No closure"));
        case Where:
            return section.cableB.empty() || section.cableB == section.cableA
                       ? text::words(section.cableA)
                       : tr("%1 to %2").arg(text::words(section.cableA), text::words(section.cableB));
        case Done: {
            if (!section.completeness) return text::number(static_cast<std::int64_t>(section.splices.size()));
            const auto& found = *section.completeness;
            QString said = tr("%1 of %2")
                               .arg(text::number(std::int64_t{found.spliced}),
                                    text::number(std::int64_t{found.planned}));
            if (!found.open.empty())
                said += QStringLiteral(" · ▲ ") + tr("%1 to re-splice").arg(found.open.size());
            return said;
        }
        case Average:
            return section.averages.meanDb ? text::meanLoss(*section.averages.meanDb) : QStringLiteral("–");
        case Measured: {
            QStringList said;
            if (twoWay > 0) said << tr("%1 both ways").arg(twoWay);
            if (oneWay > 0) said << QStringLiteral("◐ ") + tr("%1 one way").arg(oneWay);
            return said.join(QStringLiteral(" · "));
        }
        default:
            return {};
    }
}

QVariant SpanTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const Place& place = m_places[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole) {
        const bool figure = index.column() >= Length && index.column() <= SecondBudget;
        return QVariant(static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    }
    if (role == Qt::FontRole && !place.section) {
        QFont strong;
        strong.setBold(true);
        return strong;
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    if (place.section) return closureCell(m_record.closures[*place.section], index.column());
    return spanCell(m_record.spans[place.span], index.column());
}

QVariant SpanTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCountAll) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool figure = section >= Length && section <= SecondBudget;
        return QVariant(static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole) return {};
    const auto wavelength = [&](std::size_t which) {
        for (const auto& span : m_record.spans)
            if (which < span.budgets.size())
                return tr("budget %1 nm, dB").arg(span.budgets[which].wavelengthNm);
        return tr("budget, dB");
    };
    switch (section) {
        case Name:
            return tr("span and closures");
        case Where:
            return tr("from, to");
        case Length:
            return tr("km");
        case Done:
            return tr("spliced");
        case Average:
            return tr("average, dB");
        case FirstBudget:
            return wavelength(0);
        case SecondBudget:
            return wavelength(1);
        default:
            return tr("measured");
    }
}

}  // namespace arc::ui
