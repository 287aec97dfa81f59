// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/words.hpp"

#include <algorithm>

namespace arc::print {
namespace {

constexpr qsizetype longest = 1200;

}  // namespace

QString words(std::string_view utf8) {
    QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    for (QChar& c : text)
        if (c.unicode() < 0x20 || c.unicode() == 0x7F) c = u' ';
    if (text.size() > longest) text = text.left(longest) + "…";
    return text;
}

QString when(const Instant& at) {
    const CalendarTime t = calendar(at);
    return QString::asprintf("%04d-%02d-%02d %02d:%02d", t.year, t.month, t.day, t.hour, t.minute);
}

QString when(const std::optional<Instant>& at) {
    return at ? when(*at) : QString("–");
}

QString loss(Loss value, int places) {
    return QString::number(decibels(value), 'f', places);
}

QString loss(const std::optional<double>& db, int places) {
    return db ? QString::number(*db, 'f', places) : QString("–");
}

QString count(std::uint64_t value) {
    QString digits = QString::number(value);
    for (qsizetype at = digits.size() - 3; at > 0; at -= 3) digits.insert(at, ',');
    return digits;
}

int lossPlaces(const closeout::Record& record) {
    const auto isFine = [](const closeout::Splice& splice) { return splice.final().loss.value % 10 != 0; };
    const auto hasFine = [&](const closeout::ClosureSection& section) {
        return std::ranges::any_of(section.splices, isFine);
    };
    return std::ranges::any_of(record.closures, hasFine) ? 3 : 2;
}

}  // namespace arc::print
