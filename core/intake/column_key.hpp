// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody's table and ours: which of their columns holds what, and how their numbers and times are written.
#pragma once
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace arc {

enum class FileKind { SpliceLog, Events, MeasuredLosses };
enum class DecimalMark { Point, Comma };
/// Iso: nothing else is read, because 03/04/2031 is two different days.
enum class DateForm { Iso, DayMonthYear, MonthDayYear, YearMonthDay };
enum class LossUnit { Decibel, Millidecibel };

inline constexpr int mostChannels = 16;

struct ColumnKey {
    std::string name;
    FileKind kind = FileKind::SpliceLog;
    std::optional<char> separator;
    std::optional<DecimalMark> decimal;
    DateForm dates = DateForm::Iso;
    std::string offset;  ///< "+01:00", for times without one; may be empty
    LossUnit lossUnit = LossUnit::Decibel;
    std::map<std::string, std::string> columns;  ///< ours → theirs (theirs as columnName)
    std::string timeOfDay;
    std::map<std::string, std::string> fixed;
    std::map<std::string, std::map<std::string, std::string>> values;
    std::map<int, std::string> wide;  ///< channel → theirs
    std::vector<std::string> header;  ///< of the file it was made for (as columnName); may be empty
    bool operator==(const ColumnKey&) const = default;
};

/// Lower case (ASCII), without spaces around.
std::string columnName(std::string_view text);

enum class Need { Needed, Free };
struct OurColumn {
    std::string_view name;   ///< "loss_db"
    std::string_view words;  ///< for people: "estimated loss"
    Need need;
};
/// Our columns of one kind of file, the needed ones first.
std::span<const OurColumn> ourColumns(FileKind kind);
bool isOurColumn(std::string_view name);

/// SameHeader: made for a file with exactly these columns. AllThere: every column it names is there.
enum class KeyFit { No, AllThere, SameHeader };
KeyFit fit(const ColumnKey& key, std::span<const std::string> header);
/// The key that fits best; of equals the first. None when none fits.
const ColumnKey* bestKey(std::span<const ColumnKey> keys, FileKind kind, std::span<const std::string> header);

}  // namespace arc
