// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logbook/logbook_page.hpp"

#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/logbook/backups_panel.hpp"
#include "ui/logbook/condition_panel.hpp"
#include "ui/logbook/devices_panel.hpp"
#include "ui/logbook/journal_panel.hpp"
#include "ui/logbook/pack_panel.hpp"
#include "ui/logbook/take_in_panel.hpp"
#include "ui/logbook/twice_panel.hpp"
#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

LogbookPage::LogbookPage(Session& session, QWidget* parent) : Page(parent), m_session(session) {
    const Theme theme = currentTheme();
    auto* box = pageLayout(this);
    auto* head = new PageHead(this);
    head->setTitle(tr("Logbook"));
    head->setLine(tr("What was written, by whom and from where; handing over, taking in, and copies"));
    box->addWidget(head);
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
    add("journal", tr("Journal"), QStringLiteral("logbook"), new JournalPanel(session, m_stack));
    add("pack", tr("Hand over"), QStringLiteral("export"), new PackPanel(session, m_stack));
    auto* takeIn = new TakeInPanel(session, m_stack);
    add("take_in", tr("Take in"), QStringLiteral("import"), takeIn);
    auto* twice = new TwicePanel(session, m_stack);
    add("twice", tr("Edited twice"), QStringLiteral("warning"), twice);
    add("devices", tr("Laptops"), QStringLiteral("people"), new DevicesPanel(session, m_stack));
    add("backups", tr("Copies"), QStringLiteral("redo"), new BackupsPanel(session, m_stack));
    add("condition", tr("Condition"), QStringLiteral("check"), new ConditionPanel(session, m_stack));
    connect(takeIn, &TakeInPanel::editsFound, twice, &Panel::refresh);
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

void LogbookPage::add(const char* key, const QString& name, const QString& picture, Panel* panel) {
    const Theme theme = currentTheme();
    auto* item = new QListWidgetItem(icon(picture, theme.colour(Role::Accent)), name, m_list);
    item->setSizeHint({theme.px(180), theme.px(44)});
    m_parts.push_back({name, panel});
    m_stack->addWidget(panel);
    connect(panel, &Panel::countChanged, this, &LogbookPage::nameAll);
    m_session.actions().add({QStringLiteral("logbook.") + QLatin1String(key),
                             tr("Logbook: %1").arg(name),
                             {},
                             picture,
                             Screen::Logbook},
                            this, [this, row = m_list->row(item)] {
                                m_list->setCurrentRow(row);
                                if (auto* first = shown()->firstFocus()) first->setFocus();
                            });
}

void LogbookPage::nameAll() {
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        const QString count = m_parts[i].panel->count();
        m_list->item(static_cast<int>(i))
            ->setText(count.isEmpty() ? m_parts[i].name
                                      : QStringLiteral("%1  (%2)").arg(m_parts[i].name, count));
    }
}

Panel* LogbookPage::shown() const {
    return m_parts[static_cast<std::size_t>(m_stack->currentIndex())].panel;
}

void LogbookPage::open(const Target& /*target*/) {
    // The numbers beside the names are of all parts.
    for (const auto& part : m_parts)
        if (part.panel == shown() || part.panel->counts()) part.panel->refresh();
}

QWidget* LogbookPage::firstFocus() {
    return m_list;
}

std::optional<Subject> LogbookPage::subject() {
    return shown()->subject();
}

bool LogbookPage::settled() const {
    return std::ranges::all_of(m_parts, [](const Part& part) { return part.panel->settled(); });
}

}  // namespace arc::ui
