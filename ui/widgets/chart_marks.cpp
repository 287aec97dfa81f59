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

bool inside(const PlotMap& map, double x) {
    return x >= map.left - 1 && x <= map.right + 1;
}

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

void ChartMarks::setOwed(std::vector<OwedMark> owed) {
    m_owed = std::move(owed);
    update();
}

int ChartMarks::footHeight() {
    return currentTheme().px(footLine * (careLines + 1) + 4);
}

void ChartMarks::setInset(int inset) {
    m_inset = inset;
    update();
}

void ChartMarks::setPlots(std::vector<PlotSpan> plots) {
    m_plots = std::move(plots);
    update();
}

/// The lines of names below the charts, and what is taken of them.
struct ChartMarks::Foot {
    std::array<std::vector<QRectF>, careLines> taken;

    /// What has no room is left to the read-out.
    void write(QPainter& painter, const Theme& theme, const QString& name, double at, double bottom) {
        const double w = painter.fontMetrics().horizontalAdvance(name);
        for (std::size_t n = 0; n < taken.size(); ++n) {
            const QRectF place(at, bottom + theme.px(footLine) * (static_cast<double>(n) + 1), w,
                               theme.px(footLine));
            const QRectF room = place.adjusted(-theme.px(5), 0, theme.px(5), 0);
            if (std::ranges::any_of(taken[n], [&](const QRectF& other) { return other.intersects(room); }))
                continue;
            painter.drawText(place.adjusted(0, 0, theme.px(4), 0), Qt::AlignLeft | Qt::AlignVCenter, name);
            taken[n].push_back(place);
            return;
        }
    }
};

void ChartMarks::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    PlotMap map = plotMap(m_window, width() - 2 * m_inset, theme);
    map.left += m_inset;
    map.right += m_inset;
    QPainter painter(this);
    const double bottom = height() - footHeight();
    paintArcs(painter, theme, map, bottom);
    Foot foot;
    paintOwed(painter, theme, map, bottom, foot);
    paintCare(painter, theme, map, bottom, foot);
    if (m_since) paintSince(painter, theme, map, bottom);
    if (const auto cursor = m_window.cursor(); cursor && inside(map, map.x(*cursor))) {
        painter.setPen(QPen(theme.colour(Role::Ink), 1));
        painter.drawLine(QPointF(map.x(*cursor), 0), QPointF(map.x(*cursor), bottom));
    }
}

void ChartMarks::paintArcs(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom) const {
    painter.setFont(theme.font(Text::Tiny));
    painter.setPen(theme.colour(Role::Soft));
    const double step =
        tidyStep(map.from, map.to, std::max(2, static_cast<int>((map.right - map.left) / theme.px(110))));
    for (double arc = std::ceil(map.from / step) * step; arc <= map.to; arc += step)
        painter.drawText(QRectF(map.x(arc) - theme.px(50), bottom, theme.px(100), theme.px(footLine)),
                         Qt::AlignCenter, QLocale().toString(static_cast<qlonglong>(arc)));
    painter.drawText(QRectF(0, bottom, map.left - theme.px(6), theme.px(footLine)),
                     Qt::AlignRight | Qt::AlignVCenter, tr("arc"));
}

void ChartMarks::paintOwed(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom,
                           Foot& foot) const {
    painter.setFont(theme.font(Text::Tiny, Weight::Bold));
    const QString name = tr("calibration owed");
    const double w = painter.fontMetrics().horizontalAdvance(name);
    for (const auto& owed : m_owed) {
        const double from = std::max(map.x(owed.from), map.left);
        const double to = std::min(map.x(owed.to), map.right);
        if (to <= from) continue;
        const double wide = std::max(to - from, 1.0 * theme.px(2));
        for (const auto& plot : m_plots)
            painter.fillRect(QRectF(from, plot.top, wide, plot.bottom - plot.top),
                             theme.colour(Role::Watch, 0.10));
        painter.fillRect(QRectF(from, bottom - theme.px(3), wide, theme.px(3)), theme.colour(Role::Watch));
        painter.setPen(theme.colour(Role::Watch));
        foot.write(painter, theme, name, std::min(from, width() - w - 1), bottom);
    }
}

void ChartMarks::paintCare(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom,
                           Foot& foot) const {
    // The splicer's own care gets its name first.
    for (const auto of : {CareMark::Of::Splicer, CareMark::Of::Cleaver}) {
        const bool own = of == CareMark::Of::Splicer;
        const QColor ink = theme.colour(Role::Recovered, own ? 0.9 : 0.4);
        for (const auto& care : m_care) {
            const double x = map.x(care.arc);
            if (care.of != of || !inside(map, x)) continue;
            painter.setPen(QPen(ink, (own ? 1.4 : 1.0) * theme.scale(), Qt::DotLine));
            for (const auto& plot : m_plots) painter.drawLine(QPointF(x, plot.top), QPointF(x, plot.bottom));
            painter.setFont(theme.font(Text::Tiny));
            painter.setPen(theme.colour(Role::Recovered));
            const double w = painter.fontMetrics().horizontalAdvance(care.name);
            foot.write(painter, theme, care.name, std::min(x + theme.px(2), width() - w - 1), bottom);
        }
    }
}

void ChartMarks::paintSince(QPainter& painter, const Theme& theme, const PlotMap& map, double bottom) const {
    const double low = std::max(map.x(m_since->low), map.left);
    const double high = std::min(map.x(m_since->high), map.right);
    if (high > low) painter.fillRect(QRectF(low, 0, high - low, bottom), theme.colour(Role::Drifting, 0.14));
    QRectF beganPlace;
    const double x = map.x(m_since->began);
    if (inside(map, x)) {
        painter.setPen(QPen(theme.colour(Role::Drifting), 2 * theme.scale()));
        painter.drawLine(QPointF(x, 0), QPointF(x, bottom));
        painter.setFont(theme.font(Text::Tiny, Weight::Bold));
        const QString word = tr("began");
        const double w = painter.fontMetrics().horizontalAdvance(word);
        const bool leftSide = std::min(x, low) - w - theme.px(5) > map.left;
        const double at = leftSide ? std::min(x, low) - w - theme.px(5) : std::max(x, high) + theme.px(5);
        painter.drawText(QPointF(at, theme.px(17)), word);
        beganPlace = QRectF(at, 0, w, theme.px(20));
    }
    const double raised = map.x(m_since->raised);
    if (inside(map, raised)) {
        painter.setPen(QPen(theme.colour(Role::Drifting), theme.scale(), Qt::DashDotLine));
        painter.drawLine(QPointF(raised, 0), QPointF(raised, bottom));
        painter.setFont(theme.font(Text::Tiny));
        const QString word = tr("signal");
        const double w = painter.fontMetrics().horizontalAdvance(word);
        const double at =
            raised + w + theme.px(5) < width() ? raised + theme.px(4) : raised - w - theme.px(4);
        const bool clash = beganPlace.intersects(QRectF(at, 0, w, theme.px(20)));
        painter.drawText(QPointF(at, theme.px(clash ? 34 : 17)), word);
    }
}

}  // namespace arc::ui
