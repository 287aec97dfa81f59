// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/chart_marks.hpp"

#include <QLocale>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/widgets/plot_gutter.hpp"

namespace arc::ui {
namespace {

constexpr int footLine = 17;
constexpr int careLines = 2;

}  // namespace

ChartMarks::ChartMarks(ArcWindow& window, QWidget* parent) : QWidget(parent), m_window(window) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
    setFocusPolicy(Qt::NoFocus);
    connect(&m_window, &ArcWindow::changed, this, qOverload<>(&QWidget::update));
    connect(&m_window, &ArcWindow::cursorChanged, this, qOverload<>(&QWidget::update));
}

void ChartMarks::setSince(std::optional<SinceMark> since) {
    m_since = since;
    update();
}

void ChartMarks::setCare(std::vector<CareMark> care) {
    m_care = std::move(care);
    update();
}

int ChartMarks::footHeight() {
    return currentTheme().px(footLine * (careLines + 1) + 4);
}

void ChartMarks::setInset(int inset) {
    m_inset = inset;
    update();
}

void ChartMarks::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    PlotMap map = plotMap(m_window, width() - 2 * m_inset, theme);
    map.left += m_inset;
    map.right += m_inset;
    QPainter painter(this);
    const double bottom = height() - footHeight();
    const auto inside = [&](double x) { return x >= map.left - 1 && x <= map.right + 1; };

    painter.setFont(theme.font(Text::Tiny));
    painter.setPen(theme.colour(Role::Soft));
    const double step =
        tidyStep(map.from, map.to, std::max(2, static_cast<int>((map.right - map.left) / theme.px(110))));
    for (double arc = std::ceil(map.from / step) * step; arc <= map.to; arc += step)
        painter.drawText(QRectF(map.x(arc) - theme.px(50), bottom, theme.px(100), theme.px(footLine)),
                         Qt::AlignCenter, QLocale().toString(static_cast<qlonglong>(arc)));
    painter.drawText(QRectF(0, bottom, map.left - theme.px(6), theme.px(footLine)),
                     Qt::AlignRight | Qt::AlignVCenter, tr("arc"));
    std::array<double, careLines> taken{map.left - 1e6, map.left - 1e6};
    for (const auto& care : m_care) {
        const double x = map.x(care.arc);
        if (!inside(x)) continue;
        painter.setPen(QPen(theme.colour(Role::Recovered), 1.2 * theme.scale(), Qt::DotLine));
        painter.drawLine(QPointF(x, 0), QPointF(x, bottom + theme.px(3)));
        const double w = painter.fontMetrics().horizontalAdvance(care.name);
        const double at = std::min(x + theme.px(2), width() - w - 1);
        // A name that has no room is left to the cursor's read-out.
        for (std::size_t lineNumber = 0; lineNumber < taken.size(); ++lineNumber) {
            if (at < taken[lineNumber]) continue;
            painter.setPen(theme.colour(Role::Recovered));
            painter.drawText(
                QPointF(at, bottom + theme.px(footLine) * (static_cast<double>(lineNumber) + 1.85)),
                care.name);
            taken[lineNumber] = at + w + theme.px(10);
            break;
        }
    }
    if (m_since) {
        const double low = std::max(map.x(m_since->low), map.left);
        const double high = std::min(map.x(m_since->high), map.right);
        if (high > low)
            painter.fillRect(QRectF(low, 0, high - low, bottom), theme.colour(Role::Drifting, 0.14));
        const double x = map.x(m_since->began);
        if (inside(x)) {
            painter.setPen(QPen(theme.colour(Role::Drifting), 2 * theme.scale()));
            painter.drawLine(QPointF(x, 0), QPointF(x, bottom));
            painter.setFont(theme.font(Text::Tiny, Weight::Bold));
            const QString word = tr("began");
            const double w = painter.fontMetrics().horizontalAdvance(word);
            const bool leftSide = std::min(x, low) - w - theme.px(5) > map.left;
            const double at = leftSide ? std::min(x, low) - w - theme.px(5) : std::max(x, high) + theme.px(5);
            painter.drawText(QPointF(at, theme.px(17)), word);
        }
        const double raised = map.x(m_since->raised);
        if (inside(raised)) {
            painter.setPen(QPen(theme.colour(Role::Drifting), theme.scale(), Qt::DashDotLine));
            painter.drawLine(QPointF(raised, 0), QPointF(raised, bottom));
            painter.setFont(theme.font(Text::Tiny));
            const QString word = tr("signal");
            const double w = painter.fontMetrics().horizontalAdvance(word);
            const double at =
                raised + w + theme.px(5) < width() ? raised + theme.px(4) : raised - w - theme.px(4);
            painter.drawText(QPointF(at, theme.px(17)), word);
        }
    }
    if (const auto cursor = m_window.cursor(); cursor && inside(map.x(*cursor))) {
        painter.setPen(QPen(theme.colour(Role::Ink), 1));
        painter.drawLine(QPointF(map.x(*cursor), 0), QPointF(map.x(*cursor), bottom));
    }
}

}  // namespace arc::ui
