// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/book_bar.hpp"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include "ui/shell/keeper.hpp"
#include "ui/shell/session.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/outcome.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

Mark markOf(BookAccess access) {
    return access == BookAccess::Damaged ? Mark::Drifting : Mark::Watch;
}

}  // namespace

BookBar::BookBar(Session& session, Keeper& keeper, QWidget* parent) : QWidget(parent), m_keeper(keeper) {
    const Theme theme = currentTheme();
    setAccessibleName(tr("State of the logbook"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(theme.px(Gap::Edge) + theme.px(20), theme.px(8), theme.px(Gap::Edge),
                            theme.px(8));
    m_sentence = words(QString(), TextRole::Bold, this);
    m_sentence->setWordWrap(true);
    row->addWidget(m_sentence, 1);
    m_more = button(tr("What is readable, and rescue"), ButtonKind::Usual, this);
    row->addWidget(m_more);
    connect(m_more, &QPushButton::clicked, this, [&session] {
        session.go(Screen::Logbook);
        if (auto* condition = session.actions().find(QStringLiteral("logbook.condition")))
            condition->trigger();
    });
    connect(&m_keeper, &Keeper::stateChanged, this, &BookBar::look);
    look();
}

void BookBar::look() {
    const BookState& state = m_keeper.state();
    setVisible(state.access != BookAccess::Writing);
    m_sentence->setText(asLine(state.sentence));
    setState(m_sentence, stateName(markOf(state.access)));
    m_more->setVisible(state.access == BookAccess::Damaged);
    update();
}

void BookBar::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    const Mark mark = markOf(m_keeper.state().access);
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(Role::Card));
    painter.fillRect(QRect(0, height() - theme.px(2), width(), theme.px(2)), theme.colour(roleOf(mark)));
    paintMark(painter, QRectF(theme.px(Gap::Edge) - theme.px(8), 0, theme.px(18), height()), mark, theme);
}

}  // namespace arc::ui
