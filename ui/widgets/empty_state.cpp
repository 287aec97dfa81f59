// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/empty_state.hpp"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/theme/icons.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

EmptyState::EmptyState(const QString& iconName, const QString& title, const QString& teach, QWidget* parent)
    : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setAlignment(Qt::AlignCenter);
    outer->setSpacing(theme.px(Gap::Middle));
    const int side = theme.px(72);
    auto* picture = new QLabel(this);
    picture->setPixmap(iconPixmap(iconName, side, theme.colour(Role::Accent), devicePixelRatioF()));
    picture->setAlignment(Qt::AlignCenter);
    outer->addWidget(picture);
    auto* head = words(title, TextRole::Heading, this);
    head->setAlignment(Qt::AlignCenter);
    head->setWordWrap(true);
    outer->addWidget(head);
    auto* text = words(teach, TextRole::Soft, this);
    text->setAlignment(Qt::AlignCenter);
    text->setWordWrap(true);
    text->setFixedWidth(theme.px(520));
    outer->addWidget(text, 0, Qt::AlignHCenter);
    m_buttons = new QVBoxLayout;
    m_buttons->setSpacing(theme.px(Gap::Small));
    outer->addLayout(m_buttons);
    setAccessibleName(title);
    setAccessibleDescription(teach);
}

QPushButton* EmptyState::addButton(const QString& text, const QString& iconName) {
    auto* made =
        button(text, m_buttons->count() == 0 ? ButtonKind::Primary : ButtonKind::Wide, this, iconName);
    made->setMinimumWidth(currentTheme().px(320));
    if (m_buttons->count() == 0) setFocusProxy(made);
    m_buttons->addWidget(made, 0, Qt::AlignHCenter);
    return made;
}

}  // namespace arc::ui
