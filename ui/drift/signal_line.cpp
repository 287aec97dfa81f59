// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/signal_line.hpp"

#include <QFontMetrics>
#include <QPainter>

#include <algorithm>

namespace arc::ui {
namespace {

constexpr int sideRoom = 10;
constexpr int markSide = 14;
constexpr int textLeft = 34;
constexpr int endRoom = 6;

int wrappedHeight(const QFont& font, const QString& text, int width) {
    return QFontMetrics(font)
        .boundingRect(QRect(0, 0, std::max(1, width), 10'000), Qt::TextWordWrap, text)
        .height();
}

}  // namespace

SignalLine::SignalLine(Mark mark, const QString& headline, const QString& below, QWidget* parent)
    : QAbstractButton(parent), m_mark(mark), m_below(below) {
    setText(headline);
    setAccessibleName(QStringLiteral("%1, %2").arg(headline, below));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int SignalLine::heightForWidth(int width) const {
    const Theme theme = currentTheme();
    const int room = width - theme.px(textLeft + sideRoom);
    const int height = wrappedHeight(theme.font(Text::Body, Weight::Bold), text(), room) +
                       wrappedHeight(theme.font(Text::Small), m_below, room) + 2 * theme.px(endRoom);
    return std::max(height, theme.px(Touch::Usual));
}

QSize SignalLine::sizeHint() const {
    const int width = currentTheme().px(300);
    return {width, heightForWidth(width)};
}

QSize SignalLine::minimumSizeHint() const {
    return {currentTheme().px(160), currentTheme().px(Touch::Usual)};
}

void SignalLine::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(1, 1, -1, -1);
    if (isChecked() || underMouse() || hasFocus()) {
        painter.setPen(hasFocus()    ? QPen(theme.colour(Role::Ink), theme.px(2))
                       : isChecked() ? QPen(theme.colour(Role::Accent), theme.px(2))
                                     : QPen(Qt::NoPen));
        painter.setBrush(isChecked() || underMouse() ? QBrush(theme.colour(Role::AccentWash))
                                                     : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(frame, theme.px(4), theme.px(4));
    }
    const int side = theme.px(markSide);
    paintMark(painter, QRectF(theme.px(sideRoom), theme.px(endRoom) + theme.px(3), side, side), m_mark,
              theme);
    const int room = width() - theme.px(textLeft + sideRoom);
    const QFont strong = theme.font(Text::Body, Weight::Bold);
    const int first = wrappedHeight(strong, text(), room);
    painter.setFont(strong);
    painter.setPen(theme.colour(Role::Ink));
    painter.drawText(QRect(theme.px(textLeft), theme.px(endRoom), room, first), Qt::TextWordWrap, text());
    painter.setFont(theme.font(Text::Small));
    painter.setPen(theme.colour(isChecked() ? Role::Ink : Role::Soft));
    painter.drawText(QRect(theme.px(textLeft), theme.px(endRoom) + first, room, height() - first),
                     Qt::TextWordWrap, m_below);
}

}  // namespace arc::ui
