// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/queue_row.hpp"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

/// As wide as the longest name of a queue in the language of the window.
int leadWidth(const Theme& theme) {
    const QFontMetrics metrics(theme.font(Text::Body, Weight::Bold));
    int widest = theme.px(82);
    for (const auto queue :
         {care::Queue::Hold, care::Queue::NextGap, care::Queue::ShiftEnd, care::Queue::BenchDay})
        widest = std::max(widest, metrics.horizontalAdvance(titleOf(queue)));
    return widest + theme.px(10);
}

}  // namespace

Mark markOf(care::Queue queue) {
    switch (queue) {
        case care::Queue::Hold:
            return Mark::Drifting;
        case care::Queue::NextGap:
            return Mark::Watch;
        case care::Queue::ShiftEnd:
        case care::Queue::BenchDay:
            break;
    }
    return Mark::Steady;
}

QString titleOf(care::Queue queue) {
    switch (queue) {
        case care::Queue::Hold:
            return QueueRow::tr("Hold");
        case care::Queue::NextGap:
            return QueueRow::tr("Next gap");
        case care::Queue::ShiftEnd:
            return QueueRow::tr("Shift end");
        case care::Queue::BenchDay:
            return QueueRow::tr("Bench day");
    }
    return {};
}

QueueRow::QueueRow(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setEmpty(care::Queue::Hold);
}

void QueueRow::setItem(const care::DueItem& item, int more, Lead lead) {
    m_has = Has::Item;
    m_lead = lead;
    m_queue = item.queue;
    m_title = text::spoken(item.title);
    m_why = text::spoken(item.why);
    m_more = more > 0 ? tr("+%1").arg(more) : QString();
    m_mark = markOf(item.queue);
    setEnabled(true);
    setCursor(Qt::PointingHandCursor);
    say();
}

void QueueRow::setEmpty(care::Queue queue) {
    m_has = Has::Nothing;
    m_queue = queue;
    m_title.clear();
    m_why = queue == care::Queue::Hold ? tr("nothing holds this crew") : tr("nothing is due");
    m_more.clear();
    m_mark = Mark::Steady;
    setEnabled(false);
    setCursor(Qt::ArrowCursor);
    say();
}

void QueueRow::say() {
    QString name = ui::titleOf(m_queue) + QStringLiteral(": ");
    name += m_title.isEmpty() ? m_why : m_title;
    setText(name);
    setAccessibleName(name);
    setAccessibleDescription(m_why);
    setToolTip(m_title.isEmpty() ? QString() : m_title + QLatin1Char('\n') + m_why);
    update();
}

QSize QueueRow::sizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(420), theme.px(72)};
}

QSize QueueRow::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(300), theme.px(m_has == Has::Item ? 56 : 34)};
}

void QueueRow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
    QAbstractButton::keyPressEvent(event);
}

void QueueRow::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void QueueRow::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

void QueueRow::paintEvent(QPaintEvent*) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (isEnabled() && (hasFocus() || underMouse() || isChecked())) {
        painter.setBrush(theme.colour(Role::AccentWash));
        painter.setPen(hasFocus() ? QPen(theme.colour(Role::Accent), theme.px(2)) : QPen(Qt::NoPen));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), theme.px(4), theme.px(4));
    }
    const int left = theme.px(12);
    const int markX = left + leadWidth(theme);
    const int textX = markX + theme.px(28);
    const int right = width() - theme.px(12);
    const bool item = m_has == Has::Item;
    const int titleTall = theme.px(24);
    const int whyTall = theme.px(20);
    const int top = item ? (height() - titleTall - whyTall) / 2 : (height() - titleTall) / 2;

    painter.setFont(theme.font(Text::Body, Weight::Bold));
    painter.setPen(theme.colour(item ? Role::Accent : Role::Soft));
    if (m_lead == Lead::Shown)
        painter.drawText(QRect(left, top, markX - left, titleTall), Qt::AlignLeft | Qt::AlignVCenter,
                         ui::titleOf(m_queue));
    if (!item) {
        painter.setFont(theme.font(Text::Small));
        painter.drawText(QRect(textX, top, right - textX, titleTall), Qt::AlignLeft | Qt::AlignVCenter,
                         m_why);
        return;
    }
    const double side = theme.px(16);
    paintMark(painter, QRectF(markX, top + (titleTall - side) / 2, side, side), m_mark, theme);
    int titleRight = right;
    if (!m_more.isEmpty()) {
        painter.setFont(theme.font(Text::Small, Weight::Bold));
        painter.setPen(theme.colour(Role::Soft));
        painter.drawText(QRect(textX, top, right - textX, titleTall), Qt::AlignRight | Qt::AlignVCenter,
                         m_more);
        titleRight -= painter.fontMetrics().horizontalAdvance(m_more) + theme.px(8);
    }
    painter.setFont(theme.font(Text::Strong, Weight::Bold));
    painter.setPen(theme.colour(Role::Ink));
    painter.drawText(QRect(textX, top, titleRight - textX, titleTall), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_title, Qt::ElideMiddle, titleRight - textX));
    painter.setFont(theme.font(Text::Small));
    painter.setPen(
        theme.colour(isEnabled() && (hasFocus() || underMouse() || isChecked()) ? Role::Ink : Role::Soft));
    painter.drawText(QRect(textX, top + titleTall, right - textX, whyTall), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_why, Qt::ElideRight, right - textX));
}

}  // namespace arc::ui
