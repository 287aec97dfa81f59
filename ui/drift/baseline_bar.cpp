// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drift/baseline_bar.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>

#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {
namespace {

constexpr int shortest = 20;

QSpinBox* arcBox(const QString& name, QWidget* parent) {
    auto* box = new QSpinBox(parent);
    box->setAccessibleName(name);
    box->setButtonSymbols(QAbstractSpinBox::NoButtons);
    box->setGroupSeparatorShown(true);
    box->setMinimumWidth(currentTheme().px(96));
    return box;
}

}  // namespace

BaselineBar::BaselineBar(QWidget* parent)
    : QFrame(parent),
      m_from(arcBox(tr("Baseline from arc"), this)),
      m_to(arcBox(tr("Baseline to arc"), this)),
      m_reason(new QLineEdit(this)),
      m_write(button(tr("Write it"), ButtonKind::Usual, this)) {
    const Theme theme = currentTheme();
    setProperty("ground", QStringLiteral("wash"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(theme.px(14), theme.px(8), theme.px(14), theme.px(8));
    row->setSpacing(theme.px(8));
    row->addWidget(words(tr("Baseline from arc"), TextRole::Bold, this));
    row->addWidget(m_from);
    row->addWidget(words(tr("to"), TextRole::Bold, this));
    row->addWidget(m_to);
    m_reason->setPlaceholderText(tr("why, for the journal"));
    m_reason->setAccessibleName(tr("Reason for moving the baseline"));
    row->addWidget(m_reason, 1);
    row->addWidget(m_write);
    auto* leave = button(tr("Leave it"), ButtonKind::Quiet, this);
    row->addWidget(leave);
    const auto told = [this] {
        m_write->setEnabled(!reason().isEmpty() && to() - from() >= shortest);
        Q_EMIT moved(from(), to());
    };
    connect(m_from, &QSpinBox::valueChanged, this, told);
    connect(m_to, &QSpinBox::valueChanged, this, told);
    connect(m_reason, &QLineEdit::textChanged, this, told);
    connect(m_reason, &QLineEdit::returnPressed, m_write, &QPushButton::click);
    connect(m_write, &QPushButton::clicked, this, &BaselineBar::writeAsked);
    connect(leave, &QPushButton::clicked, this, &BaselineBar::left);
    hide();
}

void BaselineBar::open(int from, int to, int lastArc) {
    for (auto* box : {m_from, m_to}) {
        const QSignalBlocker quiet(box);
        box->setRange(1, std::max(1, lastArc));
        box->setSingleStep(std::max(1, lastArc / 200));
    }
    m_from->setValue(from);
    m_to->setValue(to);
    m_reason->clear();
    m_write->setEnabled(false);
    show();
    m_from->setFocus();
    m_from->selectAll();
}

int BaselineBar::from() const {
    return m_from->value();
}

int BaselineBar::to() const {
    return m_to->value();
}

QString BaselineBar::reason() const {
    return m_reason->text().trimmed();
}

void BaselineBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
        return;
    }
    QFrame::keyPressEvent(event);
}

}  // namespace arc::ui
