// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/timeline.hpp"

#include <QPainter>
#include <QStyledItemDelegate>

#include "ui/theme/theme.hpp"

namespace arc::ui {
namespace {

enum EntryRole { When = Qt::UserRole, What, Who, Care };

class LineDelegate final : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override {
        const Theme theme = currentTheme();
        const int w = textWidth(option, theme);
        const QFontMetrics metrics(theme.font(Text::Body));
        const QRect needed =
            metrics.boundingRect(QRect(0, 0, w, 10'000), Qt::TextWordWrap, index.data(What).toString());
        return {theme.px(200), needed.height() + theme.px(34)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Theme theme = currentTheme();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRect row = option.rect;
        if (option.state.testFlag(QStyle::State_Selected) && option.state.testFlag(QStyle::State_HasFocus))
            painter->fillRect(row, theme.colour(Role::AccentWash));
        const double x = row.left() + theme.px(10);
        const double y = row.top() + theme.px(11);
        painter->setPen(QPen(theme.colour(Role::Line), theme.px(2)));
        painter->drawLine(QPointF(x, index.row() == 0 ? y : row.top()), QPointF(x, row.bottom() + 1));
        const bool care = index.data(Care).toBool();
        painter->setPen(QPen(theme.colour(Role::Accent), 2 * theme.scale()));
        painter->setBrush(theme.colour(care ? Role::Accent : Role::Card));
        painter->drawEllipse(QPointF(x, y), theme.px(5), theme.px(5));
        const int left = row.left() + theme.px(28);
        painter->setFont(theme.font(Text::Small));
        painter->setPen(theme.colour(Role::Soft));
        QString head = index.data(When).toString();
        if (const QString who = index.data(Who).toString(); !who.isEmpty())
            head += QStringLiteral(" · ") + who;
        painter->drawText(QRect(left, row.top(), textWidth(option, theme), theme.px(20)),
                          Qt::AlignLeft | Qt::AlignVCenter, head);
        painter->setFont(theme.font(Text::Body));
        painter->setPen(theme.colour(Role::Ink));
        painter->drawText(
            QRect(left, row.top() + theme.px(20), textWidth(option, theme), row.height() - theme.px(24)),
            Qt::TextWordWrap, index.data(What).toString());
        painter->restore();
    }

  private:
    static int textWidth(const QStyleOptionViewItem& option, const Theme& theme) {
        const auto* view = qobject_cast<const QListWidget*>(option.widget);
        return (view ? view->viewport()->width() : option.rect.width()) - theme.px(34);
    }
};

}  // namespace

Timeline::Timeline(QWidget* parent) : QListWidget(parent) {
    setItemDelegate(new LineDelegate(this));
    setAccessibleName(tr("History"));
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setResizeMode(QListView::Adjust);
    setUniformItemSizes(false);
    setFrameShape(QFrame::NoFrame);
}

void Timeline::setEntries(const std::vector<TimelineEntry>& entries) {
    clear();
    for (const auto& entry : entries) {
        // The text is what a screen reader says; the delegate paints the parts.
        auto* item = new QListWidgetItem(QStringLiteral("%1: %2").arg(entry.when, entry.what), this);
        item->setData(When, entry.when);
        item->setData(What, entry.what);
        item->setData(Who, entry.who);
        item->setData(Care, entry.weight == TimelineEntry::Weight::Care);
    }
    if (!entries.empty()) setCurrentRow(0);
}

}  // namespace arc::ui
