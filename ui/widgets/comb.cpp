// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/comb.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>

#include <algorithm>
#include <cmath>

#include "ui/text/format.hpp"

namespace arc::ui {
namespace {

/// A rise of this much alone lifts a fibre wholly out of its groove.
constexpr double fullLiftDb = 0.04;
constexpr double widestPitch = 40;
constexpr int combHeight = 96;

}  // namespace

std::vector<CombTooth> teethOf(const drift::StratumReport& report) {
    std::vector<CombTooth> teeth;
    for (int channel = 1; channel <= report.channels; ++channel) {
        CombTooth tooth;
        tooth.channel = channel;
        for (const auto& groove : report.grooves) {
            if (groove.channel != channel) continue;
            tooth.aloneDb = groove.aloneDb;
            tooth.recentDb = groove.recentDb;
            tooth.baselineDb = groove.baselineDb;
            tooth.recent = groove.recent;
        }
        if (report.standing == drift::Standing::Learning) tooth.mark = Mark::Learning;
        for (const auto& signal : report.signals) {
            const bool here = signal.channel == channel || std::ranges::count(signal.channels, channel) > 0;
            if (!here) continue;
            if (signal.state == drift::SignalState::Open || signal.state == drift::SignalState::Answered)
                tooth.mark = Mark::Drifting;
            else if (signal.state == drift::SignalState::Recovered && tooth.mark == Mark::Steady)
                tooth.mark = Mark::Recovered;
        }
        teeth.push_back(tooth);
    }
    return teeth;
}

Comb::Comb(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setTeeth({});
}

void Comb::setTeeth(std::vector<CombTooth> teeth) {
    m_teeth = std::move(teeth);
    QStringList lifted;
    for (const auto& tooth : m_teeth)
        if (tooth.mark != Mark::Steady && tooth.mark != Mark::Learning) lifted << sentence(tooth);
    setAccessibleName(m_teeth.size() == 1 ? tr("The groove")
                                          : tr("The %n grooves", nullptr, static_cast<int>(m_teeth.size())));
    setAccessibleDescription(lifted.isEmpty() ? tr("no groove stands out")
                                              : lifted.join(QStringLiteral("; ")));
    updateGeometry();
    update();
}

QSize Comb::sizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(widestPitch * std::max<double>(1, static_cast<double>(m_teeth.size()))),
            theme.px(combHeight)};
}

QSize Comb::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(18.0 * std::max<double>(1, static_cast<double>(m_teeth.size()))), theme.px(combHeight)};
}

double Comb::pitch() const {
    const double count = std::max<double>(1, static_cast<double>(m_teeth.size()));
    return std::min((width() - 4.0) / count, widestPitch * currentTheme().scale());
}

double Comb::left() const {
    return 2;
}

void Comb::paintEvent(QPaintEvent* /*event*/) {
    if (m_teeth.empty()) return;
    const Theme theme = currentTheme();
    const double s = theme.scale();
    const double w = pitch();
    const double x = left();
    const double top = 34 * s;
    const double depth = std::min(24 * s, w * 0.62);
    const double lip = w * 0.20;
    const auto count = static_cast<double>(m_teeth.size());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);

    QPainterPath block(QPointF(x, top));
    for (std::size_t i = 0; i < m_teeth.size(); ++i) {
        const double at = x + static_cast<double>(i) * w;
        block.lineTo(at + lip, top);
        block.lineTo(at + w / 2, top + depth);
        block.lineTo(at + w - lip, top);
        block.lineTo(at + w, top);
    }
    block.lineTo(x + count * w, top + depth + 12 * s);
    block.lineTo(x, top + depth + 12 * s);
    block.closeSubpath();
    painter.setPen(QPen(theme.colour(Role::Accent), 1.5 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(theme.colour(Role::AccentWash));
    painter.drawPath(block);

    const double r = std::min(8 * s, w * 0.24);
    // Where a circle rests on both flanks of its V.
    const double half = w / 2 - lip;
    const double flank = std::sqrt(half * half + depth * depth);
    const double rest = top + depth - r * flank / half;
    const double out = rest - (top - r - 3 * s);
    for (std::size_t i = 0; i < m_teeth.size(); ++i) {
        const auto& tooth = m_teeth[i];
        const double centre = x + (static_cast<double>(i) + 0.5) * w;
        const double lift = std::clamp(tooth.aloneDb / fullLiftDb, 0.0, 1.25);
        const bool loud =
            tooth.mark == Mark::Drifting || tooth.mark == Mark::Watch || tooth.mark == Mark::Recovered;
        const QColor ink = theme.colour(loud ? roleOf(tooth.mark) : Role::Accent);
        const QPointF at(centre, rest - lift * out);
        if (lift > 0.25) {
            painter.setPen(QPen(ink, 1.2 * s, Qt::DotLine));
            painter.drawLine(QPointF(centre, at.y() + r), QPointF(centre, top + depth - 2 * s));
        }
        painter.setPen(QPen(ink, 2.2 * s, tooth.recent > 0 ? Qt::SolidLine : Qt::DotLine));
        painter.setBrush(tooth.mark == Mark::Drifting ? ink : theme.colour(Role::Card));
        painter.drawEllipse(at, r, r);
        const bool bold = tooth.mark == Mark::Drifting || tooth.mark == Mark::Watch;
        painter.setFont(
            theme.font(w < 22 * s ? Text::Tiny : Text::Small, bold ? Weight::Bold : Weight::Regular));
        painter.setPen(bold ? ink : theme.colour(Role::Soft));
        painter.drawText(QRectF(centre - w / 2, top + depth + 14 * s, w, 18 * s), Qt::AlignCenter,
                         QString::number(tooth.channel));
    }
}

bool Comb::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && !m_teeth.empty()) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const auto index = static_cast<int>((help->pos().x() - left()) / pitch());
        if (index >= 0 && index < static_cast<int>(m_teeth.size()))
            QToolTip::showText(help->globalPos(), sentence(m_teeth[static_cast<std::size_t>(index)]), this);
        return true;
    }
    return QWidget::event(event);
}

QString Comb::sentence(const CombTooth& tooth) const {
    if (tooth.recent == 0) return tr("groove %1: no readings yet").arg(tooth.channel);
    return tr("groove %1, %2: %3 dB in the baseline, %4 dB now (n = %5), alone %6 dB")
        .arg(tooth.channel)
        .arg(wordOf(tooth.mark))
        .arg(text::number(tooth.baselineDb, 3))
        .arg(text::number(tooth.recentDb, 3))
        .arg(tooth.recent)
        .arg(text::signedNumber(tooth.aloneDb, 3));
}

}  // namespace arc::ui
