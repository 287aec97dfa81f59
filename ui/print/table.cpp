// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/table.hpp"

#include <QPainterPath>

#include <algorithm>

#include "ui/theme/fibre_colours.hpp"

namespace arc::print {
namespace {

constexpr double cellPad = 1.4, lineHeight = 4.55, disc = 2.5;

}  // namespace

Table::Table(Sheet& sheet, QString caption, std::vector<Column> columns, double points)
    : m_sheet(sheet), m_caption(std::move(caption)), m_columns(std::move(columns)), m_points(points) {}

void Table::heading() {
    if (!m_caption.isEmpty()) {
        const QString words = m_isBegun ? m_sheet.tr("%1, continued").arg(m_caption) : m_caption;
        m_sheet.text(m_sheet.left(), m_sheet.y + 4, m_sheet.width(), words,
                     {10, Weight::Bold, ink::text(), Face::Text});
        m_sheet.y += 6;
    }
    double x = m_sheet.left();
    for (const Column& column : m_columns) {
        m_sheet.text(x + cellPad, m_sheet.y + 3.6, column.width - 2 * cellPad, column.title,
                     {7, Weight::Normal, ink::soft(), Face::Text}, column.across);
        x += column.width;
    }
    m_sheet.y += 5;
    m_sheet.line(m_sheet.left(), m_sheet.y, x, m_sheet.y, ink::accent(), 0.3);
    m_sheet.y += 0.6;
    m_isBegun = true;
}

double Table::rowHeight(const std::vector<Cell>& cells) const {
    double height = lineHeight;
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i) {
        if (m_columns[i].fit == Fit::Elide) continue;
        const double wrapped = m_sheet.heightOf(m_columns[i].width - 2 * cellPad, cells[i].words,
                                                {m_points, cells[i].weight, {}, cells[i].face});
        height = std::max(height, wrapped + 1.3);
    }
    return height;
}

void Table::row(const std::vector<Cell>& cells) {
    const double height = rowHeight(cells);
    const double atLeast = m_isBegun ? height : height + 12;
    if (m_sheet.need(std::min(atLeast, m_sheet.bottom() - 60)) || !m_isBegun) heading();
    const double top = m_sheet.y, base = top + 3.25;
    double x = m_sheet.left();
    for (std::size_t i = 0; i < cells.size() && i < m_columns.size(); ++i) {
        const Column& column = m_columns[i];
        const Cell& cell = cells[i];
        double at = x + cellPad, width = column.width - 2 * cellPad;
        if (cell.fibre) {
            // Nothing to put back: every other stroke sets its own pen.
            m_sheet.bareFigure([&](QPainter& painter, double px) {
                paintFibre(painter, QRectF(at * px, (base - 2.35) * px, disc * px, disc * px), *cell.fibre);
            });
            at += disc + 1.1;
            width -= disc + 1.1;
        }
        const Type type{m_points, cell.weight, cell.colour.isValid() ? cell.colour : ink::text(), cell.face};
        if (column.fit == Fit::Wrap)
            m_sheet.paragraph(at, base - m_sheet.ascent(type), width, cell.words, type);
        else
            m_sheet.text(at, base, width, cell.words, type, column.across);
        x += column.width;
    }
    m_sheet.y += height;
    m_sheet.line(m_sheet.left(), m_sheet.y, x, m_sheet.y, ink::hairline(), 0.12);
}

void paintFibre(QPainter& painter, const QRectF& box, const FibreLook& look) {
    const QColor fill = ui::fibreColour(look.colour);
    // Round pen dots: a third of the bytes of two ellipses, and a record has tens of thousands of them.
    const double rim = box.width() * 0.035;
    painter.setPen(QPen(ink::text(), box.width() + 2 * rim, Qt::SolidLine, Qt::RoundCap));
    painter.drawPoint(box.center());
    painter.setPen(QPen(fill, box.width() - 2 * rim, Qt::SolidLine, Qt::RoundCap));
    painter.drawPoint(box.center());
    if (look.tracerMarks > 0) {
        // Bars inside the disc: a clip would turn the whole page into pictures.
        painter.setPen(Qt::NoPen);
        painter.setBrush(fill.lightnessF() < 0.25F ? QColor(Qt::white) : QColor(Qt::black));
        const int marks = std::min(look.tracerMarks, 3);
        const double bar = box.width() * 0.11, height = box.height() * 0.62;
        for (int i = 0; i < marks; ++i) {
            const double x = box.left() + box.width() * (i + 1) / (marks + 1) - bar / 2;
            painter.drawRect(QRectF(x, box.center().y() - height / 2, bar, height));
        }
    }
    painter.setBrush(Qt::NoBrush);
}

}  // namespace arc::print
