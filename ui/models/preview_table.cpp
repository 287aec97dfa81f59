// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/preview_table.hpp"

#include "ui/text/format.hpp"

namespace arc::ui {

void PreviewTable::show(TablePreview preview) {
    beginResetModel();
    m_preview = std::move(preview);
    m_places.clear();
    for (std::size_t i = 0; i < m_preview.rows.size(); ++i) {
        const std::size_t ours = translated() ? m_preview.rows[i].ours.size() : 0;
        for (std::size_t k = 0; k < std::max<std::size_t>(ours, 1); ++k) m_places.push_back({i, k});
    }
    endResetModel();
}

int PreviewTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_places.size());
}

int PreviewTable::columnCount(const QModelIndex& parent) const {
    if (parent.isValid()) return 0;
    return firstCell +
           static_cast<int>(translated() ? m_preview.ourHeader.size() : m_preview.theirHeader.size());
}

QVariant PreviewTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const Place place = m_places[static_cast<std::size_t>(index.row())];
    const PreviewRow& row = m_preview.rows[place.row];
    if (index.column() == Line) return text::number(static_cast<std::int64_t>(row.line));
    if (index.column() == Verdict) {
        if (!translated()) return tr("not read yet");
        if (row.reason.empty()) return tr("lands");
        return tr("set aside: %1").arg(text::spoken(row.reason));
    }
    const auto cell = static_cast<std::size_t>(index.column() - firstCell);
    if (!translated()) return cell < row.theirs.size() ? text::words(row.theirs[cell]) : QVariant();
    if (place.ours >= row.ours.size() || cell >= row.ours[place.ours].size()) return {};
    const std::string& shown = row.ours[place.ours][cell];
    // With the month in words nobody takes 3 April for 4 March.
    if (m_preview.ourHeader[cell] == "time")
        if (const auto at = parseInstant(shown)) return text::dayAndClock(*at);
    return text::words(shown);
}

QVariant PreviewTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    if (section == Line) return tr("line");
    if (section == Verdict) return tr("what comes of it");
    const auto& names = translated() ? m_preview.ourHeader : m_preview.theirHeader;
    const auto at = static_cast<std::size_t>(section - firstCell);
    if (at >= names.size()) return {};
    if (translated())
        for (const OurColumn& column : ourColumns(m_preview.kind.value_or(FileKind::SpliceLog)))
            if (column.name == names[at]) return text::spoken(column.words);
    return text::words(names[at]);
}

}  // namespace arc::ui
