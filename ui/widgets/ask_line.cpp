// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/ask_line.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/theme/theme.hpp"
#include "ui/widgets/fitting.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

void askLine(QWidget* parent, const LineQuestion& question, std::function<void(const QString&)> answered) {
    const Theme theme = currentTheme();
    auto* dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(question.title);
    dialog->setObjectName(QStringLiteral("ask_line"));
    auto* layout = new QVBoxLayout(dialog);
    layout->setContentsMargins(theme.px(24), theme.px(20), theme.px(24), theme.px(20));
    layout->setSpacing(theme.px(Gap::Middle));
    layout->addWidget(words(question.title, TextRole::Heading, dialog));
    auto* explain = words(question.explain, TextRole::Soft, dialog);
    explain->setWordWrap(true);
    layout->addWidget(explain);
    auto* entry = new QLineEdit(question.given, dialog);
    entry->setAccessibleName(question.field);
    entry->setMaxLength(400);
    layout->addWidget(entry);
    for (const auto& offer : question.offers) {
        auto* ready = button(offer, ButtonKind::Choice, dialog);
        ready->setAutoDefault(false);
        QObject::connect(ready, &QPushButton::clicked, entry, [entry, offer] {
            entry->setText(offer);
            entry->setFocus();
        });
        layout->addWidget(ready);
    }
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* leave = button(QDialog::tr("Leave it"), ButtonKind::Usual, dialog);
    leave->setAutoDefault(false);
    auto* accept = button(question.accept, ButtonKind::Primary, dialog);
    accept->setDefault(true);
    row->addWidget(leave);
    row->addWidget(accept);
    layout->addLayout(row);
    const bool emptyAllowed = question.empty == LineQuestion::Empty::Allowed;
    const auto mayAccept = [=] { accept->setEnabled(emptyAllowed || !entry->text().trimmed().isEmpty()); };
    QObject::connect(entry, &QLineEdit::textChanged, accept, mayAccept);
    mayAccept();
    QObject::connect(leave, &QPushButton::clicked, dialog, &QDialog::reject);
    QObject::connect(accept, &QPushButton::clicked, dialog, &QDialog::accept);
    QObject::connect(dialog, &QDialog::accepted, parent,
                     [entry, answered = std::move(answered)] { answered(entry->text().trimmed()); });
    fitTo(*dialog, theme.px(460));
    dialog->open();
    entry->setFocus();
    entry->selectAll();
}

}  // namespace arc::ui
