// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/exception_list.hpp"

#include <QPainter>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

namespace {

enum class Decision { Open, Accepted, Rejected };

Decision decisionOf(const closeout::Exception& exception) {
    if (!closeout::isDecided(exception)) return Decision::Open;
    return exception.disposition->disposition == closeout::dispositionRejected ? Decision::Rejected
                                                                               : Decision::Accepted;
}

QString decided(const closeout::Exception& exception) {
    switch (decisionOf(exception)) {
        case Decision::Open:
            return ExceptionList::tr("waits for a disposition");
        case Decision::Accepted:
            return ExceptionList::tr("%1 by %2: %3")
                .arg(text::spoken(exception.disposition->disposition), text::words(exception.disposition->by),
                     text::words(exception.disposition->reason));
        case Decision::Rejected:
            return ExceptionList::tr("rejected by %1: %2")
                .arg(text::words(exception.disposition->by), text::words(exception.disposition->reason));
    }
    return {};
}

Mark markOf(Decision decision) {
    switch (decision) {
        case Decision::Open:
            return Mark::Watch;
        case Decision::Accepted:
            return Mark::Steady;
        case Decision::Rejected:
            return Mark::Drifting;
    }
    return Mark::Watch;
}

}  // namespace

void ExceptionList::show(std::vector<closeout::Exception> exceptions) {
    beginResetModel();
    m_all = std::move(exceptions);
    std::ranges::stable_partition(m_all,
                                  [](const closeout::Exception& e) { return !closeout::isDecided(e); });
    endResetModel();
}

int ExceptionList::firstOpen() const {
    return m_all.empty() || closeout::isDecided(m_all.front()) ? -1 : 0;
}

int ExceptionList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_all.size());
}

QVariant ExceptionList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& exception = at(index.row());
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole && role != Qt::AccessibleTextRole) return {};
    return QStringLiteral("%1: %2 (%3)")
        .arg(text::spoken(closeout::title(exception.kind)), text::spoken(exception.what), decided(exception));
}

QSize ExceptionDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
    const Theme theme = currentTheme();
    return {theme.px(300), theme.px(72)};
}

void ExceptionDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    if (index.row() >= m_list.rowCount()) return;
    const Theme theme = currentTheme();
    const auto& exception = m_list.at(index.row());
    const auto decision = decisionOf(exception);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool chosen = option.state & QStyle::State_Selected;
    const QRect box = option.rect;
    if (chosen) {
        painter->setBrush(theme.colour(Role::AccentWash));
        const bool keyboard = option.state & QStyle::State_HasFocus;
        painter->setPen(keyboard ? QPen(theme.colour(Role::Accent), theme.px(2)) : QPen(Qt::NoPen));
        painter->drawRoundedRect(QRectF(box).adjusted(2, 2, -2, -2), theme.px(4), theme.px(4));
    }
    painter->setPen(theme.colour(Role::Shade));
    painter->drawLine(box.left() + theme.px(12), box.bottom(), box.right() - theme.px(12), box.bottom());
    const double side = theme.px(16);
    const int left = box.left() + theme.px(14);
    paintMark(*painter, QRectF(left, box.top() + theme.px(14), side, side), markOf(decision), theme);
    const int words = left + theme.px(30);
    const int right = box.right() - theme.px(14);
    painter->setFont(theme.font(Text::Body, Weight::Bold));
    painter->setPen(theme.colour(Role::Ink));
    QString head = text::spoken(closeout::title(exception.kind));
    if (!exception.where.empty()) head += QStringLiteral(" · ") + text::words(exception.where);
    const int line = theme.px(20);
    int top = box.top() + theme.px(8);
    painter->drawText(QRect(words, top, right - words, line), Qt::AlignLeft | Qt::AlignVCenter, head);
    top += line;
    painter->setFont(theme.font(Text::Small));
    painter->drawText(
        QRect(words, top, right - words, line), Qt::AlignLeft | Qt::AlignVCenter,
        painter->fontMetrics().elidedText(text::spoken(exception.what), Qt::ElideRight, right - words));
    top += theme.px(18);
    painter->setFont(theme.font(Text::Small, decision == Decision::Open ? Weight::Bold : Weight::Regular));
    painter->setPen(chosen ? theme.colour(Role::Ink)
                           : theme.colour(decision == Decision::Open ? Role::Watch : Role::Soft));
    painter->drawText(QRect(words, top, right - words, line), Qt::AlignLeft | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(decided(exception), Qt::ElideRight, right - words));
    painter->restore();
}

}  // namespace arc::ui
