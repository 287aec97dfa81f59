// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/histogram.hpp"

#include <QPainter>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

Histogram::Histogram(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void Histogram::show(const closeout::Histogram& histogram, Loss limit) {
    m_data = histogram;
    m_limit = limit;
    std::size_t most = 0, all = histogram.beyond;
    Loss where{0};
    for (const auto& bin : histogram.bins) {
        all += bin.count;
        if (bin.count > most) {
            most = bin.count;
            where = bin.from;
        }
    }
    setAccessibleName(tr("Spread of the losses"));
    setAccessibleDescription(all == 0
                                 ? tr("no splices")
                                 : tr("%1 splices, most at %2 dB")
                                       .arg(text::number(static_cast<std::int64_t>(all)), text::loss(where)));
    setToolTip(accessibleDescription());
    update();
}

QSize Histogram::sizeHint() const {
    return {currentTheme().px(320), currentTheme().px(104)};
}

QSize Histogram::minimumSizeHint() const {
    return {currentTheme().px(200), currentTheme().px(104)};
}

void Histogram::paintEvent(QPaintEvent*) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(theme.font(Text::Tiny));
    const int foot = theme.px(18);
    const double floor = height() - foot;
    const double top = theme.px(18);
    if (m_data.bins.empty()) return;
    std::size_t most = m_data.beyond;
    for (const auto& bin : m_data.bins) most = std::max(most, bin.count);
    if (most == 0) return;
    const auto columns = static_cast<double>(m_data.bins.size() + 1);
    const double wide = width() / columns;
    const auto bar = [&](std::size_t index, std::size_t count, Role role) {
        if (count == 0) return;
        const double tall =
            std::max(2.0, (floor - top) * static_cast<double>(count) / static_cast<double>(most));
        painter.fillRect(
            QRectF(static_cast<double>(index) * wide + 1, floor - tall, std::max(1.0, wide - 2), tall),
            theme.colour(role));
    };
    std::optional<double> limitAt;
    for (std::size_t i = 0; i < m_data.bins.size(); ++i) {
        const auto& bin = m_data.bins[i];
        bar(i, bin.count, bin.from >= m_limit ? Role::Drifting : Role::Accent);
        if (!limitAt && bin.to > m_limit) limitAt = static_cast<double>(i) * wide;
    }
    bar(m_data.bins.size(), m_data.beyond, Role::Drifting);
    painter.setPen(QPen(theme.colour(Role::Edge), 1));
    painter.drawLine(QPointF(0, floor + 0.5), QPointF(width(), floor + 0.5));
    painter.setPen(theme.colour(Role::Soft));
    painter.drawText(QRectF(0, floor + 2, width(), foot), Qt::AlignLeft | Qt::AlignVCenter,
                     text::loss(Loss{0}));
    painter.drawText(QRectF(0, floor + 2, width(), foot), Qt::AlignRight | Qt::AlignVCenter,
                     tr("%1 dB and more").arg(text::loss(m_data.bins.back().to)));
    if (limitAt) {
        painter.setPen(QPen(theme.colour(Role::Drifting), theme.px(1.5), Qt::DashLine));
        painter.drawLine(QPointF(*limitAt, 0), QPointF(*limitAt, floor));
        painter.setPen(theme.colour(Role::Drifting));
        painter.drawText(QRectF(*limitAt + theme.px(5), 0, theme.px(120), theme.px(16)),
                         Qt::AlignLeft | Qt::AlignVCenter, tr("limit %1").arg(text::loss(m_limit)));
    }
}

}  // namespace arc::ui
