// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/prompt_bar.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

PromptBar::PromptBar(QWidget* parent) : QFrame(parent) {
    const Theme theme = currentTheme();
    setProperty("ground", QStringLiteral("wash"));
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(theme.px(16), theme.px(12), theme.px(16), theme.px(12));
    box->setSpacing(theme.px(8));
    m_question = words(QString(), TextRole::Bold, this);
    m_question->setWordWrap(true);
    box->addWidget(m_question);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(8));
    for (std::size_t i = 0; i < 2; ++i) {
        m_labels[i] = words(QString(), TextRole::Body, this);
        m_lines[i] = new QLineEdit(this);
        m_lines[i]->installEventFilter(this);
        m_lines[i]->setMaxLength(200);
        m_labels[i]->setBuddy(m_lines[i]);
        row->addWidget(m_labels[i]);
        row->addWidget(m_lines[i], i == 0 ? 2 : 3);
    }
    m_do = button(QString(), ButtonKind::Usual, this);
    m_leave = button(tr("Leave it"), ButtonKind::Quiet, this);
    row->addWidget(m_do);
    row->addWidget(m_leave);
    box->addLayout(row);
    m_wrong = words(QString(), TextRole::Bold, this);
    m_wrong->setWordWrap(true);
    setState(m_wrong, QStringLiteral("drifting"));
    box->addWidget(m_wrong);
    connect(m_do, &QPushButton::clicked, this, &PromptBar::finish);
    connect(m_leave, &QPushButton::clicked, this, &PromptBar::giveUp);
    hide();
}

void PromptBar::ask(const QString& question, const std::vector<PromptField>& fields, const QString& doIt,
                    std::function<QString(const QStringList&)> answered) {
    m_answered = std::move(answered);
    m_count = std::clamp<std::size_t>(fields.size(), 1, 2);
    m_question->setText(question);
    m_wrong->hide();
    for (std::size_t i = 0; i < 2; ++i) {
        const bool used = i < fields.size();
        m_labels[i]->setVisible(used);
        m_lines[i]->setVisible(used);
        if (!used) continue;
        m_labels[i]->setText(fields[i].label);
        m_lines[i]->setText(fields[i].value);
        m_lines[i]->setAccessibleName(fields[i].label);
        m_usual[i] = fields[i].usual;
        m_lines[i]->setPlaceholderText(fields[i].usual.isEmpty() ? QString() : tr("↑ ↓ usual answers"));
    }
    m_do->setText(doIt);
    m_do->setAccessibleName(doIt);
    show();
    const bool firstDone = m_count == 2 && !m_lines[0]->text().isEmpty();
    QLineEdit* start = m_lines[firstDone ? 1 : 0];
    start->setFocus();
    start->selectAll();
}

void PromptBar::finish() {
    QStringList lines;
    for (std::size_t i = 0; i < m_count; ++i) {
        lines << m_lines[i]->text().trimmed();
        if (!lines.back().isEmpty()) continue;
        m_wrong->setText(tr("%1 is needed.").arg(m_labels[i]->text()));
        m_wrong->show();
        m_lines[i]->setFocus();
        return;
    }
    // A copy: the answer may ask the next question here.
    const auto answered = m_answered;
    const QString wrong = answered ? answered(lines) : QString();
    if (!wrong.isEmpty()) {
        m_wrong->setText(wrong);
        m_wrong->show();
        return;
    }
    giveUp();
}

void PromptBar::giveUp() {
    m_answered = {};
    hide();
    Q_EMIT closed();
}

bool PromptBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    for (std::size_t i = 0; i < 2; ++i) {
        if (watched != m_lines[i]) continue;
        switch (key->key()) {
            case Qt::Key_Return:
            case Qt::Key_Enter:
                if (i + 1 < m_count && !m_lines[i]->text().trimmed().isEmpty() &&
                    m_lines[i + 1]->text().trimmed().isEmpty())
                    m_lines[i + 1]->setFocus();
                else
                    finish();
                return true;
            case Qt::Key_Escape:
                giveUp();
                return true;
            case Qt::Key_Up:
            case Qt::Key_Down: {
                if (m_usual[i].isEmpty()) return true;
                const auto count = m_usual[i].size();
                const auto here = m_usual[i].indexOf(m_lines[i]->text());
                const auto step = key->key() == Qt::Key_Down ? 1 : -1;
                const auto next = here < 0 ? (step > 0 ? 0 : count - 1) : (here + step + count) % count;
                m_lines[i]->setText(m_usual[i].at(next));
                return true;
            }
            default:
                return false;
        }
    }
    return false;
}

}  // namespace arc::ui
