// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/actions.hpp"

#include <QAction>
#include <QWidget>

#include <algorithm>

#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"

namespace arc::ui {

Actions::Actions(QObject* parent) : QObject(parent) {}

QAction* Actions::add(const ActionRow& row, QWidget* owner, std::function<void()> run) {
    auto* action = new QAction(row.text, owner);
    action->setObjectName(row.id);
    if (!row.icon.isEmpty()) action->setIcon(icon(row.icon, currentTheme().colour(Role::Accent)));
    if (!row.key.isEmpty()) {
        action->setShortcut(row.key);
        action->setShortcutContext(owner->isWindow() ? Qt::WindowShortcut : Qt::WidgetWithChildrenShortcut);
    }
    owner->addAction(action);
    connect(action, &QAction::triggered, owner, [run = std::move(run)] { run(); });
    std::erase_if(m_all, [&](const Known& known) { return !known.action || known.row.id == row.id; });
    m_all.push_back({row, action});
    return action;
}

QAction* Actions::find(const QString& id) const {
    const auto it = std::ranges::find_if(m_all, [&](const Known& known) { return known.row.id == id; });
    return it == m_all.end() ? nullptr : it->action.data();
}

}  // namespace arc::ui
