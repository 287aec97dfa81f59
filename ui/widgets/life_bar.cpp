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
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
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

int LifeBar::nameWidth() const {
    return QFontMetrics(currentTheme().font(Text::Small)).horizontalAdvance(m_name);
}

int LifeBar::wordsWidth() const {
    const Theme theme = currentTheme();
    return QFontMetrics(theme.font(Text::Small, Weight::Bold)).horizontalAdvance(m_words) + theme.px(24);
}

/// Side by side when there is room; the name above the words when there is not.
int LifeBar::linesIn(int wide) const {
    return nameWidth() + wordsWidth() + currentTheme().px(8) <= wide ? 1 : 2;
}

int LifeBar::heightForWidth(int wide) const {
    return currentTheme().px(textHeight * linesIn(wide) + barHeight + 8);
}

QSize LifeBar::minimumSizeHint() const {
    return {std::max(nameWidth(), wordsWidth()), currentTheme().px(textHeight + barHeight + 8)};
}

QSize LifeBar::sizeHint() const {
    const Theme theme = currentTheme();
    return {nameWidth() + wordsWidth() + theme.px(20), theme.px(textHeight + barHeight + 8)};
}

void LifeBar::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const int line = theme.px(textHeight);
    const int top = (linesIn(width()) - 1) * line;  // of the words and the bar
    const bool loud = m_mark == Mark::Drifting || m_mark == Mark::Watch;
    painter.setFont(theme.font(Text::Small, Weight::Bold));
    painter.setPen(theme.colour(loud ? roleOf(m_mark) : Role::Ink));
    painter.drawText(QRect(0, top, width(), line), Qt::AlignRight | Qt::AlignVCenter, m_words);
    int right = width() - painter.fontMetrics().horizontalAdvance(m_words);
    if (loud) {
        const int side = theme.px(12);
        right -= side + theme.px(6);
        paintMark(painter, QRectF(right, top + (line - side) / 2.0, side, side), m_mark, theme);
    }
    painter.setFont(theme.font(Text::Small));
    painter.setPen(theme.colour(Role::Soft));
    painter.drawText(QRect(0, 0, top > 0 ? width() : right, line), Qt::AlignLeft | Qt::AlignVCenter, m_name);
    const QRectF bar(0, top + theme.px(textHeight + 1), width(), theme.px(barHeight));
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
