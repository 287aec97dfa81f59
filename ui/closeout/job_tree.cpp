// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closeout/job_tree.hpp"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

#include "core/closeout/issued.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

namespace {

enum Data { idRole = Qt::UserRole, wordsRole, shareRole, openRole, titleRole, kindRole };
enum Kind { JobItem, ClosureItem, IssuedItem, ClashItem };

class JobDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const Theme theme = currentTheme();
        const bool issued = index.data(kindRole).toInt() >= IssuedItem;
        return {theme.px(240), theme.px(issued                                       ? 36
                                        : index.parent().isValid()                   ? 46
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
        const bool clash = index.data(kindRole).toInt() == ClashItem;
        painter->setPen(theme.colour(clash ? Role::Drifting : chosen ? Role::Ink : Role::Soft));
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
                   const std::map<JobId, std::shared_ptr<const closeout::Record>>& records,
                   const IssuedByJob& issued) {
    const auto before = job();
    const QString childBefore =
        currentItem() && currentItem()->parent() ? currentItem()->data(0, idRole).toString() : QString();
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
        if (const auto found = issued.find(one.id); found != issued.end()) addIssued(item, found->second);
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
        int place = 0;
        for (const auto& section : record.closures) {
            auto* child = new QTreeWidgetItem;
            // Records stand below the closures.
            item->insertChild(place++, child);
            child->setData(0, kindRole, ClosureItem);
            child->setText(0, text::words(section.label));
            child->setData(0, idRole, section.closure ? idText(section.closure->uuid) : QString());
            std::optional<Done> done;
            if (const auto& c = section.completeness)
                done = Done{c->planned, c->spliced, static_cast<int>(c->open.size())};
            fill(child, done, section.splices.size());
        }
    }
    for (int i = 0; again && !childBefore.isEmpty() && i < again->childCount(); ++i)
        if (again->child(i)->data(0, idRole).toString() == childBefore) {
            again = again->child(i);
            break;
        }
    if (!again && topLevelItemCount() > 0) again = topLevelItem(topLevelItemCount() - 1);
    if (!again) return;
    (again->parent() ? again->parent() : again)->setExpanded(true);
    setCurrentItem(again);
}

void JobTree::addIssued(QTreeWidgetItem* job, const std::vector<IssuedRecord>& issued) {
    const auto twice = closeout::numbersGivenTwice(issued);
    for (const auto& record : issued) {
        auto* item = new QTreeWidgetItem(job);
        item->setText(0, tr("Record no. %1").arg(record.number));
        item->setData(0, idRole, idText(record.id.uuid));
        const auto later = closeout::supersededBy(record, issued);
        const bool clash = std::ranges::count(twice, record.number) > 0 && !later;
        item->setData(0, kindRole, clash ? ClashItem : IssuedItem);
        const QString when = tr("%1, %2").arg(text::day(record.at), text::words(record.by));
        item->setData(0, wordsRole,
                      clash   ? tr("number given twice; %1").arg(when)
                      : later ? tr("superseded by no. %1").arg(*later)
                              : when);
        item->setToolTip(0,
                         tr("Issued on %1 by %2").arg(text::dayAndClock(record.at), text::words(record.by)));
    }
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
    if (!item || item->data(0, kindRole).toInt() != ClosureItem) return std::nullopt;
    const auto id = parseUuid(item->data(0, idRole).toString().toStdString());
    return id ? std::optional(ClosureId{*id}) : std::nullopt;
}

std::optional<Subject> JobTree::subject() const {
    const auto* item = currentItem();
    const auto id = item ? parseUuid(item->data(0, idRole).toString().toStdString()) : std::nullopt;
    if (!id) return std::nullopt;
    const QString name = item->parent() ? tr("%1 of %2").arg(item->text(0), item->parent()->text(0))
                                        : tr("job %1").arg(item->text(0));
    return Subject{*id, name};
}

void JobTree::choose(JobId wanted) {
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->data(0, idRole).toString() == idText(wanted.uuid))
            setCurrentItem(topLevelItem(i));
}

}  // namespace arc::ui
