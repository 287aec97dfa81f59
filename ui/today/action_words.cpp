// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/action_words.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

#include "core/intake/column_key.hpp"
#include "ui/care/words.hpp"
#include "ui/text/format.hpp"
#include "ui/theme/theme.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

constexpr int wordColumns = 5;
/// More kinds of work than there are cards are no words but free text.
constexpr int mostWords = 30;

}  // namespace

ActionWords::ActionWords(QWidget* parent) : QWidget(parent), m_grid(new QGridLayout(this)) {
    const Theme theme = currentTheme();
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(theme.px(14));
    m_grid->setVerticalSpacing(0);
    for (int i = 0; i < wordColumns; ++i) m_grid->setColumnStretch(i, 1);
    hide();
}

void ActionWords::offer(const care::Deck& deck) {
    for (auto& row : m_rows) delete row.cell;
    m_rows.clear();
    m_cards.clear();
    const auto offerKey = [&](const ActionKey& key) { m_cards.emplace_back(key, careTitle(deck, key)); };
    for (const auto& card : deck.cards) {
        offerKey(card.id);
        for (const auto& also : card.also) offerKey(also);
    }
    for (const auto key : {action::environmentChange, action::note}) offerKey(ActionKey(key));
    hide();
}

void ActionWords::ask(const std::vector<std::string>& inFile,
                      const std::map<std::string, std::string>& known) {
    const auto isOurs = [this](const std::string& word) {
        return std::ranges::any_of(m_cards, [&](const auto& card) { return card.first == columnName(word); });
    };
    const auto isAsked = [this](const std::string& word) {
        return std::ranges::find(m_rows, word, &Row::theirs) != m_rows.end();
    };
    std::vector<std::string> wanted;
    for (const auto& word : inFile)
        if (!word.empty() && !isOurs(word)) wanted.push_back(word);
    std::erase_if(m_rows, [&](const Row& row) {
        const bool gone = std::ranges::find(wanted, row.theirs) == wanted.end();
        if (gone) delete row.cell;
        return gone;
    });
    for (const auto& word : wanted) {
        if (isAsked(word) || asked() >= mostWords) continue;
        const auto meaning = known.find(word);
        add(word, meaning == known.end() ? std::string() : meaning->second);
    }
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const auto place = static_cast<int>(i);
        m_grid->addWidget(m_rows[i].cell, place / wordColumns, place % wordColumns);
        m_rows[i].cell->show();
    }
    setVisible(!m_rows.empty());
}

void ActionWords::add(const std::string& word, const std::string& meaning) {
    const Theme theme = currentTheme();
    const QString name = tr("\"%1\" means").arg(text::words(word));
    auto* cell = new QWidget(this);
    auto* stack = new QVBoxLayout(cell);
    stack->setContentsMargins(0, 0, 0, theme.px(4));
    stack->setSpacing(0);
    auto* ours = new QComboBox(cell);
    ours->addItem(tr("not said: its rows are set aside"), QString());
    for (const auto& [key, title] : m_cards) ours->addItem(title, text::words(key));
    ours->setCurrentIndex(std::max(0, ours->findData(text::words(meaning))));
    ours->setAccessibleName(name);
    ours->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    auto* label = ui::words(name, TextRole::Soft, cell);
    label->setBuddy(ours);
    stack->addWidget(label);
    stack->addWidget(ours);
    connect(ours, &QComboBox::currentIndexChanged, this, &ActionWords::changed);
    m_rows.push_back({word, cell, ours});
}

std::map<std::string, std::string> ActionWords::answers() const {
    std::map<std::string, std::string> answers;
    for (const auto& row : m_rows)
        if (const std::string ours = text::utf8(row.ours->currentData().toString()); !ours.empty())
            answers[row.theirs] = ours;
    return answers;
}

std::vector<std::string> ActionWords::words() const {
    std::vector<std::string> all;
    for (const auto& row : m_rows) all.push_back(row.theirs);
    return all;
}

std::vector<QComboBox*> ActionWords::choices() const {
    std::vector<QComboBox*> all;
    for (const auto& row : m_rows) all.push_back(row.ours);
    return all;
}

}  // namespace arc::ui
