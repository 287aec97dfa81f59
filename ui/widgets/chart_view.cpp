// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/chart_view.hpp"

#include <QChart>
#include <QGraphicsItem>
#include <QLineF>
#include <QLineSeries>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <QValueAxis>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

#include "ui/widgets/band_picture.hpp"
#include "ui/widgets/plot_gutter.hpp"

namespace arc::ui {
namespace {

constexpr int titleBand = 24;
constexpr double zoomStep = 0.8;
constexpr double aboveLimit = 1.15;
/// Values a pixel column above which a line is painted as a band from least to most.
constexpr double densest = 2;
/// Radius of a dot, as long as there is room.
constexpr int largestDot = 3;
/// Points a pixel column from which the line is thin.
constexpr double packedFrom = 0.25;

std::size_t indexAt(const std::vector<double>& arcs, double arc) {
    return static_cast<std::size_t>(std::ranges::lower_bound(arcs, arc) - arcs.begin());
}

}  // namespace

/// Baseline shade, values and direct labels inside the plot.
class ChartView::Ink final : public QGraphicsItem {
  public:
    Ink(const ChartView& view, QChart* chart) : QGraphicsItem(chart), m_view(view), m_chart(chart) {
        setZValue(5);
    }

    [[nodiscard]] QRectF boundingRect() const override { return m_chart->rect(); }
    void refresh() {
        prepareGeometryChange();
        update();
    }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem* /*option*/, QWidget* /*widget*/) override {
        const Theme theme = currentTheme();
        const QRectF plot = m_chart->plotArea();
        const PlotMap map = plotMap(m_view.m_window, m_view.viewport()->width(), theme);
        paintTitle(*painter, theme, plot);
        if (!m_view.m_data) return;
        painter->save();
        // The dots of the first and the last arc and those at the top edge are whole.
        const double reach = m_view.m_data->style == ChartData::Style::Dots ? theme.px(largestDot) + 1 : 1;
        painter->setClipRect(plot.adjusted(-reach, -reach, reach, 1));
        paintBaseline(*painter, theme, plot, map);
        paintValues(*painter, theme, plot, map);
        painter->restore();
        painter->setPen(QPen(theme.colour(Role::Line), 1));
        painter->drawLine(plot.bottomLeft(), plot.bottomRight());
        paintLabels(*painter, theme, plot, map);
    }

  private:
    [[nodiscard]] double y(const QRectF& plot, double value) const {
        const double top = m_view.m_y->max();
        return plot.bottom() - std::clamp(value / top, -0.02, 1.02) * plot.height();
    }

    void paintTitle(QPainter& painter, const Theme& theme, const QRectF& plot) const {
        if (!m_view.m_data) return;
        painter.setFont(theme.font(Text::Small));
        painter.setPen(theme.colour(Role::Soft));
        const QRectF band(plot.left(), 0, plot.width(), theme.px(titleBand));
        painter.drawText(band, Qt::AlignLeft | Qt::AlignVCenter, m_view.m_data->title);
        if (m_view.m_data->now.isEmpty()) return;
        const double after = painter.fontMetrics().horizontalAdvance(m_view.m_data->title) + theme.px(12);
        painter.setFont(theme.font(Text::Small, Weight::Bold));
        painter.setPen(theme.colour(Role::Ink));
        painter.drawText(band.adjusted(after, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, m_view.m_data->now);
    }

    void paintBaseline(QPainter& painter, const Theme& theme, const QRectF& plot, const PlotMap& map) const {
        if (!m_view.m_baseline) return;
        const double left = std::max(map.x(m_view.m_baseline->from), plot.left());
        const double right = std::min(map.x(m_view.m_baseline->to), plot.right());
        if (right <= left) return;
        painter.fillRect(QRectF(left, plot.top(), right - left, plot.height()), theme.colour(Role::Shade));
        if (m_view.m_data->scale == ChartData::Scale::Number) return;
        painter.setFont(theme.font(Text::Tiny));
        painter.setPen(theme.colour(Role::Soft));
        if (right - left > theme.px(60))
            painter.drawText(QRectF(left + theme.px(6), plot.top() + theme.px(2), right - left, theme.px(18)),
                             Qt::AlignLeft | Qt::AlignVCenter, ChartView::tr("baseline"));
    }

    void paintValues(QPainter& painter, const Theme& theme, const QRectF& plot, const PlotMap& map) const {
        const auto& data = *m_view.m_data;
        if (data.arc.empty()) return;
        const std::size_t begin = indexAt(data.arc, map.from);
        const std::size_t end = std::min(indexAt(data.arc, map.to) + 1, data.arc.size());
        if (begin >= end) return;
        const QColor ink = theme.colour(Role::Accent);
        const bool dense = static_cast<double>(end - begin) > densest * plot.width();
        if (dense) {
            paintBand(painter, ink, plot, map, begin, end);
            return;
        }
        painter.setRenderHint(QPainter::Antialiasing);
        if (data.style == ChartData::Style::Dots) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(ink);
            const double r =
                std::clamp(plot.width() / static_cast<double>(end - begin) / 2.5, 1.2, double{largestDot}) *
                theme.scale();
            // Few and worth a look: never as small as the others.
            const double edge = theme.px(largestDot);
            const double top = m_view.m_y->max();
            for (std::size_t i = begin; i < end; ++i) {
                const double x = map.x(data.arc[i]);
                if (data.value[i] > top)
                    painter.drawPolygon(QPolygonF{{x, plot.top() - edge},
                                                  {x + edge, plot.top() + edge},
                                                  {x - edge, plot.top() + edge}});
                else
                    painter.drawEllipse(QPointF(x, y(plot, data.value[i])), r, r);
            }
            return;
        }
        // Line by line: stroking one long path costs a hundred times as much.
        const std::size_t first = begin > 0 ? begin - 1 : 0;
        QList<QLineF> lines;
        lines.reserve(static_cast<qsizetype>(end - first));
        QPointF before(map.x(data.arc[first]), y(plot, data.value[first]));
        for (std::size_t i = first + 1; i < end; ++i) {
            const QPointF here(map.x(data.arc[i]), y(plot, data.value[i]));
            lines.emplace_back(before, here);
            before = here;
        }
        // Round ends close the corners where lines are far apart; packed ones hide them, and cost most.
        const bool packed = static_cast<double>(end - begin) > packedFrom * plot.width();
        painter.setPen(packed ? QPen(ink, theme.scale(), Qt::SolidLine, Qt::FlatCap)
                              : QPen(ink, 1.6 * theme.scale(), Qt::SolidLine, Qt::RoundCap));
        painter.drawLines(lines);
    }

    /// One vertical stroke from least to most in each pixel column.
    void paintBand(QPainter& painter, const QColor& ink, const QRectF& plot, const PlotMap& map,
                   std::size_t begin, std::size_t end) const {
        const auto& arcs = m_view.m_data->arc;
        const QRect place = plot.toAlignedRect();
        std::vector<ColumnInk> columns(static_cast<std::size_t>(place.width()));
        std::size_t i = begin;
        std::size_t stride = 1;  // readings of the last column: the next edge is not far from as many on
        for (int column = 0; column < place.width() && i < end; ++column) {
            const double edge = map.arc(place.left() + column + 1);
            const auto near = std::min(i + 2 * stride, end);
            const auto from = arcs.begin() + static_cast<std::ptrdiff_t>(i);
            const auto to = arcs.begin() + static_cast<std::ptrdiff_t>(arcs[near - 1] < edge ? end : near);
            const auto next = static_cast<std::size_t>(std::lower_bound(from, to, edge) - arcs.begin());
            if (next == i) continue;
            const MinMax reach = m_view.m_pyramid.over(i, next);
            const int top = qRound(y(plot, reach.high)) - place.top();
            const int bottom = qRound(y(plot, reach.low)) - place.top();
            columns[static_cast<std::size_t>(column)] = {top, std::max(top + 1, bottom)};
            stride = next - i;
            i = next;
        }
        painter.drawImage(place.topLeft(), bandPicture(columns, place.height(), ink));
    }

    void paintLabels(QPainter& painter, const Theme& theme, const QRectF& plot, const PlotMap& map) const {
        const auto& data = *m_view.m_data;
        // Right of the shaded stretch when that begins the picture; news come at the right end.
        const bool shaded =
            m_view.m_baseline && m_view.m_baseline->from <= map.from && m_view.m_baseline->to > map.from;
        const double labelLeft =
            theme.px(6) + (shaded ? std::min(map.x(m_view.m_baseline->to), plot.center().x()) : plot.left());
        painter.setFont(theme.font(Text::Tiny));
        const auto label = [&](double value, const QString& text, Role role) {
            painter.setPen(theme.colour(role));
            const double at = y(plot, value);
            const double height = theme.px(16);
            const bool below = at - height < plot.top();
            painter.drawText(QRectF(labelLeft, below ? at : at - height, plot.right() - labelLeft, height),
                             Qt::AlignLeft | Qt::AlignVCenter, text);
        };
        if (data.limit && !data.limitName.isEmpty()) label(*data.limit, data.limitName, Role::Drifting);
        painter.setPen(theme.colour(Role::Soft));
        const auto figure = [&](double value, const QString& text) {
            painter.drawText(QRectF(0, y(plot, value) - theme.px(9), plot.left() - theme.px(6), theme.px(18)),
                             Qt::AlignRight | Qt::AlignVCenter, text);
        };
        if (data.scale == ChartData::Scale::Number) {
            for (double v = 0; v <= data.top + 1e-9; v += data.step)
                figure(v, QLocale().toString(v, 'f', data.places) +
                              (v + data.step > data.top + 1e-9 ? data.unit : QString()));
        }
    }

    const ChartView& m_view;
    QChart* m_chart;
};

ChartView::ChartView(ArcWindow& window, QWidget* parent)
    : QChartView(parent),
      m_window(window),
      m_x(new QValueAxis),
      m_y(new QValueAxis),
      m_limit(new QLineSeries),
      m_level(new QLineSeries) {
    const Theme theme = currentTheme();
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMouseTracking(true);
    viewport()->setMouseTracking(true);
    viewport()->setFocusPolicy(Qt::NoFocus);
    setFocusPolicy(Qt::NoFocus);
    setBackgroundBrush(theme.colour(Role::Card));
    auto* made = chart();
    made->setBackgroundVisible(false);
    made->setMargins({0, 0, 0, 0});
    made->legend()->hide();
    made->addSeries(m_level);
    made->addSeries(m_limit);
    made->addAxis(m_x, Qt::AlignBottom);
    made->addAxis(m_y, Qt::AlignLeft);
    for (auto* axis : {m_x, m_y}) {
        // They carry the scale; their own ticks and lines would follow a resize one frame late.
        axis->setVisible(false);
    }
    for (auto* series : {m_limit, m_level}) {
        series->attachAxis(m_x);
        series->attachAxis(m_y);
    }
    m_limit->setPen(QPen(theme.colour(Role::Drifting), 1.5 * theme.scale(), Qt::DashLine));
    m_level->setPen(QPen(theme.colour(Role::Soft), theme.scale(), Qt::DotLine));
    m_ink = new Ink(*this, made);
    connect(&m_window, &ArcWindow::changed, this, &ChartView::place);
}

ChartView::~ChartView() = default;

void ChartView::setData(std::shared_ptr<const ChartData> data) {
    m_data = std::move(data);
    m_pyramid = m_data ? Pyramid(m_data->value) : Pyramid();
    if (m_data) {
        setAccessibleName(m_data->title);
        setAccessibleDescription(m_data->now);
        double top = m_data->top;
        if (m_data->limit) top = std::max(top, *m_data->limit * aboveLimit);
        m_y->setRange(0, top);
    }
    place();
}

void ChartView::setBaseline(std::optional<Stretch> baseline) {
    m_baseline = baseline;
    m_ink->refresh();
}

void ChartView::place() {
    const Theme theme = currentTheme();
    const int bottom = theme.px(6);
    const PlotMap map = plotMap(m_window, viewport()->width(), theme);
    const double top = theme.px(titleBand);
    chart()->resize(viewport()->size());
    scene()->setSceneRect(QRectF(QPointF(0, 0), QSizeF(viewport()->size())));
    chart()->setPlotArea(QRectF(map.left, top, std::max(1.0, map.right - map.left),
                                std::max(1.0, viewport()->height() - top - bottom)));
    m_x->setRange(m_window.from(), m_window.to());
    const auto across = [&](QLineSeries* series, std::optional<double> value) {
        series->setVisible(value.has_value());
        if (value) series->replace(QList<QPointF>{{m_window.from(), *value}, {m_window.to(), *value}});
    };
    across(m_limit, m_data ? m_data->limit : std::nullopt);
    across(m_level, m_data ? m_data->level : std::nullopt);
    m_ink->refresh();
}

std::optional<float> ChartView::valueAt(double arc) const {
    if (!m_data || m_data->arc.empty()) return std::nullopt;
    const auto after = std::ranges::upper_bound(m_data->arc, arc + 0.5);
    if (after == m_data->arc.begin()) return std::nullopt;
    return m_data->value[static_cast<std::size_t>(after - m_data->arc.begin()) - 1];
}

void ChartView::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    place();
}

void wheelOn(ArcWindow& window, const PlotMap& map, double x, QPoint angleDelta,
             Qt::KeyboardModifiers modifiers) {
    if (std::abs(angleDelta.x()) > std::abs(angleDelta.y()) || modifiers.testFlag(Qt::ShiftModifier)) {
        const int delta = angleDelta.x() != 0 ? angleDelta.x() : angleDelta.y();
        window.pan(-delta / 1200.0);
        return;
    }
    window.zoom(std::pow(zoomStep, angleDelta.y() / 120.0), map.arc(x));
}

void ChartView::wheelEvent(QWheelEvent* event) {
    wheelOn(m_window, plotMap(m_window, viewport()->width(), currentTheme()), event->position().x(),
            event->angleDelta(), event->modifiers());
    event->accept();
}

void ChartView::mousePressEvent(QMouseEvent* event) {
    m_grabbed = event->position().x();
}

void ChartView::mouseMoveEvent(QMouseEvent* event) {
    const PlotMap map = plotMap(m_window, viewport()->width(), currentTheme());
    if (m_grabbed) {
        const double by = (*m_grabbed - event->position().x()) * map.arcsPerPixel();
        m_window.show(m_window.from() + by, m_window.to() + by);
        m_grabbed = event->position().x();
    }
    m_window.setCursor(
        std::clamp(std::round(map.arc(event->position().x())), m_window.from(), m_window.to()));
}

void ChartView::mouseReleaseEvent(QMouseEvent* /*event*/) {
    m_grabbed.reset();
}

void ChartView::leaveEvent(QEvent* event) {
    m_window.setCursor(std::nullopt);
    QChartView::leaveEvent(event);
}

}  // namespace arc::ui
