// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/splice_table.hpp"

#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t windowRows = 200;

QString verdictWords(const AcceptanceRule& rule, const Reading& reading) {
    if (reading.state == ReadingState::Voided) return SpliceTable::tr("voided");
    switch (judge(rule, reading.loss, reading.attempt)) {
        case Verdict::Accept:
            return SpliceTable::tr("accept");
        case Verdict::AcceptHigh:
            return SpliceTable::tr("accept, high");
        case Verdict::Resplice:
            return SpliceTable::tr("re-splice");
        case Verdict::KeepBestWithNote:
            return reading.note.empty() ? SpliceTable::tr("high, note missing")
                                        : SpliceTable::tr("kept, noted");
        case Verdict::OverCeiling:
            return SpliceTable::tr("over ceiling");
    }
    return {};
}

}  // namespace

SpliceTable::SpliceTable(Logbook& book, QObject* parent) : QAbstractTableModel(parent), m_book(book) {}

Result<void> SpliceTable::show(const SpliceFilter& filter) {
    const auto tools = m_book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto jobs = m_book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    beginResetModel();
    m_tools.clear();
    m_closures.clear();
    m_jobs.clear();
    m_rows.clear();
    for (const auto& tool : *tools) m_tools.emplace(tool.id, text::words(tool.label));
    for (const auto& job : *jobs) {
        m_jobs.emplace(job.id, job);
        if (const auto closures = m_book.closures(job.id))
            for (const auto& closure : *closures) m_closures.emplace(closure.id, text::words(closure.label));
    }
    m_filter = filter;
    auto first = next();
    if (first) m_rows = std::move(*first);
    endResetModel();
    if (!first) return tl::unexpected(first.error());
    return {};
}

Result<std::vector<SpliceRow>> SpliceTable::next() {
    std::optional<PageKey> after;
    if (!m_rows.empty()) after = PageKey{m_rows.back().arc.at.ms, m_rows.back().row};
    auto page = m_book.splices(m_filter, PageOrder::NewestFirst, after, windowRows);
    m_complete = !page || page->size() < windowRows;
    return page;
}

bool SpliceTable::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && !m_complete;
}

void SpliceTable::fetchMore(const QModelIndex& parent) {
    if (parent.isValid() || m_complete) return;
    auto page = next();
    if (!page) {
        Q_EMIT failed(page.error());
        return;
    }
    if (page->empty()) return;
    const int first = static_cast<int>(m_rows.size());
    beginInsertRows({}, first, first + static_cast<int>(page->size()) - 1);
    for (auto& row : *page) m_rows.push_back(std::move(row));
    endInsertRows();
}

int SpliceTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int SpliceTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCountAll;
}

QString SpliceTable::closureName(const SpliceArc& arc) const {
    QStringList parts;
    if (arc.job)
        if (const auto it = m_jobs.find(*arc.job); it != m_jobs.end()) parts << text::words(it->second.label);
    if (arc.closure)
        if (const auto it = m_closures.find(*arc.closure); it != m_closures.end()) parts << it->second;
    return parts.isEmpty() ? tr("unassigned") : parts.join(QStringLiteral(" · "));
}

QString SpliceTable::toolName(ToolId tool) const {
    const auto it = m_tools.find(tool);
    return it == m_tools.end() ? QString() : it->second;
}

QString SpliceTable::cell(const SpliceRow& row, int column) const {
    const auto& reading = row.reading;
    switch (column) {
        case At:
            return text::dayAndClock(row.arc.at);
        case Where:
            return closureName(row.arc);
        case Fibre:
            return reading.fibreA.empty() && reading.fibreB.empty() ? QString()
                   : reading.fibreB.empty() || reading.fibreA == reading.fibreB
                       ? text::words(reading.fibreA)
                       : QStringLiteral("%1 – %2").arg(text::words(reading.fibreA),
                                                       text::words(reading.fibreB));
        case LossDb:
            return text::loss(reading.loss);
        case Attempt:
            return QString::number(reading.attempt);
        case Verdict: {
            const auto it = row.arc.job ? m_jobs.find(*row.arc.job) : m_jobs.end();
            return verdictWords(it == m_jobs.end() ? sampleRules().front() : it->second.rule, reading);
        }
        case Machine:
            return toolName(row.arc.splicer);
        case Groove:
            return row.arc.channels > 1 ? tr("%1 of %2").arg(reading.channel).arg(row.arc.channels)
                                        : QString();
        case Who:
            return text::words(row.arc.operatorName);
        case Note:
            return row.versions > 1 ? (reading.note.empty() ? tr("corrected") : text::words(reading.note))
                                    : text::words(reading.note);
        default:
            return {};
    }
}

QVariant SpliceTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return cell(row(index.row()), index.column());
    if (role == Qt::TextAlignmentRole) {
        const bool figure = index.column() == LossDb || index.column() == Attempt;
        return QVariant(static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    }
    return {};
}

QVariant SpliceTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        const bool figure = section == LossDb || section == Attempt;
        return QVariant(static_cast<int>((figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    }
    if (role != Qt::DisplayRole) return {};
    const QString names[] = {tr("time"),    tr("job and closure"), tr("fibre"),  tr("loss dB"), tr("attempt"),
                             tr("verdict"), tr("splicer"),         tr("groove"), tr("who"),     tr("note")};
    return section >= 0 && section < columnCountAll ? names[section] : QVariant();
}

}  // namespace arc::ui
