// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/logbook_page.hpp"

#include <QKeyEvent>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "ui/logbook/journal_panel.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

LogbookPage::LogbookPage(Session& session, QWidget* parent) : Page(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = pageLayout(this);
    m_head = new PageHead(this);
    m_head->setTitle(tr("Logbook"));
    m_head->setLine(tr("What was written, by whom and from where"));
    box->addWidget(m_head);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(20));
    box->addLayout(row, 1);
    auto* places = card(this);
    places->setFixedWidth(theme.px(218));
    inside(places)->setContentsMargins(theme.px(6), theme.px(8), theme.px(6), theme.px(8));
    m_list = new QListWidget(places);
    m_list->setAccessibleName(tr("Parts of the logbook"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setIconSize({theme.px(20), theme.px(20)});
    inside(places)->addWidget(m_list);
    row->addWidget(places);
    m_stack = new QStackedWidget(this);
    row->addWidget(m_stack, 1);
    add(tr("Journal"), QStringLiteral("logbook"), new JournalPanel(session, m_stack));
    connect(m_list, &QListWidget::currentRowChanged, this, [this](int index) {
        if (index < 0) return;
        m_stack->setCurrentIndex(index);
        shown()->refresh();
    });
    // Enter goes from the list into the part.
    connect(m_list, &QListWidget::itemActivated, this, [this] {
        if (auto* first = shown()->firstFocus()) first->setFocus();
    });
    connect(&m_session, &Session::bookChanged, this, [this] {
        if (isVisible()) shown()->refresh();
    });
    m_list->setCurrentRow(0);
}

void LogbookPage::add(const QString& name, const QString& picture, Panel* panel) {
    const Theme theme = currentTheme();
    auto* item = new QListWidgetItem(icon(picture, theme.colour(Role::Accent)), name, m_list);
    item->setSizeHint({theme.px(180), theme.px(44)});
    m_panels.push_back(panel);
    m_names.push_back(name);
    m_stack->addWidget(panel);
    connect(panel, &Panel::countChanged, this, &LogbookPage::nameAll);
}

void LogbookPage::nameAll() {
    for (std::size_t i = 0; i < m_panels.size(); ++i) {
        const QString count = m_panels[i]->count();
        m_list->item(static_cast<int>(i))
            ->setText(count.isEmpty() ? m_names[i] : QStringLiteral("%1  (%2)").arg(m_names[i], count));
    }
}

Panel* LogbookPage::shown() const {
    return m_panels[static_cast<std::size_t>(m_stack->currentIndex())];
}

void LogbookPage::showPanel(int index) {
    m_list->setCurrentRow(index);
}

void LogbookPage::open(const Target& /*target*/) {
    shown()->refresh();
}

QWidget* LogbookPage::firstFocus() {
    return m_list;
}

std::optional<Subject> LogbookPage::subject() {
    return shown()->subject();
}

bool LogbookPage::settled() const {
    return shown()->settled();
}

}  // namespace arc::ui
