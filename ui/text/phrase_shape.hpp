// SPDX-License-Identifier: GPL-3.0-or-later
// One sentence with holes. A hole is a name in braces, and its sign says what fits into it:
//   {label}   anything, handed on as it is: labels, names, what a person wrote
//   {~what}   words of core, spoken in turn
//   {#count}  a number, shown by locale: "1,482", "-0.043", "+1.2"
//   {@when}   a day or a moment: "3 Mar", "3 Mar 14:07"
#pragma once
#include <QHash>
#include <QLocale>
#include <QRegularExpression>
#include <QString>

#include <optional>
#include <vector>

namespace arc::ui::text {

enum class Hole { AsItIs, Spoken, Number, Moment };

class PhraseShape {
  public:
    explicit PhraseShape(const QString& source);

    using Holes = QHash<QString, QString>;  ///< name with its sign → content
    [[nodiscard]] std::optional<Holes> match(const QString& sentence) const;
    /// The shape with its holes filled; a name it does not know stays as it is written.
    [[nodiscard]] QString fill(const Holes& holes) const;

    [[nodiscard]] const QStringList& holes() const { return m_names; }
    /// Letters that are not in a hole: the more, the more exact the shape is.
    [[nodiscard]] qsizetype weight() const { return m_weight; }

  private:
    QStringList m_literals;  ///< one more than names
    QStringList m_names;
    QString m_longest;
    QRegularExpression m_pattern;
    qsizetype m_weight = 0;
};

Hole kindOf(const QString& name);
/// "1,482.5" in the locale's writing, with as many places; "+" stays.
QString localNumber(const QString& english, const QLocale& locale);
/// "3 Mar 14:07" with the locale's month.
QString localMoment(const QString& english, const QLocale& locale);

}  // namespace arc::ui::text
