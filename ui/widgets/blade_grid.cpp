// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/blade_grid.hpp"

#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

constexpr int rowHeight = 20;
constexpr int headHeight = 16;
constexpr int labelWidth = 18;

}  // namespace

BladeGrid::BladeGrid(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(tr("Blade"));
}

void BladeGrid::setBlade(const kit::BladeLife& blade, std::uint32_t cleavesPerCell) {
    m_blade = blade;
    m_perCell = std::max<std::uint32_t>(1, cleavesPerCell);
    setAccessibleDescription(tr("height %1 of %2, position %3 of %4")
                                 .arg(blade.now.height)
                                 .arg(blade.heights)
                                 .arg(blade.now.position)
                                 .arg(blade.positions));
    updateGeometry();
    update();
}

QSize BladeGrid::sizeHint() const {
    const Theme theme = currentTheme();
    const int rows = m_blade ? m_blade->heights : 3;
    return {theme.px(320), theme.px(headHeight) + rows * theme.px(rowHeight)};
}

QSize BladeGrid::minimumSizeHint() const {
    return {currentTheme().px(200), sizeHint().height()};
}

QRectF BladeGrid::cellRect(const BladePlace& place) const {
    const Theme theme = currentTheme();
    const double left = theme.px(labelWidth);
    const double w = (width() - left) / std::max(1, m_blade->positions);
    return {left + (place.position - 1) * w,
            theme.px(headHeight) + (place.height - 1) * theme.px(rowHeight) * 1.0, w,
            theme.px(rowHeight) * 1.0};
}

void BladeGrid::paintEvent(QPaintEvent* /*event*/) {
    if (!m_blade) return;
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(theme.font(Text::Tiny));
    painter.setPen(theme.colour(Role::Soft));
    for (int position = 1; position <= m_blade->positions; ++position) {
        const QRectF column = cellRect({1, position});
        if (position != 1 && position % 4 != 0 && position != m_blade->positions) continue;
        painter.drawText(
            QRectF(column.left() - theme.px(10), 0, column.width() + theme.px(20), theme.px(headHeight)),
            Qt::AlignCenter, QString::number(position));
    }
    for (int height = 1; height <= m_blade->heights; ++height)
        painter.drawText(
            QRectF(0, cellRect({height, 1}).top(), theme.px(labelWidth - 6), theme.px(rowHeight)),
            Qt::AlignRight | Qt::AlignVCenter, QString::number(height));
    for (const auto& cell : m_blade->cells) {
        const QRectF rect = cellRect(cell.place).adjusted(1.5, 1.5, -1.5, -1.5);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.colour(Role::Shade));
        painter.drawRoundedRect(rect, 2, 2);
        if (cell.state == kit::CellState::Spent) {
            // Used up, or before the book began: its uses may not be known.
            painter.setBrush(theme.colour(Role::Soft, 0.28));
            painter.drawRoundedRect(rect, 2, 2);
        }
        const double used = std::min(1.0, static_cast<double>(cell.cleaves) / m_perCell);
        if (used > 0) {
            // Filled from below, like a cell that fills up.
            QRectF full = rect;
            full.setTop(rect.bottom() - std::max(2.0, rect.height() * used));
            painter.setBrush(theme.colour(cell.state == kit::CellState::Now ? Role::Accent : Role::Soft,
                                          cell.state == kit::CellState::Now ? 1.0 : 0.75));
            painter.drawRoundedRect(full, 2, 2);
        }
        if (cell.state != kit::CellState::Now) continue;
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.colour(Role::Ink), 2 * theme.scale()));
        painter.drawRoundedRect(rect.adjusted(-1, -1, 1, 1), 2, 2);
    }
}

QString BladeGrid::sentence(const kit::BladeCell& cell) const {
    QString said = tr("height %1, position %2: %3 cleaves")
                       .arg(cell.place.height)
                       .arg(cell.place.position)
                       .arg(text::number(static_cast<std::int64_t>(cell.cleaves)));
    if (cell.state == kit::CellState::Now) said += tr(", in use now");
    return said;
}

bool BladeGrid::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip && m_blade) {
        const auto* help = static_cast<QHelpEvent*>(event);
        for (const auto& cell : m_blade->cells)
            if (cellRect(cell.place).contains(help->pos()))
                QToolTip::showText(help->globalPos(), sentence(cell), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace arc::ui
