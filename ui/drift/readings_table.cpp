// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/readings_table.hpp"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/drift/chart_list.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

enum Column { ArcNumber, When, Attempt, Worst, Job, Celsius, Calibration, FirstGroove };

}  // namespace

ReadingsModel::ReadingsModel(std::shared_ptr<const DriftView> view, const SplicerHistory& history,
                             std::vector<std::size_t> arcs, std::vector<care::OwedStretch> owed, int channels,
                             QObject* parent)
    : QAbstractTableModel(parent),
      m_view(std::move(view)),
      m_history(history),
      m_arcs(std::move(arcs)),
      m_owed(std::move(owed)),
      m_channels(channels) {}

int ReadingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_arcs.size());
}

int ReadingsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : FirstGroove + m_channels;
}

const HistoryReading* ReadingsModel::reading(std::size_t arc, int channel) const {
    const auto& one = m_history.arcs[arc];
    for (std::size_t r = one.firstReading; r < one.firstReading + one.readingCount; ++r)
        if (m_history.readings[r].channel == channel) return &m_history.readings[r];
    return nullptr;
}

QVariant ReadingsModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::TextAlignmentRole)
        return index.column() == When || index.column() == Job ? QVariant(Qt::AlignCenter)
                                                               : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const auto arc = m_arcs[static_cast<std::size_t>(index.row())];
    const auto& one = m_history.arcs[arc];
    switch (index.column()) {
        case ArcNumber:
            return text::number(static_cast<std::int64_t>(arc + 1));
        case When:
            return text::dayAndClock(one.at);
        case Attempt: {
            int most = 1;
            for (std::size_t r = one.firstReading; r < one.firstReading + one.readingCount; ++r)
                most = std::max<int>(most, m_history.readings[r].attempt);
            return most > 1 ? text::number(static_cast<std::int64_t>(most)) : QString();
        }
        case Worst: {
            std::optional<Angle> worst;
            for (std::size_t r = one.firstReading; r < one.firstReading + one.readingCount; ++r)
                for (const auto& end : {m_history.readings[r].cleaveLeft, m_history.readings[r].cleaveRight})
                    if (end && (!worst || end->value > worst->value)) worst = end;
            return worst ? text::angle(*worst) : QString();
        }
        case Job:
            return one.job && *one.job < m_history.jobLabels.size()
                       ? text::words(m_history.jobLabels[*one.job])
                       : QString();
        case Celsius:
            return one.temperature ? text::temperature(*one.temperature) : QString();
        case Calibration:
            return care::owedAt(m_owed, m_history.splicer, one.at) ? tr("owed") : QString();
        default:
            break;
    }
    const auto* found = reading(arc, index.column() - FirstGroove + 1);
    return found ? text::loss(found->loss) : QString();
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || role != Qt::DisplayRole) return {};
    switch (section) {
        case ArcNumber:
            return tr("arc");
        case When:
            return tr("when");
        case Attempt:
            return tr("attempt");
        case Worst:
            return tr("worst angle");
        case Job:
            return tr("job");
        case Celsius:
            return tr("temperature");
        case Calibration:
            return tr("calibration");
        default:
            return m_channels == 1 ? tr("loss dB") : tr("groove %1").arg(section - FirstGroove + 1);
    }
}

int ReadingsModel::rowOf(double arc) const {
    const auto it =
        std::ranges::lower_bound(m_arcs, arc, {}, [](std::size_t i) { return static_cast<double>(i + 1); });
    return static_cast<int>(
        std::min<std::ptrdiff_t>(it - m_arcs.begin(), static_cast<std::ptrdiff_t>(m_arcs.size()) - 1));
}

QString ReadingsModel::csv(int from, int to) const {
    QString out = QStringLiteral("arc,time,calibration_owed");
    for (int c = 1; c <= m_channels; ++c) out += QStringLiteral(",loss_db_%1").arg(c);
    out += QStringLiteral("\r\n");
    for (int row = from; row < to; ++row) {
        const auto arc = m_arcs[static_cast<std::size_t>(row)];
        out += QString::number(arc + 1) + QLatin1Char(',') +
               QString::fromStdString(toIso(m_history.arcs[arc].at)) +
               (care::owedAt(m_owed, m_history.splicer, m_history.arcs[arc].at) ? QStringLiteral(",yes")
                                                                                : QStringLiteral(",no"));
        for (int c = 1; c <= m_channels; ++c) {
            out += QLatin1Char(',');
            if (const auto* found = reading(arc, c)) out += QString::number(decibels(found->loss), 'f', 3);
        }
        out += QStringLiteral("\r\n");
    }
    return out;
}

ReadingsTable::ReadingsTable(const QString& title, std::shared_ptr<const DriftView> view,
                             const drift::StratumReport& report, const SplicerHistory& history,
                             std::vector<care::OwedStretch> owed, double atArc, QWidget* parent)
    : QDialog(parent),
      m_model(new ReadingsModel(std::move(view), history, arcsOf(report, history), std::move(owed),
                                report.channels, this)),
      m_table(new QTableView(this)) {
    const Theme theme = currentTheme();
    setAttribute(Qt::WA_DeleteOnClose);
    setObjectName(QStringLiteral("readings_table"));
    setWindowTitle(tr("Readings"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    layout->setSpacing(theme.px(Gap::Middle));
    layout->addWidget(words(title, TextRole::Heading, this));
    layout->addWidget(
        words(tr("Losses as the splicer estimated them, in dB; one row is one arc."), TextRole::Soft, this));
    m_table->setModel(m_model);
    m_table->setAccessibleName(tr("Readings"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setAlternatingRowColors(true);
    m_table->setShowGrid(false);
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(theme.px(30));
    const QFontMetrics metrics(theme.font(Text::Body));
    const auto sampleOf = [&](int column) -> QString {
        switch (column) {
            case ArcNumber:
                return text::number(static_cast<std::int64_t>(history.arcs.size()));
            case When:
                return QStringLiteral("30 Sep 2031 00:00");
            case Job: {
                QString longest;
                for (const auto& label : history.jobLabels)
                    if (text::words(label).size() > longest.size()) longest = text::words(label);
                return longest;
            }
            default:
                return QStringLiteral("-00.0 °C");
        }
    };
    for (int c = 0; c < m_model->columnCount(); ++c) {
        const QString head = m_model->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        const int widest = std::max(metrics.horizontalAdvance(head), metrics.horizontalAdvance(sampleOf(c)));
        m_table->setColumnWidth(c, widest + theme.px(24));
    }
    layout->addWidget(m_table, 1);
    auto* row = new QHBoxLayout;
    auto* copy = button(tr("Copy as CSV"), ButtonKind::Usual, this, QStringLiteral("export"));
    connect(copy, &QPushButton::clicked, this, &ReadingsTable::copySelected);
    auto* away = button(tr("Close"), ButtonKind::Usual, this);
    connect(away, &QPushButton::clicked, this, &QDialog::close);
    row->addWidget(copy);
    row->addStretch(1);
    row->addWidget(away);
    layout->addLayout(row);
    fitTo(*this, {theme.px(1040), theme.px(600)});
    const int at = m_model->rowOf(atArc);
    m_table->setCurrentIndex(m_model->index(std::max(0, at), ArcNumber));
    m_table->scrollTo(m_table->currentIndex(), QAbstractItemView::PositionAtCenter);
    m_table->setFocus();
}

void ReadingsTable::copySelected() {
    const auto rows = m_table->selectionModel()->selectedRows();
    int from = 0;
    int to = m_model->rowCount();
    if (rows.size() > 1) {
        from = std::ranges::min(rows, {}, &QModelIndex::row).row();
        to = std::ranges::max(rows, {}, &QModelIndex::row).row() + 1;
    }
    QApplication::clipboard()->setText(m_model->csv(from, to));
}

}  // namespace arc::ui
