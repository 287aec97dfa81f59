// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/gentler_first.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/care/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

GentlerFirst::GentlerFirst(const care::Card& card, const Tool& tool, const care::Deck& deck,
                           const std::vector<care::GentlerCare>& skipped, QWidget* parent)
    : QDialog(parent) {
    const Theme theme = currentTheme();
    setAttribute(Qt::WA_DeleteOnClose);
    setObjectName(QStringLiteral("gentler_first"));
    setWindowTitle(tr("Gentler care comes first"));
    setAccessibleName(windowTitle());
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(28), theme.px(22), theme.px(28), theme.px(22));
    box->setSpacing(theme.px(Gap::Middle));
    box->addWidget(words(windowTitle(), TextRole::Heading, this));
    auto* explain = words(tr("“%1” on %2 is the more drastic step. Gentle before drastic (common practice): "
                             "this was not tried yet.")
                              .arg(text::fromCard(card.title), text::words(tool.label)),
                          TextRole::Body, this);
    explain->setWordWrap(true);
    box->addWidget(explain);
    QPushButton* first = nullptr;
    for (const auto& one : skipped) {
        auto* row = new QHBoxLayout;
        row->setSpacing(theme.px(14));
        auto* names = new QVBoxLayout;
        names->setSpacing(0);
        const QString title = careTitle(deck, one.action);
        names->addWidget(words(title, TextRole::Strong, this));
        auto* why = words(text::spoken(one.why), TextRole::Soft, this);
        why->setWordWrap(true);
        names->addWidget(why);
        row->addLayout(names, 1);
        auto* instead = button(tr("Do this instead"), ButtonKind::Wide, this);
        instead->setAccessibleName(tr("Do this instead: %1").arg(title));
        instead->setMinimumHeight(theme.px(Touch::Usual));
        instead->setAutoDefault(false);
        connect(instead, &QPushButton::clicked, this, [this, action = one.action] {
            accept();
            Q_EMIT gentlerChosen(action);
        });
        row->addWidget(instead, 0, Qt::AlignTop);
        box->addLayout(row);
        if (!first) first = instead;
    }
    box->addSpacing(theme.px(6));
    auto* ask = words(tr("Or go on with it, and say why"), TextRole::Soft, this);
    box->addWidget(ask);
    m_reason = new QLineEdit(this);
    m_reason->setAccessibleName(tr("Reason"));
    m_reason->setPlaceholderText(tr("kept in the record"));
    m_reason->setMaxLength(400);
    m_reason->setMinimumHeight(theme.px(Touch::Usual));
    ask->setBuddy(m_reason);
    box->addWidget(m_reason);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* leave = button(tr("Leave it  Esc"), ButtonKind::Usual, this);
    leave->setAutoDefault(false);
    m_goOn = button(tr("Go on with it"), ButtonKind::Primary, this);
    m_goOn->setDefault(true);
    m_goOn->setEnabled(false);
    row->addWidget(leave);
    row->addWidget(m_goOn);
    box->addLayout(row);
    connect(m_reason, &QLineEdit::textChanged, this,
            [this](const QString& typed) { m_goOn->setEnabled(!typed.trimmed().isEmpty()); });
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_goOn, &QPushButton::clicked, this, [this] {
        const QString reason = m_reason->text().trimmed();
        accept();
        Q_EMIT goOnAsked(reason);
    });
    fitTo(*this, theme.px(620));
    if (first) first->setFocus();
}

}  // namespace arc::ui
