// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/splice_table.hpp"

#include <algorithm>

#include "core/work/notes.hpp"
#include "core/work/stepwise_splices.hpp"
#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t windowRows = 200;

/// What the program noted is said in the language of the window; a person's own words stay.
QString noteWords(const std::string& said) {
    const auto begins = [&](std::string_view words) { return said.starts_with(words); };
    const bool program = begins(note::kept) || std::ranges::any_of(note::ours, begins);
    return program ? text::spoken(said) : text::words(said);
}

}  // namespace

QString verdictWords(ReadingVerdict verdict) {
    switch (verdict) {
        case ReadingVerdict::Accept:
            return SpliceTable::tr("accept");
        case ReadingVerdict::AcceptHigh:
            return SpliceTable::tr("accept, high");
        case ReadingVerdict::Resplice:
            return SpliceTable::tr("re-splice");
        case ReadingVerdict::NoteMissing:
            return SpliceTable::tr("high, note missing");
        case ReadingVerdict::Kept:
            return SpliceTable::tr("kept, noted");
        case ReadingVerdict::OverCeiling:
            return SpliceTable::tr("over ceiling");
        case ReadingVerdict::Voided:
            return SpliceTable::tr("voided");
    }
    return {};
}

SpliceTable::SpliceTable(Session& session, QObject* parent)
    : QAbstractTableModel(parent),
      m_session(session),
      m_reader(std::make_shared<std::unique_ptr<Logbook>>()) {}

Result<void> SpliceTable::show(const SpliceFilter& filter, PageOrder order) {
    Logbook& book = m_session.book();
    const auto tools = book.tools();
    if (!tools) return tl::unexpected(tools.error());
    const auto jobs = book.jobs();
    if (!jobs) return tl::unexpected(jobs.error());
    m_tools.clear();
    m_closures.clear();
    m_jobs.clear();
    for (const auto& tool : *tools) m_tools.emplace(tool.id, text::words(tool.label));
    for (const auto& job : *jobs) {
        m_jobs.emplace(job.id, job);
        if (const auto closures = book.closures(job.id))
            for (const auto& closure : *closures) m_closures.emplace(closure.id, text::words(closure.label));
    }
    m_filter = filter;
    m_order = order;
    ask(Window::First);
    return {};
}

void SpliceTable::ask(Window window) {
    if (m_job) {
        // A further window of the old question is of no use either.
        if (window == Window::First) m_asked = Asked::Again;
        if (window == Window::First) m_session.background().cancel(*m_job);
        return;
    }
    std::optional<PageKey> after;
    if (window == Window::Next && !m_rows.empty())
        after = PageKey{m_rows.back().arc.at.ms, m_rows.back().row};
    m_job = m_session.background().run<Result<std::vector<SpliceRow>>>(
        this, tr("Searching the splices"),
        [&session = m_session, held = m_reader, filter = m_filter, order = m_order,
         after](Progress& progress) -> Result<std::vector<SpliceRow>> {
            if (!*held) {
                auto reader = session.reader();
                if (!reader) return tl::unexpected(reader.error());
                *held = std::move(*reader);
            }
            return splicesStepwise(**held, filter, order, after, windowRows, progress);
        },
        [this, window](Result<std::vector<SpliceRow>> page) { take(window, std::move(page)); }, Shown::No);
}

void SpliceTable::take(Window window, Result<std::vector<SpliceRow>> page) {
    m_job.reset();
    if (m_asked == Asked::Again) {
        m_asked = Asked::Once;
        return ask(Window::First);
    }
    const bool complete = !page || page->size() < windowRows;
    m_complete = true;  // nobody may ask for more while the rows change
    if (!page) {
        Q_EMIT failed(page.error());
    } else if (window == Window::First) {
        beginResetModel();
        m_rows = std::move(*page);
        m_complete = complete;
        endResetModel();
    } else if (!page->empty()) {
        const int first = static_cast<int>(m_rows.size());
        beginInsertRows({}, first, first + static_cast<int>(page->size()) - 1);
        for (auto& row : *page) m_rows.push_back(std::move(row));
        m_complete = complete;
        endInsertRows();
    }
    Q_EMIT loaded();
}

bool SpliceTable::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && !m_complete && !m_job && !m_rows.empty();
}

void SpliceTable::fetchMore(const QModelIndex& parent) {
    if (canFetchMore(parent)) ask(Window::Next);
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
            return verdictWords(
                verdictOf(it == m_jobs.end() ? sampleRules().front() : it->second.rule, reading));
        }
        case Machine:
            return toolName(row.arc.splicer);
        case Groove:
            return row.arc.channels > 1 ? tr("%1 of %2").arg(reading.channel).arg(row.arc.channels)
                                        : QString();
        case Who:
            return text::words(row.arc.operatorName);
        case Note:
            return row.versions > 1 ? (reading.note.empty() ? tr("corrected") : noteWords(reading.note))
                                    : noteWords(reading.note);
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
