// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/format.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QTime>

#include <cmath>
#include <cstdlib>

#include "ui/text/phrases.hpp"
#include "ui/text/translator.hpp"

namespace arc::ui::text {

namespace {

QString tr(const char* source, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("arc::ui::text", source, comment, n);
}

QDate date(Instant at) {
    const auto c = calendar(at);
    return QDate(c.year, c.month, c.day);
}

std::int64_t daysBetween(Instant from, Instant to) {
    return date(from).daysTo(date(to));
}

}  // namespace

QString words(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

std::string utf8(const QString& words) {
    return words.toStdString();
}

QString spoken(const QString& english) {
    const auto* translator = currentTranslator();
    return translator ? translator->phrasebook().spoken(english) : english;
}

QString spoken(std::string_view english) {
    return spoken(QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size())));
}

QString fromCard(std::string_view english) {
    return QCoreApplication::translate(cardContext, std::string(english).c_str());
}

QString spoken(const Problem& problem) {
    const QString what = spoken(problem.what);
    QString said = problem.where.empty() ? what : QStringLiteral("%1 (%2)").arg(what, spoken(problem.where));
    if (!said.endsWith(QLatin1Char('.'))) said += QLatin1Char('.');
    QString next = spoken(problem.next);
    if (!next.isEmpty()) {
        next[0] = next[0].toUpper();
        said += QLatin1Char(' ') + next;
        if (!said.endsWith(QLatin1Char('.'))) said += QLatin1Char('.');
    }
    return said;
}

QString number(std::int64_t value) {
    return QLocale().toString(static_cast<qlonglong>(value));
}

QString number(double value, int places) {
    return QLocale().toString(value, 'f', places);
}

QString signedNumber(double value, int places) {
    const QString shown = number(value, places);
    return std::signbit(value) ? shown : QLatin1Char('+') + shown;
}

QString loss(Loss loss, Unit unit) {
    const int places = std::abs(loss.value) % 10 == 0 ? 2 : 3;
    const QString shown = number(decibels(loss), places);
    return unit == Unit::Shown ? tr("%1 dB").arg(shown) : shown;
}

QString meanLoss(double db, Unit unit) {
    const QString shown = number(db, 3);
    return unit == Unit::Shown ? tr("%1 dB").arg(shown) : shown;
}

QString angle(Angle angle) {
    return tr("%1°").arg(number(degrees(angle), 2));
}

QString temperature(Temperature value) {
    return tr("%1 °C").arg(number(celsius(value), 1));
}

QString humidity(Humidity value) {
    return tr("%1 %").arg(number(value.value / 10.0, 0));
}

QString pressure(Pressure value) {
    return tr("%1 hPa").arg(number(hectopascals(value), 0));
}

QString clock(Instant at) {
    const auto c = calendar(at);
    return QStringLiteral("%1:%2")
        .arg(c.hour, 2, 10, QLatin1Char('0'))
        .arg(c.minute, 2, 10, QLatin1Char('0'));
}

QString clockToSecond(Instant at) {
    return clock(at) + QStringLiteral(":%1").arg(calendar(at).second, 2, 10, QLatin1Char('0'));
}

QString day(Instant at) {
    return QLocale().toString(date(at), QStringLiteral("d MMM yyyy"));
}

QString dayAndClock(Instant at) {
    return day(at) + QLatin1Char(' ') + clock(at);
}

QString moment(Instant at, Instant now) {
    const auto days = daysBetween(at, now);
    if (days == 0) return clock(at);
    if (days > 0 && days < 7) return QLocale().toString(date(at), QStringLiteral("ddd ")) + clock(at);
    if (date(at).year() == date(now).year())
        return QLocale().toString(date(at), QStringLiteral("d MMM ")) + clock(at);
    return dayAndClock(at);
}

QString ago(Instant at, Instant now) {
    const std::int64_t passed = now.ms - at.ms;
    if (passed < 0) return moment(at, now);
    if (passed < msPerMinute) return tr("just now");
    if (passed < msPerHour) return tr("%n min ago", nullptr, static_cast<int>(passed / msPerMinute));
    if (passed < msPerDay) return tr("%n h ago", nullptr, static_cast<int>(passed / msPerHour));
    const auto days = passed / msPerDay;
    if (days == 1) return tr("1 day ago");
    return tr("%n days ago", nullptr, static_cast<int>(days));
}

QString countdown(std::int64_t seconds) {
    const auto left = std::max<std::int64_t>(0, seconds);
    return QStringLiteral("%1:%2").arg(left / 60).arg(left % 60, 2, 10, QLatin1Char('0'));
}

std::optional<double> typedNumber(const QString& typed) {
    QString plain = typed.trimmed();
    plain.replace(QLatin1Char(','), QLatin1Char('.'));
    bool read = false;
    const double value = plain.toDouble(&read);
    if (!read || !std::isfinite(value)) return std::nullopt;
    return value;
}

}  // namespace arc::ui::text
