// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/life_bar.hpp"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace arc::ui {
namespace {

constexpr int textHeight = 22;
constexpr int barHeight = 8;

}  // namespace

LifeBar::LifeBar(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LifeBar::set(const QString& name, const QString& text, std::optional<double> used, Mark mark) {
    m_name = name;
    m_words = text;
    m_used = used;
    m_mark = mark;
    setAccessibleName(name);
    setAccessibleDescription(text);
    setToolTip(QStringLiteral("%1: %2").arg(name, text));
    updateGeometry();
    update();
}

QSize LifeBar::minimumSizeHint() const {
    const Theme theme = currentTheme();
    const int name = QFontMetrics(theme.font(Text::Small)).horizontalAdvance(m_name);
    const int text = QFontMetrics(theme.font(Text::Small, Weight::Bold)).horizontalAdvance(m_words);
    // Side by side when there is room; the name above the words when there is not.
    return {std::max(name, text) + theme.px(24), theme.px(textHeight + barHeight + 8)};
}

QSize LifeBar::sizeHint() const {
    const Theme theme = currentTheme();
    const int name = QFontMetrics(theme.font(Text::Small)).horizontalAdvance(m_name);
    const int text = QFontMetrics(theme.font(Text::Small, Weight::Bold)).horizontalAdvance(m_words);
    return {name + text + theme.px(44), theme.px(textHeight + barHeight + 8)};
}

void LifeBar::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRect text(0, 0, width(), theme.px(textHeight));
    const bool loud = m_mark == Mark::Drifting || m_mark == Mark::Watch;
    int right = width();
    painter.setFont(theme.font(Text::Small, Weight::Bold));
    painter.setPen(theme.colour(loud ? roleOf(m_mark) : Role::Ink));
    painter.drawText(text, Qt::AlignRight | Qt::AlignVCenter, m_words);
    right -= painter.fontMetrics().horizontalAdvance(m_words);
    if (loud) {
        const int side = theme.px(12);
        right -= side + theme.px(6);
        paintMark(painter, QRectF(right, (theme.px(textHeight) - side) / 2.0, side, side), m_mark, theme);
    }
    painter.setFont(theme.font(Text::Small));
    painter.setPen(theme.colour(Role::Soft));
    painter.drawText(QRect(0, 0, std::max(0, right - theme.px(8)), theme.px(textHeight)),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_name, Qt::ElideRight, right - theme.px(8)));
    const QRectF bar(0, theme.px(textHeight + 1), width(), theme.px(barHeight));
    const double radius = bar.height() / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.colour(Role::Shade));
    painter.drawRoundedRect(bar, radius, radius);
    if (!m_used || *m_used <= 0) return;
    QRectF filled = bar;
    filled.setWidth(std::max(bar.height(), bar.width() * std::min(*m_used, 1.0)));
    painter.setBrush(theme.colour(loud ? roleOf(m_mark) : Role::Accent));
    painter.drawRoundedRect(filled, radius, radius);
}

}  // namespace arc::ui
