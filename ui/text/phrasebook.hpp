// SPDX-License-Identifier: GPL-3.0-or-later
// Says core's English sentences in another language. Core knows no translator, and what is in the journal
// stays as it was written; so a sentence is recognised by its shape when it is shown. What is not recognised
// is shown as it is.
#pragma once
#include <QCache>
#include <QLocale>
#include <QString>

#include <functional>
#include <span>
#include <vector>

#include "ui/text/phrase_shape.hpp"

namespace arc::ui::text {

class Phrasebook {
  public:
    /// Answers the wording of an English text in the language, empty when there is none.
    using Say = std::function<QString(const QByteArray& english)>;

    /// Says everything as it is.
    Phrasebook() = default;
    /// `shapes` in any order; those with more letters outside their holes are tried first.
    Phrasebook(std::span<const char* const> shapes, Say say, const QLocale& locale);

    [[nodiscard]] QString spoken(const QString& english) const;
    /// Whether every word of it is found in the book; labels, numbers and moments count as found.
    [[nodiscard]] bool knows(const QString& english) const;

  private:
    struct Said {
        QString words;
        bool whole = true;
    };
    [[nodiscard]] Said say(const QString& english, int depth) const;
    [[nodiscard]] std::optional<Said> asOne(const QString& english, int depth) const;
    [[nodiscard]] std::optional<Said> asShape(const QString& english, int depth) const;
    [[nodiscard]] std::optional<Said> inParts(const QString& english, const QString& between,
                                              int depth) const;

    std::vector<std::pair<PhraseShape, QByteArray>> m_shapes;
    Say m_say;
    QLocale m_locale;
    mutable QCache<QString, Said> m_said{4000};
};

}  // namespace arc::ui::text
