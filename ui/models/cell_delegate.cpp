// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/cell_delegate.hpp"

#include <QPainter>

#include "ui/theme/theme.hpp"

namespace arc::ui {

void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const Theme theme = currentTheme();
    painter->save();
    if (option.state & QStyle::State_Selected) painter->fillRect(option.rect, theme.colour(Role::AccentWash));
    painter->setPen(theme.colour(Role::Shade));
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    painter->setFont(theme.font(Text::Small));
    painter->setPen(theme.colour(Role::Ink));
    const QRect room = option.rect.adjusted(theme.px(8), 0, -theme.px(8), 0);
    const auto align = index.data(Qt::TextAlignmentRole);
    painter->drawText(
        room, align.isValid() ? align.toInt() : static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter),
        painter->fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, room.width()));
    painter->restore();
}

}  // namespace arc::ui
