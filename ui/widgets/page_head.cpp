// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/page_head.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

PageHead::PageHead(QWidget* parent) : QWidget(parent) {
    const Theme theme = currentTheme();
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(theme.px(Gap::Middle));
    auto* texts = new QVBoxLayout;
    texts->setSpacing(theme.px(4));
    m_title = words(QString(), TextRole::Title, this);
    m_title->setWordWrap(true);
    m_line = words(QString(), TextRole::Soft, this);
    m_line->setWordWrap(true);
    texts->addWidget(m_title);
    texts->addWidget(m_line);
    row->addLayout(texts, 1);
    m_controls = new QHBoxLayout;
    m_controls->setSpacing(theme.px(Gap::Small));
    row->addLayout(m_controls);
}

void PageHead::setTitle(const QString& title) {
    m_title->setText(title);
    setAccessibleName(title);
}

void PageHead::setLine(const QString& line) {
    m_line->setText(line);
    m_line->setVisible(!line.isEmpty());
}

void PageHead::addControl(QWidget* control) {
    m_controls->addWidget(control, 0, Qt::AlignTop);
}

}  // namespace arc::ui
