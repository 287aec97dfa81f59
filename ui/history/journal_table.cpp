// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/journal_table.hpp"

#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

constexpr std::size_t windowLines = 200;

QString timeOf(const JournalLine& line) {
    return text::day(line.at) + QLatin1Char(' ') + text::clockToSecond(line.at);
}

}  // namespace

QString fromWhere(const JournalLine& line) {
    QStringList parts;
    for (const auto& part : {line.device, line.source})
        if (!part.empty()) parts << text::words(part);
    return parts.join(QStringLiteral(", "));
}

void JournalTable::show(std::vector<JournalLine> lines) {
    beginResetModel();
    m_book = nullptr;
    m_lines = std::move(lines);
    endResetModel();
}

Result<void> JournalTable::showAll(Logbook& book) {
    auto first = book.journal(0, windowLines);
    if (!first) return tl::unexpected(first.error());
    beginResetModel();
    m_book = &book;
    m_lines = std::move(*first);
    m_complete = m_lines.size() < windowLines;
    endResetModel();
    return {};
}

Result<void> JournalTable::addNew(Logbook& book) {
    if (!m_book || m_lines.empty()) return showAll(book);
    std::vector<JournalLine> fresh;
    const std::uint64_t known = m_lines.front().row;
    for (std::uint64_t before = 0;;) {
        auto page = book.journal(before, windowLines);
        if (!page) return tl::unexpected(page.error());
        for (auto& line : *page) {
            if (line.row <= known) break;
            fresh.push_back(std::move(line));
        }
        // An import brings more than anybody wants to see arrive: then from the top again.
        if (fresh.size() > 2 * windowLines) return showAll(book);
        if (fresh.empty() || page->size() < windowLines || fresh.back().row == known + 1) break;
        before = fresh.back().row;
    }
    if (fresh.empty()) return {};
    beginInsertRows({}, 0, static_cast<int>(fresh.size()) - 1);
    m_lines.insert(m_lines.begin(), std::make_move_iterator(fresh.begin()),
                   std::make_move_iterator(fresh.end()));
    endInsertRows();
    return {};
}

bool JournalTable::canFetchMore(const QModelIndex& parent) const {
    return !parent.isValid() && m_book && !m_complete;
}

void JournalTable::fetchMore(const QModelIndex& parent) {
    if (!canFetchMore(parent) || m_lines.empty()) return;
    auto page = m_book->journal(m_lines.back().row, windowLines);
    if (!page) {
        Q_EMIT failed(page.error());
        return;
    }
    m_complete = page->size() < windowLines;
    if (page->empty()) return;
    const int first = rowCount();
    beginInsertRows({}, first, first + static_cast<int>(page->size()) - 1);
    for (auto& line : *page) m_lines.push_back(std::move(line));
    endInsertRows();
}

int JournalTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int JournalTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCountAll;
}

QVariant JournalTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            static_cast<int>((index.column() == Row ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const auto& one = line(index.row());
    switch (index.column()) {
        case When:
            return timeOf(one);
        case What:
            return text::spoken(one.text);
        case Who:
            return text::words(one.who);
        case From:
            return fromWhere(one);
        case Row:
            return text::number(static_cast<std::int64_t>(one.row));
        default:
            return {};
    }
}

QVariant JournalTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(
            static_cast<int>((section == Row ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    const QString names[] = {tr("when"), tr("what"), tr("who"), tr("from where"), tr("row")};
    return section >= 0 && section < columnCountAll ? names[section] : QVariant();
}

}  // namespace arc::ui
