// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/time_range.hpp"

#include <QDate>
#include <QRegularExpression>

#include "ui/text/format.hpp"

namespace arc::ui {

namespace {

struct Days {
    QDate first, last;
};

/// A day, a month or a year.
std::optional<Days> readDays(const QString& typed) {
    static const QRegularExpression form(QStringLiteral("^(\\d{4})(?:-(\\d{1,2})(?:-(\\d{1,2}))?)?$"));
    const auto match = form.match(typed.trimmed());
    if (!match.hasMatch()) return std::nullopt;
    const int year = match.captured(1).toInt();
    const bool hasMonth = match.capturedLength(2) > 0, hasDay = match.capturedLength(3) > 0;
    const QDate first(year, hasMonth ? match.captured(2).toInt() : 1, hasDay ? match.captured(3).toInt() : 1);
    if (!first.isValid()) return std::nullopt;
    const QDate last = hasDay     ? first
                       : hasMonth ? first.addMonths(1).addDays(-1)
                                  : first.addYears(1).addDays(-1);
    return Days{first, last};
}

std::int64_t beginOf(QDate day, Instant now) {
    return (day.toJulianDay() - QDate(1970, 1, 1).toJulianDay()) * msPerDay - now.offsetMinutes * msPerMinute;
}

}  // namespace

Result<TimeRange> readTimeRange(const QString& typed, Instant now) {
    const QString plain = typed.trimmed();
    if (plain.isEmpty()) return TimeRange{};
    static const QRegularExpression lastDays(QStringLiteral("^(\\d{1,5})\\s*d$"));
    if (const auto match = lastDays.match(plain); match.hasMatch())
        return TimeRange{now.ms - match.captured(1).toLongLong() * msPerDay, std::nullopt};
    static const QRegularExpression between(QStringLiteral("\\s+to\\s+|\\s*\\.\\.\\s*"));
    const QStringList ends = plain.split(between);
    const auto from = readDays(ends.first());
    const auto to = ends.size() == 2 ? readDays(ends.last()) : from;
    if (!from || !to || ends.size() > 2 || to->last < from->first)
        return fail(ProblemCode::BadInput, "\"" + text::utf8(plain) + "\" is no day or stretch of days",
                    "time", "Type 2031-03-03, 2031-03, 7 d or 2031-03-03 to 2031-03-15");
    return TimeRange{beginOf(from->first, now), beginOf(to->last.addDays(1), now)};
}

}  // namespace arc::ui
