// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/job_tree.hpp"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

namespace {

enum Data { idRole = Qt::UserRole, wordsRole, shareRole, openRole, titleRole };

class JobDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const Theme theme = currentTheme();
        return {theme.px(240), theme.px(index.parent().isValid()                     ? 46
                                        : index.data(titleRole).toString().isEmpty() ? 54
                                                                                     : 70)};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Theme theme = currentTheme();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const bool chosen = option.state & QStyle::State_Selected;
        const QRect box = option.rect;
        if (chosen) {
            painter->setBrush(theme.colour(Role::AccentWash));
            painter->setPen(option.state & QStyle::State_HasFocus
                                ? QPen(theme.colour(Role::Accent), theme.px(2))
                                : QPen(Qt::NoPen));
            painter->drawRoundedRect(QRectF(box).adjusted(1, 1, -1, -1), theme.px(4), theme.px(4));
        }
        const bool job = !index.parent().isValid();
        const int left = box.left() + theme.px(10);
        const int right = box.right() - theme.px(12);
        const int line = theme.px(22);
        int top = box.top() + theme.px(job ? 7 : 4);
        const QString words = index.data(wordsRole).toString();
        painter->setFont(theme.font(Text::Small));
        painter->setPen(chosen ? theme.colour(Role::Ink) : theme.colour(Role::Soft));
        painter->drawText(QRect(left, top, right - left, line), Qt::AlignRight | Qt::AlignVCenter, words);
        const int room = right - left - painter->fontMetrics().horizontalAdvance(words) - theme.px(10);
        painter->setFont(theme.font(job ? Text::Strong : Text::Body, job ? Weight::Bold : Weight::Regular));
        painter->setPen(theme.colour(Role::Ink));
        painter->drawText(
            QRect(left, top, room, line), Qt::AlignLeft | Qt::AlignVCenter,
            painter->fontMetrics().elidedText(index.data(Qt::DisplayRole).toString(), Qt::ElideRight, room));
        if (const QString title = index.data(titleRole).toString(); !title.isEmpty()) {
            top += theme.px(20);
            painter->setFont(theme.font(Text::Small));
            painter->setPen(chosen ? theme.colour(Role::Ink) : theme.colour(Role::Soft));
            painter->drawText(QRect(left, top, right - left, line), Qt::AlignLeft | Qt::AlignVCenter,
                              painter->fontMetrics().elidedText(title, Qt::ElideRight, right - left));
        }
        const QVariant share = index.data(shareRole);
        if (share.isValid()) {
            const double tall = theme.px(6);
            const QRectF bar(left, top + line + theme.px(4), right - left, tall);
            painter->setPen(Qt::NoPen);
            painter->setBrush(theme.colour(Role::Shade));
            painter->drawRoundedRect(bar, tall / 2, tall / 2);
            QRectF filled = bar;
            filled.setWidth(bar.width() * std::clamp(share.toDouble(), 0.0, 1.0));
            painter->setBrush(theme.colour(
                share.toDouble() >= 1 && index.data(openRole).toInt() == 0 ? Role::Steady : Role::Accent));
            if (filled.width() > 0) painter->drawRoundedRect(filled, tall / 2, tall / 2);
        }
        painter->restore();
    }
};

QString idText(const Uuid& id) {
    return QString::fromStdString(toText(id));
}

}  // namespace

JobTree::JobTree(QWidget* parent) : QTreeWidget(parent) {
    const Theme theme = currentTheme();
    setHeaderHidden(true);
    setIndentation(theme.px(18));
    setRootIsDecorated(false);
    setItemDelegate(new JobDelegate(this));
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setExpandsOnDoubleClick(false);
    setAccessibleName(tr("Jobs and closures"));
    connect(this, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
        if (item && !item->parent()) {
            for (int i = 0; i < topLevelItemCount(); ++i)
                topLevelItem(i)->setExpanded(topLevelItem(i) == item);
        }
        Q_EMIT chosen();
    });
}

void JobTree::fill(QTreeWidgetItem* item, const std::optional<Done>& done, std::size_t splices) {
    if (!done || done->planned == 0) {
        item->setData(0, wordsRole,
                      tr("%1 spliced, no plan").arg(text::number(static_cast<std::int64_t>(splices))));
        return;
    }
    QString words =
        tr("%1 of %2")
            .arg(text::number(std::int64_t{done->spliced}), text::number(std::int64_t{done->planned}));
    if (done->open > 0) words += tr(", %1 open").arg(done->open);
    item->setData(0, wordsRole, words);
    item->setData(0, openRole, done->open);
    item->setData(0, shareRole, static_cast<double>(done->spliced) / done->planned);
}

void JobTree::show(const std::vector<Job>& jobs,
                   const std::map<JobId, std::shared_ptr<const closeout::Record>>& records) {
    const auto before = job();
    const auto closureBefore = closure();
    const QSignalBlocker quiet(this);
    clear();
    QTreeWidgetItem* again = nullptr;
    for (const auto& one : jobs) {
        auto* item = new QTreeWidgetItem(this);
        item->setText(0, text::words(one.label));
        item->setData(0, titleRole, text::words(one.title));
        item->setToolTip(0, text::words(one.title));
        item->setData(0, idRole, idText(one.id.uuid));
        if (before == one.id) again = item;
        const auto known = records.find(one.id);
        if (known == records.end()) {
            item->setData(0, wordsRole, tr("…"));
            continue;
        }
        const auto& record = *known->second;
        int open = 0;
        for (const auto& section : record.closures)
            if (section.completeness) open += static_cast<int>(section.completeness->open.size());
        fill(item,
             record.plan ? std::optional(Done{record.plan->planned, record.plan->spliced, open})
                         : std::nullopt,
             closeout::spliceCount(record));
        for (const auto& section : record.closures) {
            auto* child = new QTreeWidgetItem(item);
            child->setText(0, text::words(section.label));
            child->setData(0, idRole, section.closure ? idText(section.closure->uuid) : QString());
            std::optional<Done> done;
            if (const auto& c = section.completeness)
                done = Done{c->planned, c->spliced, static_cast<int>(c->open.size())};
            fill(child, done, section.splices.size());
            if (before == one.id && closureBefore && section.closure == closureBefore) again = child;
        }
    }
    if (!again && topLevelItemCount() > 0) again = topLevelItem(topLevelItemCount() - 1);
    if (!again) return;
    (again->parent() ? again->parent() : again)->setExpanded(true);
    setCurrentItem(again);
}

std::optional<JobId> JobTree::job() const {
    const auto* item = currentItem();
    if (!item) return std::nullopt;
    if (item->parent()) item = item->parent();
    const auto id = parseUuid(item->data(0, idRole).toString().toStdString());
    return id ? std::optional(JobId{*id}) : std::nullopt;
}

std::optional<ClosureId> JobTree::closure() const {
    const auto* item = currentItem();
    if (!item || !item->parent()) return std::nullopt;
    const auto id = parseUuid(item->data(0, idRole).toString().toStdString());
    return id ? std::optional(ClosureId{*id}) : std::nullopt;
}

void JobTree::choose(JobId wanted) {
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->data(0, idRole).toString() == idText(wanted.uuid))
            setCurrentItem(topLevelItem(i));
}

}  // namespace arc::ui
