// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/phrase_shape.hpp"

#include <QDate>

#include <algorithm>

namespace arc::ui::text {
namespace {

const QRegularExpression& holePattern() {
    static const QRegularExpression pattern(QStringLiteral("\\{([~#@]?[a-zA-Z0-9_]+)\\}"));
    return pattern;
}

QString patternOf(Hole hole) {
    switch (hole) {
        case Hole::AsItIs:
        case Hole::Spoken:
            return QStringLiteral("(.+?)");
        case Hole::Number:
            return QStringLiteral("([-+]?[0-9][0-9,]*(?:\\.[0-9]+)?)");
        case Hole::Moment:
            return QStringLiteral(
                "([0-9]{1,2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)(?: [0-9]{2}:[0-9]{2})?)");
    }
    return {};
}

}  // namespace

Hole kindOf(const QString& name) {
    switch (name.isEmpty() ? u' ' : name.front().unicode()) {
        case u'~':
            return Hole::Spoken;
        case u'#':
            return Hole::Number;
        case u'@':
            return Hole::Moment;
        default:
            return Hole::AsItIs;
    }
}

PhraseShape::PhraseShape(const QString& source) {
    QString pattern;
    qsizetype at = 0;
    const auto literal = [&](const QString& words) {
        m_literals << words;
        pattern += QRegularExpression::escape(words);
        m_weight += words.size();
        if (words.size() > m_longest.size()) m_longest = words;
    };
    for (auto found = holePattern().globalMatch(source); found.hasNext();) {
        const auto hole = found.next();
        literal(source.mid(at, hole.capturedStart() - at));
        m_names << hole.captured(1);
        pattern += patternOf(kindOf(m_names.back()));
        at = hole.capturedEnd();
    }
    literal(source.mid(at));
    m_pattern.setPattern(QRegularExpression::anchoredPattern(pattern));
    m_pattern.setPatternOptions(QRegularExpression::DotMatchesEverythingOption);
}

std::optional<PhraseShape::Holes> PhraseShape::match(const QString& sentence) const {
    if (!sentence.contains(m_longest)) return std::nullopt;
    const auto found = m_pattern.match(sentence);
    if (!found.hasMatch()) return std::nullopt;
    Holes holes;
    for (qsizetype i = 0; i < m_names.size(); ++i)
        holes.insert(m_names[i], found.captured(static_cast<int>(i) + 1));
    return holes;
}

QString PhraseShape::fill(const Holes& holes) const {
    QString filled = m_literals.front();
    for (qsizetype i = 0; i < m_names.size(); ++i)
        filled +=
            holes.value(m_names[i], QLatin1Char('{') + m_names[i] + QLatin1Char('}')) + m_literals[i + 1];
    return filled;
}

QString localNumber(const QString& english, const QLocale& locale) {
    QString plain = english;
    const bool grouped = plain.contains(QLatin1Char(','));
    plain.remove(QLatin1Char(','));
    const auto point = plain.indexOf(QLatin1Char('.'));
    // A number without a point or a group may be a label or a wavelength: its digits stay as they are.
    if (point < 0 && !grouped) return english;
    const int places = point < 0 ? 0 : static_cast<int>(plain.size() - point - 1);
    const QString sign = plain.startsWith(QLatin1Char('+')) ? QStringLiteral("+") : QString();
    return sign + locale.toString(plain.toDouble(), 'f', places);
}

QString localMoment(const QString& english, const QLocale& locale) {
    const QStringList parts = english.split(QLatin1Char(' '));
    const QDate day =
        QLocale::c().toDate(parts.value(0) + QLatin1Char(' ') + parts.value(1) + QStringLiteral(" 2000"),
                            QStringLiteral("d MMM yyyy"));
    QString said = locale.toString(day, QStringLiteral("d MMM"));
    if (parts.size() > 2) said += QLatin1Char(' ') + parts[2];
    return said;
}

}  // namespace arc::ui::text
