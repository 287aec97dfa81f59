// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/chart_column.hpp"

#include <QFontMetrics>
#include <QFrame>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

#include "ui/drift/chart_list.hpp"
#include "ui/drift/words.hpp"
#include "ui/text/format.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr std::size_t lowerAtMost = 6;
constexpr int lowerHeight = 74;
constexpr int levelHeight = 132;
constexpr int inset = 1;  ///< a card's frame
constexpr double nearer = 0.7;
/// Arcs shown before and after a signal that is jumped to, as a share of what it took to raise it.
constexpr double aroundSignal = 1.5;

QFrame* chartCard(QWidget* parent, QWidget* chart) {
    auto* frame = card(parent);
    inside(frame)->setContentsMargins(inset, inset, inset, inset);
    inside(frame)->addWidget(chart);
    return frame;
}

}  // namespace

ChartColumn::ChartColumn(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Charts"));
    m_layout = new QVBoxLayout(this);
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(theme.px(8));
    m_readout = words({}, TextRole::Small, this);
    m_readout->setAccessibleName(tr("Read-out"));
    m_readout->setFixedHeight(theme.px(20));
    m_readout->setMinimumWidth(1);
    m_layout->addWidget(m_readout);
    m_level = new ChartView(m_window, this);
    m_level->setMinimumHeight(theme.px(60));
    m_levelCard = chartCard(this, m_level);
    m_layout->addWidget(m_levelCard, 4);
    m_strip = new GrooveStrip(m_window, this);
    m_stripCard = chartCard(this, m_strip);
    m_layout->addWidget(m_stripCard, 5);
    for (std::size_t i = 0; i < lowerAtMost; ++i) {
        auto* chart = new ChartView(m_window, this);
        chart->setMinimumHeight(theme.px(48));
        m_lower.push_back({chartCard(this, chart), chart});
        m_lower.back().card->hide();
        m_layout->addWidget(m_lower.back().card, 2);
    }
    m_layout->addSpacing(ChartMarks::footHeight());
    m_marks = new ChartMarks(m_window, this);
    m_marks->setInset(inset);
    connect(&m_window, &ArcWindow::cursorChanged, this, &ChartColumn::say);
    connect(&m_window, &ArcWindow::changed, this, &ChartColumn::say);
}

void ChartColumn::show(std::shared_ptr<const DriftView> view, const drift::StratumReport* report,
                       const SplicerHistory* history) {
    const bool same = m_report && report && m_history && history && m_report->stratum == report->stratum &&
                      m_history->splicer == history->splicer;
    const double from = m_window.from();
    const double to = m_window.to();
    const bool sawAll = m_window.from() <= m_window.first() && m_window.to() >= m_window.last();
    m_view = std::move(view);
    m_report = report;
    m_history = history;
    if (!report || !history || history->arcs.empty()) {
        m_lowerCount = 0;
        return;
    }
    const ChartSource source{*report, *history};
    m_window.setWhole(1, static_cast<double>(history->arcs.size()));
    if (same && !sawAll) m_window.show(from, to);
    m_level->setData(levelChart(source));
    m_strip->setRows(stripRows(source));
    const auto lower = lowerCharts(source);
    m_lowerCount = std::min(lower.size(), m_lower.size());
    for (std::size_t i = 0; i < m_lower.size(); ++i)
        m_lower[i].chart->setData(i < m_lowerCount ? lower[i] : nullptr);
    m_lowerFirst = same ? std::min(m_lowerFirst, m_lowerCount) : 0;
    previewBaseline(static_cast<double>(report->baselineFrom), static_cast<double>(report->baselineTo));
    m_marks->setCare(careMarks(*history));
    m_marks->setOwed(owedMarks(*history, m_owed));
    arrange();
    say();
}

void ChartColumn::previewBaseline(double from, double to) {
    const std::optional<Stretch> baseline = to > from ? std::optional(Stretch{from, to}) : std::nullopt;
    for (auto* chart : charts()) chart->setBaseline(baseline);
    m_strip->setBaseline(baseline);
}

void ChartColumn::showSignal(const drift::Signal* signal) {
    if (!signal) {
        m_marks->setSince(std::nullopt);
        return;
    }
    m_marks->setSince(SinceMark{static_cast<double>(signal->beganAtArc),
                                static_cast<double>(signal->beganLow), static_cast<double>(signal->beganHigh),
                                static_cast<double>(signal->raisedAtArc)});
    const auto began = static_cast<double>(signal->beganLow);
    const auto raised = static_cast<double>(signal->raisedAtArc);
    if (began < m_window.from() || raised > m_window.to()) {
        const double span =
            std::max(m_window.to() - m_window.from(), (raised - began) * (1 + 2 * aroundSignal));
        m_window.show((began + raised - span) / 2, (began + raised + span) / 2);
    }
}

void ChartColumn::setOwed(std::vector<care::OwedStretch> owed) {
    m_owed = std::move(owed);
    m_marks->setOwed(m_history ? owedMarks(*m_history, m_owed) : std::vector<OwedMark>{});
    say();
}

std::vector<ChartView*> ChartColumn::charts() const {
    std::vector<ChartView*> all{m_level};
    for (const auto& lower : m_lower) all.push_back(lower.chart);
    return all;
}

bool ChartColumn::hasMore() const {
    return m_lowerShown < m_lowerCount;
}

void ChartColumn::showMore() {
    m_lowerFirst =
        m_lowerCount == 0 ? 0 : (m_lowerFirst + std::max<std::size_t>(1, m_lowerShown)) % m_lowerCount;
    arrange();
}

void ChartColumn::arrange() {
    const Theme theme = currentTheme();
    const bool strip = m_strip->rowCount() > 1;
    const bool level = m_level->data() != nullptr;
    m_stripCard->setVisible(strip);
    m_levelCard->setVisible(level);
    const int gap = m_layout->spacing();
    int room = height() - ChartMarks::footHeight() - m_readout->height() - gap;
    if (level) room -= theme.px(levelHeight) + gap;
    if (strip) room -= m_strip->sizeHint().height() + 2 * inset + gap;
    const int each = theme.px(lowerHeight) + gap;
    m_lowerShown = std::min<std::size_t>(
        m_lowerCount, static_cast<std::size_t>(std::max(strip || level ? 0 : 1, room / each)));
    for (std::size_t i = 0; i < m_lower.size(); ++i) {
        const bool shown = m_lowerCount > 0 && i < m_lowerCount &&
                           (i + m_lowerCount - m_lowerFirst) % m_lowerCount < m_lowerShown;
        m_lower[i].card->setVisible(shown);
    }
    m_marks->setGeometry(0, m_readout->height() + gap, width(), height() - m_readout->height() - gap);
    m_marks->raise();
    placeMarks();
}

void ChartColumn::placeMarks() {
    m_layout->activate();
    const int top = m_marks->y();
    const int title = currentTheme().px(24);
    std::vector<PlotSpan> plots;
    const auto add = [&](const QFrame* card) {
        if (card->isVisibleTo(this))
            plots.push_back({card->y() - top + title, card->geometry().bottom() - top});
    };
    add(m_levelCard);
    add(m_stripCard);
    for (const auto& lower : m_lower) add(lower.card);
    m_marks->setPlots(std::move(plots));
}

QSize ChartColumn::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(320), theme.px(300)};
}

void ChartColumn::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
    say();
}

QString ChartColumn::readout(double arc) const {
    if (!m_history || m_history->arcs.empty()) return {};
    const auto index =
        std::min(static_cast<std::size_t>(std::max(1.0, std::round(arc))), m_history->arcs.size()) - 1;
    const auto& one = m_history->arcs[index];
    QStringList parts{tr("arc %1").arg(text::number(static_cast<std::int64_t>(index + 1))),
                      text::dayAndClock(one.at)};
    if (care::owedAt(m_owed, m_history->splicer, one.at)) parts << tr("calibration owed");
    double sum = 0;
    double most = 0;
    for (std::size_t r = one.firstReading; r < one.firstReading + one.readingCount; ++r) {
        sum += decibels(m_history->readings[r].loss);
        most = std::max(most, decibels(m_history->readings[r].loss));
    }
    if (one.readingCount > 1)
        parts << tr("mean %1, highest %2 dB")
                     .arg(text::meanLoss(sum / one.readingCount), text::number(most, 2));
    else if (one.readingCount == 1)
        parts << text::meanLoss(sum, text::Unit::Shown);
    if (const auto level = m_level->valueAt(arc))
        parts << tr("level %1 of the limit").arg(text::number(static_cast<double>(*level), 2));
    if (const auto fullest = m_strip->fullestAt(arc))
        parts << tr("groove %1 fullest, %2")
                     .arg(fullest->first)
                     .arg(text::number(static_cast<double>(fullest->second), 2));
    return parts.join(QStringLiteral(" · "));
}

QString ChartColumn::csv() const {
    if (!m_history || !m_report) return {};
    QString out = QStringLiteral("arc,time,mean_loss_db,calibration_owed,level");
    for (int c = 1; c <= static_cast<int>(m_strip->rowCount()); ++c)
        out += QStringLiteral(",groove_%1").arg(c);
    out += QStringLiteral("\r\n");
    const auto share = [](std::optional<float> value) {
        return value ? QString::number(static_cast<double>(*value), 'f', 4) : QString();
    };
    for (const auto i : arcsOf(*m_report, *m_history)) {
        const auto arc = static_cast<double>(i + 1);
        if (arc < m_window.from() || arc > m_window.to()) continue;
        const auto& one = m_history->arcs[i];
        double sum = 0;
        for (std::size_t r = one.firstReading; r < one.firstReading + one.readingCount; ++r)
            sum += decibels(m_history->readings[r].loss);
        const bool owed = care::owedAt(m_owed, m_history->splicer, one.at) != nullptr;
        out += QStringLiteral("%1,%2,%3,%4,%5")
                   .arg(i + 1)
                   .arg(QString::fromStdString(toIso(one.at)))
                   .arg(one.readingCount > 0 ? QString::number(sum / one.readingCount, 'f', 4) : QString())
                   .arg(owed ? QStringLiteral("yes") : QStringLiteral("no"))
                   .arg(share(m_level->valueAt(arc)));
        for (int c = 1; c <= static_cast<int>(m_strip->rowCount()); ++c)
            out += QLatin1Char(',') + share(m_strip->valueAt(c, arc));
        out += QStringLiteral("\r\n");
    }
    return out;
}

void ChartColumn::sayWhatFits(const QString& parts) {
    const QString separator = QStringLiteral(" · ");
    QStringList fitting = parts.split(separator);
    const QFontMetrics metrics(currentTheme().font(Text::Small));
    while (fitting.size() > 1 && metrics.horizontalAdvance(fitting.join(separator)) > width())
        fitting.removeLast();
    m_readout->setText(fitting.join(separator));
    m_readout->setAccessibleDescription(parts);
}

void ChartColumn::say() {
    if (const auto cursor = m_window.cursor()) {
        sayWhatFits(readout(*cursor));
        return;
    }
    sayWhatFits(tr("arcs %1 to %2 of %3 · arrows move, + and − zoom, 0 shows all")
                    .arg(text::number(static_cast<std::int64_t>(std::llround(m_window.from()))),
                         text::number(static_cast<std::int64_t>(std::llround(m_window.to()))),
                         text::number(static_cast<std::int64_t>(std::llround(m_window.last())))));
}

void ChartColumn::keyPressEvent(QKeyEvent* event) {
    const bool ctrl = event->modifiers().testFlag(Qt::ControlModifier);
    const double middle = m_window.cursor().value_or((m_window.from() + m_window.to()) / 2);
    switch (event->key()) {
        case Qt::Key_Left:
            ctrl ? m_window.setCursor(std::round(middle) - 1) : m_window.pan(-0.1);
            return;
        case Qt::Key_Right:
            ctrl ? m_window.setCursor(std::round(middle) + 1) : m_window.pan(0.1);
            return;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            m_window.zoom(nearer, middle);
            return;
        case Qt::Key_Minus:
            m_window.zoom(1 / nearer, middle);
            return;
        case Qt::Key_Home:
            m_window.show(m_window.first(), m_window.first() + (m_window.to() - m_window.from()));
            return;
        case Qt::Key_End:
            m_window.show(m_window.last() - (m_window.to() - m_window.from()), m_window.last());
            return;
        case Qt::Key_0:
            m_window.showAll();
            return;
        case Qt::Key_Escape:
            m_window.setCursor(std::nullopt);
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

void ChartColumn::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void ChartColumn::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void ChartColumn::paintEvent(QPaintEvent* /*event*/) {
    if (!hasFocus()) return;
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setPen(QPen(theme.colour(Role::Accent), theme.px(2)));
    // A short stroke at the read-out: the whole frame would shout.
    painter.drawLine(0, m_readout->height(), width(), m_readout->height());
}

}  // namespace arc::ui
