// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/history/journal_view.hpp"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "ui/history/journal_table.hpp"
#include "ui/models/cell_delegate.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/row_table.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

JournalView::JournalView(QWidget* parent)
    : QWidget(parent), m_model(new JournalTable(this)), m_table(new QTableView(this)) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(10));
    m_table->setModel(m_model);
    m_table->setItemDelegate(new CellDelegate(m_table));
    m_table->setAccessibleName(tr("Journal lines"));
    showAsRows(*m_table, theme.px(34));
    m_table->setWordWrap(false);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    auto* head = m_table->horizontalHeader();
    const int widths[] = {178, 300, 92, 218, 84};
    for (int i = 0; i < JournalTable::columnCountAll; ++i) m_table->setColumnWidth(i, theme.px(widths[i]));
    head->setSectionResizeMode(JournalTable::What, QHeaderView::Stretch);
    m_table->installEventFilter(this);
    box->addWidget(m_table, 1);
    m_line = words(QString(), TextRole::Small, this);
    m_line->setWordWrap(true);
    m_line->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_line->setAccessibleName(tr("The chosen line"));
    box->addWidget(m_line);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &JournalView::showLine);
    connect(m_model, &QAbstractItemModel::modelReset, this, &JournalView::showLine);
    connect(m_table, &QTableView::doubleClicked, this, &JournalView::entered);
}

int JournalView::chosen() const {
    const auto index = m_table->currentIndex();
    return index.isValid() ? index.row() : -1;
}

void JournalView::choose(int row) {
    if (row >= 0 && row < m_model->rowCount()) m_table->selectRow(row);
}

void JournalView::showLine() {
    const int row = chosen();
    if (row < 0 || row >= m_model->rowCount()) return m_line->clear();
    const auto& line = m_model->line(row);
    QStringList parts{text::spoken(line.text)};
    if (!line.who.empty()) parts << tr("by %1").arg(text::words(line.who));
    parts << tr("from %1").arg(fromWhere(line));
    parts << tr("journal row %1").arg(text::number(static_cast<std::int64_t>(line.row)));
    if (!line.hashHex.empty()) parts << tr("hash %1…").arg(text::words(line.hashHex.substr(0, 16)));
    m_line->setText(parts.join(QStringLiteral(" · ")));
}

bool JournalView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_table && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && chosen() >= 0) {
            Q_EMIT entered();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace arc::ui
