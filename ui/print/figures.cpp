// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/figures.hpp"

#include <QPolygonF>

#include <algorithm>
#include <cmath>

#include "core/work/fibre.hpp"
#include "ui/print/words.hpp"
#include "ui/theme/fibre_colours.hpp"

namespace arc::print {
namespace {

using namespace closeout;

constexpr double labelPoints = 6.8;

Type label(const QColor& colour) {
    return {labelPoints, Weight::Normal, colour, Face::Text};
}

QString dB(double value) {
    return QString::number(value, 'f', 2);
}

/// 1, 2 or 5 times a power of ten, so that about `parts` steps fill the span.
double niceStep(double span, int parts) {
    if (span <= 0) return 1;
    const double raw = span / parts, power = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (raw <= factor * power * 1.0001) return factor * power;
    return 10 * power;
}

/// Plot area inside a place: room for labels left and below.
struct Plot {
    QRectF area;
    double xMax, yMax;
    [[nodiscard]] double x(double value) const { return area.left() + area.width() * value / xMax; }
    [[nodiscard]] double y(double value) const { return area.bottom() - area.height() * value / yMax; }
};

void horizontals(Sheet& sheet, const Plot& plot, double step, int places) {
    for (double v = 0; v <= plot.yMax * 1.0001; v += step) {
        sheet.line(plot.area.left(), plot.y(v), plot.area.right(), plot.y(v),
                   v == 0 ? ink::soft() : ink::hairline(), v == 0 ? 0.25 : 0.12);
        sheet.text(plot.area.left() - 13, plot.y(v) + 0.9, 11.5,
                   places == 0 ? count(static_cast<std::uint64_t>(v)) : QString::number(v, 'f', places),
                   label(ink::soft()), Across::Right);
    }
}

std::vector<double> lossesInTime(const Record& record) {
    std::vector<std::pair<std::int64_t, double>> all;
    for (const ClosureSection& section : record.closures)
        for (const Splice& splice : section.splices)
            all.emplace_back(splice.final().at.ms, decibels(splice.final().loss));
    std::ranges::stable_sort(all, {}, &std::pair<std::int64_t, double>::first);
    std::vector<double> losses;
    losses.reserve(all.size());
    for (const auto& [at, loss] : all) losses.push_back(loss);
    return losses;
}

void drawDots(Sheet& sheet, const Plot& plot, const std::vector<double>& losses, double limit) {
    sheet.figure([&](QPainter& painter, double px) {
        painter.setPen(Qt::NoPen);
        for (std::size_t i = 0; i < losses.size(); ++i) {
            const QPointF at(plot.x(static_cast<double>(i) + 0.5) * px, plot.y(losses[i]) * px);
            const bool isOver = losses[i] > limit + 1e-9;
            painter.setBrush(isOver ? ink::drifting() : ink::accent());
            const double r = 0.55 * px;
            if (isOver)
                painter.drawPolygon(QPolygonF{{at.x(), at.y() - 1.5 * r},
                                              {at.x() + 1.4 * r, at.y() + r},
                                              {at.x() - 1.4 * r, at.y() + r}});
            else
                painter.drawEllipse(at, r, r);
        }
    });
}

/// One stroke a stretch; the stretch's mean as a line through all of them.
void drawStrokes(Sheet& sheet, const Plot& plot, const std::vector<double>& losses, double limit) {
    const auto strokes = static_cast<std::size_t>(plot.area.width() / 0.5);
    sheet.figure([&](QPainter& painter, double px) {
        QPolygonF means;
        for (std::size_t s = 0; s < strokes; ++s) {
            const std::size_t from = losses.size() * s / strokes, to = losses.size() * (s + 1) / strokes;
            if (from >= to) continue;
            const auto [low, high] = std::minmax_element(losses.begin() + static_cast<std::ptrdiff_t>(from),
                                                         losses.begin() + static_cast<std::ptrdiff_t>(to));
            double sum = 0;
            for (std::size_t i = from; i < to; ++i) sum += losses[i];
            const double x = plot.x(static_cast<double>(from + to) / 2) * px;
            const bool isOver = *high > limit + 1e-9;
            const double reach = std::min(*high, limit);
            painter.setPen(QPen(QColor(0x8F, 0xB4, 0xB3), 0.36 * px, Qt::SolidLine, Qt::FlatCap));
            painter.drawLine(QPointF(x, plot.y(*low) * px), QPointF(x, plot.y(reach) * px - 0.1 * px));
            if (isOver) {
                painter.setPen(QPen(ink::drifting(), 0.36 * px, Qt::SolidLine, Qt::FlatCap));
                painter.drawLine(QPointF(x, plot.y(std::max(limit, *low)) * px),
                                 QPointF(x, plot.y(*high) * px));
            }
            means << QPointF(x, plot.y(sum / static_cast<double>(to - from)) * px);
        }
        painter.setPen(QPen(ink::accent(), 0.3 * px));
        painter.drawPolyline(means);
    });
}

}  // namespace

QColor colourOf(RecordVerdict verdict) {
    switch (verdict) {
        case RecordVerdict::Accepted:
            return ink::steady();
        case RecordVerdict::AcceptedWithExceptions:
            return ink::recovered();
        case RecordVerdict::Open:
            return ink::watch();
        case RecordVerdict::NotAccepted:
            return ink::drifting();
    }
    return ink::text();
}

void drawComb(Sheet& sheet, const QRectF& place) {
    // The V-groove block from its end: twelve grooves, a fibre of each colour lying in them.
    sheet.figure([&](QPainter& painter, double px) {
        const double pitch = place.width() / 12, depth = place.height() * 0.62;
        QPolygonF block;
        const double top = place.bottom() - depth;
        block << QPointF(place.left() * px, place.bottom() * px) << QPointF(place.left() * px, top * px);
        for (int i = 0; i < 12; ++i) {
            const double middle = place.left() + pitch * (i + 0.5);
            block << QPointF((middle - pitch * 0.34) * px, top * px)
                  << QPointF(middle * px, (top + depth * 0.62) * px)
                  << QPointF((middle + pitch * 0.34) * px, top * px);
        }
        block << QPointF(place.right() * px, top * px) << QPointF(place.right() * px, place.bottom() * px);
        painter.setPen(Qt::NoPen);
        painter.setBrush(ink::accent());
        painter.drawPolygon(block);
        const ColourOrder order = colourOrders().front();
        const double r = pitch * 0.215;
        for (int i = 0; i < 12; ++i) {
            const QPointF middle((place.left() + pitch * (i + 0.5)) * px, (top + depth * 0.02) * px);
            painter.setPen(QPen(ink::text(), 0.16 * px));
            painter.setBrush(ui::fibreColour(order.colours[i]));
            painter.drawEllipse(middle, r * px, r * px);
        }
    });
}

void drawVerdictMark(Sheet& sheet, const QRectF& place, RecordVerdict verdict) {
    sheet.figure([&](QPainter& painter, double px) {
        const QRectF r(place.x() * px, place.y() * px, place.width() * px, place.height() * px);
        const QColor colour = colourOf(verdict);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        const QPointF c = r.center();
        const double h = r.width() / 2;
        switch (verdict) {
            case RecordVerdict::Accepted:
                painter.drawEllipse(r);
                break;
            case RecordVerdict::AcceptedWithExceptions:
                painter.setBrush(Qt::NoBrush);
                painter.setPen(QPen(colour, r.width() * 0.2));
                painter.drawEllipse(
                    r.adjusted(r.width() * 0.1, r.width() * 0.1, -r.width() * 0.1, -r.width() * 0.1));
                break;
            case RecordVerdict::Open:
                painter.drawPolygon(QPolygonF{
                    {c.x(), c.y() - h}, {c.x() + h, c.y()}, {c.x(), c.y() + h}, {c.x() - h, c.y()}});
                break;
            case RecordVerdict::NotAccepted:
                painter.drawPolygon(QPolygonF{
                    {c.x(), c.y() - h}, {c.x() + h, c.y() + h * 0.8}, {c.x() - h, c.y() + h * 0.8}});
                break;
        }
    });
}

void drawHistogram(Sheet& sheet, const QRectF& place, const Record& record) {
    const Histogram& h = record.histogram;
    std::size_t most = h.beyond;
    for (const HistogramBin& bin : h.bins) most = std::max(most, bin.count);
    // One place more for what lies beyond the last bin.
    const std::size_t places = h.bins.size() + (h.beyond > 0 ? 1 : 0);
    const double step = std::max(1.0, niceStep(static_cast<double>(std::max<std::size_t>(most, 1)), 4));
    Plot plot{QRectF(place.left() + 13, place.top() + 5, place.width() - 14, place.height() - 14),
              static_cast<double>(places),
              std::ceil(static_cast<double>(std::max<std::size_t>(most, 1)) / step) * step};
    horizontals(sheet, plot, step, 0);
    const double limit = decibels(record.job.rule.perSplice), width = decibels(h.width);
    const double bar = plot.area.width() / static_cast<double>(places);
    for (std::size_t i = 0; i < places; ++i) {
        const bool isBeyond = i >= h.bins.size();
        const std::size_t count = isBeyond ? h.beyond : h.bins[i].count;
        if (count == 0) continue;
        const double top = plot.y(static_cast<double>(count));
        // A bin belongs above the limit when its lower edge does.
        const bool isOver = isBeyond || static_cast<double>(i) * width > limit + 1e-9;
        sheet.box(
            QRectF(plot.x(static_cast<double>(i)) + bar * 0.08, top, bar * 0.84, plot.area.bottom() - top),
            isOver ? ink::drifting() : ink::accent());
    }
    const int every =
        static_cast<int>(std::lround(niceStep(static_cast<double>(h.bins.size()) * width, 6) / width));
    for (std::size_t i = 0; i <= h.bins.size(); i += static_cast<std::size_t>(std::max(every, 1))) {
        const double x = plot.x(static_cast<double>(i));
        sheet.line(x, plot.area.bottom(), x, plot.area.bottom() + 0.9, ink::soft(), 0.2);
        sheet.text(x - 6, plot.area.bottom() + 3.9, 12, dB(static_cast<double>(i) * width),
                   label(ink::soft()), Across::Centre);
    }
    if (h.beyond > 0)
        sheet.text(plot.x(static_cast<double>(h.bins.size())) - 4, plot.area.bottom() + 7.6, 12,
                   sheet.tr("above"), label(ink::drifting()), Across::Centre);
    const double at = plot.x(limit / width);
    if (limit / width <= static_cast<double>(h.bins.size())) {
        sheet.line(at, plot.area.top() - 1.5, at, plot.area.bottom(), ink::drifting(), 0.3);
        sheet.text(at + 1, plot.area.top() + 0.4, 30, sheet.tr("limit %1").arg(dB(limit)),
                   label(ink::drifting()));
    }
    sheet.text(plot.area.left(), plot.area.bottom() + 7.6, plot.area.width() * 0.6,
               sheet.tr("estimated loss, dB"), label(ink::soft()));
    sheet.text(place.left(), place.top() + 1.2, 40, sheet.tr("splices"), label(ink::soft()));
}

void drawRunChart(Sheet& sheet, const QRectF& place, const Record& record) {
    const std::vector<double> losses = lossesInTime(record);
    const double limit = decibels(record.job.rule.perSplice);
    const double highest = losses.empty() ? limit : *std::ranges::max_element(losses);
    const double step = niceStep(std::max(highest, limit) * 1.05, 5);
    Plot plot{QRectF(place.left() + 13, place.top() + 5, place.width() - 14, place.height() - 14),
              static_cast<double>(std::max<std::size_t>(losses.size(), 1)),
              std::ceil(std::max(highest, limit) * 1.05 / step) * step};
    horizontals(sheet, plot, step, 2);
    sheet.line(plot.area.left(), plot.y(limit), plot.area.right(), plot.y(limit), ink::drifting(), 0.3);
    sheet.text(plot.area.right() - 30, plot.y(limit) - 0.9, 30, sheet.tr("limit %1").arg(dB(limit)),
               label(ink::drifting()), Across::Right);
    constexpr std::size_t mostDots = 500;
    if (losses.size() <= mostDots)
        drawDots(sheet, plot, losses, limit);
    else
        drawStrokes(sheet, plot, losses, limit);
    sheet.text(place.left(), place.top() + 1.2, 60, sheet.tr("estimated loss, dB"), label(ink::soft()));
    sheet.text(plot.area.left(), plot.area.bottom() + 3.9, 40, "1", label(ink::soft()));
    sheet.text(plot.area.right() - 30, plot.area.bottom() + 3.9, 30, count(losses.size()), label(ink::soft()),
               Across::Right);
    const QString words =
        losses.size() <= mostDots
            ? sheet.tr("splices in order of time; triangles are above the limit")
            : sheet.tr("splices in order of time; strokes from lowest to highest, the line is their mean");
    sheet.text(plot.area.left() + 8, plot.area.bottom() + 3.9, plot.area.width() - 30, words,
               label(ink::soft()), Across::Left);
}

}  // namespace arc::print
