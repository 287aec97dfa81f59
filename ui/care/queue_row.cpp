// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/queue_row.hpp"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <QTextLayout>

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

namespace {

/// The words in lines that fit; a word that is wider than a line is broken.
QStringList wrapped(const QString& words, const QFont& font, int wide) {
    QStringList lines;
    QTextLayout layout(words, font);
    layout.beginLayout();
    for (auto line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(std::max(1, wide));
        lines << words.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines;
}

}  // namespace

QueueRow::QueueRow(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
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
    setNothing(queue, queue == care::Queue::Hold ? tr("nothing holds this crew") : tr("nothing is due"));
}

void QueueRow::setLooking(care::Queue queue) {
    setNothing(queue, tr("looking…"));
}

void QueueRow::setNothing(care::Queue queue, const QString& why) {
    m_has = Has::Nothing;
    m_queue = queue;
    m_title.clear();
    m_why = why;
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
    updateGeometry();
    update();
}

QSize QueueRow::sizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(420), theme.px(72)};
}

QSize QueueRow::minimumSizeHint() const {
    const Theme theme = currentTheme();
    return {theme.px(260), theme.px(m_has == Has::Item ? 56 : 34)};
}

int QueueRow::heightForWidth(int wide) const {
    const Lines lines = linesIn(wide);
    return std::max(minimumSizeHint().height(), static_cast<int>(lines.title.size()) * lines.titleTall +
                                                    static_cast<int>(lines.why.size()) * lines.whyTall +
                                                    currentTheme().px(12));
}

QueueRow::Lines QueueRow::linesIn(int wide) const {
    const Theme theme = currentTheme();
    Lines lines;
    lines.titleTall = theme.px(24);
    lines.whyTall = theme.px(20);
    const int room = wide - theme.px(12) - textLeft();
    const QFont small = theme.font(Text::Small), smallBold = theme.font(Text::Small, Weight::Bold);
    const int more = m_more.isEmpty() ? 0 : QFontMetrics(smallBold).horizontalAdvance(m_more) + theme.px(8);
    lines.title = wrapped(m_title, theme.font(Text::Strong, Weight::Bold), room - more);
    lines.why = wrapped(m_why, small, room);
    return lines;
}

int QueueRow::textLeft() const {
    const Theme theme = currentTheme();
    return theme.px(12) + leadWidth(theme) + theme.px(28);
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
    const int textX = textLeft();
    const int markX = textX - theme.px(28);
    const int right = width() - theme.px(12);
    const bool item = m_has == Has::Item;
    Lines lines = linesIn(width());
    const auto tall = [&] {
        return static_cast<int>(lines.title.size()) * lines.titleTall +
               static_cast<int>(lines.why.size()) * lines.whyTall;
    };
    const auto all = lines.why.size();
    while (item && lines.why.size() > 1 && tall() > height()) lines.why.removeLast();
    if (lines.why.size() < all) lines.why.last() += QStringLiteral("…");
    int top = item ? (height() - tall()) / 2 : (height() - lines.titleTall) / 2;

    painter.setFont(theme.font(Text::Body, Weight::Bold));
    painter.setPen(theme.colour(item ? Role::Accent : Role::Soft));
    if (m_lead == Lead::Shown)
        painter.drawText(QRect(left, top, markX - left, lines.titleTall), Qt::AlignLeft | Qt::AlignVCenter,
                         ui::titleOf(m_queue));
    const auto put = [&](const QString& words, int high) {
        painter.drawText(QRect(textX, top, right - textX, high), Qt::AlignLeft | Qt::AlignVCenter, words);
        top += high;
    };
    if (!item) {
        painter.setFont(theme.font(Text::Small));
        return put(m_why, lines.titleTall);
    }
    const double side = theme.px(16);
    paintMark(painter, QRectF(markX, top + (lines.titleTall - side) / 2, side, side), m_mark, theme);
    if (!m_more.isEmpty()) {
        painter.setFont(theme.font(Text::Small, Weight::Bold));
        painter.setPen(theme.colour(Role::Soft));
        painter.drawText(QRect(textX, top, right - textX, lines.titleTall), Qt::AlignRight | Qt::AlignVCenter,
                         m_more);
    }
    painter.setFont(theme.font(Text::Strong, Weight::Bold));
    painter.setPen(theme.colour(Role::Ink));
    for (const auto& one : lines.title) put(one, lines.titleTall);
    painter.setFont(theme.font(Text::Small));
    painter.setPen(
        theme.colour(isEnabled() && (hasFocus() || underMouse() || isChecked()) ? Role::Ink : Role::Soft));
    for (const auto& one : lines.why) put(one, lines.whyTall);
}

}  // namespace arc::ui
