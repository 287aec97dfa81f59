// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/problem_bar.hpp"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include "ui/text/format.hpp"
#include "ui/theme/state_mark.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

ProblemBar::ProblemBar(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(theme.px(Gap::Edge) + theme.px(18), theme.px(6), theme.px(Gap::Edge),
                               theme.px(6));
    layout->setSpacing(theme.px(Gap::Middle));
    m_sentence = words({}, TextRole::Bold, this);
    m_sentence->setWordWrap(true);
    m_sentence->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setState(m_sentence, stateName(Mark::Drifting));
    layout->addWidget(m_sentence, 1);
    auto* away = button(tr("Put away"), ButtonKind::Quiet, this, QStringLiteral("close"));
    connect(away, &QPushButton::clicked, this, &ProblemBar::clear);
    layout->addWidget(away);
    hide();
}

void ProblemBar::show(const Problem& problem) {
    QString sentence = text::spoken(problem);
    if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
    m_sentence->setText(sentence);
    setAccessibleName(sentence);
    setVisible(true);
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void ProblemBar::clear() {
    setVisible(false);
}

void ProblemBar::paintEvent(QPaintEvent* /*event*/) {
    const Theme theme = currentTheme();
    QPainter painter(this);
    painter.fillRect(rect(), theme.colour(Role::Card));
    painter.fillRect(QRect(0, height() - theme.px(2), width(), theme.px(2)), theme.colour(Role::Drifting));
    paintMark(painter, QRectF(theme.px(Gap::Edge) - theme.px(8), 0, theme.px(18), height()), Mark::Drifting,
              theme);
}

}  // namespace arc::ui
