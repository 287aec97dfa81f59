// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers, units and dates for people, in the person's language. Files are written elsewhere, always
// point-decimal and ISO. Times show at the offset they were written down with.
#pragma once
#include <QString>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/result.hpp"
#include "core/units/instant.hpp"
#include "core/units/quantity.hpp"

namespace arc::ui::text {

/// UTF-8 of core to the window and back.
QString words(const std::string& utf8);
std::string utf8(const QString& words);

/// A sentence or a term of core in the language of the window. Never for labels, names and what a person
/// wrote: those are words().
QString spoken(std::string_view english);
QString spoken(const QString& english);
QString spoken(const Problem& problem);
/// A text of a care card as shipped; a crew's own wording shows as it is written.
QString fromCard(std::string_view english);

/// "1,482"
QString number(std::int64_t value);
QString number(double value, int places);
/// With its sign: "+0.041"
QString signedNumber(double value, int places);

enum class Unit { Shown, LeftOut };
/// "0.04", a third place only when there is one; "0.04 dB" with the unit.
QString loss(Loss loss, Unit unit = Unit::LeftOut);
/// A worked-out loss: always three places, "0.043 dB".
QString meanLoss(double db, Unit unit = Unit::LeftOut);
QString angle(Angle angle);              ///< "0.35°"
QString temperature(Temperature value);  ///< "18.5 °C"
QString humidity(Humidity value);        ///< "61 %"
QString pressure(Pressure value);        ///< "1,013 hPa"

QString clock(Instant at);          ///< "14:07"
QString clockToSecond(Instant at);  ///< "14:07:31"
QString day(Instant at);            ///< "3 Mar 2031"
QString dayAndClock(Instant at);    ///< "3 Mar 2031 14:07"
/// As short as it stays clear: "14:07" today, "Tue 14:07" within a week, else "3 Mar 14:07" or with the year.
QString moment(Instant at, Instant now);
/// "just now", "12 min ago", "2 h ago", "3 days ago"; an instant ahead of `now` answers its moment.
QString ago(Instant at, Instant now);
/// "4:05" minutes and seconds, for timers.
QString countdown(std::int64_t seconds);

/// What a person typed as a number with comma or point; none when it is not one.
std::optional<double> typedNumber(const QString& typed);

}  // namespace arc::ui::text
