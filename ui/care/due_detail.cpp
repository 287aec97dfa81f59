// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/due_detail.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/care/queue_row.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

DueDetail::DueDetail(QWidget* parent) : QFrame(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    outer->addWidget(sheet);
    auto* detail = inside(sheet);
    auto* title = new QHBoxLayout;
    title->setSpacing(theme.px(12));
    m_mark = new StateMark(Mark::Steady, sheet);
    m_mark->setFixedSize(theme.px(24), theme.px(24));
    m_title = words(QString(), TextRole::Heading, sheet);
    m_title->setWordWrap(true);
    title->addWidget(m_mark, 0, Qt::AlignVCenter);
    title->addWidget(m_title, 1);
    detail->addLayout(title);
    m_why = words(QString(), TextRole::Strong, sheet);
    m_why->setWordWrap(true);
    detail->addWidget(m_why);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(theme.px(16));
    grid->setVerticalSpacing(theme.px(8));
    grid->setColumnStretch(1, 1);
    const QString names[lines] = {tr("based on"), tr("since"), tr("if not"), tr("takes"), tr("needs")};
    for (int i = 0; i < lines; ++i) {
        m_names[i] = words(names[i], TextRole::Soft, sheet);
        m_values[i] = words(QString(), TextRole::Body, sheet);
        m_values[i]->setWordWrap(true);
        grid->addWidget(m_names[i], i, 0, Qt::AlignTop);
        grid->addWidget(m_values[i], i, 1);
    }
    detail->addSpacing(theme.px(4));
    detail->addLayout(grid);
    detail->addSpacing(theme.px(6));
    m_start = button(tr("Start"), ButtonKind::Primary, sheet);
    m_start->setMinimumHeight(theme.px(Touch::Pad));
    connect(m_start, &QPushButton::clicked, this, &DueDetail::startAsked);
    detail->addWidget(m_start);
}

void DueDetail::show(const care::DueItem& item, const care::Card* card, Instant now) {
    m_mark->setMark(markOf(item.queue));
    m_title->setText(text::spoken(item.title));
    QString why = QStringLiteral("%1: %2").arg(titleOf(item.queue), text::spoken(item.why));
    if (item.overridden)
        why += QLatin1Char('\n') +
               tr("Overridden by %1: %2")
                   .arg(text::words(item.overridden->by), text::words(item.overridden->reason));
    m_why->setText(why);
    QStringList needs;
    if (card)
        for (const auto& material : card->materials) needs << text::fromCard(material.name);
    const QString values[lines] = {
        text::spoken(item.basedOn),
        QStringLiteral("%1 (%2)").arg(text::moment(item.since, now), text::ago(item.since, now)),
        text::spoken(item.otherwise), card ? tr("about %1 min").arg(card->minutes) : QString(),
        needs.join(QStringLiteral("; "))};
    for (int i = 0; i < lines; ++i) {
        m_values[i]->setText(values[i]);
        m_values[i]->setVisible(!values[i].isEmpty());
        m_names[i]->setVisible(!values[i].isEmpty());
    }
    m_start->setText(card ? tr("Start  Enter") : tr("There is no card for this"));
    m_start->setEnabled(card != nullptr);
}

}  // namespace arc::ui
