// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/set_aside_table.hpp"

#include <QFileInfo>

#include "ui/text/format.hpp"

namespace arc::ui {

void SetAsideTable::show(int count, std::function<SetAsideRow(int)> rowAt) {
    beginResetModel();
    m_count = count;
    m_rowAt = std::move(rowAt);
    endResetModel();
}

int SetAsideTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : m_count;
}

int SetAsideTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCountAll;
}

QVariant SetAsideTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            static_cast<int>((index.column() == Line ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const SetAsideRow row = m_rowAt(index.row());
    switch (index.column()) {
        case File:
            return QFileInfo(text::words(row.file)).fileName();
        case Line:
            return text::number(static_cast<std::int64_t>(row.line));
        case Name:
            return text::words(row.column);
        case Reason:
            return text::spoken(row.reason);
        case Row:
            return text::words(row.text);
        default:
            return {};
    }
}

QVariant SetAsideTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            static_cast<int>((section == Line ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    const QString names[] = {tr("file"), tr("line"), tr("column"), tr("why it was set aside"), tr("the row")};
    return section >= 0 && section < columnCountAll ? names[section] : QVariant();
}

}  // namespace arc::ui
