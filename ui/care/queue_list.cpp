// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/queue_list.hpp"

#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/care/queue_row.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/empty_out.hpp"
#include "ui/widgets/scroll_canvas.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

QueueList::QueueList(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    inside(sheet)->setContentsMargins(theme.px(8), theme.px(8), theme.px(4), theme.px(8));
    auto* scroll = new QScrollArea(sheet);
    auto* canvas = canvasIn(*scroll);
    m_list = new QVBoxLayout(canvas);
    m_list->setContentsMargins(0, 0, theme.px(4), 0);
    m_list->setSpacing(0);
    inside(sheet)->addWidget(scroll);
    outer->addWidget(sheet);
}

void QueueList::show(const std::optional<std::vector<care::DueItem>>& items) {
    const Theme theme = currentTheme();
    const std::string key = chosen() ? chosen()->key : std::string();
    const bool hadFocus = std::ranges::any_of(m_rows, &QWidget::hasFocus);
    emptyOut(*m_list);
    m_rows.clear();
    m_chosen = 0;
    m_items = items.value_or(std::vector<care::DueItem>{});
    for (std::size_t i = 0; i < m_items.size(); ++i) {
        const bool first = i == 0 || m_items[i].queue != m_items[i - 1].queue;
        if (first && i > 0) m_list->addWidget(line(this));
        auto* row = new QueueRow(this);
        row->setCheckable(true);
        row->setItem(m_items[i], 0, first ? Lead::Shown : Lead::Hidden);
        row->setMinimumHeight(theme.px(62));
        row->installEventFilter(this);
        connect(row, &QueueRow::clicked, this, [this, i] { choose(i); });
        m_list->addWidget(row);
        m_rows.push_back(row);
        if (m_items[i].key == key) m_chosen = i;
    }
    if (m_items.empty()) {
        auto* nothing = words(
            items ? tr("Nothing is due. The queues fill from counts, days, the air around and the charts.")
                  : QString(),
            TextRole::Soft, this);
        nothing->setWordWrap(true);
        nothing->setContentsMargins(theme.px(12), theme.px(12), theme.px(12), theme.px(12));
        m_list->addWidget(nothing);
    }
    m_list->addStretch();
    choose(m_chosen);
    if (hadFocus && row()) row()->setFocus();
}

void QueueList::choose(std::size_t index) {
    if (index < m_items.size()) {
        m_chosen = index;
        for (std::size_t i = 0; i < m_rows.size(); ++i) m_rows[i]->setChecked(i == index);
    }
    Q_EMIT chosenChanged();
}

const care::DueItem* QueueList::chosen() const {
    return m_chosen < m_items.size() ? &m_items[m_chosen] : nullptr;
}

QWidget* QueueList::row() const {
    return m_chosen < m_rows.size() ? m_rows[m_chosen] : nullptr;
}

bool QueueList::eventFilter(QObject* watched, QEvent* event) {
    const auto it = std::ranges::find(m_rows, watched);
    if (it == m_rows.end()) return QWidget::eventFilter(watched, event);
    const auto index = static_cast<std::size_t>(it - m_rows.begin());
    if (event->type() == QEvent::FocusIn) choose(index);
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down && index + 1 < m_rows.size()) {
            m_rows[index + 1]->setFocus();
            return true;
        }
        if (key == Qt::Key_Up && index > 0) {
            m_rows[index - 1]->setFocus();
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            choose(index);
            Q_EMIT startAsked();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace arc::ui
