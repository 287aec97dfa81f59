// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/groove_strip.hpp"

#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <array>
#include <cmath>

#include "ui/theme/state_mark.hpp"
#include "ui/widgets/plot_gutter.hpp"

namespace arc::ui {
namespace {

constexpr int titleBand = 24;
constexpr int footGap = 6;
constexpr int shades = 64;
/// A chart this full is drawn in the full colour.
constexpr float full = 1.0F;

/// From calm to loud. The calm end is the accent's wash; a fuller chart passes to the drifting colour late,
/// so that noise does not look like news.
std::array<QRgb, shades> ramp(const Theme& theme) {
    const QColor calm = theme.colour(Role::AccentWash);
    const QColor loud = theme.colour(Role::Drifting);
    std::array<QRgb, shades> colours{};
    for (int i = 0; i < shades; ++i) {
        const float t = std::pow(static_cast<float>(i) / (shades - 1), 1.8F);
        const auto mix = [t](float a, float b) { return a + (b - a) * t; };
        colours[static_cast<std::size_t>(i)] =
            QColor::fromRgbF(mix(calm.redF(), loud.redF()), mix(calm.greenF(), loud.greenF()),
                             mix(calm.blueF(), loud.blueF()))
                .rgb();
    }
    return colours;
}

/// Index of the first arc at or after the left edge of each pixel column, and after the last one.
std::vector<std::size_t> edgesOf(const std::vector<double>& arcs, const PlotMap& map, int columns) {
    std::vector<std::size_t> edges;
    edges.reserve(static_cast<std::size_t>(columns) + 1);
    auto at = arcs.begin();
    for (int column = 0; column <= columns; ++column) {
        at = std::lower_bound(at, arcs.end(), map.arc(map.left + column));
        edges.push_back(static_cast<std::size_t>(at - arcs.begin()));
    }
    return edges;
}

}  // namespace

GrooveStrip::GrooveStrip(ArcWindow& window, QWidget* parent) : QWidget(parent), m_window(window) {
    setMouseTracking(true);
    setAccessibleName(tr("Each groove alone"));
    connect(&m_window, &ArcWindow::changed, this, &GrooveStrip::redraw);
}

void GrooveStrip::setRows(std::vector<StripRow> rows) {
    m_rows = std::move(rows);
    m_pyramids.clear();
    m_oneAxis =
        std::ranges::all_of(m_rows, [&](const StripRow& row) { return row.arc == m_rows.front().arc; });
    QStringList loud;
    for (const auto& row : m_rows) {
        m_pyramids.emplace_back(row.value);
        if (row.loud) loud << QString::number(row.channel);
    }
    setAccessibleDescription(loud.isEmpty()
                                 ? tr("no groove stands out")
                                 : tr("stands out: groove %1").arg(loud.join(QStringLiteral(", "))));
    updateGeometry();
    redraw();
}

void GrooveStrip::setBaseline(std::optional<Stretch> baseline) {
    m_baseline = baseline;
    update();
}

std::optional<float> GrooveStrip::valueAt(int channel, double arc) const {
    for (const auto& row : m_rows) {
        if (row.channel != channel) continue;
        const auto after = std::ranges::upper_bound(row.arc, arc + 0.5);
        if (after == row.arc.begin()) return std::nullopt;
        return row.value[static_cast<std::size_t>(after - row.arc.begin()) - 1];
    }
    return std::nullopt;
}

std::optional<std::pair<int, float>> GrooveStrip::fullestAt(double arc) const {
    std::optional<std::pair<int, float>> most;
    for (const auto& row : m_rows)
        if (const auto value = valueAt(row.channel, arc); value && (!most || *value > most->second))
            most = {row.channel, *value};
    return most;
}

QSize GrooveStrip::sizeHint() const {
    const Theme theme = currentTheme();
    const int rows = static_cast<int>(m_rows.size());
    return {theme.px(400), theme.px(titleBand + footGap) + rows * theme.px(rows > 8 ? 16 : 20)};
}

QSize GrooveStrip::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(200), theme.px(titleBand + footGap) + static_cast<int>(m_rows.size()) * theme.px(13)};
}

void GrooveStrip::redraw() {
    const Theme theme = currentTheme();
    const PlotMap map = plotMap(m_window, width(), theme);
    const int columns = std::max(1, static_cast<int>(map.right - map.left));
    m_cells =
        QImage(columns, std::max(1, static_cast<int>(m_rows.size())), QImage::Format_ARGB32_Premultiplied);
    m_cells.fill(Qt::transparent);
    const auto colours = ramp(theme);
    std::vector<std::size_t> edges;
    for (std::size_t r = 0; r < m_rows.size(); ++r) {
        const auto& row = m_rows[r];
        if (row.arc.empty()) continue;
        if (r == 0 || !m_oneAxis) edges = edgesOf(row.arc, map, columns);
        auto* cells = reinterpret_cast<QRgb*>(m_cells.scanLine(static_cast<int>(r)));
        for (int column = 0; column < columns; ++column) {
            auto begin = edges[static_cast<std::size_t>(column)];
            auto end = edges[static_cast<std::size_t>(column) + 1];
            if (begin == end) {
                // Nearer than a pixel an arc: the last one holds until the next.
                if (begin == 0 ||
                    (begin == row.arc.size() && map.arc(map.left + column) > row.arc.back() + 1))
                    continue;
                --begin;
                end = begin + 1;
            }
            const float value = std::clamp(m_pyramids[r].over(begin, end).high / full, 0.0F, 1.0F);
            cells[column] = colours[static_cast<std::size_t>(value * (shades - 1))];
        }
    }
    update();
}

void GrooveStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    redraw();
}

void GrooveStrip::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    const PlotMap map = plotMap(m_window, width(), theme);
    QPainter painter(this);
    painter.setFont(theme.font(Text::Small));
    painter.setPen(theme.colour(Role::Soft));
    painter.drawText(QRectF(map.left, 0, map.right - map.left, theme.px(titleBand)),
                     Qt::AlignLeft | Qt::AlignVCenter, tr("each groove alone"));
    if (m_rows.empty()) return;
    const double top = theme.px(titleBand);
    const double pitch = (height() - top - theme.px(footGap)) / static_cast<double>(m_rows.size());
    for (std::size_t r = 0; r < m_rows.size(); ++r) {
        const auto& row = m_rows[r];
        const QRectF cell(map.left, top + static_cast<double>(r) * pitch, map.right - map.left, pitch - 2);
        painter.drawImage(cell, m_cells, QRectF(0, static_cast<double>(r), m_cells.width(), 1));
        painter.setFont(theme.font(Text::Tiny, row.loud ? Weight::Bold : Weight::Regular));
        painter.setPen(theme.colour(row.loud ? Role::Drifting : Role::Soft));
        painter.drawText(QRectF(0, cell.top() - 2, map.left - theme.px(8), cell.height() + 4),
                         Qt::AlignRight | Qt::AlignVCenter, QString::number(row.channel));
        if (row.loud) {
            const double side = std::min<double>(cell.height(), theme.px(10));
            paintMark(painter, QRectF(theme.px(8), cell.center().y() - side / 2, side, side), Mark::Drifting,
                      theme);
        }
    }
}

void GrooveStrip::wheelEvent(QWheelEvent* event) {
    wheelOn(m_window, plotMap(m_window, width(), currentTheme()), event->position().x(), event->angleDelta(),
            event->modifiers());
    event->accept();
}

void GrooveStrip::mousePressEvent(QMouseEvent* event) {
    m_grabbed = event->position().x();
}

void GrooveStrip::mouseMoveEvent(QMouseEvent* event) {
    const PlotMap map = plotMap(m_window, width(), currentTheme());
    if (m_grabbed) {
        const double by = (*m_grabbed - event->position().x()) * map.arcsPerPixel();
        m_window.show(m_window.from() + by, m_window.to() + by);
        m_grabbed = event->position().x();
    }
    m_window.setCursor(
        std::clamp(std::round(map.arc(event->position().x())), m_window.from(), m_window.to()));
}

void GrooveStrip::mouseReleaseEvent(QMouseEvent* /*event*/) {
    m_grabbed.reset();
}

void GrooveStrip::leaveEvent(QEvent* event) {
    m_window.setCursor(std::nullopt);
    QWidget::leaveEvent(event);
}

}  // namespace arc::ui
