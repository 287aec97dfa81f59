// SPDX-License-Identifier: GPL-3.0-or-later
// A column key: how somebody's CSV columns map to ours. A JSON file:
//   {"name": "Crew B", "kind": "splices", "separator": ";", "decimal": ",", "dates": "day_month_year",
//    "offset": "+01:00", "loss_unit": "mdB",
//    "columns": {"time": "Datum", "splicer": "Gerät"},   ours: theirs
//    "time_of_day": "Uhrzeit",                             joined to the time column
//    "fixed": {"mode": "G.652-G.652"},                     the same in every row
//    "values": {"action": {"Nuten": "groove_clean"}},      theirs: ours
//    "wide": {"1": "Kanal 1", "2": "Kanal 2"},             one column per channel
//    "header": ["Datum", "Uhrzeit", "Gerät"]}              of the file it was made for
// Everything but columns may be left out. A date that could be read in two ways is refused unless "dates"
// says how.
#pragma once
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/intake/column_key.hpp"
#include "core/result.hpp"
#include "storage/csv_values.hpp"

namespace arc::storage {

/// Unknown members, duplicate members and unknown column names of ours are refused with the name.
Result<ColumnKey> readColumnKey(std::string_view json, const std::string& file);
Result<ColumnKey> loadColumnKey(const std::filesystem::path& file);
/// The JSON that readColumnKey reads back as the same key.
std::string toJson(const ColumnKey& key);

/// A key laid over the header of one file.
class Translation {
  public:
    /// Problem when a column that the key names is missing.
    static Result<Translation> over(const ColumnKey& key, const std::vector<std::string>& header,
                                    const std::string& file);

    [[nodiscard]] const ColumnKey& key() const { return made_; }
    /// Our header.
    [[nodiscard]] const std::vector<std::string>& header() const { return header_; }

    struct Fault {
        std::string column;
        std::string reason;
    };
    using Row = std::vector<std::string>;
    /// Our rows out of one of theirs: several from a wide one.
    tl::expected<std::vector<Row>, Fault> rows(const std::vector<std::string_view>& fields) const;

  private:
    tl::expected<std::string, Fault> value(const std::string& column, std::string_view text) const;
    ColumnKey made_;  ///< as given
    ColumnKey key_;   ///< completed
    std::vector<std::string> header_;
    std::vector<int> from_;  ///< place in their row, -1: fixed
    std::optional<int> timeOfDay_;
    std::map<int, int> wide_;  ///< channel → place
    std::size_t channelAt_ = 0, lossAt_ = 0;
};

/// "03.04.2031 07:00" in the given form as ISO, with `offset` when the text has none.
tl::expected<std::string, std::string> isoTime(std::string_view text, DateForm form,
                                               const std::string& offset);

}  // namespace arc::storage
