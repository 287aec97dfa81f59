// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/phrasebook.hpp"

#include <algorithm>

namespace arc::ui::text {
namespace {

/// Sentences within sentences go no deeper than this; it also ends a shape that would hold itself.
constexpr int deepest = 6;

QString startingUpper(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

}  // namespace

Phrasebook::Phrasebook(std::span<const char* const> shapes, Say say, const QLocale& locale)
    : m_say(std::move(say)), m_locale(locale) {
    for (const char* source : shapes) {
        PhraseShape shape(QString::fromUtf8(source));
        if (!shape.holes().isEmpty()) m_shapes.emplace_back(std::move(shape), source);
    }
    std::ranges::stable_sort(m_shapes, [](const auto& one, const auto& other) {
        return one.first.weight() > other.first.weight();
    });
}

QString Phrasebook::spoken(const QString& english) const {
    if (!m_say || english.isEmpty()) return english;
    if (const auto* known = m_said.object(english)) return known->words;
    auto* said = new Said(say(english, 0));
    const QString words = said->words;
    m_said.insert(english, said);
    return words;
}

bool Phrasebook::knows(const QString& english) const {
    return !m_say || english.isEmpty() || say(english, 0).whole;
}

Phrasebook::Said Phrasebook::say(const QString& english, int depth) const {
    if (depth > deepest) return {english, false};
    const auto one = asOne(english, depth);
    if (one && one->whole) return *one;
    for (const auto* between : {". ", "; ", "\n"})
        if (const auto parts = inParts(english, QLatin1String(between), depth);
            parts && (parts->whole || !one))
            return *parts;
    if (one) return *one;
    static const QRegularExpression silent(QStringLiteral("^[^\\p{L}]*$"));
    return {english, silent.match(english).hasMatch()};
}

std::optional<Phrasebook::Said> Phrasebook::asOne(const QString& english, int depth) const {
    if (auto said = asShape(english, depth)) return said;
    // A sentence in a row of sentences: with its full stop, with a capital, with its place in brackets.
    if (english.endsWith(QLatin1Char('.')) && english.size() > 1) {
        if (auto said = asOne(english.chopped(1), depth)) {
            if (!said->words.endsWith(QLatin1Char('.'))) said->words += QLatin1Char('.');
            return said;
        }
    } else if (auto said = asShape(english + QLatin1Char('.'), depth)) {
        if (said->words.endsWith(QLatin1Char('.'))) said->words.chop(1);
        return said;
    }
    if (english.front().isUpper()) {
        QString lower = english;
        lower[0] = lower[0].toLower();
        if (auto said = asShape(lower, depth)) {
            said->words = startingUpper(said->words);
            return said;
        }
    }
    const auto open = english.indexOf(QLatin1String(" ("));
    if (open > 0 && english.endsWith(QLatin1Char(')')))
        if (auto said = asOne(english.left(open), depth)) {
            const Said inner = say(english.mid(open + 2).chopped(1), depth + 1);
            said->words += QStringLiteral(" (%1)").arg(inner.words);
            return said;
        }
    return std::nullopt;
}

std::optional<Phrasebook::Said> Phrasebook::asShape(const QString& english, int depth) const {
    if (const QString exact = m_say(english.toUtf8()); !exact.isEmpty()) return Said{exact};
    // A shape whose words are all known wins over a more exact one that leaves some as they are.
    std::optional<Said> inPart;
    for (const auto& [shape, source] : m_shapes) {
        const auto found = shape.match(english);
        if (!found) continue;
        const QString wording = m_say(source);
        if (wording.isEmpty()) continue;
        Said said;
        PhraseShape::Holes filled;
        for (auto hole = found->begin(); hole != found->end(); ++hole) {
            QString content = hole.value();
            switch (kindOf(hole.key())) {
                case Hole::AsItIs:
                    break;
                case Hole::Spoken: {
                    const Said inner = say(content, depth + 1);
                    content = inner.words;
                    said.whole = said.whole && inner.whole;
                    break;
                }
                case Hole::Number:
                    content = localNumber(content, m_locale);
                    break;
                case Hole::Moment:
                    content = localMoment(content, m_locale);
                    break;
            }
            filled.insert(hole.key(), content);
        }
        said.words = PhraseShape(wording).fill(filled);
        if (said.whole) return said;
        if (!inPart) inPart = said;
    }
    return inPart;
}

std::optional<Phrasebook::Said> Phrasebook::inParts(const QString& english, const QString& between,
                                                    int depth) const {
    const QStringList parts = english.split(between);
    if (parts.size() < 2) return std::nullopt;
    Said said;
    QStringList spokenParts;
    bool any = false;
    for (qsizetype at = 0; at < parts.size();) {
        // Some sentences have the separator within them: as many parts as make one are taken together.
        std::optional<Said> one;
        qsizetype taken = parts.size() - at + 1;
        while (--taken > 0) {
            const QString joined = parts.mid(at, taken).join(between);
            if (joined.isEmpty() || joined == english) continue;
            one = asOne(joined, depth + 1);
            if (one && (one->whole || taken == 1)) break;
        }
        taken = std::max<qsizetype>(1, taken);
        any = any || one.has_value();
        said.whole = said.whole && one && one->whole;
        // A reason or a label between sentences of ours must not be taken for one of them: it stays.
        spokenParts << (one ? one->words : parts[at]);
        at += taken;
    }
    if (!any) return std::nullopt;
    said.words = spokenParts.join(between);
    return said;
}

}  // namespace arc::ui::text
