// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/field_edit.hpp"

#include <QButtonGroup>
#include <QFile>
#include <QFileInfo>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "core/care/words.hpp"
#include "core/entry.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/choose_file.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr int choicesInRow = 5;

QString choiceWords(const std::string& choice) {
    return text::fromCard(care::spaced(choice));
}

}  // namespace

FieldEdit::FieldEdit(const care::Field& field, const std::string& value, QWidget* parent)
    : QWidget(parent), m_field(field) {
    const Theme theme = currentTheme();
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(theme.px(6));
    QString name = text::fromCard(field.label);
    if (!field.unit.empty()) name += QStringLiteral(", ") + text::fromCard(field.unit);
    auto* label = words(name, TextRole::Strong, this);
    box->addWidget(label);
    auto* row = new QGridLayout;
    row->setSpacing(theme.px(10));
    box->addLayout(row);
    const int tall = theme.px(Touch::Pad);
    if (field.kind == care::FieldKind::Choice) {
        auto* group = new QButtonGroup(this);
        for (std::size_t i = 0; i < field.choices.size(); ++i) {
            // Only nine can be had by one digit; the others by the arrow keys.
            const QString digit = i < 9 ? QStringLiteral("%1   ").arg(i + 1) : QString();
            auto* choice = button(digit + choiceWords(field.choices[i]), ButtonKind::Choice, this);
            choice->setAccessibleName(QStringLiteral("%1: %2").arg(name, choiceWords(field.choices[i])));
            choice->setCheckable(true);
            choice->setMinimumHeight(tall);
            choice->setChecked(field.choices[i] == value);
            choice->installEventFilter(this);
            group->addButton(choice);
            row->addWidget(choice, static_cast<int>(i) / choicesInRow, static_cast<int>(i) % choicesInRow);
            m_choices.push_back(choice);
        }
        return;
    }
    if (field.kind == care::FieldKind::Photo) {
        m_photoName = text::words(value);
        m_photoButton = button(m_photoName.isEmpty() ? tr("Choose a photo…   Space") : m_photoName,
                               ButtonKind::Wide, this);
        m_photoButton->setAccessibleName(name);
        m_photoButton->setMinimumHeight(tall);
        m_photoButton->installEventFilter(this);
        connect(m_photoButton, &QPushButton::clicked, this, &FieldEdit::choosePhoto);
        row->addWidget(m_photoButton, 0, 0, Qt::AlignLeft);
        return;
    }
    m_line = new QLineEdit(this);
    m_line->setAccessibleName(name);
    m_line->setMinimumHeight(tall);
    m_line->setFont(theme.font(Text::Heading, Weight::Bold));
    m_line->setMaxLength(200);
    QString shown = text::words(value);
    if (field.kind == care::FieldKind::Number) shown.replace(QLatin1Char('.'), QLocale().decimalPoint());
    m_line->setText(shown);
    if (field.least && field.most)
        m_line->setPlaceholderText(
            tr("%1 to %2").arg(text::number(*field.least, 0), text::number(*field.most, 0)));
    m_line->setMaximumWidth(theme.px(field.kind == care::FieldKind::Number ? 220 : 640));
    m_line->installEventFilter(this);
    label->setBuddy(m_line);
    m_line->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    row->addWidget(m_line, 0, 0);
    row->setColumnStretch(1, 1);
}

std::string FieldEdit::value() const {
    if (m_photoButton) return text::utf8(m_photoName);
    if (m_line) {
        const QString typed = m_line->text().trimmed();
        if (m_field.kind != care::FieldKind::Number) return text::utf8(typed);
        QString plain = typed;
        return text::utf8(plain.replace(QLatin1Char(','), QLatin1Char('.')));
    }
    for (std::size_t i = 0; i < m_choices.size(); ++i)
        if (m_choices[i]->isChecked()) return m_field.choices[i];
    return {};
}

void FieldEdit::takeFocus() {
    if (m_line) {
        m_line->setFocus(Qt::TabFocusReason);
        m_line->selectAll();
    } else if (m_photoButton) {
        m_photoButton->setFocus(Qt::TabFocusReason);
    } else if (!m_choices.empty()) {
        const auto chosen = std::ranges::find_if(m_choices, &QPushButton::isChecked);
        (chosen == m_choices.end() ? m_choices.front() : *chosen)->setFocus(Qt::TabFocusReason);
    }
}

bool FieldEdit::hasKeyboard() const {
    if (m_line) return m_line->hasFocus();
    if (m_photoButton) return m_photoButton->hasFocus();
    return std::ranges::any_of(m_choices, &QPushButton::hasFocus);
}

bool FieldEdit::eventFilter(QObject* watched, QEvent* event) {
    Q_UNUSED(watched)
    if (event->type() != QEvent::KeyPress) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        if (!m_choices.empty() && value().empty())
            for (auto* choice : m_choices)
                if (choice->hasFocus()) choice->setChecked(true);
        Q_EMIT done();
        return true;
    }
    if (m_choices.empty()) return false;
    const int digit = key->key() - Qt::Key_1;
    if (digit >= 0 && digit < static_cast<int>(m_choices.size())) {
        m_choices[static_cast<std::size_t>(digit)]->setChecked(true);
        Q_EMIT done();
        return true;
    }
    return false;
}

void FieldEdit::choosePhoto() {
    chooseFiles(this, tr("Photo"), {tr("Pictures (*.jpg *.jpeg *.png)")}, [this](const QStringList& files) {
        const QFileInfo info(files.first());
        const QString suffix = info.suffix().toLower();
        // Only pictures are opened: reading the logbook's own file would drop its locks.
        if (suffix != QLatin1String("jpg") && suffix != QLatin1String("jpeg") &&
            suffix != QLatin1String("png")) {
            m_photoButton->setText(tr("%1 is no JPEG or PNG; choose another").arg(info.fileName()));
            return;
        }
        if (info.size() <= 0 || info.size() > static_cast<qint64>(attachmentLimit)) {
            m_photoButton->setText(tr("%1 is larger than 8 MB; choose another").arg(info.fileName()));
            return;
        }
        QFile file(info.filePath());
        if (!file.open(QIODevice::ReadOnly)) {
            m_photoButton->setText(tr("%1 cannot be read; choose another").arg(info.fileName()));
            return;
        }
        m_photo = file.readAll();
        m_photoName = info.fileName();
        m_photoButton->setText(m_photoName);
    });
}

}  // namespace arc::ui
