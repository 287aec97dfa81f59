// SPDX-License-Identifier: GPL-3.0-or-later
// What somebody's table calls the things that were done, beside our care cards: a choice a word.
#pragma once
#include <QWidget>

#include <map>
#include <string>
#include <vector>

#include "core/care/card.hpp"

class QComboBox;
class QGridLayout;

namespace arc::ui {

class ActionWords : public QWidget {
    Q_OBJECT
  public:
    explicit ActionWords(QWidget* parent = nullptr);
    /// The cards that words may mean; the choices made so far are forgotten.
    void offer(const care::Deck& deck);
    /// A choice for each word that is none of our keys; those already there stay as they are. `known`: theirs
    /// to ours, from a saved key.
    void ask(const std::vector<std::string>& words, const std::map<std::string, std::string>& known);
    /// Theirs to ours, of the words that were answered.
    [[nodiscard]] std::map<std::string, std::string> answers() const;
    [[nodiscard]] int asked() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] std::vector<std::string> words() const;
    [[nodiscard]] std::vector<QComboBox*> choices() const;

  Q_SIGNALS:
    void changed();

  private:
    struct Row {
        std::string theirs;
        QWidget* cell;
        QComboBox* ours;
    };
    void add(const std::string& word, const std::string& meaning);
    std::vector<std::pair<std::string, QString>> m_cards;  ///< key and title
    std::vector<Row> m_rows;
    QGridLayout* m_grid;
};

}  // namespace arc::ui
