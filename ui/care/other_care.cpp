// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/care/other_care.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

OtherCare::OtherCare(QWidget* parent) : QFrame(parent) {
    const Theme theme = currentTheme();
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* sheet = card(this);
    outer->addWidget(sheet);
    auto* row = new QHBoxLayout;
    row->setSpacing(theme.px(8));
    inside(sheet)->setContentsMargins(theme.px(16), theme.px(10), theme.px(16), theme.px(10));
    inside(sheet)->addLayout(row);
    row->addWidget(words(tr("Something else"), TextRole::Accent, sheet));
    m_tool = new QComboBox(sheet);
    m_tool->setAccessibleName(tr("Tool"));
    m_card = new QComboBox(sheet);
    m_card->setAccessibleName(tr("Care card"));
    row->addWidget(m_tool, 2);
    row->addWidget(m_card, 4);
    auto* begin = button(tr("Start"), ButtonKind::Usual, sheet);
    begin->setAccessibleName(tr("Start this care"));
    auto* edit = button(tr("Edit card…"), ButtonKind::Quiet, sheet);
    auto* limits = button(tr("Limits…"), ButtonKind::Quiet, sheet);
    limits->setAccessibleName(tr("Limits of care"));
    // A second line: in one, the names of the care cards were cut off on a small screen.
    auto* keys = new QHBoxLayout;
    keys->setSpacing(theme.px(8));
    keys->addWidget(begin, 1);
    keys->addWidget(edit);
    keys->addWidget(limits);
    inside(sheet)->addLayout(keys);
    connect(m_tool, &QComboBox::currentIndexChanged, this, &OtherCare::fillCards);
    connect(begin, &QPushButton::clicked, this, [this] {
        if (tool() && !action().empty()) Q_EMIT startAsked(tool()->id, action());
    });
    connect(edit, &QPushButton::clicked, this, [this] {
        if (!action().empty()) Q_EMIT editAsked(action());
    });
    connect(limits, &QPushButton::clicked, this, &OtherCare::limitsAsked);
}

void OtherCare::show(const std::vector<Tool>& tools, const care::Deck& deck) {
    const auto before = tool() ? std::optional(tool()->id) : std::nullopt;
    const ActionKey chosen = action();
    m_deck = deck;
    m_tools.clear();
    const QSignalBlocker quiet(m_tool);
    m_tool->clear();
    int at = 0;
    for (const auto& one : tools) {
        if (one.service != Service::InUse) continue;
        if (one.id == before) at = m_tool->count();
        m_tools.push_back(one);
        m_tool->addItem(text::words(one.label));
    }
    m_tool->setCurrentIndex(m_tools.empty() ? -1 : at);
    fillCards();
    m_card->setCurrentIndex(std::max(0, m_card->findData(text::words(chosen))));
}

void OtherCare::fillCards() {
    m_card->clear();
    if (!tool()) return;
    for (const auto& one : m_deck.cards)
        if (one.tool == care::kindOf(*tool())) m_card->addItem(text::fromCard(one.title), text::words(one.id));
}

QWidget* OtherCare::first() const {
    return m_tool;
}

const Tool* OtherCare::tool() const {
    const int at = m_tool->currentIndex();
    return at >= 0 && static_cast<std::size_t>(at) < m_tools.size() ? &m_tools[static_cast<std::size_t>(at)]
                                                                    : nullptr;
}

ActionKey OtherCare::action() const {
    return text::utf8(m_card->currentData().toString());
}

}  // namespace arc::ui
