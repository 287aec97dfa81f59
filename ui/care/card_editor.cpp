// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/card_editor.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/page_head.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

CardEditor::CardEditor(Session& session, const care::Card& card, QWidget* parent)
    : QDialog(parent), m_session(session) {
    const Theme theme = currentTheme();
    setWindowTitle(tr("Edit the card: %1").arg(text::fromCard(card.title)));
    setAccessibleName(windowTitle());
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(Gap::Edge), theme.px(20), theme.px(Gap::Edge), theme.px(20));
    box->setSpacing(theme.px(12));
    auto* head = new PageHead(this);
    head->setTitle(windowTitle());
    head->setLine(tr("Version %1 is in force. What you adopt is checked first; old records keep the version "
                     "they were done with.")
                      .arg(card.version));
    box->addWidget(head);
    m_edit = new QPlainTextEdit(this);
    m_edit->setAccessibleName(tr("Text of the card"));
    m_edit->setTabChangesFocus(true);
    m_edit->setLineWrapMode(QPlainTextEdit::WidgetWidth);
    m_edit->installEventFilter(this);
    box->addWidget(m_edit, 1);
    m_said = words(QString(), TextRole::Bold, this);
    m_said->setWordWrap(true);
    setState(m_said, QStringLiteral("drifting"));
    box->addWidget(m_said);
    auto* row = new QHBoxLayout;
    auto* take = button(tr("Check and adopt  Ctrl+Enter"), ButtonKind::Primary, this);
    auto* leave = button(tr("Leave it as it is  Esc"), ButtonKind::Wide, this);
    take->setAutoDefault(false);
    leave->setAutoDefault(false);
    row->addWidget(take);
    row->addWidget(leave);
    row->addStretch();
    box->addLayout(row);
    connect(take, &QPushButton::clicked, this, &CardEditor::adopt);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    if (const auto source = m_session.workbench().cardText(m_session.book(), card.id))
        m_edit->setPlainText(text::words(*source));
    else
        tell(source.error());
    fitTo(*this, {theme.px(980), theme.px(680)});
}

QString CardEditor::said() const {
    return m_said->text();
}

void CardEditor::tell(const Problem& problem) {
    QString said = text::spoken(problem);
    if (!said.isEmpty()) said[0] = said[0].toUpper();
    m_said->setText(said);
}

void CardEditor::adopt() {
    m_said->clear();
    const auto edition =
        m_session.workbench().cardEdition(m_session.book(), text::utf8(m_edit->toPlainText()));
    if (!edition) return tell(edition.error());
    if (!m_session.save(Entry{*edition}))
        return tell(Problem{ProblemCode::Unavailable, "not saved; your text is still here", "", "Try again"});
    accept();
}

bool CardEditor::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_edit && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (enter && key->modifiers() & Qt::ControlModifier) {
            adopt();
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

void CardEditor::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && event->modifiers() & Qt::ControlModifier) return adopt();
    QDialog::keyPressEvent(event);
}

}  // namespace arc::ui
